// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <vector>

#include "core/base/error.h"
#include "core/camera/mark_sighting.h"
#include "core/camera/rig_from_lines.h"

namespace ferrule {

/// Sights and pocket openings where a rough rig expects them, to within a centimetre and a half. A sight is the one
/// small spot near its place that differs from the rail around it, lighter or darker; an opening is what is dark there.
/// What is covered, cut by a hand, or could be one of two things is left out. picture: 8-bit BGR, upright. rough: at
/// its size.
[[nodiscard]] std::vector<MarkSighting> findMarks(const cv::Mat& picture, const Rig& rough, const Table& table);

/// What a person says of a mark: where it is, or that the table has none there.
struct HandMark {
  TableMark mark;
  bool isThere = true;
  ImagePoint place;  ///< where it is there

  bool operator==(const HandMark&) const = default;
};

/// A person with a loupe is right to about half a pixel. Common practice, no source.
inline constexpr double kHandPlaced_px = 0.5;

/// Found marks, but for those that a person spoke of: the person's word stands.
[[nodiscard]] std::vector<MarkSighting> withHandMarks(std::vector<MarkSighting> found,
                                                      const std::vector<HandMark>& said);

/// The marks that a rig from lines is made with: found by a rig from the lines alone, without those that the fit with
/// all of them puts more than a centimetre off, since something else was taken for them. None where lines give no rig.
[[nodiscard]] std::vector<MarkSighting> marksByLines(const cv::Mat& picture, const RigEvidence& evidence,
                                                     const MeasuredTable& measured,
                                                     const std::vector<LineTrace>& lines);

}  // namespace ferrule
