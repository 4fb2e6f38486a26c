// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/drill_keeping.h"

#include <QtTest>
#include <algorithm>

#include "core/drills/drill_file.h"
#include "core/drills/drill_score.h"
#include "core/measure/player_history.h"
#include "tests/drills/drill_shots.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using drillshots::at;

namespace {

RunTerms terms(const char* key = "three-zones") {
  return {*builtInDrill(key), {true, false}, "9ft", *measuredTableFrom("9ft"), "Ada"};
}

DrillTrial madeAndLanded() {
  DrillTrial trial;
  trial.station = 1;
  trial.goals = {{true}, {false, 0.125}};
  trial.leave = TablePoint{0.25, -0.125};
  trial.missSide = MissSide::Over;
  trial.setUpError_m = 0.0125;
  return trial;
}

/// A session with shots from stations of the cut fan, mirrored: 4 made of 5 tries, and one shot from elsewhere.
SessionId sessionOfCuts(Record& record, Mirroring mirroring) {
  const Drill fan = mirrored(*builtInDrill("cut-fan"), mirroring);
  const MeasuredTable table = *measuredTableFrom("9ft");
  const PlayerId ada = *record.addPlayer(sample::player("Ada"));
  const SessionId session = *record.addSession({"Cuts", 5000, "9ft", table, {ada}});
  const FrameId frame = *record.addFrame({session, "", std::nullopt, std::nullopt});
  int number = 0;
  const auto add = [&](ShotReading shot) {
    shot.number = ++number;
    shot.strike_s = 10.0 * number;
    shot.rest_s = shot.strike_s + 4.0;
    if (!record.appendShot(frame, shot, {}, ada)) qFatal("not recorded");
  };
  for (const std::size_t station : {0, 1, 2, 3, 4}) {
    ShotReading shot = drillshots::shot(setUpOf(fan.stations[station], table), at(1.0, 0.4));
    if (station != 4) drillshots::pot(shot, 1, *fan.stations[0].goals[0].pocket);
    add(shot);
  }
  add(drillshots::shot({drillshots::ball(0, 0.2, 0.9), drillshots::ball(1, 1.5, 0.5)}, at(1.0, 0.4)));
  return session;
}

}  // namespace

class DrillKeepingTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void anOwnDrillComesBackAsItWas();
  void deletingADrillKeepsItsRuns();
  void aRunIsKeptTryByTry();
  void aTryIsTakenBack();
  void aRunWithoutATryGoes();
  void runsAreSomebodysOrNobodys();
  void triesAreFoundInASessionWithTheirShots();
  void aPlayersDrillsTellWhatWasAskedOfTheShots();
  void theMirrorImageIsFound();
  void countingAgainReplacesWhatWasCounted();
  void aSessionWithoutATryKeepsNoRun();
  void theRecordStaysWhole();

 private:
  std::unique_ptr<sample::Folder> folder_;
  std::unique_ptr<Record> record_;
};

void DrillKeepingTest::init() {
  folder_ = std::make_unique<sample::Folder>();
  record_ = std::make_unique<Record>(sample::openOrDie(folder_->file("r.sqlite")));
}

void DrillKeepingTest::anOwnDrillComesBackAsItWas() {
  Drill drill = drillshots::cutDrill();
  drill.title = "Mein Schnitt";
  QVERIFY(keepOwnDrill(*record_, drill, 1000).has_value());
  QCOMPARE(*ownDrills(*record_), std::vector{drill});
  drill.text = "Changed";
  QVERIFY(keepOwnDrill(*record_, drill, 2000).has_value());
  QCOMPARE(*ownDrills(*record_), std::vector{drill});
}

void DrillKeepingTest::deletingADrillKeepsItsRuns() {
  const Drill drill = drillshots::cutDrill();
  QVERIFY(keepOwnDrill(*record_, drill, 1000).has_value());
  RunTerms cut = terms();
  cut.drill = drill;
  const auto run = beginRun(*record_, cut, 2000);
  QVERIFY(run.has_value());
  QVERIFY(record_->removeDrill(drill.key).has_value());
  QVERIFY(ownDrills(*record_)->empty());
  QCOMPARE(keptRuns(*record_)->size(), std::size_t{1});
  QCOMPARE(keptRuns(*record_)->front().terms.drill, drill);
  QCOMPARE(record_->removeDrill(drill.key).error().code, ErrorCode::NotFound);
}

void DrillKeepingTest::aRunIsKeptTryByTry() {
  auto run = beginRun(*record_, terms(), 1000);
  QVERIFY(run.has_value());
  QVERIFY(keepTrial(*record_, run->id, madeAndLanded()).has_value());
  DrillTrial unknown;
  unknown.goals = {{std::nullopt}, {true, 0.0}};
  QVERIFY(keepTrial(*record_, run->id, unknown).has_value());
  run->trials = {madeAndLanded(), unknown};
  QVERIFY(endRun(*record_, *run, 9000).has_value());
  const auto kept = keptRuns(*record_);
  QVERIFY(kept.has_value());
  QCOMPARE(kept->size(), std::size_t{1});
  const KeptRun& again = kept->front();
  QCOMPARE(again.terms, terms());
  QCOMPARE(again.started, UtcMilliseconds{1000});
  QCOMPARE(again.ended, std::optional<UtcMilliseconds>(9000));
  QCOMPARE(again.trials, run->trials);
  QVERIFY(again.source == RunSource::Hand);
}

void DrillKeepingTest::aTryIsTakenBack() {
  const auto run = beginRun(*record_, terms(), 1000);
  QVERIFY(keepTrial(*record_, run->id, madeAndLanded()).has_value());
  QVERIFY(record_->removeLastTrial(run->id).has_value());
  QVERIFY(keptRuns(*record_)->front().trials.empty());
  QCOMPARE(record_->removeLastTrial(run->id).error().code, ErrorCode::NotFound);
  QCOMPARE(keepTrial(*record_, DrillRunId{99}, madeAndLanded()).error().code, ErrorCode::NotFound);
}

void DrillKeepingTest::aRunWithoutATryGoes() {
  const auto run = beginRun(*record_, terms(), 1000);
  QVERIFY(endRun(*record_, *run, 2000).has_value());
  QVERIFY(keptRuns(*record_)->empty());
}

void DrillKeepingTest::runsAreSomebodysOrNobodys() {
  QVERIFY(beginRun(*record_, terms(), 1000).has_value());
  RunTerms nobodys = terms();
  nobodys.player.clear();
  QVERIFY(beginRun(*record_, nobodys, 2000).has_value());
  const auto runs = keptRuns(*record_);
  QCOMPARE(runs->size(), std::size_t{2});
  QCOMPARE((*runs)[0].terms.player, std::string("Ada"));
  QVERIFY((*runs)[1].terms.player.empty());
  QCOMPARE(record_->players()->size(), std::size_t{1});
}

void DrillKeepingTest::triesAreFoundInASessionWithTheirShots() {
  const SessionId session = sessionOfCuts(*record_, {});
  const auto run = runFromSession(*record_, session, *builtInDrill("cut-fan"), Mirroring{});
  QVERIFY(run.has_value());
  QCOMPARE(run->trials.size(), std::size_t{5});
  QCOMPARE(scoreOf(run->terms.drill, run->trials).all, (MetShare{4, 5}));
  const auto kept = record_->drillRuns("cut-fan");
  QCOMPARE(kept->size(), std::size_t{1});
  QVERIFY(kept->front().run.source == RunSource::Film);
  QCOMPARE(kept->front().run.session, std::optional(session));
  QCOMPARE(kept->front().playerName, std::string("Ada"));
  const auto shots = record_->shots(record_->frames(session)->front().id);
  for (std::size_t i = 0; i < 5; ++i) {
    QCOMPARE(kept->front().trials[i].station, static_cast<int>(i));
    QCOMPARE(kept->front().trials[i].shot, std::optional((*shots)[i].id));
  }
  QCOMPARE(kept->front().ended, std::optional<UtcMilliseconds>(5000 + 64'000));
}

void DrillKeepingTest::aPlayersDrillsTellWhatWasAskedOfTheShots() {
  const MeasuredTable table = *measuredTableFrom("9ft");
  const SessionId session = sessionOfCuts(*record_, {});
  QVERIFY(runFromSession(*record_, session, *builtInDrill("cut-fan"), Mirroring{}).has_value());
  // The same shots as tries at a drill with a zone and a speed, mirrored.
  Drill zone = *builtInDrill("three-zones");
  zone.stations.front().asked.speed_mps = 2.5;
  KeptRun byHand = *beginRun(*record_, {zone, {true, false}, "9ft", table, "Ada"}, 9000);
  const ShotId first = record_->shots(record_->frames(session)->front().id)->front().id;
  DrillTrial trial = madeAndLanded();
  trial.station = 0;
  QVERIFY(keepTrial(*record_, byHand.id, trial, first).has_value());

  const auto history = playerHistory(*record_, "Ada", {});
  QVERIFY(history.has_value());
  QCOMPARE(history->shots.size(), std::size_t{6});
  QCOMPARE(history->shots[0].drill, std::string("three-zones"));
  QCOMPARE(history->shots[0].meant.speed_mps, std::optional(2.5));
  const Drill played = mirrored(zone, {true, false});
  const auto& goals = played.stations.front().goals;
  const auto rest = std::ranges::find(goals, GoalKind::Rest, &DrillGoal::kind);
  QVERIFY(rest != goals.end());
  QCOMPARE(history->shots[0].meant.rest, std::optional(middleOf(*rest->zone, table.table)));
  QVERIFY(!history->shots[0].meant.restFromPlan);
  QCOMPARE(history->shots[1].drill, std::string("cut-fan"));
  QVERIFY(!history->shots[1].meant.rest && !history->shots[1].meant.speed_mps);
  QVERIFY(history->shots[5].drill.empty());

  QCOMPARE(history->runs.size(), std::size_t{2});
  QCOMPARE(history->runs[0].drill, std::string("cut-fan"));
  QCOMPARE(history->runs[0].met, 4);
  QCOMPARE(history->runs[0].known, 5);
  QCOMPARE(history->runs[1].started_ms, std::int64_t{9000});
  // A period takes runs by their start.
  QCOMPARE(playerHistory(*record_, "Ada", {0, 9000})->runs.size(), std::size_t{1});
}

void DrillKeepingTest::theMirrorImageIsFound() {
  const SessionId session = sessionOfCuts(*record_, {true, true});
  const auto run = runFromSession(*record_, session, *builtInDrill("cut-fan"), std::nullopt);
  QVERIFY(run.has_value());
  QVERIFY((run->terms.mirroring == Mirroring{true, true}));
  QCOMPARE(scoreOf(run->terms.drill, run->trials).all, (MetShare{4, 5}));
}

void DrillKeepingTest::countingAgainReplacesWhatWasCounted() {
  const SessionId session = sessionOfCuts(*record_, {});
  QVERIFY(runFromSession(*record_, session, *builtInDrill("cut-fan"), std::nullopt).has_value());
  QVERIFY(runFromSession(*record_, session, *builtInDrill("cut-fan"), std::nullopt).has_value());
  QCOMPARE(keptRuns(*record_)->size(), std::size_t{1});
}

void DrillKeepingTest::aSessionWithoutATryKeepsNoRun() {
  const SessionId session = sessionOfCuts(*record_, {});
  const auto run = runFromSession(*record_, session, *builtInDrill("hide-behind"), std::nullopt);
  QVERIFY(run.has_value());
  QVERIFY(run->trials.empty());
  QVERIFY(keptRuns(*record_)->empty());
  QCOMPARE(runFromSession(*record_, SessionId{77}, *builtInDrill("lag"), std::nullopt).error().code,
           ErrorCode::NotFound);
}

void DrillKeepingTest::theRecordStaysWhole() {
  const auto run = beginRun(*record_, terms(), 1000);
  QVERIFY(keepTrial(*record_, run->id, madeAndLanded()).has_value());
  QVERIFY(record_->removeDrillRun(run->id).has_value());
  QVERIFY(record_->check().has_value());
  QVERIFY(keptRuns(*record_)->empty());
}

FERRULE_TEST(DrillKeepingTest)
#include "drill_keeping_test.moc"
