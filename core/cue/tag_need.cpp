// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/tag_need.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/vision/outliers.h"
#include "core/vision/tag_finder.h"

namespace ferrule {

namespace {

/// A module of fewer pixels loses its own brightness to its neighbours: blur and compression reach two pixels to either
/// side of an edge. Common practice, no source.
constexpr double kModuleNeeded_px = 4.0;
/// Tags that are read in this share of the images are large enough, whatever their pixels.
constexpr double kReadNeeded = 0.8;
/// Printed sizes.
constexpr double kSizes_m = 0.005;

constexpr double kCueHeight_m = 0.07;

}  // namespace

double expectedTagSide_px(const Rig& rig, const MeasuredCue& cue, TablePoint place) {
  const double half_m = 0.5 * cue.tags.blackSide_m;
  const auto left = imageFromTable(rig, {place.x, place.y - half_m, kCueHeight_m});
  const auto right = imageFromTable(rig, {place.x, place.y + half_m, kCueHeight_m});
  return left && right ? distance(*left, *right) : 0.0;
}

TagsSeen tagsSeen(const MeasuredCue& cue, std::span<const CueSighting> sightings, long images, double expectedSide_px) {
  std::vector<double> sides_px;
  for (const CueSighting& sighting : sightings) {
    for (const TagObservation& tag : sighting.tags) {
      for (std::size_t i = 0; i < 4; ++i)
        sides_px.push_back(distance(tag.corners[i], tag.corners[(i + 1) % 4]));
    }
  }
  TagsSeen seen;
  const double possible = static_cast<double>(cue.tags.ids.size()) * static_cast<double>(std::max(images, 1L));
  seen.readShare = std::min(1.0, 0.25 * static_cast<double>(sides_px.size()) / possible);
  const double side_px = sides_px.empty() ? expectedSide_px : median(std::move(sides_px));
  seen.module_px = side_px / modulesAcross(cue.tags.dictionary).value_or(6);
  if (!(seen.module_px > 0.0)) return seen;
  if (seen.module_px < kModuleNeeded_px && seen.readShare < kReadNeeded) {
    const double wanted_m = cue.tags.blackSide_m * kModuleNeeded_px / seen.module_px;
    seen.sideNeeded_m = kSizes_m * std::ceil(wanted_m / kSizes_m - 1e-6);
  }
  return seen;
}

}  // namespace ferrule
