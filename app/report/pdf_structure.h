// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QString>
#include <cstddef>
#include <optional>
#include <vector>

#include "app/report/reading_order.h"
#include "core/base/error.h"

class QPainter;

namespace ferrule {

/// What a PDF says of itself.
struct PdfInformation {
  QString title;
  QString author;
  QString creator;
  QString language;  ///< BCP 47: "de-AT"; empty for a sheet of no language
  QDateTime created;
};

/// Notes what is drawn into a PDF, and marks it on the page by rectangles far outside of every sheet: the writer of Qt
/// 6.4 cannot tag. withStructure() finds them in the pages' contents and puts marked content in their place.
class PdfReadingOrder : public ReadingOrder {
 public:
  struct Node {
    PartKind kind = PartKind::Section;
    QString words;
    std::optional<std::size_t> parent;  ///< nothing: of the document itself
  };

  explicit PdfReadingOrder(QPainter& painter) : painter_(painter) {}

  void begin(PartKind kind, const QString& words) override;
  void end() override;
  [[nodiscard]] const std::vector<Node>& nodes() const { return nodes_; }

 private:
  void mark(std::size_t node, bool begins);

  QPainter& painter_;
  std::vector<Node> nodes_;
  std::vector<std::size_t> open_;
};

/// The PDF with its structure, its language and its information: headings, paragraphs, tables and figures with their
/// texts, in the order in which they were drawn; what is no part of it is marked as an artifact. Parts that hold
/// letters which run from right to left carry their words in the order of reading. Errors: FileMalformed (subject:
/// "PDF"). Source: ISO 32000-1:2008, 14.6 to 14.8.
[[nodiscard]] Result<QByteArray> withStructure(const QByteArray& pdf, const std::vector<PdfReadingOrder::Node>& nodes,
                                               const PdfInformation& information);
/// The same without a structure: for sheets that are measured by, not read.
[[nodiscard]] Result<QByteArray> withInformation(const QByteArray& pdf, const PdfInformation& information);

}  // namespace ferrule
