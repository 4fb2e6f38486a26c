// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/aim_lines.h"

#include <algorithm>
#include <cmath>
#include <ranges>

#include "core/table/ghost_ball.h"

namespace ferrule {

namespace {

/// The line that a ball's centre does not cross at a cushion: x or y of a value.
struct CushionLine {
  bool isLong = false;  ///< a long rail: y is held
  double at_m = 0.0;
};

CushionLine lineOf(CushionName cushion, const MeasuredTable& measured) {
  const double x = measured.table.length_m / 2.0 - measured.balls.radius_m();
  const double y = measured.table.width_m / 2.0 - measured.balls.radius_m();
  switch (cushion) {
    case CushionName::Head:
      return {false, -x};
    case CushionName::Foot:
      return {false, x};
    case CushionName::LeftHead:
    case CushionName::LeftFoot:
      return {true, y};
    case CushionName::RightHead:
    case CushionName::RightFoot:
      return {true, -y};
  }
  return {};
}

TablePoint reflected(TablePoint point, const CushionLine& line) {
  return line.isLong ? TablePoint{point.x, 2.0 * line.at_m - point.y} : TablePoint{2.0 * line.at_m - point.x, point.y};
}

const DrillBall* listed(const DrillStation& station, BallName ball) {
  const auto found = std::ranges::find(station.balls, ball, &DrillBall::ball);
  return found == station.balls.end() ? nullptr : &*found;
}

TablePoint mouthOf(PocketName pocket, const Table& table) {
  return pockets(table)[static_cast<std::size_t>(pocket)].mouth;
}

}  // namespace

std::vector<TablePoint> mirroredWay(TablePoint from, TablePoint to, const std::vector<CushionName>& cushions,
                                    const MeasuredTable& measured) {
  // The image of the end as each cushion shows it, the last cushion first.
  std::vector<TablePoint> images{to};
  for (const CushionName cushion : std::views::reverse(cushions))
    images.push_back(reflected(images.back(), lineOf(cushion, measured)));
  std::vector<TablePoint> way{from};
  for (std::size_t i = 0; i < cushions.size(); ++i) {
    const CushionLine line = lineOf(cushions[i], measured);
    const TableVector toward = images[cushions.size() - i] - way.back();
    const double gap_m = line.isLong ? line.at_m - way.back().y : line.at_m - way.back().x;
    const double run_m = line.isLong ? toward.y : toward.x;
    if (run_m != 0.0) way.push_back(way.back() + (gap_m / run_m) * toward);
  }
  way.push_back(to);
  return way;
}

std::optional<AimLines> aimLines(const DrillStation& station, const MeasuredTable& measured) {
  if (!station.cueBall || station.goals.empty()) return std::nullopt;
  const TablePoint cueBall = placeOf(*station.cueBall, measured);
  const DrillGoal& goal = station.goals.front();
  const DrillBall* target = goal.ball && !goal.ball->isCueBall() ? listed(station, *goal.ball) : nullptr;
  if (target == nullptr) return std::nullopt;
  const TablePoint object = placeOf(*target, measured);
  AimLines lines;
  if (goal.kind == GoalKind::Pot && goal.pocket) {
    lines.objectBall = mirroredWay(object, mouthOf(*goal.pocket, measured.table), goal.cushions, measured);
    const TableVector way = lines.objectBall[1] - object;
    lines.ghost = ghostBall(object, way, measured.balls.radius_m());
    const TableVector approach = *lines.ghost - cueBall;
    const double turn_rad = std::atan2(cross(approach, way), dot(approach, way));
    lines.cut_rad = std::abs(turn_rad);
    if (*lines.cut_rad > kStraight_rad) lines.cutSide = turn_rad > 0.0 ? CutSide::Left : CutSide::Right;
    lines.cueBall = {cueBall, *lines.ghost};
    return lines;
  }
  if (goal.kind != GoalKind::Contact && goal.kind != GoalKind::Rest) return std::nullopt;
  const auto cushions = goal.kind == GoalKind::Contact ? goal.cushions : std::vector<CushionName>();
  lines.cueBall = mirroredWay(cueBall, object, cushions, measured);
  // A full hit along the last part of the way.
  const TableVector last = object - lines.cueBall[lines.cueBall.size() - 2];
  lines.ghost = ghostBall(object, last, measured.balls.radius_m());
  lines.cueBall.back() = *lines.ghost;
  return lines;
}

}  // namespace ferrule
