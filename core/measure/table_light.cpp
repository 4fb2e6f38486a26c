// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/table_light.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/physics/simulator.h"

namespace ferrule {

namespace {

/// Numbers stand this far beside their balls, in ball radii.
constexpr double kBeside = 1.3;
constexpr double kStep_s = 0.02;
constexpr int kAround = 72;  ///< places of a closed outline
/// Half-axes of the ellipse that holds 95 % of a normal distribution in the plane, in standard deviations.
const double kEllipse95 = std::sqrt(-2.0 * std::log(0.05));

void addLabel(LightDrawing& drawing, const BallAt& ball, double radius_m) {
  if (ball.ball.isCueBall()) return;
  drawing.labels.push_back(
      {ball.position + TableVector{kBeside * radius_m, kBeside * radius_m}, std::string(toText(ball.ball))});
}

TableVector towards(double angle_rad) {
  return {std::cos(angle_rad), std::sin(angle_rad)};
}

/// A zone is convex, so that every ray from its middle leaves it once.
LightLine outlineOf(const Zone& zone, const Table& table) {
  const TablePoint middle = middleOf(zone, table);
  LightLine outline;
  outline.closed = true;
  outline.dashed = true;
  for (int i = 0; i < kAround; ++i) {
    const TableVector way = towards(2.0 * std::numbers::pi * i / kAround);
    double inside_m = 0.0;
    double outside_m = 2.0 * table.length_m;
    for (int halving = 0; halving < 30; ++halving) {
      const double at_m = 0.5 * (inside_m + outside_m);
      (distanceFrom_m(zone, table, middle + at_m * way) > 0.0 ? outside_m : inside_m) = at_m;
    }
    const TablePoint edge = middle + inside_m * way;
    outline.places.push_back({std::clamp(edge.x, -0.5 * table.length_m, 0.5 * table.length_m),
                              std::clamp(edge.y, -0.5 * table.width_m, 0.5 * table.width_m)});
  }
  return outline;
}

LightLine ellipseOf(const Leave& leave) {
  LightLine outline;
  outline.closed = true;
  const TableVector along = towards(leave.direction_rad);
  for (int i = 0; i < kAround; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / kAround;
    outline.places.push_back(leave.mean + (kEllipse95 * leave.along_m * std::cos(angle)) * along +
                             (kEllipse95 * leave.across_m * std::sin(angle)) * perpendicular(along));
  }
  return outline;
}

/// The first place where a way turns by more than a rolling ball's own curve: its first contact.
std::optional<TablePoint> firstBend(const std::vector<TablePoint>& way) {
  constexpr double kBend_rad = 0.1;
  for (std::size_t i = 1; i + 1 < way.size(); ++i) {
    const TableVector before = way[i] - way[i - 1];
    const TableVector after = way[i + 1] - way[i];
    if (!(length(before) > 0.0) || !(length(after) > 0.0)) continue;
    const double turn = std::atan2(before.x * after.y - before.y * after.x, dot(before, after));
    if (std::abs(turn) > kBend_rad) return way[i];
  }
  return std::nullopt;
}

}  // namespace

LightDrawing lightOf(const Position& balls, const MeasuredTable& measured) {
  LightDrawing drawing;
  const double radius_m = measured.balls.radius_m();
  for (const BallAt& ball : balls) {
    drawing.lines.push_back(ringAround(ball.position, radius_m));
    addLabel(drawing, ball, radius_m);
  }
  return drawing;
}

Result<LightDrawing> lightOf(const PositionFile& file) {
  LightDrawing drawing = lightOf(file.balls, file.measured);
  if (!file.strike) return drawing;
  const auto simulator = Simulator::create(file.measured.table, file.parameters);
  if (!simulator) return tl::make_unexpected(simulator.error());
  const auto played = simulator->shoot(file.balls, *file.strike);
  if (!played) return tl::make_unexpected(played.error());
  const double apart_m = file.measured.balls.radius_m() / 4.0;
  for (const BallPath& path : played->paths) {
    LightLine way;
    way.dashed = true;
    for (double time_s = 0.0; time_s <= played->duration_s; time_s += kStep_s) {
      if (path.motionAt(time_s).kind == MotionKind::Gone) break;
      const TablePoint place = planOf(path.stateAt(time_s).position);
      if (way.places.empty() || distance(way.places.back(), place) > apart_m) way.places.push_back(place);
    }
    if (way.places.size() > 1) drawing.lines.push_back(std::move(way));
  }
  return drawing;
}

LightDrawing lightOf(const DrillStation& station, const MeasuredTable& measured, std::uint64_t seed) {
  LightDrawing drawing = lightOf(setUpOf(station, measured, seed), measured);
  if (station.cueBallZone) drawing.lines.push_back(outlineOf(*station.cueBallZone, measured.table));
  for (const DrillGoal& goal : station.goals) {
    if (goal.zone) drawing.lines.push_back(outlineOf(*goal.zone, measured.table));
  }
  return drawing;
}

LightDrawing lightOfPlan(const std::vector<std::pair<BallName, std::vector<TablePoint>>>& ways, const Leave& leave,
                         const MeasuredTable& measured) {
  LightDrawing drawing;
  const double radius_m = measured.balls.radius_m();
  for (const auto& [ball, places] : ways) {
    if (places.empty()) continue;
    drawing.lines.push_back(ringAround(places.front(), radius_m));
    addLabel(drawing, {ball, places.front()}, radius_m);
    LightLine way;
    way.places = places;
    way.dashed = true;
    drawing.lines.push_back(std::move(way));
    if (!ball.isCueBall()) continue;
    if (const auto contact = firstBend(places)) drawing.lines.push_back(ringAround(*contact, radius_m));
  }
  if (leave.along_m > 0.0) drawing.lines.push_back(ellipseOf(leave));
  return drawing;
}

std::vector<DisplacedBall> displacedBalls(const Position& before, const Position& now) {
  std::vector<DisplacedBall> displaced;
  for (const BallAt& ball : before) {
    const BallAt* there = ballIn(now, ball.ball);
    if (there == nullptr) {
      displaced.push_back({ball.ball, ball.position, std::nullopt, 0.0});
      continue;
    }
    const double apart_m = distance(there->position, ball.position);
    if (apart_m > kMovedByHand_m) displaced.push_back({ball.ball, ball.position, there->position, apart_m});
  }
  return displaced;
}

LightDrawing lightOfPuttingBack(const std::vector<DisplacedBall>& balls, const MeasuredTable& measured) {
  LightDrawing drawing;
  for (const DisplacedBall& ball : balls) {
    drawing.lines.push_back(ringAround(ball.belongs, measured.balls.radius_m()));
    if (!ball.lies) continue;
    LightLine from;
    from.places = {*ball.lies, ball.belongs};
    from.dashed = true;
    drawing.lines.push_back(std::move(from));
  }
  return drawing;
}

TablePoint besideRing(TablePoint place, const MeasuredTable& measured) {
  const double off_m = kBeside * measured.balls.radius_m();
  return place + TableVector{off_m, off_m};
}

}  // namespace ferrule
