// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/trial_counter.h"

#include <algorithm>
#include <utility>

namespace ferrule {

TrialCounter::TrialCounter(Drill drill, MeasuredTable measured)
    : drill_(std::move(drill)), measured_(std::move(measured)) {}

std::vector<DrillTrial> TrialCounter::add(const ShotReading& shot) {
  std::vector<DrillTrial> ended;
  if (!open_.empty() && !goesOn(shot)) ended.push_back(close());
  if (!open_.empty()) {
    open_.push_back(shot);
  } else if (const auto station = stationSetUp(drill_, measured_, shot.before, stationOf(drill_, trials_))) {
    station_ = *station;
    check_ = checkSetUp(drill_.stations[station_], measured_, shot.before);
    firstOpen_ = shots_;
    open_.push_back(shot);
  }
  ++shots_;
  if (!open_.empty() && isOver()) ended.push_back(close());
  return ended;
}

std::optional<DrillTrial> TrialCounter::finish() {
  if (open_.empty()) return std::nullopt;
  return close();
}

/// The object balls lie where the shot before left them.
bool TrialCounter::goesOn(const ShotReading& shot) const {
  const Position& left = open_.back().after;
  return std::ranges::all_of(shot.before, [&](const BallAt& ball) {
    if (ball.ball.isCueBall()) return true;
    const BallAt* before = ballIn(left, ball.ball);
    return before != nullptr && distance(before->position, ball.position) <= kSetUpTolerance_m;
  });
}

bool TrialCounter::isOver() const {
  const ShotReading& last = open_.back();
  const auto isObject = [](const auto& ball) { return !ball.ball.isCueBall(); };
  return !drill_.stations[station_].isRun || last.scratch || last.outcome == Outcome::Foul ||
         std::ranges::none_of(last.pocketed, isObject) || std::ranges::none_of(last.after, isObject);
}

DrillTrial TrialCounter::close() {
  DrillTrial trial;
  trial.station = station_;
  for (const DrillGoal& goal : drill_.stations[station_].goals)
    trial.goals.push_back(checkGoal(goal, measured_, check_, open_));
  if (const BallAt* cueBall = ballIn(open_.front().after, kCueBall)) trial.leave = cueBall->position;
  if (const auto& target = open_.back().target) trial.missSide = target->missSide;
  trial.setUpError_m = check_.largestError_m();
  for (std::size_t i = 0; i < open_.size(); ++i)
    trial.shots.push_back(firstOpen_ + i);
  open_.clear();
  ++trials_;
  return trial;
}

std::vector<DrillTrial> countTrials(const Drill& drill, const MeasuredTable& measured,
                                    std::span<const ShotReading> shots) {
  TrialCounter counter(drill, measured);
  std::vector<DrillTrial> trials;
  for (const ShotReading& shot : shots) {
    for (DrillTrial& trial : counter.add(shot))
      trials.push_back(std::move(trial));
  }
  if (auto last = counter.finish()) trials.push_back(std::move(*last));
  return trials;
}

}  // namespace ferrule
