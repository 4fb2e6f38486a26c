// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/judge_session.h"

#include <QtTest>
#include <algorithm>
#include <cmath>

#include "core/geometry/units.h"
#include "core/measure/correct_shot.h"
#include "core/planner/suggestion_text.h"
#include "tests/measure/judged_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::judged;

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
  void aCorrectedShotIsJudgedAnewAndWhatStoodIsKept();
  void nothingIsJudgedAnewWhereNothingChanged();
};

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

void JudgeSessionTest::aCorrectedShotIsJudgedAnewAndWhatStoodIsKept() {
  Kept kept({played(1, easyStrike(), kEasy), played(2, easyStrike(), kEasy)});
  QVERIFY(kept.record.completeFrame(kept.frame).has_value());
  QVERIFY(judgeSession(kept.record, kept.session, quick()).has_value());
  const StoredShot before = *kept.record.shot(kept.shots[1]);
  QVERIFY(before.suggestion.has_value());

  // The easy ball lay elsewhere: other plans stand before that shot, and before that shot alone.
  const BallAt there{BallName(1), {0.4, 0.1}};
  const auto said = sayOfShot(kept.record, kept.shots[1], PlaceSaid{ShotEnd::Before, there}, "Cleo", 5);
  QVERIFY(said.has_value() && said->correction);
  JudgeOptions options = quick();
  options.now = 42;
  std::vector<ShotId> told;
  const auto report = judgeAnew(kept.record, kept.session, kept.frame, options, {},
                                [&](const JudgedShot& judged) { told.push_back(judged.shot.id); });
  QVERIFY(report.has_value());
  QCOMPARE(told, std::vector<ShotId>{kept.shots[1]});
  QCOMPARE(report->known, 1);
  const StoredShot after = *kept.record.shot(kept.shots[1]);
  QVERIFY(after.suggestion != before.suggestion);
  QCOMPARE(after.suggestion->planner, before.suggestion->planner);
  // What stood there is kept with its planner, as something that followed from the correction.
  const auto fell = std::ranges::find(after.corrections, std::string("suggestion"), &ValueCorrection::field);
  QVERIFY(fell != after.corrections.end());
  QCOMPARE(fell->cause, said->correction);
  QCOMPARE(fell->when, UtcMilliseconds{42});
  QVERIFY(fell->measured->find(before.suggestion->planner) != std::string::npos);
  QCOMPARE(judgeAnew(kept.record, kept.session, kept.frame, options)->known, 2);

  // Taking the correction back puts it all back, and nothing is out of date.
  QVERIFY(!takeBackCorrection(kept.record, kept.frame, *said->correction)->why);
  QVERIFY(*kept.record.shot(kept.shots[1]) == before);
  QCOMPARE(judgeAnew(kept.record, kept.session, kept.frame, options)->known, 2);
}

void JudgeSessionTest::nothingIsJudgedAnewWhereNothingChanged() {
  Kept kept({played(1, easyStrike(), kEasy)});
  QVERIFY(kept.record.completeFrame(kept.frame).has_value());
  // Nothing was ever suggested.
  QCOMPARE(*judgeAnew(kept.record, kept.session, kept.frame, quick()), JudgeReport{});
  // Plans from before there were marks are right as long as nobody corrected anything.
  QVERIFY(kept.record.keepSuggestion(kept.shots[0], {"planner 1", false, 0.0, 0.0, "{}"}).has_value());
  QCOMPARE(judgeAnew(kept.record, kept.session, kept.frame, quick())->known, 1);
  QVERIFY(sayOfShot(kept.record, kept.shots[0], OutcomeSaid{Outcome::Safety, std::nullopt}, "Cleo", 5).has_value());
  QCOMPARE(judgeAnew(kept.record, kept.session, kept.frame, quick())->judged, 1);
}

FERRULE_TEST(JudgeSessionTest)
#include "judge_session_test.moc"
