// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <optional>

#include "core/camera/rig.h"
#include "core/table/shot.h"
#include "core/table/table.h"

namespace ferrule {

/// The line of a plain cue as its shaft shows it over the cloth.
struct ShaftLine {
  double time_s = 0.0;
  Measured aim_rad;        ///< the way the tip points
  Measured side_m;         ///< of the line past the ball's centre, + right as the player sees it
  double noise_rad = 0.0;  ///< the part of the aim's uncertainty that the next image has anew
  double length_m = 0.0;   ///< of the shaft that was seen

  bool operator==(const ShaftLine&) const = default;
};

/// Finds the shaft before a cue ball at rest: a straight bar of a shaft's width, of another colour than the cloth (a
/// shadow is none), that points at the ball and reaches near it. Nothing where there is none: a shaft of the cloth's
/// colour, or a black one, is not seen. Its height over the cloth is not seen either; what that leaves open of the line
/// is in the uncertainty.
///
/// picture: 8-bit BGR of the rig's size.
[[nodiscard]] std::optional<ShaftLine> shaftLine(const Rig& rig, const Table& table, const cv::Mat& picture,
                                                 TablePoint ball, double radius_m);

}  // namespace ferrule
