// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/drills/aim_lines.h"
#include "core/drills/drill.h"

namespace ferrule {

namespace {

/// What rounding in a file may make two touching balls overlap by, or a frozen ball stand into its cushion.
constexpr double kRounding_m = 1e-6;

bool isComplete(const DrillGoal& goal) {
  switch (goal.kind) {
    case GoalKind::Pot:
      return true;
    case GoalKind::Rest:
      return goal.zone.has_value();
    case GoalKind::Contact:
    case GoalKind::Hidden:
      return goal.ball.has_value();
    case GoalKind::AngleLeft:
      return goal.ball && goal.pocket && goal.least_rad < goal.most_rad;
    case GoalKind::MeetsCushion:
      return goal.zone && !goal.cushions.empty();
    case GoalKind::ComesBack:
      return !goal.cushions.empty() && goal.within_widths > 0.0;
    case GoalKind::Clear:
    case GoalKind::NoCushion:
    case GoalKind::Said:
      return true;
  }
  return false;
}

bool isOnTable(TablePoint place, const MeasuredTable& measured) {
  const double x = measured.table.length_m / 2.0 - measured.balls.radius_m() + kRounding_m;
  const double y = measured.table.width_m / 2.0 - measured.balls.radius_m() + kRounding_m;
  return std::abs(place.x) <= x && std::abs(place.y) <= y;
}

class Faults {
 public:
  Faults(const Drill& drill, const MeasuredTable& measured) : drill_(drill), measured_(measured) {}

  std::vector<DrillFinding> all() && {
    if (drill_.stations.empty()) find(DrillFault::NoStation);
    for (station_ = 0; station_ < drill_.stations.size(); ++station_)
      look(drill_.stations[station_]);
    return std::move(found_);
  }

 private:
  void find(DrillFault fault, std::optional<BallName> ball = {}, std::optional<BallName> other = {}) {
    found_.push_back({fault, station_, ball, other});
  }

  void look(const DrillStation& station) {
    if (station.trials < 1 || station.trials > kMostTrials) find(DrillFault::NoTrials);
    lookAtBalls(station);
    if (station.cueBallZone) lookAtZone(*station.cueBallZone);
    if (station.goals.empty()) find(DrillFault::NoGoal);
    const bool same =
        std::ranges::equal(station.goals, drill_.stations.front().goals, {}, &DrillGoal::kind, &DrillGoal::kind);
    if (!same) find(DrillFault::GoalsDiffer);
    for (const DrillGoal& goal : station.goals)
      lookAt(goal, station);
    lookAtCut(station);
  }

  void lookAtBalls(const DrillStation& station) {
    const Position balls = setUpOf(station, measured_);
    std::size_t objectBalls = 0;
    for (std::size_t i = 0; i < balls.size(); ++i) {
      if (!balls[i].ball.isCueBall()) ++objectBalls;
      if (!isOnTable(balls[i].position, measured_)) find(DrillFault::BallOffTable, balls[i].ball);
      for (std::size_t k = 0; k < i; ++k) {
        const double gap_m = distance(balls[i].position, balls[k].position) - measured_.balls.diameter_m;
        if (balls[i].ball == balls[k].ball) {
          find(DrillFault::BallTwice, balls[i].ball);
        } else if (gap_m < -kRounding_m) {
          find(DrillFault::BallsOverlap, balls[k].ball, balls[i].ball);
        }
      }
    }
    if (station.loose && objectBalls < station.balls.size() + static_cast<std::size_t>(station.loose->count)) {
      find(DrillFault::NoRoom);
    }
  }

  void lookAt(const DrillGoal& goal, const DrillStation& station) {
    if (!isComplete(goal)) find(DrillFault::GoalIncomplete, goal.ball);
    if (goal.zone) lookAtZone(*goal.zone);
    if (!goal.ball || goal.ball->isCueBall()) return;
    if (ballIn(setUpOf(station, measured_), *goal.ball) == nullptr) find(DrillFault::NoObjectBall, goal.ball);
  }

  void lookAtZone(const Zone& zone) {
    const bool inside = !zone.corners.empty() && std::ranges::all_of(zone.corners, [](const SurfacePlace& corner) {
      return corner.along >= 0.0 && corner.along <= 2.0 && corner.across >= 0.0 && corner.across <= 1.0;
    });
    if (!inside || zone.reach_widths < 0.0) find(DrillFault::ZoneOffTable);
  }

  void lookAtCut(const DrillStation& station) {
    const auto lines = aimLines(station, measured_);
    if (lines && lines->cut_rad && *lines->cut_rad >= kMostDrillCut_rad) {
      find(DrillFault::CutTooThin, station.goals.front().ball);
    }
  }

  const Drill& drill_;
  const MeasuredTable& measured_;
  std::size_t station_ = 0;
  std::vector<DrillFinding> found_;
};

}  // namespace

std::vector<DrillFinding> faultsOf(const Drill& drill, const MeasuredTable& measured) {
  return Faults(drill, measured).all();
}

}  // namespace ferrule
