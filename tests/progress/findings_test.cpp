// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <algorithm>
#include <cmath>

#include "core/progress/player_progress.h"
#include "tests/support/invented_squad.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

enum Junior : std::size_t { SteadierSpeed, Tires, Noise, ThickLeft, SteadierAim, StrongNoise };

const std::vector<PlayerProgress>& squadReports() {
  static const std::vector<PlayerProgress> all = [] {
    const invented::Squad squad = invented::squad(invented::juniorSquad(), {});
    std::vector<PlayerProgress> reports;
    for (std::size_t i = 0; i < squad.players.size(); ++i)
      reports.push_back(playerProgress(invented::historyOf(squad, i), {2'000'000'000'000, {}}));
    return reports;
  }();
  return all;
}

QStringList standingOf(const PlayerProgress& report) {
  QStringList all;
  for (const Finding& finding : report.findings) {
    if (finding.stands) all << QString::number(static_cast<int>(finding.kind));
  }
  return all;
}

QString numberOf(FindingKind kind) {
  return QString::number(static_cast<int>(kind));
}

}  // namespace

/// What was planted must be found, and nothing else.
class FindingsTest : public QObject {
  Q_OBJECT
 private slots:
  void theSquadPlaysSixThousandShots();
  void aSteadierSpeedIsFound();
  void aTiringAimIsFound();
  void noiseIsNotTakenForAFinding();
  void thickCutsToTheLeftAreFoundAndWorkedOn();
  void aSteadierAimIsFound();
  void aPullToOneSideIsFoundOnceAndNotForOneSidesHabit();
  void falseAlarmsAreRare();
  void workIsThreeItemsAtMostWithItsEvidence();
  void theSameHistoryGivesTheSameDigits();
  void anEmptyHistoryGivesShortagesOnly();
  void oneShotGivesShortagesOnly();
};

void FindingsTest::theSquadPlaysSixThousandShots() {
  int shots = 0;
  for (const PlayerProgress& report : squadReports()) {
    shots += report.quality.shots;
    QCOMPARE(report.quality.sessions, 20);
    QVERIFY(report.inferred.share.has_value());
  }
  QVERIFY2(shots > 5500 && shots < 6500, qPrintable(QString::number(shots)));
}

void FindingsTest::aSteadierSpeedIsFound() {
  const PlayerProgress& report = squadReports()[SteadierSpeed];
  QVERIFY2(standingOf(report).contains(numberOf(FindingKind::SpeedTrend)), qPrintable(standingOf(report).join(' ')));
  const Finding& speed = findingOf(report.findings, FindingKind::SpeedTrend);
  // Planted: from 14 % to 5 %.
  QVERIFY2(speed.from > 0.10 && speed.from < 0.18, qPrintable(QString::number(speed.from)));
  QVERIFY2(speed.to > 0.02 && speed.to < 0.08, qPrintable(QString::number(speed.to)));
  QVERIFY(speed.change->most < 0.0);
  QVERIFY(report.strikes.speed.fromRepeats);
  QCOMPARE(report.strikes.speed.bias.error().kind, ShortageKind::NoPlan);
}

void FindingsTest::aTiringAimIsFound() {
  const PlayerProgress& report = squadReports()[Tires];
  const Finding& late = findingOf(report.findings, FindingKind::LateAim);
  QVERIFY2(late.stands, qPrintable(QString::number(late.chance)));
  QVERIFY(late.to > 1.2 * late.from);
  QVERIFY(std::ranges::any_of(report.work, [](const WorkItem& item) { return item.kind == WorkKind::LateAim; }));
}

void FindingsTest::noiseIsNotTakenForAFinding() {
  QVERIFY2(standingOf(squadReports()[Noise]).isEmpty(), qPrintable(standingOf(squadReports()[Noise]).join(' ')));
  QVERIFY2(standingOf(squadReports()[StrongNoise]).isEmpty(),
           qPrintable(standingOf(squadReports()[StrongNoise]).join(' ')));
}

void FindingsTest::thickCutsToTheLeftAreFoundAndWorkedOn() {
  const PlayerProgress& report = squadReports()[ThickLeft];
  const Finding& left = findingOf(report.findings, FindingKind::LeftCutSide);
  QVERIFY(left.stands);
  QVERIFY2(left.to < -0.0008, qPrintable(QString::number(left.to)));
  QVERIFY(!findingOf(report.findings, FindingKind::RightCutSide).stands);
  QVERIFY(report.misses.leftCuts.thick > report.misses.leftCuts.thin);
  const auto item = std::ranges::find(report.work, WorkKind::LeftCutSide, &WorkItem::kind);
  QVERIFY(item != report.work.end());
  QCOMPARE(item->drill, WorkDrill::CutFanLeft);
}

void FindingsTest::aSteadierAimIsFound() {
  const PlayerProgress& report = squadReports()[SteadierAim];
  const Finding& aim = findingOf(report.findings, FindingKind::AimTrend);
  QVERIFY2(aim.stands, qPrintable(QString::number(aim.chance)));
  QVERIFY(aim.to < aim.from);
  QVERIFY(findingOf(report.findings, FindingKind::MakeTrend).to >
          findingOf(report.findings, FindingKind::MakeTrend).from);
}

void FindingsTest::aPullToOneSideIsFoundOnceAndNotForOneSidesHabit() {
  invented::Plan plan;
  plan.matchShots = 0;
  const PlayerHistory pulled = invented::history(invented::Habits{.name = "Pulled", .aimMean_rad = 0.0018}, plan);
  const PlayerProgress report = playerProgress(pulled, {2'000'000'000'000, {}});
  const Finding& side = findingOf(report.findings, FindingKind::AimSide);
  QVERIFY2(side.stands, qPrintable(QString::number(side.chance)));
  QVERIFY(side.to > 0.0009);
  QVERIFY(!findingOf(report.findings, FindingKind::LeftCutSide).stands);
  QVERIFY(!findingOf(report.findings, FindingKind::RightCutSide).stands);
  // Thick cuts to the left alone pull the mean as well.
  QVERIFY(!findingOf(squadReports()[ThickLeft].findings, FindingKind::AimSide).stands);
}

void FindingsTest::falseAlarmsAreRare() {
  constexpr int kRecords = 120;
  int alarms = 0;
  for (int record = 0; record < kRecords; ++record) {
    invented::Plan plan;
    plan.matchShots = 0;
    plan.practiceShots = 50;
    plan.seed = static_cast<std::uint64_t>(1000 + record);
    const PlayerHistory history = invented::history(invented::Habits{.name = "Nobody"}, plan);
    const Resampling resampling{1, 499};
    const auto all = findings(history, Difficulty::of(history), strikeMeasures(history, {1, 9}),
                              aimMeasure(history, {1, 9}), resampling);
    if (std::ranges::any_of(all, &Finding::stands)) ++alarms;
  }
  // 5 % of 120 are 6; more than 13 of such a count come in 3 of 1000 cases.
  QVERIFY2(alarms <= 13, qPrintable(QString::number(alarms)));
}

void FindingsTest::workIsThreeItemsAtMostWithItsEvidence() {
  for (const PlayerProgress& report : squadReports()) {
    QVERIFY(report.work.size() <= 3);
    for (std::size_t i = 0; i < report.work.size(); ++i) {
      const WorkItem& item = report.work[i];
      QVERIFY(item.tried >= kFewestForWork);
      QVERIFY(item.gainInterval.least > 0.0);
      QVERIFY(item.gainInterval.holds(item.gain));
      QVERIFY(item.target >= static_cast<int>(item.share * item.trials));
      QVERIFY(item.target <= item.trials);
      if (i > 0) QVERIFY(report.work[i - 1].gain >= item.gain);
    }
  }
}

void FindingsTest::theSameHistoryGivesTheSameDigits() {
  const PlayerProgress& report = squadReports()[Tires];
  const PlayerProgress again = playerProgress(report.history, {2'000'000'000'000, {}});
  QCOMPARE(again.findings, report.findings);
  QCOMPARE(again.work, report.work);
}

void FindingsTest::anEmptyHistoryGivesShortagesOnly() {
  PlayerHistory nobody;
  nobody.player = "Nobody";
  const PlayerProgress report = playerProgress(nobody, {});
  QCOMPARE(report.quality.shots, 0);
  QVERIFY(!report.inferred.share);
  QVERIFY(!report.aim.all.spread);
  QVERIFY(!report.fouls);
  QVERIFY(report.work.empty());
  QVERIFY(standingOf(report).isEmpty());
  for (const Finding& finding : report.findings)
    QVERIFY(finding.shortage.has_value());
}

void FindingsTest::oneShotGivesShortagesOnly() {
  PlayerHistory one = squadReports()[Noise].history;
  one.sessions.resize(1);
  one.shots.resize(1);
  const PlayerProgress report = playerProgress(one, {});
  QCOMPARE(report.quality.shots, 1);
  QCOMPARE(report.inferred.share.error(), (Shortage{ShortageKind::Shots, 1, kFewestForShare}));
  for (const Finding& finding : report.findings)
    QVERIFY(finding.shortage.has_value());
}

FERRULE_TEST(FindingsTest)
#include "findings_test.moc"
