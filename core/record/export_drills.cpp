// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/record/drill_rows.h"
#include "core/record/export_writers.h"

namespace ferrule {

namespace {

using nlohmann::ordered_json;

template <class Value>
ordered_json orNull(const std::optional<Value>& value) {
  return value ? ordered_json(*value) : ordered_json(nullptr);
}

/// A distance to 0.01 mm, as tracks have it.
double millimetresOf(double length_m) {
  return std::round(1e5 * length_m) / 100.0;
}

ordered_json trialJson(const TrialEntry& trial) {
  ordered_json goals = ordered_json::array();
  for (const TrialGoalEntry& goal : trial.goals)
    goals.push_back({{"met", orNull(goal.met)}, {"figure", orNull(goal.figure)}});
  ordered_json object{{"station", trial.station + 1}, {"goals", std::move(goals)}};
  object["leave"] = trial.leave
                        ? ordered_json{{"x_mm", millimetresOf(trial.leave->x)}, {"y_mm", millimetresOf(trial.leave->y)}}
                        : ordered_json(nullptr);
  object["miss_side"] = trial.missSide ? ordered_json(toText(*trial.missSide)) : ordered_json(nullptr);
  object["set_up_error_mm"] =
      trial.setUpError_m ? ordered_json(millimetresOf(*trial.setUpError_m)) : ordered_json(nullptr);
  return object;
}

}  // namespace

std::string drillRunJson(const DrillRunEntry& entry) {
  ordered_json trials = ordered_json::array();
  for (const TrialEntry& trial : entry.trials)
    trials.push_back(trialJson(trial));
  const ordered_json object{
      {"drill_key", entry.run.drillKey},
      {"drill", ordered_json::parse(entry.run.drill, nullptr, false)},
      {"mirrored", entry.run.mirrored},
      {"player", entry.playerName.empty() ? ordered_json(nullptr) : ordered_json(entry.playerName)},
      {"table", ordered_json::parse(tableJson(entry.run.tableName, entry.run.table))},
      {"source", toText(entry.run.source)},
      {"started", utcText(entry.run.started)},
      {"ended", entry.ended ? ordered_json(utcText(*entry.ended)) : ordered_json(nullptr)},
      {"trials", std::move(trials)}};
  return object.dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

}  // namespace ferrule
