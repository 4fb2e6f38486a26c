// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/table/track.h"

namespace ferrule {

/// How far a source has come.
struct SourceProgress {
  long images = 0;      ///< looked at so far
  double time_s = 0.0;  ///< of the last one
  double share = -1.0;  ///< of the whole; negative when unknown
};

/// Where image readings come from: a film, a camera, or a test.
class ReadingSource {
 public:
  virtual ~ReadingSource() = default;
  /// The readings that have become final, in order, possibly none; nothing after the last one.
  [[nodiscard]] virtual std::optional<std::vector<ImageReading>> next() = 0;
  [[nodiscard]] virtual SourceProgress progress() const = 0;
  /// Where the camera was in the table frame, m, when it took what next() returned last; nothing where nobody knows.
  [[nodiscard]] virtual std::optional<TablePoint3> camera() const { return std::nullopt; }
};

}  // namespace ferrule
