// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <vector>

#include "core/camera/check_evidence.h"
#include "core/table/table.h"
#include "core/vision/cloth_outline.h"

namespace ferrule {

/// Which way round the table lies in the picture: whether the head is at the outline's u = 0 or at u = 1.
enum class TableWay { HeadAtStart, HeadAtEnd };

enum class PictureSide { Left, Right, Top, Bottom };
/// The way round that has the head at that side of the picture.
[[nodiscard]] TableWay wayWithHead(const ClothOutline& outline, PictureSide side);

/// Where a place of the table's plane of cushions lies in the picture, by the outline alone: to about a centimetre.
[[nodiscard]] ImagePoint roughImageFromTable(const ClothOutline& outline, TableWay way, const Table& table,
                                             TablePoint point);

/// The noses and back edges of the cushions that show over most of their length, to a fraction of a pixel.
///
/// Seen from above, the first edge inward from a cushion is its nose: there its cloth ends and the shadow below it
/// begins. Where no shadow shows, the nose is where the light rises to the bed's. Of table only the widths of cushions
/// and pockets matter, so that a wrong length is no hindrance.
/// picture: 8-bit BGR.
[[nodiscard]] std::vector<LineTrace> traceLines(const cv::Mat& picture, const ClothOutline& outline, TableWay way,
                                                const Table& table);

/// Found lines, but for those of cushions that a person placed: they stand in for all that was found of the cushion,
/// since whoever mistakes its nose mistakes its back edge too.
[[nodiscard]] std::vector<LineTrace> withHandLines(std::vector<LineTrace> found, const std::vector<LineTrace>& placed);

}  // namespace ferrule
