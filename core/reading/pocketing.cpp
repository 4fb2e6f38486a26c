// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/pocketing.h"

#include <algorithm>
#include <cmath>

#include "core/base/contract.h"
#include "core/reading/motion_pieces.h"

namespace ferrule {

namespace {

/// The hole's edge is known to about this, m: the shelf is not among what an owner measures.
constexpr double kHoleEdge_m = 0.015;
/// Half the range of shelves in the specification is 16 mm; as a standard deviation:
constexpr double kEdge_m = 0.010;
/// A falling ball is seen for about this long: half a diameter takes 0.08 s, three diameters 0.19 s.
constexpr double kFall_s = 0.12;
constexpr double kFallSpread_s = 0.04;
/// A ball last seen this far outside the edge, moving in, fell.
constexpr double kReach_m = 0.08;
/// A ball may be lost this long before it falls, s, and this far, m (under an arm, in the shadow of a rail).
constexpr double kLostBefore_s = 0.8;
constexpr double kLostBefore_m = 0.6;
constexpr double kMoving_mps = 0.03;
/// A ball that leaves the table is fast.
constexpr double kLeavingSpeed_mps = 1.0;
constexpr double kLeavingReach_m = 0.25;

struct Motion {
  TablePoint position;
  TableVector velocity;
  TableVector acceleration;
  double time_s = 0.0;
};

/// How the ball moved at the end of its path.
Motion lastMotion(const MeasuredPath& path) {
  const std::size_t from = path.size() > 24 ? path.size() - 24 : 0;
  const MeasuredPath tail(path.begin() + static_cast<std::ptrdiff_t>(from), path.end());
  const auto pieces = motionPieces(tail);
  Motion motion{path.back().position, {}, {}, path.back().time_s};
  for (auto piece = pieces.rbegin(); piece != pieces.rend(); ++piece) {
    if (piece->count() < 2) continue;
    motion.velocity = piece->velocityAt(piece->end_s);
    motion.acceleration = piece->acceleration;
    break;
  }
  return motion;
}

const Pocket* nearestPocket(const std::array<Pocket, 6>& all, TablePoint point) {
  return &*std::ranges::min_element(all, {}, [&](const Pocket& pocket) { return distance(pocket.hole, point); });
}

/// The pocket whose mouth a ball on this course enters, and how far away.
const Pocket* pocketAhead(const std::array<Pocket, 6>& all, const Motion& motion, double radius_m, double& away_m) {
  const Pocket* found = nullptr;
  for (const Pocket& pocket : all) {
    const TableVector course = unit(motion.velocity);
    if (dot(course, pocket.inward) < 0.2) continue;
    const TableVector across = unit(pocket.facings[1].start - pocket.facings[0].start);
    const TableSegment mouth{pocket.facings[0].start - radius_m * across, pocket.facings[1].start + radius_m * across};
    const auto meets = crossing(motion.position, course, mouth);
    if (!meets || meets->share < 0.0 || meets->share > 1.0) continue;
    if (meets->along < -0.1 || meets->along > kLostBefore_m) continue;
    if (found != nullptr && meets->along >= away_m) continue;
    found = &pocket;
    away_m = meets->along;
  }
  return found;
}

}  // namespace

BallEnd fateOf(const MeasuredPath& path, double end_s, const Table& table, double radius_m) {
  FERRULE_REQUIRE(!path.empty());
  const auto all = pockets(table);
  BallEnd fate;
  fate.time_s = path.back().time_s;
  fate.position = path.back().position;
  fate.pointsOnTable = path.size();

  const Pocket* nearest = nearestPocket(all, path.back().position);
  const double toHole_m = distance(nearest->hole, path.back().position);
  const bool overHole = toHole_m < nearest->holeRadius_m - 0.004;
  const bool away = end_s - path.back().time_s > kGoneAfter_s;
  if (!overHole && !away) return fate;

  // Points below the cloth first: everything from the first point inside the edge on.
  std::size_t firstInside = path.size();
  for (std::size_t i = path.size(); i-- > 0;) {
    if (distance(nearest->hole, path[i].position) > nearest->holeRadius_m + kHoleEdge_m) break;
    firstInside = i;
  }
  const std::size_t onTable = std::max<std::size_t>(firstInside, 1);
  const MeasuredPath before(path.begin(), path.begin() + static_cast<std::ptrdiff_t>(onTable));
  Motion motion = lastMotion(before);
  const double speed_mps = length(motion.velocity);

  const Pocket* pocket = nullptr;
  bool certain = true;
  if (overHole || firstInside < path.size() ||
      (toHole_m < nearest->holeRadius_m + kReach_m && speed_mps > kMoving_mps)) {
    pocket = nearest;
    // Near the edge but at rest: hangs there, and something hides it.
    const bool resting = speed_mps <= kMoving_mps && !overHole;
    if (resting && firstInside == path.size()) pocket = nullptr;
    if (resting && firstInside < path.size() && path.back().time_s - path[firstInside].time_s > 0.5) pocket = nullptr;
  } else if (speed_mps > kMoving_mps) {
    double away_m = 0.0;
    pocket = pocketAhead(all, motion, radius_m, away_m);
    if (pocket != nullptr && away_m / speed_mps > kLostBefore_s) pocket = nullptr;
    certain = false;
  }

  if (pocket != nullptr) {
    fate.fate = Fate::Pocketed;
    fate.pocket = pocket->name;
    fate.certain = certain;
    fate.pointsOnTable = onTable;
    // The centre passes over the hole.
    fate.time_s = motion.time_s;
    fate.position = motion.position;
    double nearest_m = distance(pocket->hole, motion.position);
    for (double t = 0.0; t < kLostBefore_s && nearest_m > pocket->holeRadius_m; t += 0.001) {
      const TablePoint there = motion.position + t * motion.velocity + (0.5 * t * t) * motion.acceleration;
      const double here_m = distance(pocket->hole, there);
      if (here_m > nearest_m) break;
      nearest_m = here_m;
      fate.time_s = motion.time_s + t;
      fate.position = there;
    }
    fate.timeUncertainty_s = speed_mps > 0.0 ? std::min(kLostBefore_s, kEdge_m / speed_mps) : kLostBefore_s;
    if (firstInside < path.size() && speed_mps > 0.0) {
      // Where the edge of the slate lies is not well known, which makes the time of a slow ball uncertain; how long a
      // falling ball is still seen is known better then.
      const double edge_s = kEdge_m / speed_mps;
      const double weight = edge_s * edge_s / (edge_s * edge_s + kFallSpread_s * kFallSpread_s);
      const double bySight_s = std::max(before.back().time_s, path.back().time_s - kFall_s);
      fate.time_s += weight * (bySight_s - fate.time_s);
      fate.timeUncertainty_s = std::sqrt(weight) * kFallSpread_s;
    }
    return fate;
  }
  if (speed_mps <= kMoving_mps) return fate;  // hidden where it lay

  const double toRail_m =
      std::min(table.length_m / 2.0 - std::abs(motion.position.x), table.width_m / 2.0 - std::abs(motion.position.y));
  const bool leaves = speed_mps > kLeavingSpeed_mps && toRail_m < kLeavingReach_m;
  fate.fate = leaves ? Fate::OffTable : Fate::Lost;
  fate.certain = false;
  return fate;
}

}  // namespace ferrule
