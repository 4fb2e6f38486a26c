// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/drill_desk.h"

#include <algorithm>

#include "core/drills/drill_file.h"

namespace ferrule {

DrillDesk::DrillDesk(Clock clock, QObject* parent)
    : QObject(parent), clock_(std::move(clock)), drill_(builtInDrills().front()) {
  connect(&service_, &DrillService::opened, this, [this](const QString& record) {
    if (record == recordPath_) return;
    recordPath_ = record;
    stepsBack_.clear();
    stepsOn_.clear();
  });
  connect(&service_, &DrillService::shelved, this, [this](std::shared_ptr<const DrillShelf> shelf) {
    shelf_ = std::move(shelf);
    emit changed();
  });
  connect(&service_, &DrillService::begun, this, [this](const std::shared_ptr<const KeptRun>& run) {
    run_ = std::make_unique<KeptRun>(*run);
    takenBack_.clear();
    nextTry();
    emit changed();
  });
  connect(&service_, &DrillService::counted, this, &DrillDesk::counted);
  connect(&service_, &DrillService::failed, this, &DrillDesk::failed);
}

void DrillDesk::openRecord(const QString& path) {
  // A run that goes on stays in its own record.
  if (!run_ && !editing_) service_.open(path);
}

const DrillShelf& DrillDesk::shelf() const {
  static const DrillShelf kNone;
  return shelf_ ? *shelf_ : kNone;
}

std::vector<Drill> DrillDesk::library() const {
  std::vector<Drill> drills = builtInDrills();
  drills.insert(drills.end(), shelf().own.begin(), shelf().own.end());
  return drills;
}

bool DrillDesk::isOwn(const std::string& key) const {
  return std::ranges::find(shelf().own, key, &Drill::key) != shelf().own.end();
}

void DrillDesk::choose(const std::string& key) {
  if (run_ || editing_ || drill_.key == key) return;
  const std::vector<Drill> drills = library();
  const auto found = std::ranges::find(drills, key, &Drill::key);
  if (found == drills.end()) return;
  station_ = 0;
  lookAt(*found);
  emit changed();
}

void DrillDesk::lookAt(const Drill& drill) {
  drill_ = drill;
  station_ = std::min(station_, drill_.stations.size() - 1);
  if (!drill_.turnsRound) mirroring_.ends = false;
}

void DrillDesk::mirror(Mirroring mirroring) {
  if (run_ || editing_ || (mirroring.ends && !drill_.turnsRound)) return;
  mirroring_ = mirroring;
  emit changed();
}

void DrillDesk::showStation(std::size_t station) {
  if (station >= drill_.stations.size() || station == station_) return;
  station_ = station;
  emit changed();
}

void DrillDesk::setTable(const std::string& name, const MeasuredTable& table) {
  if (run_ || (tableName_ == name && table_ == table)) return;
  tableName_ = name;
  table_ = table;
  emit changed();
}

void DrillDesk::throwAnew() {
  ++seed_;
  emit changed();
}

std::vector<const KeptRun*> DrillDesk::runsHere() const {
  std::vector<const KeptRun*> runs;
  for (const KeptRun& run : shelf().runs) {
    if (run.terms.drill.key == drill_.key && !run.trials.empty()) runs.push_back(&run);
  }
  return runs;
}

void DrillDesk::beginRun(const std::string& player) {
  if (run_ || editing_ || recordPath_.isEmpty()) return;
  service_.beginRun({drill_, mirroring_, tableName_, table_, player}, clock_());
}

const KeptRun* DrillDesk::brokenRun() const {
  if (run_ || editing_) return nullptr;
  const auto runs = runsHere();
  if (runs.empty()) return nullptr;
  const KeptRun& last = *runs.back();
  return !last.ended && last.source == RunSource::Hand ? &last : nullptr;
}

void DrillDesk::resumeRun() {
  const KeptRun* broken = brokenRun();
  if (broken == nullptr) return;
  auto run = std::make_unique<KeptRun>(*broken);
  // As the drill was when the run began.
  drill_ = run->terms.drill;
  mirroring_ = run->terms.mirroring;
  tableName_ = run->terms.tableName;
  table_ = run->terms.table;
  run_ = std::move(run);
  takenBack_.clear();
  nextTry();
  emit changed();
}

/// The station whose turn it is, with nothing said of it.
void DrillDesk::nextTry() {
  station_ = stationOf(drill_, run_->trials.size());
  leave_.reset();
  said_.assign(drill_.stations[station_].goals.size() - 1, std::nullopt);
}

void DrillDesk::putLeave(std::optional<TablePoint> leave) {
  if (!run_) return;
  leave_ = leave;
  emit changed();
}

void DrillDesk::say(std::size_t goal, std::optional<bool> met) {
  if (!run_ || goal == 0 || goal > said_.size()) return;
  said_[goal - 1] = met;
  emit changed();
}

void DrillDesk::log(std::optional<bool> met, std::optional<MissSide> missSide, bool fouled) {
  if (!run_) return;
  const DrillStation station = played().stations[station_];
  run_->trials.push_back(trialAsSaid(station, station_, table_, {met, missSide, leave_, said_, fouled}));
  run_->trials.back().setUpError_m = setUpError_m_;
  service_.keepTrial(run_->id, run_->trials.back());
  takenBack_.clear();
  nextTry();
  emit changed();
}

void DrillDesk::endRun() {
  if (!run_) return;
  service_.endRun(*run_, clock_());
  run_.reset();
  leave_.reset();
  said_.clear();
  emit changed();
}

std::string DrillDesk::freshKey() {
  // Later than every key before it, also of drills that the record is still to keep.
  lastKey_ = std::max<std::int64_t>(clock_(), lastKey_ + 1);
  const std::string key = "own-" + std::to_string(lastKey_);
  return isOwn(key) ? freshKey() : key;
}

void DrillDesk::startEditing(const Drill& draft) {
  if (run_ || editing_ || recordPath_.isEmpty()) return;
  chosenBeforeEditing_ = drill_.key;
  beforeEditing_ = isOwn(draft.key) ? std::optional(drill_) : std::nullopt;
  // Edited as it is listed.
  mirroring_ = {};
  lookAt(draft);
  editing_ = true;
  draftsBack_.clear();
  draftsOn_.clear();
  emit changed();
}

void DrillDesk::copy(const QString& title) {
  Drill draft = drill_;
  draft.key = freshKey();
  draft.title = title.toStdString();
  startEditing(draft);
}

void DrillDesk::make(const QString& title) {
  Drill draft;
  draft.key = freshKey();
  draft.title = title.toStdString();
  DrillStation station;
  station.balls = {{BallName(1), {1.5, 0.5}}};
  station.cueBall = DrillBall{kCueBall, {0.5, 0.25}};
  station.goals = {{GoalKind::Pot, BallName(1), PocketName::FootLeft}};
  draft.stations = {station};
  station_ = 0;
  startEditing(draft);
}

void DrillDesk::edit() {
  if (isOwn(drill_.key)) startEditing(drill_);
}

void DrillDesk::change(const Drill& draft) {
  if (!editing_ || draft == drill_) return;
  draftsBack_.push_back(drill_);
  draftsOn_.clear();
  lookAt(draft);
  emit changed();
}

bool DrillDesk::keepDraft() {
  if (!editing_ || !faultsOf(drill_, table_).empty()) return false;
  editing_ = false;
  stepsBack_.push_back({drill_.key, beforeEditing_, drill_});
  stepsOn_.clear();
  put(drill_.key, drill_);
  emit changed();
  return true;
}

void DrillDesk::dropDraft() {
  if (!editing_) return;
  editing_ = false;
  drill_.key.clear();
  choose(chosenBeforeEditing_);
}

void DrillDesk::put(const std::string& key, const std::optional<Drill>& drill) {
  if (drill) {
    service_.keepDrills({*drill}, clock_());
    lookAt(*drill);
  } else {
    service_.removeDrill(key);
    if (drill_.key == key) choose(builtInDrills().front().key);
  }
}

void DrillDesk::removeDrill() {
  if (run_ || editing_ || !isOwn(drill_.key)) return;
  stepsBack_.push_back({drill_.key, drill_, std::nullopt});
  stepsOn_.clear();
  put(drill_.key, std::nullopt);
}

void DrillDesk::add(const std::vector<Drill>& drills) {
  if (run_ || editing_) return;
  for (Drill drill : drills) {
    // A file never changes a drill that is there.
    const std::vector<Drill> known = library();
    if (std::ranges::find(known, drill.key, &Drill::key) != known.end()) drill.key = freshKey();
    stepsBack_.push_back({drill.key, std::nullopt, drill});
    put(drill.key, drill);
  }
  stepsOn_.clear();
  emit changed();
}

void DrillDesk::countSession(SessionId session) {
  if (!run_ && !editing_) service_.countSession(session, drill_, false);
}

void DrillDesk::countGrowingSession(SessionId session) {
  if (!run_ && !editing_) service_.countSession(session, drill_, true);
}

void DrillDesk::undo() {
  if (run_) {
    if (run_->trials.empty()) return;
    takenBack_.push_back(run_->trials.back());
    run_->trials.pop_back();
    service_.takeBackTrial(run_->id);
    nextTry();
  } else if (editing_) {
    if (draftsBack_.empty()) return;
    draftsOn_.push_back(drill_);
    lookAt(draftsBack_.back());
    draftsBack_.pop_back();
  } else {
    if (stepsBack_.empty()) return;
    const LibraryStep step = stepsBack_.back();
    stepsBack_.pop_back();
    stepsOn_.push_back(step);
    put(step.key, step.before);
  }
  emit changed();
}

void DrillDesk::redo() {
  if (run_) {
    if (takenBack_.empty()) return;
    run_->trials.push_back(takenBack_.back());
    takenBack_.pop_back();
    service_.keepTrial(run_->id, run_->trials.back());
    nextTry();
  } else if (editing_) {
    if (draftsOn_.empty()) return;
    draftsBack_.push_back(drill_);
    lookAt(draftsOn_.back());
    draftsOn_.pop_back();
  } else {
    if (stepsOn_.empty()) return;
    const LibraryStep step = stepsOn_.back();
    stepsOn_.pop_back();
    stepsBack_.push_back(step);
    put(step.key, step.after);
  }
  emit changed();
}

}  // namespace ferrule
