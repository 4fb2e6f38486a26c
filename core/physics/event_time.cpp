// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/event_time.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/polynomial.h"
#include "core/physics/cushion_impact.h"

namespace ferrule {

namespace {

/// Rounding and pressing let no ball sink in deeper than a small part of this.
constexpr double kDeepest_m = 1e-4;

/// |r + v t + a t²/2|² − reach² as a quartic.
Quartic separation(Vector3 r, Vector3 v, Vector3 a, double reach_m) {
  return {{dot(r, r) - reach_m * reach_m, 2.0 * dot(r, v), dot(v, v) + dot(a, r), dot(a, v), 0.25 * dot(a, a)}};
}

/// Whether bodies that touch meet at once, and else from which gap on their way is looked at: a pressing pair may sink
/// in by kPressedIn_m in all.
struct Touch {
  bool now = false;
  double gap_m = 0.0;
};

Touch touchOf(double gap_m, double closing_mps) {
  if (closing_mps > kPressing_mps) return {true, gap_m};
  if (gap_m > -kPressedIn_m) return {false, gap_m + kPressedIn_m};
  return {closing_mps >= -kPressing_mps, kPressedIn_m};
}

/// Time from now until a distance whose quartic is q falls to reach. r, v: at now.
double contactFrom(Quartic q, Vector3 r, Vector3 v, double reach_m, double span_s) {
  const double gap_m = q.c[0] / (2.0 * reach_m);
  if (gap_m < kTouching_m) {
    const Touch touch = touchOf(gap_m, -dot(r, v) / reach_m);
    if (touch.now) return 0.0;
    q.c[0] = 2.0 * reach_m * touch.gap_m;
  }
  const auto time = firstDescent(q, span_s);
  return time ? *time : kNever;
}

struct Here {
  double now_s = 0.0;
  double span_s = 0.0;
  TablePoint3 position;
  Vector3 velocity;
  Vector3 acceleration;

  [[nodiscard]] TablePoint3 at(double t) const { return position + t * velocity + (0.5 * t * t) * acceleration; }
};

void offer(BoundaryEvent& best, const Here& here, double t, BoundaryKind kind, std::size_t well) {
  if (here.now_s + t >= best.time_s) return;
  best = {here.now_s + t, kind, well, {}, {}, 0.0};
}

void offerCushion(BoundaryEvent& best, const Here& here, double t, CushionName cushion, Vector3 toward, double gap_m) {
  if (here.now_s + t >= best.time_s) return;
  best = {here.now_s + t, BoundaryKind::Cushion, 0, cushion, toward, std::max(0.0, -gap_m)};
}

/// A ball on the cloth against a straight edge.
void tryLine(BoundaryEvent& best, const Here& here, const RailLine& line, const Bed& bed) {
  const auto gapAt = [&](double t) { return dot(planOf(here.at(t)) - line.start, line.inward) - bed.reach_m; };
  const auto within = [&](double t) {
    const double share_m = dot(planOf(here.at(t)) - line.start, line.along);
    return share_m >= 0.0 && share_m <= line.length_m;
  };
  double gap_m = gapAt(0.0);
  const double speed = dot(planOf(here.velocity), line.inward);
  const double acceleration = dot(planOf(here.acceleration), line.inward);
  std::optional<double> t;
  // Far behind the line the ball is not in this edge but in a pocket's mouth beside it.
  if (gap_m < kTouching_m && gap_m > -kDeepest_m && within(0.0)) {
    const Touch touch = touchOf(gap_m, -speed);
    if (touch.now) t = 0.0;
    gap_m = touch.gap_m;
  }
  if (!t) t = descentOfParabola(gap_m, speed, acceleration);
  if (!t || *t < 0.0 || *t > here.span_s || !within(*t)) return;
  offerCushion(best, here, *t, line.cushion, clothContact(-line.inward, bed.noseHeight_m, bed.radius_m).toward,
               gapAt(*t));
}

/// A flying ball against a straight edge at the nose's height.
void tryLineInFlight(BoundaryEvent& best, const Here& here, const RailLine& line, const Bed& bed) {
  const auto across = [&](TablePoint3 p) {
    return Vector3{dot(planOf(p) - line.start, line.inward), 0.0, p.z - bed.noseHeight_m};
  };
  const Vector3 r = across(here.position);
  const Vector3 v{dot(planOf(here.velocity), line.inward), 0.0, here.velocity.z};
  const double t =
      contactFrom(separation(r, v, {0.0, 0.0, here.acceleration.z}, bed.radius_m), r, v, bed.radius_m, here.span_s);
  if (t == kNever) return;
  const TablePoint3 place = here.at(t);
  const double share_m = dot(planOf(place) - line.start, line.along);
  if (share_m < 0.0 || share_m > line.length_m) return;
  const Vector3 from = across(place);
  offerCushion(best, here, t, line.cushion, unit(horizontal(-from.x * line.inward) + Vector3{0.0, 0.0, -from.z}),
               length(from) - bed.radius_m);
}

void tryJaw(BoundaryEvent& best, const Here& here, const JawPoint& jaw, const Bed& bed) {
  const Vector3 r = horizontal(planOf(here.position) - jaw.point);
  const Vector3 v = horizontal(planOf(here.velocity));
  const Vector3 a = horizontal(planOf(here.acceleration));
  const double t = contactFrom(separation(r, v, a, bed.reach_m), r, v, bed.reach_m, here.span_s);
  if (t == kNever) return;
  const TableVector toward = jaw.point - planOf(here.at(t));
  offerCushion(best, here, t, jaw.cushion, clothContact(unit(toward), bed.noseHeight_m, bed.radius_m).toward,
               length(toward) - bed.reach_m);
}

void tryJawInFlight(BoundaryEvent& best, const Here& here, const JawPoint& jaw, const Bed& bed) {
  const TablePoint3 tip{jaw.point.x, jaw.point.y, bed.noseHeight_m};
  const Vector3 r = here.position - tip;
  const double t = contactFrom(separation(r, here.velocity, here.acceleration, bed.radius_m), r, here.velocity,
                               bed.radius_m, here.span_s);
  if (t == kNever) return;
  const Vector3 toward = tip - here.at(t);
  offerCushion(best, here, t, jaw.cushion, unit(toward), length(toward) - bed.radius_m);
}

Quartic holeDistance(const Here& here, const PocketWell& well) {
  return separation(horizontal(planOf(here.position) - well.hole), horizontal(planOf(here.velocity)),
                    horizontal(planOf(here.acceleration)), well.holeRadius_m);
}

void tryHoleEdge(BoundaryEvent& best, const Here& here, std::size_t index, const Bed& bed) {
  const Quartic q = holeDistance(here, bed.wells[index]);
  if (q.c[0] <= 0.0 && q.c[1] < 0.0) return offer(best, here, 0.0, BoundaryKind::HoleEdge, index);
  if (const auto t = firstDescent(q, here.span_s)) offer(best, here, *t, BoundaryKind::HoleEdge, index);
}

void tryHoleExit(BoundaryEvent& best, const Here& here, std::size_t index, const Bed& bed) {
  Quartic q = holeDistance(here, bed.wells[index]);
  for (double& c : q.c)
    c = -c;
  if (q.c[0] <= 0.0 && q.c[1] < 0.0) return offer(best, here, 0.0, BoundaryKind::HoleExit, index);
  if (const auto t = firstDescent(q, here.span_s)) offer(best, here, *t, BoundaryKind::HoleExit, index);
}

/// When a flying ball comes down on the rails' level outside the cloth and the pockets.
void tryRailTop(BoundaryEvent& best, const Here& here, const Bed& bed) {
  const auto t =
      descentOfParabola(here.position.z - bed.noseHeight_m - bed.radius_m, here.velocity.z, here.acceleration.z);
  if (!t || *t < 0.0 || *t > here.span_s) return;
  const TablePoint place = planOf(here.at(*t));
  if (std::abs(place.x) <= bed.halfLength_m && std::abs(place.y) <= bed.halfWidth_m) return;
  for (const PocketWell& well : bed.wells) {
    if (overPocket(well, place)) return;
  }
  offer(best, here, *t, BoundaryKind::RailTop, 0);
}

/// The box around a parabola: that of its three control points.
struct Box {
  TablePoint least;
  TablePoint most;
};

Box boxOf(const Here& here) {
  const TablePoint3 end = here.at(here.span_s);
  const TablePoint3 bend = here.position + (0.5 * here.span_s) * here.velocity;
  return {{std::min({here.position.x, bend.x, end.x}), std::min({here.position.y, bend.y, end.y})},
          {std::max({here.position.x, bend.x, end.x}), std::max({here.position.y, bend.y, end.y})}};
}

}  // namespace

double ballContactTime(const Motion& first, const Motion& second, double now_s, double radius_m) {
  if (!first.moves() && !second.moves()) return kNever;
  const double span_s = std::min(first.end_s, second.end_s) - now_s;
  if (!(span_s > 0.0)) return kNever;
  const Vector3 r = first.positionAt(now_s) - second.positionAt(now_s);
  const Vector3 v = first.velocityAt(now_s) - second.velocityAt(now_s);
  const Vector3 a = first.acceleration - second.acceleration;
  const double reach_m = 2.0 * radius_m;
  // Too far apart to meet in this time, whatever the directions.
  const double budget_m = reach_m + span_s * (length(v) + 0.5 * span_s * length(a));
  const double apart2 = dot(r, r);
  if (apart2 > budget_m * budget_m) return kNever;
  return now_s + contactFrom(separation(r, v, a, reach_m), r, v, reach_m, span_s);
}

bool overPocket(const PocketWell& well, TablePoint place) {
  if (distance(place, well.hole) <= well.holeRadius_m) return true;
  if (place.x < well.least.x || place.x > well.most.x || place.y < well.least.y || place.y > well.most.y) return false;
  return std::ranges::all_of(well.facings,
                             [&](const RailLine& facing) { return dot(place - facing.start, facing.inward) > 0.0; });
}

BoundaryEvent nextBoundary(const Motion& motion, double now_s, const Bed& bed, std::size_t well) {
  BoundaryEvent best;
  if (!motion.moves()) return best;
  const bool flying = motion.kind == MotionKind::Airborne;
  const Here here{now_s, std::max(0.0, motion.end_s - now_s), motion.positionAt(now_s), motion.velocityAt(now_s),
                  motion.acceleration};
  const Box box = boxOf(here);
  const double keep_m = (flying ? bed.radius_m : bed.reach_m) + kTouching_m;
  const double freeX_m = bed.halfLength_m - keep_m;
  const double freeY_m = bed.halfWidth_m - keep_m;
  if (box.least.x > -freeX_m && box.most.x < freeX_m && box.least.y > -freeY_m && box.most.y < freeY_m) return best;

  const auto line = flying ? tryLineInFlight : tryLine;
  const auto jaw = flying ? tryJawInFlight : tryJaw;
  if (motion.kind == MotionKind::Falling) {
    for (std::size_t i = 0; i < 2; ++i) {
      line(best, here, bed.wells[well].facings[i], bed);
      jaw(best, here, bed.wells[well].jaws[i], bed);
    }
    tryHoleExit(best, here, well, bed);
    return best;
  }
  for (const RailLine& nose : bed.noses) {
    const bool near = nose.inward.x > 0.0   ? box.least.x <= -freeX_m
                      : nose.inward.x < 0.0 ? box.most.x >= freeX_m
                      : nose.inward.y > 0.0 ? box.least.y <= -freeY_m
                                            : box.most.y >= freeY_m;
    if (near) line(best, here, nose, bed);
  }
  for (std::size_t index = 0; index < bed.wells.size(); ++index) {
    const PocketWell& near = bed.wells[index];
    if (box.least.x > near.most.x || box.most.x < near.least.x || box.least.y > near.most.y ||
        box.most.y < near.least.y) {
      continue;
    }
    for (std::size_t i = 0; i < 2; ++i) {
      line(best, here, near.facings[i], bed);
      jaw(best, here, near.jaws[i], bed);
    }
    if (!flying) tryHoleEdge(best, here, index, bed);
  }
  if (flying) tryRailTop(best, here, bed);
  return best;
}

}  // namespace ferrule
