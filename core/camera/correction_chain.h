// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/error.h"

namespace ferrule {

/// Everything that may move a point between sensor and table, in the order in which it is applied.
enum class CorrectionKind { Rotation, ImageScale, Lens, Pose };

struct Correction {
  CorrectionKind kind = CorrectionKind::Lens;
  std::string source;   ///< the file or measurement it came from
  std::string purpose;  ///< one plain line
  std::string date;     ///< ISO 8601, of the source; may be empty

  bool operator==(const Correction&) const = default;
};

/// The ordered list of corrections of one rig. Cannot hold two of one kind, nor any out of order.
class CorrectionChain {
 public:
  /// Puts a correction in its place. Errors: CorrectionTwice (subject: its source, detail: the kind).
  [[nodiscard]] Result<void> add(Correction correction);
  [[nodiscard]] const std::vector<Correction>& corrections() const { return corrections_; }
  bool operator==(const CorrectionChain&) const = default;

 private:
  std::vector<Correction> corrections_;
};

/// "rotation", "image-scale", "lens", "pose": the words used in files.
[[nodiscard]] std::string_view toText(CorrectionKind kind);
/// Nothing for anything else.
[[nodiscard]] std::optional<CorrectionKind> correctionKindFromText(std::string_view text);

}  // namespace ferrule
