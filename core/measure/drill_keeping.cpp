// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/drill_keeping.h"

#include <algorithm>

#include "core/drills/drill_file.h"
#include "core/drills/trial_counter.h"
#include "core/measure/record_entries.h"

namespace ferrule {

namespace {

std::string textOf(const Drill& drill) {
  return drillsText(std::span(&drill, 1));
}

Result<Drill> drillFrom(const std::string& text, const Record& record) {
  auto drills = parseDrills(text, record.path());
  if (!drills || drills->size() != 1) return failure(ErrorCode::RecordBroken, record.path(), "a drill");
  return std::move(drills->front());
}

TrialEntry entryOf(const DrillTrial& trial, std::optional<ShotId> shot) {
  TrialEntry entry{static_cast<int>(trial.station), trial.leave, trial.missSide, trial.setUpError_m, shot, {}};
  for (const GoalResult& goal : trial.goals)
    entry.goals.push_back({goal.met, goal.figure});
  return entry;
}

DrillTrial trialFrom(const TrialEntry& entry) {
  DrillTrial trial;
  trial.station = static_cast<std::size_t>(std::max(0, entry.station));
  trial.leave = entry.leave;
  trial.missSide = entry.missSide;
  trial.setUpError_m = entry.setUpError_m;
  for (const TrialGoalEntry& goal : entry.goals)
    trial.goals.push_back({goal.met, goal.figure});
  return trial;
}

NewDrillRun newRun(const RunTerms& terms, UtcMilliseconds now) {
  NewDrillRun run;
  run.drillKey = terms.drill.key;
  run.drill = textOf(terms.drill);
  run.mirrored = toText(terms.mirroring);
  run.tableName = terms.tableName;
  run.table = terms.table;
  run.started = now;
  return run;
}

/// All shots of a session in their order, with their numbers in the record.
struct SessionShots {
  std::vector<ShotReading> readings;
  std::vector<ShotId> ids;
  std::optional<PlayerId> player;  ///< the one player of all of them
};

Result<SessionShots> shotsIn(Record& record, SessionId session) {
  SessionShots shots;
  const auto frames = record.frames(session);
  if (!frames) return tl::make_unexpected(frames.error());
  bool onePlayer = true;
  for (const FrameSummary& frame : *frames) {
    const auto summaries = record.shots(frame.id);
    if (!summaries) return tl::make_unexpected(summaries.error());
    for (const ShotSummary& summary : *summaries) {
      auto shot = record.shot(summary.id);
      if (!shot) return tl::make_unexpected(shot.error());
      onePlayer = onePlayer && (shots.ids.empty() || shot->player == shots.player);
      shots.player = shot->player;
      shots.ids.push_back(summary.id);
      shots.readings.push_back(std::move(shot->reading));
    }
  }
  if (!onePlayer) shots.player.reset();
  return shots;
}

Result<SessionSummary> summaryOf(Record& record, SessionId session) {
  const auto sessions = record.sessions();
  if (!sessions) return tl::make_unexpected(sessions.error());
  const auto found = std::ranges::find(*sessions, session, &SessionSummary::id);
  if (found == sessions->end()) {
    return failure(ErrorCode::NotFound, "session " + std::to_string(session.value), record.path());
  }
  return *found;
}

/// What was counted in the session before.
Result<void> removeCounted(Record& record, const NewDrillRun& run) {
  const auto runs = record.drillRuns(run.drillKey);
  if (!runs) return tl::make_unexpected(runs.error());
  for (const DrillRunEntry& kept : *runs) {
    const bool same =
        kept.run.session == run.session && kept.run.mirrored == run.mirrored && kept.run.source == RunSource::Film;
    if (!same) continue;
    if (auto done = record.removeDrillRun(kept.id); !done) return done;
  }
  return {};
}

}  // namespace

Result<KeptRun> keptRun(const DrillRunEntry& entry, const Record& record) {
  auto drill = drillFrom(entry.run.drill, record);
  if (!drill) return tl::make_unexpected(drill.error());
  const auto mirroring = mirroringFromText(entry.run.mirrored);
  if (!mirroring) return failure(ErrorCode::RecordBroken, record.path(), "drill_runs.mirrored");
  KeptRun run;
  run.id = entry.id;
  run.terms = {std::move(*drill), *mirroring, entry.run.tableName, entry.run.table, entry.playerName};
  run.started = entry.run.started;
  run.ended = entry.ended;
  run.source = entry.run.source;
  for (const TrialEntry& trial : entry.trials)
    run.trials.push_back(trialFrom(trial));
  return run;
}

Result<std::vector<Drill>> ownDrills(Record& record) {
  const auto entries = record.drills();
  if (!entries) return tl::make_unexpected(entries.error());
  std::vector<Drill> drills;
  for (const DrillEntry& entry : *entries) {
    auto drill = drillFrom(entry.content, record);
    if (!drill) return tl::make_unexpected(drill.error());
    drills.push_back(std::move(*drill));
  }
  return drills;
}

Result<void> keepOwnDrill(Record& record, const Drill& drill, UtcMilliseconds now) {
  return record.keepDrill({drill.key, textOf(drill)}, now);
}

Result<KeptRun> beginRun(Record& record, const RunTerms& terms, UtcMilliseconds now) {
  NewDrillRun run = newRun(terms, now);
  if (!terms.player.empty()) {
    const auto players = playersNamed(record, {terms.player});
    if (!players) return tl::make_unexpected(players.error());
    run.player = players->front();
  }
  const auto id = record.addDrillRun(run);
  if (!id) return tl::make_unexpected(id.error());
  return KeptRun{*id, terms, now, {}, RunSource::Hand, {}};
}

Result<void> keepTrial(Record& record, DrillRunId run, const DrillTrial& trial, std::optional<ShotId> shot) {
  return record.appendTrial(run, entryOf(trial, shot));
}

Result<void> endRun(Record& record, const KeptRun& run, UtcMilliseconds now) {
  return run.trials.empty() ? record.removeDrillRun(run.id) : record.endDrillRun(run.id, now);
}

Result<std::vector<KeptRun>> keptRuns(Record& record) {
  const auto entries = record.drillRuns(std::nullopt);
  if (!entries) return tl::make_unexpected(entries.error());
  std::vector<KeptRun> runs;
  for (const DrillRunEntry& entry : *entries) {
    auto run = keptRun(entry, record);
    if (!run) return tl::make_unexpected(run.error());
    runs.push_back(std::move(*run));
  }
  return runs;
}

Result<KeptRun> runFromSession(Record& record, SessionId session, const Drill& drill,
                               std::optional<Mirroring> mirroring) {
  const auto summary = summaryOf(record, session);
  if (!summary) return tl::make_unexpected(summary.error());
  const auto table = record.tableOf(session);
  if (!table) return tl::make_unexpected(table.error());
  const auto shots = shotsIn(record, session);
  if (!shots) return tl::make_unexpected(shots.error());

  KeptRun best;
  best.terms = {drill, mirroring.value_or(Mirroring{}), summary->tableName, *table, {}};
  best.started = summary->started;
  best.source = RunSource::Film;
  for (const Mirroring image : {Mirroring{}, Mirroring{true, false}, Mirroring{false, true}, Mirroring{true, true}}) {
    if ((mirroring && image != *mirroring) || (image.ends && !drill.turnsRound)) continue;
    auto trials = countTrials(mirrored(drill, image), *table, shots->readings);
    if (trials.size() <= best.trials.size()) continue;
    best.trials = std::move(trials);
    best.terms.mirroring = image;
  }
  if (best.trials.empty()) return best;

  NewDrillRun run = newRun(best.terms, summary->started);
  run.source = RunSource::Film;
  run.session = session;
  run.player = shots->player;
  if (auto done = removeCounted(record, run); !done) return tl::make_unexpected(done.error());
  const auto id = record.addDrillRun(run);
  if (!id) return tl::make_unexpected(id.error());
  best.id = *id;
  for (const DrillTrial& trial : best.trials) {
    const ShotId shot = shots->ids[trial.shots.front()];
    if (auto done = keepTrial(record, best.id, trial, shot); !done) return tl::make_unexpected(done.error());
  }
  // It ended when its last shot did.
  best.ended = summary->started + static_cast<UtcMilliseconds>(1000.0 * shots->readings.back().rest_s);
  if (auto done = record.endDrillRun(best.id, *best.ended); !done) return tl::make_unexpected(done.error());
  return best;
}

}  // namespace ferrule
