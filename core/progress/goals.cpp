// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/goals.h"

namespace ferrule {

namespace {

void checkSpread(GoalCheck& check, const Answer<Estimate>& spread) {
  if (!spread) return;
  check.measured = spread->value;
  check.state = spread->value <= (1.0 - kDrawnIn) * check.item.share ? GoalState::Met : GoalState::NotYet;
}

void checkTries(GoalCheck& check, const std::vector<PlayedRun>& runs) {
  for (const PlayedRun& run : runs) {
    if (run.drill != keyOf(check.item.drill)) continue;
    check.met += run.met;
    check.known += run.known;
  }
  if (check.known == 0) return;
  check.interval = wilsonInterval(check.met, check.known);
  // met / known >= target / trials, in whole numbers.
  check.state = static_cast<long>(check.met) * check.item.trials >= static_cast<long>(check.item.target) * check.known
                    ? GoalState::Met
                    : GoalState::NotYet;
}

/// What a report on this time would have set, without all else that it says.
std::vector<WorkItem> workOf(const PlayerHistory& history, Resampling resampling) {
  const std::vector<PlayerHistory> widths = byPocketWidth(history);
  if (widths.empty()) return {};
  const PlayerHistory& played = widths.front();
  if (!resampling.kept) resampling.kept = std::make_shared<SessionDraws>();
  const auto found = findings(played, Difficulty::of(played), strikeMeasures(played, resampling),
                              aimMeasure(played, resampling), resampling);
  return workItems(played, found, resampling);
}

}  // namespace

std::string_view keyOf(WorkDrill drill) {
  switch (drill) {
    case WorkDrill::CentreLine:
      return "centre-line";
    case WorkDrill::CutFanLeft:
    case WorkDrill::CutFanRight:
    case WorkDrill::CutFanTired:
      return "cut-fan";
    case WorkDrill::StopLadder:
      return "stop-ladder";
    case WorkDrill::ThinCut:
      return "thin-cut";
    case WorkDrill::LongCut:
      return "foot-spot-cuts";
    case WorkDrill::Lag:
      return "lag";
    case WorkDrill::DrawBands:
      return "draw-bands";
  }
  return {};
}

std::vector<GoalCheck> checkGoals(const PlayerHistory& before, const PlayerProgress& now,
                                  const ProgressOptions& options) {
  std::vector<GoalCheck> checks;
  if (before.shots.empty()) return checks;
  for (const WorkItem& item : workOf(before, options.resampling)) {
    GoalCheck check;
    check.item = item;
    if (item.kind == WorkKind::SpeedControl) {
      checkSpread(check, now.strikes.speed.spread);
    } else if (item.kind == WorkKind::TipPoint) {
      checkSpread(check, now.strikes.side.spread);
    } else {
      checkTries(check, now.history.runs);
    }
    checks.push_back(check);
  }
  return checks;
}

}  // namespace ferrule
