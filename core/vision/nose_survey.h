// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <optional>
#include <vector>

#include "core/camera/rig.h"
#include "core/table/table.h"

namespace ferrule {

/// Looks for the cushions' noses where a rig expects them and says how straight they come out.
///
/// A nose is straight on every sound table, so what bends after the correction was bent by a lens that belongs to
/// another camera, or was applied twice or not at all. The tags alone cannot tell: they show a corner's error only.
/// Assumes a camera that stands still and sees the noses from inside, from above.
class NoseSurvey {
 public:
  /// Takes a picture of the film, 8-bit BGR, upright. A few, spread over time, are enough: people move on between them.
  void add(const cv::Mat& picture);
  /// Each nose that could be followed over most of its length, in the order of kCushionNames.
  [[nodiscard]] std::vector<NoseStraightness> result(const Rig& rig, const Table& table) const;

 private:
  std::vector<cv::Mat> pictures_;
};

/// How straight one nose comes out in one picture; nothing when it could not be followed.
/// light: CV_32F, one channel.
[[nodiscard]] std::optional<NoseStraightness> straightnessOf(const cv::Mat& light, const Rig& rig, const Table& table,
                                                             const Cushion& cushion);

}  // namespace ferrule
