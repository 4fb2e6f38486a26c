// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/knots.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/base/contract.h"
#include "core/reading/least_time.h"

namespace ferrule {

namespace {

/// A jump of the velocity counts from here on: in standard uncertainties, and at least, m/s.
constexpr double kJumpUncertainties = 4.5;
constexpr double kLeastJump_mps = 0.03;
/// Of a position near an impact: blur mixes the two ways within one exposure.
constexpr double kPlaceFloor_m = 0.0005;
/// A piece of fewer points than this does not tell a velocity.
constexpr std::size_t kFewestPoints = 2;

Knot knotBetween(const MotionPiece& before, const MotionPiece& after, double imageInterval_s) {
  Knot knot;
  knot.from_s = before.end_s;
  knot.to_s = after.start_s;
  knot.pieceBefore = before;
  knot.pieceAfter = after;
  const double low_s = knot.from_s - 0.6 * imageInterval_s;
  const double high_s = knot.to_s + 0.6 * imageInterval_s;
  knot.time_s = leastTime_s(low_s, high_s, [&](double time_s) { return disagreement(knot, time_s); });
  knot.before = before.velocityAt(knot.time_s);
  knot.after = after.velocityAt(knot.time_s);
  const double u1 = before.positionUncertainty_m(knot.time_s);
  const double u2 = after.positionUncertainty_m(knot.time_s);
  const TablePoint p1 = before.at(knot.time_s);
  const TablePoint p2 = after.at(knot.time_s);
  const double w1 = 1.0 / (u1 * u1 + 1e-10);
  const double w2 = 1.0 / (u2 * u2 + 1e-10);
  knot.position = p1 + (w2 / (w1 + w2)) * (p2 - p1);
  knot.velocityUncertainty_mps =
      std::hypot(before.velocityUncertainty_mps(knot.time_s), after.velocityUncertainty_mps(knot.time_s));
  knot.timeUncertainty_s = std::hypot(u1, u2, kPlaceFloor_m) / std::max(1e-3, length(knot.jump()));
  return knot;
}

}  // namespace

double disagreement(const Knot& knot, double time_s) {
  const TableVector off = knot.pieceAfter.at(time_s) - knot.pieceBefore.at(time_s);
  const double u = std::hypot(knot.pieceBefore.positionUncertainty_m(time_s),
                              knot.pieceAfter.positionUncertainty_m(time_s), kPlaceFloor_m);
  return dot(off, off) / (u * u);
}

BallMotion motionOf(BallName ball, MeasuredPath path, double imageInterval_s) {
  FERRULE_REQUIRE(!path.empty());
  BallMotion motion{ball, std::move(path), {}, {}};
  for (const MotionPiece& piece : motionPieces(motion.path)) {
    if (piece.count() >= kFewestPoints) motion.pieces.push_back(piece);
  }
  if (motion.pieces.empty()) motion.pieces = motionPieces(motion.path);
  for (std::size_t i = 1; i < motion.pieces.size(); ++i) {
    const Knot knot = knotBetween(motion.pieces[i - 1], motion.pieces[i], imageInterval_s);
    const double jump_mps = length(knot.jump());
    if (jump_mps < std::max(kLeastJump_mps, kJumpUncertainties * knot.velocityUncertainty_mps)) continue;
    motion.knots.push_back(knot);
  }
  return motion;
}

bool BallMotion::moved() const {
  return std::ranges::any_of(pieces, [](const MotionPiece& piece) { return !piece.resting; });
}

namespace {

const MotionPiece& pieceAt(const std::vector<MotionPiece>& pieces, double time_s) {
  for (std::size_t i = 0; i + 1 < pieces.size(); ++i) {
    if (time_s < 0.5 * (pieces[i].end_s + pieces[i + 1].start_s)) return pieces[i];
  }
  return pieces.back();
}

}  // namespace

TablePoint BallMotion::at(double time_s) const {
  return pieceAt(pieces, time_s).at(time_s);
}

TableVector BallMotion::velocityAt(double time_s) const {
  return pieceAt(pieces, time_s).velocityAt(time_s);
}

double BallMotion::restTime_s() const {
  std::size_t k = pieces.size();
  while (k > 0 && pieces[k - 1].resting)
    --k;
  if (k == 0) return pieces.front().start_s;
  const MotionPiece& last = pieces[k - 1];
  if (k == pieces.size()) return last.end_s;
  const MotionPiece& rest = pieces[k];
  // A rolling ball stops where its parabola turns; the images near it hardly differ, so the turning point is better.
  const double slowing = -dot(last.acceleration, last.velocity);
  double stop_s = rest.start_s;
  if (slowing > 0.0) {
    stop_s = last.origin_s + dot(last.velocity, last.velocity) / slowing;
  }
  return std::clamp(stop_s, last.end_s - 0.3, rest.start_s + 0.3);
}

}  // namespace ferrule
