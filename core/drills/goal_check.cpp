// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/goal_check.h"

#include <algorithm>
#include <cmath>

#include "core/base/contract.h"
#include "core/table/ghost_ball.h"

namespace ferrule {

namespace {

/// A ball that comes back less than this share of its way says nothing of where it would pass.
constexpr double kLeastWayBack = 0.5;

/// Whether a film or a camera watched it; of a shot put in by hand nobody looked for events.
bool wasWatched(const ShotReading& shot) {
  return !shot.events.empty() || shot.delivery.aim_rad || shot.delivery.whyNoStrike;
}

bool isLong(CushionName cushion) {
  return cushion != CushionName::Head && cushion != CushionName::Foot;
}

/// One goal against one try.
class GoalCheck {
 public:
  GoalCheck(const DrillGoal& goal, const MeasuredTable& measured, const SetUpCheck& check,
            std::span<const ShotReading> shots)
      : goal_(goal), measured_(measured), check_(check), shots_(shots), first_(shots.front()) {}

  [[nodiscard]] GoalResult result() const {
    GoalResult result = sought();
    const bool spoiled = std::ranges::any_of(
        shots_, [](const ShotReading& shot) { return shot.scratch || shot.outcome == Outcome::Foul; });
    if (spoiled && goal_.kind != GoalKind::Said) result.met = false;
    return result;
  }

 private:
  [[nodiscard]] GoalResult sought() const {
    switch (goal_.kind) {
      case GoalKind::Pot:
        return {isPotted()};
      case GoalKind::Rest:
        return rest();
      case GoalKind::Contact:
        return {contact()};
      case GoalKind::Hidden:
        return hidden();
      case GoalKind::AngleLeft:
        return angleLeft();
      case GoalKind::MeetsCushion:
        return meetsCushion();
      case GoalKind::ComesBack:
        return comesBack();
      case GoalKind::Clear:
        return clear();
      case GoalKind::NoCushion:
        return {noCushion()};
      case GoalKind::Said:
        return {};
    }
    return {};
  }

  /// The ball that lies where the drill has the goal's ball; the cue ball for a goal without one.
  [[nodiscard]] BallName ball() const {
    if (!goal_.ball || goal_.ball->isCueBall()) return kCueBall;
    for (const PlacedBall& place : check_.places) {
      if (place.wanted.ball == *goal_.ball && place.found) return place.found->ball;
    }
    return *goal_.ball;
  }

  /// Whether a ball met the goal's cushions in their order; nothing where no events were seen.
  [[nodiscard]] std::optional<bool> wentOver(const ShotReading& shot, BallName ball) const {
    if (goal_.cushions.empty()) return true;
    if (!wasWatched(shot)) return std::nullopt;
    std::size_t met = 0;
    for (const ShotEvent& event : shot.events) {
      const bool next = event.kind == EventKind::Cushion && event.ball == ball && met < goal_.cushions.size() &&
                        event.cushion == goal_.cushions[met];
      if (next) ++met;
    }
    return met == goal_.cushions.size();
  }

  [[nodiscard]] std::optional<bool> isPotted() const {
    for (const ShotReading& shot : shots_) {
      for (const PocketedBall& fallen : shot.pocketed) {
        const bool right = goal_.ball ? fallen.ball == ball() : !fallen.ball.isCueBall();
        if (right && (!goal_.pocket || fallen.pocket == *goal_.pocket)) return wentOver(shot, fallen.ball);
      }
    }
    return false;
  }

  [[nodiscard]] GoalResult rest() const {
    const BallAt* rests = ballIn(first_.after, ball());
    if (rests == nullptr || !goal_.zone) return {false};
    const double away_m = distanceFrom_m(*goal_.zone, measured_.table, rests->position);
    return {away_m > 0.0 ? false : wentOver(first_, ball()), away_m};
  }

  [[nodiscard]] std::optional<bool> contact() const {
    if (first_.firstContact != ball()) return false;
    if (goal_.cushions.empty()) return true;
    if (!wasWatched(first_)) return std::nullopt;
    std::size_t met = 0;
    for (const ShotEvent& event : first_.events) {
      const bool cueBall = event.ball.isCueBall() || (event.other && event.other->isCueBall());
      if (event.kind == EventKind::Ball && cueBall) break;
      if (event.kind == EventKind::Cushion && cueBall) ++met;
    }
    return met >= goal_.cushions.size();
  }

  [[nodiscard]] GoalResult hidden() const {
    const BallAt* cueBall = ballIn(first_.after, kCueBall);
    if (cueBall == nullptr || ballIn(first_.after, ball()) == nullptr) return {false};
    const double open_rad = openArc_rad(first_.after, cueBall->position, ball(), measured_.balls.radius_m());
    return {open_rad == 0.0, open_rad};
  }

  [[nodiscard]] GoalResult angleLeft() const {
    const BallAt* cueBall = ballIn(first_.after, kCueBall);
    const BallAt* object = ballIn(first_.after, ball());
    if (cueBall == nullptr || object == nullptr || !goal_.pocket) return {false};
    const double cut_rad = cutLeft_rad(cueBall->position, object->position, *goal_.pocket, measured_);
    const bool there = !goal_.zone || distanceFrom_m(*goal_.zone, measured_.table, cueBall->position) == 0.0;
    return {there && cut_rad >= goal_.least_rad && cut_rad <= goal_.most_rad, cut_rad};
  }

  [[nodiscard]] GoalResult meetsCushion() const {
    if (!wasWatched(first_)) return {};
    bool touched = !first_.firstContact;
    for (const ShotEvent& event : first_.events) {
      const bool cueBall = event.ball.isCueBall() || (event.other && event.other->isCueBall());
      touched = touched || (event.kind == EventKind::Ball && cueBall);
      if (!touched || event.kind != EventKind::Cushion || !cueBall) continue;
      if (goal_.cushions.empty() || !goal_.zone || event.cushion != goal_.cushions.front()) return {false};
      const TableVector away = event.position - middleOf(*goal_.zone, measured_.table);
      return {distanceFrom_m(*goal_.zone, measured_.table, event.position) == 0.0,
              isLong(*event.cushion) ? away.x : away.y};
    }
    return {false};
  }

  [[nodiscard]] GoalResult comesBack() const {
    if (!wasWatched(first_) || goal_.cushions.empty()) return {};
    const BallAt* start = ballIn(first_.before, kCueBall);
    const BallAt* end = ballIn(first_.after, kCueBall);
    if (start == nullptr) return {};
    const CushionName far = goal_.cushions.front();
    const auto turn = std::ranges::find_if(first_.events, [&](const ShotEvent& event) {
      return event.kind == EventKind::Cushion && event.ball.isCueBall() && event.cushion == far;
    });
    if (turn == first_.events.end()) return {false};
    const auto next =
        std::find_if(turn + 1, first_.events.end(), [](const ShotEvent& event) { return event.ball.isCueBall(); });
    if (next == first_.events.end() && end == nullptr) return {false};
    const TablePoint last = next == first_.events.end() ? end->position : next->position;
    const auto along = [&](TablePoint p) { return isLong(far) ? p.y : p.x; };
    const auto across = [&](TablePoint p) { return isLong(far) ? p.x : p.y; };
    const double wayBack = (along(last) - along(turn->position)) / (along(start->position) - along(turn->position));
    if (!(wayBack >= kLeastWayBack)) return {false};
    const double offset_m =
        across(turn->position) + (across(last) - across(turn->position)) / wayBack - across(start->position);
    return {std::abs(offset_m) <= goal_.within_widths * measured_.table.width_m, offset_m};
  }

  [[nodiscard]] GoalResult clear() const {
    std::size_t balls = 0;
    for (const BallAt& ball : first_.before)
      balls += ball.ball.isCueBall() ? 0 : 1;
    std::size_t fallen = 0;
    for (const ShotReading& shot : shots_)
      fallen += static_cast<std::size_t>(
          std::ranges::count_if(shot.pocketed, [](const PocketedBall& b) { return !b.ball.isCueBall(); }));
    return {fallen >= balls, static_cast<double>(fallen)};
  }

  [[nodiscard]] std::optional<bool> noCushion() const {
    bool seen = true;
    for (const ShotReading& shot : shots_) {
      seen = seen && wasWatched(shot);
      const bool touched = std::ranges::any_of(shot.events, [](const ShotEvent& event) {
        return event.kind == EventKind::Cushion && event.ball.isCueBall();
      });
      if (touched) return false;
    }
    return seen ? std::optional(true) : std::nullopt;
  }

  const DrillGoal& goal_;
  const MeasuredTable& measured_;
  const SetUpCheck& check_;
  std::span<const ShotReading> shots_;
  const ShotReading& first_;
};

}  // namespace

GoalResult checkGoal(const DrillGoal& goal, const MeasuredTable& measured, const SetUpCheck& check,
                     std::span<const ShotReading> shots) {
  FERRULE_REQUIRE(!shots.empty());
  return GoalCheck(goal, measured, check, shots).result();
}

double openArc_rad(const Position& balls, TablePoint cueBall, BallName ball, double radius_m) {
  const BallAt* target = ballIn(balls, ball);
  FERRULE_REQUIRE(target != nullptr);
  const auto halfWidth_rad = [&](double away_m) { return std::asin(std::min(1.0, 2.0 * radius_m / away_m)); };
  const TableVector toTarget = target->position - cueBall;
  const double half_rad = halfWidth_rad(length(toTarget));
  // What is hidden, as intervals around the target's direction.
  std::vector<std::pair<double, double>> hidden;
  for (const BallAt& other : balls) {
    const TableVector toOther = other.position - cueBall;
    const double away_m = length(toOther);
    if (other.ball.isCueBall() || other.ball == ball || away_m >= length(toTarget) || away_m == 0.0) continue;
    const double turn_rad = std::atan2(cross(toTarget, toOther), dot(toTarget, toOther));
    const double least = std::max(-half_rad, turn_rad - halfWidth_rad(away_m));
    const double most = std::min(half_rad, turn_rad + halfWidth_rad(away_m));
    if (least < most) hidden.emplace_back(least, most);
  }
  std::ranges::sort(hidden);
  double open_rad = 0.0;
  double reached = -half_rad;
  for (const auto& [least, most] : hidden) {
    open_rad += std::max(0.0, least - reached);
    reached = std::max(reached, most);
  }
  return open_rad + std::max(0.0, half_rad - reached);
}

double cutLeft_rad(TablePoint cueBall, TablePoint object, PocketName pocket, const MeasuredTable& measured) {
  const TablePoint mouth = pockets(measured.table)[static_cast<std::size_t>(pocket)].mouth;
  const TableVector way = mouth - object;
  const TableVector approach = ghostBall(object, way, measured.balls.radius_m()) - cueBall;
  return std::abs(std::atan2(cross(approach, way), dot(approach, way)));
}

}  // namespace ferrule
