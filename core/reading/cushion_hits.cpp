// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/cushion_hits.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace ferrule {

namespace {

/// Velocity reversal with the centre within R of the nose line +- 4 mm (common practice, no source). The
/// contact lies above the centre, so the centre comes 1 to 2 mm nearer than R; a fast ball sinks deeper into the
/// rubber.
constexpr double kTolerance_m = 0.006;
/// A jaw's place follows from the mouth's width and its angle, neither of which the owner measures well.
constexpr double kJawTolerance_m = 0.012;
constexpr double kSink_m = 0.015;
/// The rebound must be mostly away from the face: friction along a cushion takes at most about a third.
constexpr double kLeastAwayShare = 0.6;

CushionName cushionOfFacing(const std::array<Cushion, 6>& all, const TableSegment& facing) {
  const Cushion* nearest = &all.front();
  double least_m = 1e9;
  for (const Cushion& cushion : all) {
    const double here_m =
        std::min(distance(cushion.nose.start, facing.start), distance(cushion.nose.end, facing.start));
    if (here_m < least_m) {
      least_m = here_m;
      nearest = &cushion;
    }
  }
  return nearest->name;
}

}  // namespace

std::vector<RailFace> railFaces(const Table& table) {
  std::vector<RailFace> faces;
  const auto all = cushions(table);
  for (const Cushion& cushion : all)
    faces.push_back({cushion.name, cushion.nose, cushion.inward});
  for (const Pocket& pocket : pockets(table)) {
    for (const TableSegment& facing : pocket.facings) {
      TableVector inward = perpendicular(unit(facing.end - facing.start));
      // Toward the pocket's axis.
      if (dot(inward, pocket.mouth - facing.start) < 0.0) inward = -inward;
      faces.push_back({cushionOfFacing(all, facing), facing, inward});
    }
  }
  return faces;
}

std::optional<CushionName> cushionOf(const std::vector<RailFace>& faces, const Knot& knot, TableVector jump,
                                     double radius_m) {
  std::optional<CushionName> found;
  double bestShare = kLeastAwayShare;
  const double size_mps = length(jump);
  if (size_mps <= 0.0) return found;
  const double slack_m = 2.0 * std::hypot(knot.pieceBefore.positionUncertainty_m(knot.time_s), 0.0005);
  for (std::size_t i = 0; i < faces.size(); ++i) {
    const RailFace& face = faces[i];
    const bool jaw = i >= kCushionNames.size();
    const double away_mps = dot(jump, face.inward);
    if (dot(knot.before, face.inward) >= -knot.velocityUncertainty_mps || away_mps <= 0.0) continue;
    const double share = away_mps / size_mps;
    if (share <= bestShare) continue;
    const double height_m = dot(knot.position - face.line.start, face.inward);
    const TableVector along = unit(face.line.end - face.line.start);
    const double from_m = dot(knot.position - face.line.start, along);
    const double tolerance_m = (jaw ? kJawTolerance_m : kTolerance_m) + slack_m;
    const double reach_m = distance(face.line.start, face.line.end);
    if (from_m < -tolerance_m || from_m > reach_m + tolerance_m) {
      // Past the end of the line only the nose point itself can be touched.
      if (distanceToSegment(knot.position, face.line) > radius_m + tolerance_m) continue;
    }
    if (height_m > radius_m + tolerance_m || height_m < radius_m - kSink_m - tolerance_m) continue;
    bestShare = share;
    found = face.cushion;
  }
  return found;
}

}  // namespace ferrule
