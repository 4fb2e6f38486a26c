// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/jaw_touch.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

/// The way over the cloth that is looked at with the fall, in points.
constexpr std::size_t kPointsBefore = 24;
/// How much of a fall is looked at: some images, and no more than this, s.
constexpr double kImagesOfFall = 3.2;
constexpr double kMostFall_s = 0.09;
/// A ball that rolls over an edge drops by 5/14 g t^2 at first. Source: a rolling solid sphere has 5/7 of the
/// acceleration of a sliding one. A camera over the table sees its place shifted by the drop times how far aside it
/// hangs over its height, which is half or less: common practice, no source.
constexpr double kShift_mps2 = 0.5 * 5.0 / 14.0 * 9.81;
/// No touch while the centre is farther over the hole than this, m: how well the hole's edge is known.
constexpr double kOverHole_m = 0.02;

}  // namespace

std::vector<Knot> jawTouches(const MeasuredPath& whole, const BallEnd& end, const BallMotion& motion,
                             const Table& table, double radius_m, double imageInterval_s) {
  if (end.fate != Fate::Pocketed || end.pointsOnTable >= whole.size() || end.pointsOnTable < 3) return {};
  const std::size_t from = end.pointsOnTable > kPointsBefore ? end.pointsOnTable - kPointsBefore : 0;
  const double edge_s = whole[end.pointsOnTable - 1].time_s;
  MeasuredPath tail;
  for (std::size_t i = from; i < whole.size(); ++i) {
    PathPoint point = whole[i];
    const double falling_s = point.time_s - edge_s;
    if (falling_s > std::min(kMostFall_s, kImagesOfFall * imageInterval_s)) break;
    if (falling_s > 0.0) {
      point.standardUncertainty_m = std::hypot(point.standardUncertainty_m, kShift_mps2 * falling_s * falling_s);
    }
    tail.push_back(point);
  }
  const Pocket pocket = pockets(table)[static_cast<std::size_t>(*end.pocket)];
  std::vector<Knot> touches;
  for (const Knot& knot : motionOf(motion.ball, std::move(tail), imageInterval_s).knots) {
    const bool known = std::ranges::any_of(motion.knots, [&](const Knot& other) {
      return std::abs(other.time_s - knot.time_s) <
             1.5 * imageInterval_s + 2.0 * (other.timeUncertainty_s + knot.timeUncertainty_s);
    });
    if (known || knot.to_s < edge_s - imageInterval_s) continue;
    if (distance(knot.position, pocket.hole) < pocket.holeRadius_m - kOverHole_m) continue;
    if (cushionOf(railFaces(table), knot, knot.jump(), radius_m)) touches.push_back(knot);
  }
  return touches;
}

}  // namespace ferrule
