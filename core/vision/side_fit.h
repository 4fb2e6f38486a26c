// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <opencv2/core/mat.hpp>
#include <optional>

#include "core/geometry/frames.h"

namespace ferrule {

/// Corners of a dark square on light ground as the crossings of its four fitted sides.
///
/// A corner's own neighbourhood is rounded by blur; the sides are not. Each side is fitted to many places where the
/// brightness, in linear light, passes half-way between its two levels.
///
/// grey: 8-bit. corners: first guesses within half a module. module_px: width of the dark border.
/// Nothing when a side is too short, too faint, or not straight.
/// Source for the decoding of brightness: IEC 61966-2-1 (sRGB).
[[nodiscard]] std::optional<std::array<ImagePoint, 4>> cornersFromSides(const cv::Mat& grey,
                                                                        const std::array<ImagePoint, 4>& corners,
                                                                        double module_px);

}  // namespace ferrule
