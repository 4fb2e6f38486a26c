// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/cue_model.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numeric>

namespace ferrule {

CueAxes axesOf(const CuePose& pose) {
  const double ch = std::cos(pose.heading_rad);
  const double sh = std::sin(pose.heading_rad);
  const double ce = std::cos(pose.elevation_rad);
  const double se = std::sin(pose.elevation_rad);
  return {{ce * ch, ce * sh, -se}, {se * ch, se * sh, ce}, {-sh, ch, 0.0}};
}

CueModel::CueModel(const MeasuredCue& cue) : cue_(cue) {
  const auto& places = cue.tags.centreFromTip_m;
  if (places.empty()) return;
  middleFromTip_m_ = std::accumulate(places.begin(), places.end(), 0.0) / static_cast<double>(places.size());
}

std::optional<std::size_t> CueModel::indexOf(int id) const {
  const auto found = std::ranges::find(cue_.tags.ids, id);
  if (found == cue_.tags.ids.end()) return std::nullopt;
  return static_cast<std::size_t>(found - cue_.tags.ids.begin());
}

std::optional<std::array<ImagePoint, 4>> CueModel::imageOf(const Rig& rig, const CuePose& pose, std::size_t tag,
                                                           int quarterTurns, const TagSlip& slip) const {
  const CueAxes axes = axesOf(pose);
  const double cr = std::cos(pose.roll_rad);
  const double sr = std::sin(pose.roll_rad);
  const Eigen::Vector3d up = cr * axes.up - sr * axes.left;
  const Eigen::Vector3d left = cr * axes.left + sr * axes.up;
  const double forward_m = middleFromTip_m_ - cue_.tags.centreFromTip_m[tag] + slip.along_m;
  const double above_m = cue_.tags.cueRadius_m[tag] + cue_.tagThickness_m + slip.above_m;
  const Eigen::Vector3d centre = pose.middle_m + forward_m * axes.forward + above_m * up;
  const double ct = std::cos(slip.twist_rad);
  const double st = std::sin(slip.twist_rad);
  const Eigen::Vector3d along = ct * axes.forward + st * left;
  const Eigen::Vector3d across = ct * left - st * axes.forward;
  const double half_m = 0.5 * cue_.tags.blackSide_m;
  // (towards the tip, to the left) of the corners top-left, top-right, bottom-right, bottom-left.
  constexpr std::array<std::array<double, 2>, 4> kCorners{{{1.0, 1.0}, {1.0, -1.0}, {-1.0, -1.0}, {-1.0, 1.0}}};
  std::array<ImagePoint, 4> corners;
  for (std::size_t i = 0; i < 4; ++i) {
    const auto& place = kCorners[(i + static_cast<std::size_t>(quarterTurns)) % 4];
    const Eigen::Vector3d corner = centre + half_m * (place[0] * along + place[1] * across);
    const auto pixel = imageFromTable(rig, {corner.x(), corner.y(), corner.z()});
    if (!pixel) return std::nullopt;
    corners[i] = *pixel;
  }
  if (slip.growth_px == 0.0 && slip.stretch_px == 0.0) return corners;
  const std::array<ImagePoint, 4> shown = corners;
  for (std::size_t i = 0; i < 4; ++i) {
    const ImageVector fromNext = unit(shown[i] - shown[(i + 1) % 4]);
    const ImageVector fromLast = unit(shown[i] - shown[(i + 3) % 4]);
    const bool nextAcross = (i + static_cast<std::size_t>(quarterTurns)) % 2 == 0;
    corners[i] =
        shown[i] + slip.growth_px * (fromNext + fromLast) + slip.stretch_px * (nextAcross ? fromLast : fromNext);
  }
  return corners;
}

Eigen::Vector3d CueModel::tipOf(const CuePose& pose) const {
  return pose.middle_m + middleFromTip_m_ * axesOf(pose).forward;
}

}  // namespace ferrule
