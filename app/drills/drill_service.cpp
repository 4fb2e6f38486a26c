// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/drill_service.h"

#include <utility>

namespace ferrule {

namespace {

Result<DrillShelf> shelfOf(Record& record) {
  DrillShelf shelf;
  auto own = ownDrills(record);
  if (!own) return tl::make_unexpected(own.error());
  auto runs = keptRuns(record);
  if (!runs) return tl::make_unexpected(runs.error());
  auto sessions = record.sessions();
  if (!sessions) return tl::make_unexpected(sessions.error());
  const auto players = record.players();
  if (!players) return tl::make_unexpected(players.error());
  shelf.own = std::move(*own);
  shelf.runs = std::move(*runs);
  shelf.sessions = std::move(*sessions);
  for (const Player& player : *players)
    shelf.players.push_back(player.name);
  return shelf;
}

/// How many shots a session has so far.
Result<std::size_t> shotsIn(Record& record, SessionId session) {
  const auto frames = record.frames(session);
  if (!frames) return tl::make_unexpected(frames.error());
  std::size_t count = 0;
  for (const FrameSummary& frame : *frames) {
    const auto shots = record.shots(frame.id);
    if (!shots) return tl::make_unexpected(shots.error());
    count += shots->size();
  }
  return count;
}

}  // namespace

DrillService::DrillService(QObject* parent) : QObject(parent), keeper_(QStringLiteral("drill keeper")) {}

void DrillService::ask(std::function<Result<void>(Record&)> work, bool shelves) {
  keeper_.ask([this, work = std::move(work), shelves](KeptRecord& kept) {
    const auto record = kept.toWrite(WhenMissing::Make);
    if (!record) {
      emit failed(record.error());
      return;
    }
    if (auto done = work(**record); !done) emit failed(done.error());
    if (shelves) shelve(**record);
  });
}

void DrillService::shelve(Record& record) {
  auto shelf = shelfOf(record);
  if (!shelf) {
    emit failed(shelf.error());
  } else {
    emit shelved(std::make_shared<const DrillShelf>(std::move(*shelf)));
  }
}

void DrillService::open(const QString& record) {
  keeper_.ask([record](KeptRecord& kept) { kept.setPath(record); });
  ask(
      [this, record](Record&) -> Result<void> {
        emit opened(record);
        return {};
      },
      true);
}

void DrillService::keepDrills(const std::vector<Drill>& drills, UtcMilliseconds now) {
  ask(
      [drills, now](Record& record) -> Result<void> {
        for (const Drill& drill : drills) {
          if (auto done = keepOwnDrill(record, drill, now); !done) return done;
        }
        return {};
      },
      true);
}

void DrillService::removeDrill(const std::string& key) {
  ask([key](Record& record) { return record.removeDrill(key); }, true);
}

void DrillService::beginRun(const RunTerms& terms, UtcMilliseconds now) {
  ask(
      [this, terms, now](Record& record) -> Result<void> {
        auto run = ferrule::beginRun(record, terms, now);
        if (!run) return tl::make_unexpected(run.error());
        emit begun(std::make_shared<const KeptRun>(std::move(*run)));
        return {};
      },
      false);
}

void DrillService::keepTrial(DrillRunId run, const DrillTrial& trial) {
  ask([run, trial](Record& record) { return ferrule::keepTrial(record, run, trial); }, false);
}

void DrillService::takeBackTrial(DrillRunId run) {
  ask([run](Record& record) { return record.removeLastTrial(run); }, false);
}

void DrillService::endRun(const KeptRun& run, UtcMilliseconds now) {
  ask([run, now](Record& record) { return ferrule::endRun(record, run, now); }, true);
}

void DrillService::countSession(SessionId session, const Drill& drill, bool grown) {
  keeper_.ask([this, session, drill, grown](KeptRecord& kept) {
    const auto record = kept.toWrite(WhenMissing::Make);
    const auto shots = record ? shotsIn(**record, session) : tl::make_unexpected(record.error());
    if (!shots) {
      emit failed(shots.error());
      return;
    }
    const Counted now{session, drill.key, *shots};
    if (grown && counted_ == now) return;
    counted_ = now;
    auto run = runFromSession(**record, session, drill, std::nullopt);
    if (!run) {
      emit failed(run.error());
      return;
    }
    emit counted(std::make_shared<const KeptRun>(std::move(*run)));
    shelve(**record);
  });
}

}  // namespace ferrule
