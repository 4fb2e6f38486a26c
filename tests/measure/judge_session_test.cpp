// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/judge_session.h"

#include <QtTest>

#include "core/geometry/units.h"
#include "core/measure/film_referee.h"
#include "core/measure/plan_situation.h"
#include "core/measure/record_entries.h"
#include "core/physics/simulator.h"
#include "core/planner/suggestion_text.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Suggested against taken over recorded shots that were made by simulation, so that what was meant is known.
class JudgeSessionTest : public QObject {
  Q_OBJECT
 private slots:
  void aGoodShotWellStruckCostsNothing();
  void aMissedAimCostsByDeliveryNotByChoice();
  void theWrongBallCostsByChoice();
  void aShotWithoutAGameIsLeftAlone();
  void aSecondRunLeavesJudgedShotsAlone();
  void whatWasShownStaysShown();
  void stoppedJudgingKeepsWhatWasJudged();
  void aPotByHandIsMatchedToTheListedPlan();
};

namespace {

/// The 1 hangs at the foot-left pocket, the 2 lies far up table on the rail: one good shot, one bad one.
const Position kBefore{{kCueBall, {0.3, 0.2}},      {BallName(1), {1.04, 0.49}}, {BallName(2), {-1.0, -0.5303}},
                       {BallName(8), {-0.85, 0.3}}, {BallName(9), {0.0, -0.4}},  {BallName(10), {-0.4, 0.1}}};

Planner planner() {
  const MeasuredTable measured = sample::table();
  return *Planner::create(measured.table, parametersFor(measured.balls));
}

Situation solids(const Position& balls) {
  const MeasuredTable measured = sample::table();
  GameState state =
      joinedFrame(worldRules(Game::EightBall), {BallName(1), BallName(2), BallName(8), BallName(9), BallName(10)},
                  Seat::First, surfaceLines(measured.table, measured.balls));
  return situationFrom(state, balls, measured.table);
}

/// What a perfect film would show of this strike.
ShotReading played(int number, const Strike& strike, const PocketedBall& meant) {
  const MeasuredTable measured = sample::table();
  const auto simulated = Simulator::create(measured.table, parametersFor(measured.balls))->shoot(kBefore, strike);
  ShotReading reading;
  reading.number = number;
  reading.strike_s = 10.0 * number;
  reading.rest_s = reading.strike_s + simulated->duration_s;
  reading.before = kBefore;
  const Vector3 v = simulated->paths.front().motions.front().velocity;
  reading.delivery.aim_rad = Measured{std::atan2(v.y, v.x), 1e-4};
  reading.delivery.speed_mps = Measured{strike.speed_mps, 1e-3};
  reading.delivery.side = Measured{strike.side, 1e-3};
  reading.delivery.height = Measured{strike.height, 1e-3};
  reading.target = Target{meant.ball, meant.pocket, {}, {}, {}};
  reading.outcome = Outcome::Miss;
  for (ShotEvent event : simulated->events) {
    event.time_s += reading.strike_s;
    reading.events.push_back(event);
    if (event.kind == EventKind::Ball && !reading.firstContact && event.other) reading.firstContact = event.other;
    if (event.kind != EventKind::Pocket) continue;
    reading.pocketed.push_back({event.ball, *event.pocket});
    if (event.ball == meant.ball) reading.outcome = Outcome::Pot;
  }
  for (const FinalBall& ball : simulated->after) {
    if (ball.fate == BallFate::OnTable) reading.after.push_back({ball.ball, ball.position});
  }
  return reading;
}

/// A record with one frame that holds these shots, each ruled on its own.
struct Kept {
  sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  SessionId session;
  FrameId frame;
  std::vector<ShotId> shots;

  explicit Kept(const std::vector<ShotReading>& readings, bool ruled = true) {
    session = *record.addSession({"Evening", 1'772'389'800'000, "table", sample::table(), {}, SessionKind::Practice});
    frame = *record.addFrame({session, ruled ? "eight-ball" : "", std::nullopt, std::nullopt});
    for (const ShotReading& reading : readings) {
      FilmReferee referee(worldRules(Game::EightBall), sample::table());
      std::optional<RulingEntry> entry;
      if (ruled) entry = entryOf(referee.judge({reading, {}}).ruled);
      shots.push_back(*record.appendShot(frame, reading, {}, std::nullopt, entry));
    }
  }
};

JudgeOptions quick() {
  JudgeOptions options;
  options.mostSimulations = 6000;
  return options;
}

const PocketedBall kEasy{BallName(1), PocketName::FootLeft};

Strike easyStrike() {
  const auto meant = meantPlan(planner(), solids(kBefore), kEasy, true, {std::atan2(0.29, 0.74), 1.5, 0.0, 0.0, 0.0},
                               scatterOf(PlayerLevel::Club));
  if (!meant) qFatal("the easy ball cannot be potted");
  return meant->strike;
}

}  // namespace

void JudgeSessionTest::aGoodShotWellStruckCostsNothing() {
  Kept kept({played(1, easyStrike(), kEasy)});
  std::vector<JudgedShot> told;
  const auto report =
      judgeSession(kept.record, kept.session, quick(), {}, [&](const JudgedShot& j) { told.push_back(j); });
  QVERIFY(report.has_value());
  QCOMPARE(report->judged, 1);
  QVERIFY(told.front().review.has_value());
  QCOMPARE(told.front().review->taken.plan.ball, BallName(1));
  QVERIFY(told.front().review->taken.chances.pot > 0.8);
  QVERIFY(told.front().review->choiceLoss < 0.1);
  // Kept beside the shot, and read back as it was.
  const auto shot = kept.record.shot(kept.shots.front());
  QVERIFY(shot->suggestion.has_value());
  QVERIFY(!shot->suggestion->shown);
  QCOMPARE(*shot->suggestion->choiceLoss, told.front().review->choiceLoss);
  const auto read = suggestionFromText(shot->suggestion->content);
  QVERIFY(read.has_value());
  QCOMPARE(read->suggestion.plans.size(), told.front().suggestion.plans.size());
  QVERIFY(read->review.has_value());
  QCOMPARE(read->review->taken.plan.strike.speed_mps, told.front().review->taken.plan.strike.speed_mps);
  QVERIFY(std::abs(read->review->deliveryLoss - told.front().review->deliveryLoss) < 1e-4);
}

void JudgeSessionTest::aMissedAimCostsByDeliveryNotByChoice() {
  Strike off = easyStrike();
  off.aim_rad += radiansFromDegrees(5.0);
  const ShotReading missed = played(1, off, kEasy);
  QCOMPARE(missed.outcome, Outcome::Miss);
  Kept kept({missed});
  QVERIFY(judgeSession(kept.record, kept.session, quick()).has_value());
  const auto shot = kept.record.shot(kept.shots.front());
  QVERIFY(*shot->suggestion->deliveryLoss > 0.1);
  QVERIFY(*shot->suggestion->choiceLoss < 0.1);
}

void JudgeSessionTest::theWrongBallCostsByChoice() {
  // The cue ball is sent softly at the 2 on the far rail, which no plan pots well.
  const PocketedBall hard{BallName(2), PocketName::HeadLeft};
  const double aim_rad = std::atan2(-0.5303 - 0.2, -1.0 - 0.3);
  Kept kept({played(1, {aim_rad, 1.2, 0.0, 0.0, 0.0}, hard)});
  QVERIFY(judgeSession(kept.record, kept.session, quick()).has_value());
  const auto shot = kept.record.shot(kept.shots.front());
  QVERIFY(*shot->suggestion->choiceLoss > 0.1);
  const auto read = suggestionFromText(shot->suggestion->content);
  QCOMPARE(read->review->suggested.plan.ball, BallName(1));
}

void JudgeSessionTest::aShotWithoutAGameIsLeftAlone() {
  Kept kept({played(1, easyStrike(), kEasy)}, false);
  std::optional<NotJudged> why;
  const auto report = judgeSession(kept.record, kept.session, quick(), {}, [&](const JudgedShot& j) { why = j.why; });
  QCOMPARE(report->without, 1);
  QCOMPARE(why, std::optional(NotJudged::NoRuling));
  QVERIFY(!kept.record.shot(kept.shots.front())->suggestion.has_value());
}

void JudgeSessionTest::aSecondRunLeavesJudgedShotsAlone() {
  Kept kept({played(1, easyStrike(), kEasy)});
  QVERIFY(judgeSession(kept.record, kept.session, quick()).has_value());
  const auto first = kept.record.shot(kept.shots.front())->suggestion;
  QCOMPARE(judgeSession(kept.record, kept.session, quick())->known, 1);
  JudgeOptions again = quick();
  again.again = true;
  QCOMPARE(judgeSession(kept.record, kept.session, again)->judged, 1);
  // The same seed says the same.
  QCOMPARE(kept.record.shot(kept.shots.front())->suggestion, first);
}

void JudgeSessionTest::whatWasShownStaysShown() {
  Kept kept({played(1, easyStrike(), kEasy)});
  QVERIFY(kept.record.keepSuggestion(kept.shots.front(), {"planner 1", true, {}, {}, "{}"}).has_value());
  QCOMPARE(judgeSession(kept.record, kept.session, quick())->judged, 1);
  const auto shot = kept.record.shot(kept.shots.front());
  QVERIFY(shot->suggestion->shown);
  QVERIFY(shot->suggestion->choiceLoss.has_value());
}

void JudgeSessionTest::stoppedJudgingKeepsWhatWasJudged() {
  Kept kept({played(1, easyStrike(), kEasy), played(2, easyStrike(), kEasy)});
  std::stop_source stop;
  JobControl job;
  job.stop = stop.get_token();
  const auto report =
      judgeSession(kept.record, kept.session, quick(), job, [&](const JudgedShot&) { stop.request_stop(); });
  QVERIFY(!report.has_value());
  QCOMPARE(report.error().code, ErrorCode::Cancelled);
  QVERIFY(kept.record.shot(kept.shots.front())->suggestion.has_value());
  QVERIFY(!kept.record.shot(kept.shots.back())->suggestion.has_value());
}

void JudgeSessionTest::aPotByHandIsMatchedToTheListedPlan() {
  ShotReading byHand = played(1, easyStrike(), kEasy);
  byHand.delivery = {};
  Kept kept({byHand});
  QVERIFY(judgeSession(kept.record, kept.session, quick()).has_value());
  const auto read = suggestionFromText(kept.record.shot(kept.shots.front())->suggestion->content);
  QVERIFY(read->review.has_value());
  QCOMPARE(callOf(read->review->taken.plan), std::optional(kEasy));
}

FERRULE_TEST(JudgeSessionTest)
#include "judge_session_test.moc"
