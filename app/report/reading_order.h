// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace ferrule {

/// What a part of a printed page is to somebody who hears it read out, or reads it through another program. The kinds
/// are those of ISO 32000-1:2008, 14.8.4.
enum class PartKind {
  Section,  ///< of parts
  Heading1,
  Heading2,
  Heading3,
  Paragraph,
  Figure,  ///< with a text that stands in for it
  Table,   ///< of rows
  Row,     ///< of cells
  HeaderCell,
  Cell,
  Decoration,  ///< rules, frames, page numbers: nothing to read
};

/// Whether a part is drawn itself, not only made of others.
[[nodiscard]] constexpr bool isDrawn(PartKind kind) {
  return kind != PartKind::Section && kind != PartKind::Table && kind != PartKind::Row;
}

/// Is told what is drawn while it is drawn, in the order in which it should be read.
class ReadingOrder {
 public:
  virtual ~ReadingOrder() = default;
  /// Everything until the part's end belongs to it. A part that is drawn holds no other. words: of a figure what is
  /// said in its place, of other drawn parts what they say; else empty.
  virtual void begin(PartKind kind, const QString& words) = 0;
  virtual void end() = 0;
};

/// A part for as long as it lives; order may be null.
class Part {
 public:
  Part(ReadingOrder* order, PartKind kind, const QString& words = {}) : order_(order) {
    if (order_ != nullptr) order_->begin(kind, words);
  }
  ~Part() {
    if (order_ != nullptr) order_->end();
  }
  Part(const Part&) = delete;
  Part& operator=(const Part&) = delete;
  Part(Part&&) = delete;
  Part& operator=(Part&&) = delete;

 private:
  ReadingOrder* order_;
};

}  // namespace ferrule
