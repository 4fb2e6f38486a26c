// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/cue_pose.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace ferrule {

namespace {

/// Where nobody measured the bridge. Common practice, no source.
constexpr double kUsualHeight_m = 0.065;
constexpr double kUsualElevation_rad = 0.09;

ImagePoint middleOf(const TagObservation& tag) {
  ImagePoint middle;
  for (const ImagePoint& corner : tag.corners)
    middle = {middle.x + corner.x / 4.0, middle.y + corner.y / 4.0};
  return middle;
}

struct Placed {
  std::size_t index = 0;
  TablePoint place;
};

}  // namespace

std::optional<CuePose> roughPose(const Rig& rig, const CueModel& model, const CueSighting& sighting,
                                 TablePoint cueBall) {
  std::vector<Placed> placed;
  for (const TagObservation& tag : sighting.tags) {
    const auto index = model.indexOf(tag.id);
    const auto place = index ? tableFromImage(rig, middleOf(tag), kUsualHeight_m) : std::nullopt;
    if (place) placed.push_back({*index, *place});
  }
  if (placed.empty()) return std::nullopt;
  const auto& fromTip_m = model.cue().tags.centreFromTip_m;
  std::ranges::sort(placed, {}, [&](const Placed& tag) { return fromTip_m[tag.index]; });
  const TableVector towards =
      placed.size() > 1 ? placed.front().place - placed.back().place : cueBall - placed.front().place;
  CuePose pose;
  pose.heading_rad = std::atan2(towards.y, towards.x);
  pose.elevation_rad = kUsualElevation_rad;
  const double forward_m = fromTip_m[placed.front().index] - model.middleFromTip_m();
  pose.middle_m = {placed.front().place.x + forward_m * std::cos(pose.heading_rad),
                   placed.front().place.y + forward_m * std::sin(pose.heading_rad), kUsualHeight_m};
  return pose;
}

std::vector<int> quarterTurnsOf(const Rig& rig, const CueModel& model, std::span<const CueSighting> sightings,
                                TablePoint cueBall) {
  std::vector<std::array<int, 4>> votes(model.tags());
  for (const CueSighting& sighting : sightings) {
    const auto pose = roughPose(rig, model, sighting, cueBall);
    if (!pose) continue;
    const CueAxes axes = axesOf(*pose);
    const Eigen::Vector3d ahead = pose->middle_m + 0.05 * axes.forward;
    const auto from = imageFromTable(rig, {pose->middle_m.x(), pose->middle_m.y(), pose->middle_m.z()});
    const auto to = imageFromTable(rig, {ahead.x(), ahead.y(), ahead.z()});
    if (!from || !to) continue;
    for (const TagObservation& tag : sighting.tags) {
      const auto index = model.indexOf(tag.id);
      if (!index) continue;
      const ImageVector up = (tag.corners[0] - tag.corners[3]) + (tag.corners[1] - tag.corners[2]);
      // The picture's y runs downwards: angles grow clockwise.
      const double turn_rad = std::atan2(up.y, up.x) - std::atan2(to->y - from->y, to->x - from->x);
      const long quarters = std::lround(turn_rad / (0.5 * std::numbers::pi));
      ++votes[*index][static_cast<std::size_t>(((quarters % 4) + 4) % 4)];
    }
  }
  std::vector<int> turns;
  for (const auto& vote : votes)
    turns.push_back(static_cast<int>(std::ranges::max_element(vote) - vote.begin()));
  return turns;
}

}  // namespace ferrule
