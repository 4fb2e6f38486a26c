// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/player_drills.h"

namespace ferrule {

namespace {

Meant meantBy(const DrillStation& station, const Table& table) {
  Meant meant{station.asked.speed_mps, station.asked.side, station.asked.height, {}, false};
  for (const DrillGoal& goal : station.goals) {
    const bool ofCueBall = goal.kind == GoalKind::Rest && (!goal.ball || goal.ball->isCueBall());
    if (ofCueBall && goal.zone && !meant.rest) meant.rest = middleOf(*goal.zone, table);
  }
  return meant;
}

}  // namespace

Result<PlayerDrills> playerDrills(Record& record, PlayerId player, const SessionPeriod& period) {
  const auto entries = record.drillRunsOf(player);
  if (!entries) return tl::make_unexpected(entries.error());
  PlayerDrills drills;
  for (const DrillRunEntry& entry : *entries) {
    auto run = keptRun(entry, record);
    if (!run) return tl::make_unexpected(run.error());
    const Drill played = run->played();
    for (const TrialEntry& trial : entry.trials) {
      const auto station = static_cast<std::size_t>(trial.station);
      if (!trial.shot || trial.station < 0 || station >= played.stations.size()) continue;
      drills.asks[*trial.shot] = {played.key, meantBy(played.stations[station], run->terms.table.table)};
    }
    if (run->started >= period.from && run->started < period.until) drills.runs.push_back(std::move(*run));
  }
  return drills;
}

}  // namespace ferrule
