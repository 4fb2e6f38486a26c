// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/steadier_play.h"

#include <QtTest>
#include <cmath>

#include "core/measure/player_history.h"
#include "tests/measure/judged_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::judged;

/// What a steadier stroke would have won, by playing recorded shots again.
class SteadierPlayTest : public QObject {
  Q_OBJECT
 private slots:
  void aHardPotGainsByASteadierAim();
  void theSameRecordGivesTheSameDigits();
  void shotsThatNobodyJudgedAreLeftAlone();
  void noMoreShotsThanAskedArePlayedAgain();
  void whatAStoppedRunNotedIsNotPlayedOnceMore();
  void stoppedItSaysSo();
};

namespace {

/// The 2 lies far up table on the rail: a pot that hangs on the aim.
const PocketedBall kHard{BallName(2), PocketName::HeadLeft};

ShotReading hardShot(int number) {
  return played(number, {std::atan2(-0.5303 - 0.2, -1.0 - 0.3), 1.2, 0.0, 0.0, 0.0}, kHard);
}

Kept judgedShots(const std::vector<ShotReading>& readings) {
  Kept kept(readings, true, "Ada");
  if (!judgeSession(kept.record, kept.session, quick())) qFatal("the shots cannot be judged");
  return kept;
}

PlayerHistory historyOf(Record& record) {
  return *playerHistory(record, "Ada", {});
}

}  // namespace

void SteadierPlayTest::aHardPotGainsByASteadierAim() {
  Kept kept = judgedShots({hardShot(1)});
  PlayerHistory history = historyOf(kept.record);
  SteadierOptions options;
  options.samples = 1500;
  QCOMPARE(*addSteadierGains(kept.record, history, options), 1);
  const auto& gain = history.shots.front().steadier;
  QVERIFY(gain.has_value());
  // A steadier aim pots more; the speed of a soft shot that reaches its pocket matters less.
  QVERIFY2(gain->aim > 0.003, qPrintable(QString::number(gain->aim)));
  QVERIFY(gain->aim > gain->speed);
  QVERIFY(gain->aim < 0.3);
  QCOMPARE(gain->speedSpread, scatterOf(PlayerLevel::Club).speed);
}

void SteadierPlayTest::theSameRecordGivesTheSameDigits() {
  Kept kept = judgedShots({hardShot(1), played(2, easyStrike(), kEasy)});
  PlayerHistory one = historyOf(kept.record);
  PlayerHistory other = one;
  QCOMPARE(*addSteadierGains(kept.record, one), 2);
  QCOMPARE(*addSteadierGains(kept.record, other), 2);
  QCOMPARE(one, other);
}

void SteadierPlayTest::shotsThatNobodyJudgedAreLeftAlone() {
  Kept kept({hardShot(1)}, true, "Ada");
  PlayerHistory history = historyOf(kept.record);
  QCOMPARE(*addSteadierGains(kept.record, history), 0);
  QVERIFY(!history.shots.front().steadier.has_value());
}

void SteadierPlayTest::noMoreShotsThanAskedArePlayedAgain() {
  std::vector<ShotReading> readings;
  for (int number = 1; number <= 5; ++number)
    readings.push_back(hardShot(number));
  Kept kept = judgedShots(readings);
  PlayerHistory history = historyOf(kept.record);
  SteadierOptions options;
  options.mostShots = 2;
  options.samples = 20;
  QCOMPARE(*addSteadierGains(kept.record, history, options), 2);
  QCOMPARE(std::ranges::count_if(history.shots, [](const PlayedShot& shot) { return shot.steadier.has_value(); }),
           std::ptrdiff_t{2});
}

void SteadierPlayTest::whatAStoppedRunNotedIsNotPlayedOnceMore() {
  Kept kept = judgedShots({hardShot(1), played(2, easyStrike(), kEasy)});
  PlayerHistory history = historyOf(kept.record);
  const SteadierGain noted{0.5, 0.25, 0.125, 0.1, 0.1};
  history.shots.front().steadier = noted;
  QCOMPARE(*addSteadierGains(kept.record, history), 2);
  QVERIFY(history.shots.front().steadier == noted);
  QVERIFY(history.shots.back().steadier.has_value());
}

void SteadierPlayTest::stoppedItSaysSo() {
  Kept kept = judgedShots({hardShot(1)});
  PlayerHistory history = historyOf(kept.record);
  std::stop_source stop;
  stop.request_stop();
  JobControl job;
  job.stop = stop.get_token();
  const auto played = addSteadierGains(kept.record, history, {}, job);
  QVERIFY(!played.has_value());
  QCOMPARE(played.error().code, ErrorCode::Cancelled);
}

FERRULE_TEST(SteadierPlayTest)
#include "steadier_play_test.moc"
