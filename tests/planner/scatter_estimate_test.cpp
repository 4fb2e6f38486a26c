// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/scatter_estimate.h"

#include <QtTest>

#include "core/geometry/units.h"
#include "core/planner/coaching.h"
#include "tests/planner/planner_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class ScatterEstimateTest : public QObject {
  Q_OBJECT
 private slots:
  void withoutShotsThePriorStands();
  void fiveGoodShotsDoNotMakeABeginnerAnExpert();
  void manyShotsFindTheTrueSpread();
  void theMeasurementsOwnUncertaintyIsTakenOff();
  void kindsAreToldApartWithEnoughShots();
  void beginnerAndExpertAreToldDifferentThings();
  void aPlaceFromWhichABeginnerPlaysSafeIsFound();
};

namespace {

std::vector<StrikeEvidence> aims(int count, double spread_deg, double uncertainty_deg, StrikeKind kind,
                                 std::uint64_t seed) {
  Random random(seed);
  std::vector<StrikeEvidence> strikes;
  for (int i = 0; i < count; ++i) {
    StrikeEvidence strike;
    strike.kind = kind;
    const double error_deg = std::hypot(spread_deg, uncertainty_deg) * random.normal();
    strike.aim_rad = {0.4, 0.4 + radiansFromDegrees(error_deg), radiansFromDegrees(uncertainty_deg)};
    strikes.push_back(strike);
  }
  return strikes;
}

double aim_deg(const Scatter& scatter) {
  return degreesFromRadians(scatter.aim_rad);
}

}  // namespace

void ScatterEstimateTest::withoutShotsThePriorStands() {
  const Scatter prior = scatterOf(PlayerLevel::Club);
  const ScatterEstimate estimate = estimateScatter({}, prior);
  QCOMPARE(estimate.player, prior);
  QCOMPARE(estimate.aims, 0);
  QVERIFY(estimate.leastAim_rad < prior.aim_rad && estimate.mostAim_rad > prior.aim_rad);
}

void ScatterEstimateTest::fiveGoodShotsDoNotMakeABeginnerAnExpert() {
  const Scatter prior = scatterOf(PlayerLevel::Beginner);
  const auto strikes = aims(5, aim_deg(scatterOf(PlayerLevel::Expert)), 0.02, StrikeKind::Plain, 3);
  const ScatterEstimate estimate = estimateScatter(strikes, prior);
  QVERIFY(aim_deg(estimate.player) < aim_deg(prior));
  QVERIFY2(aim_deg(estimate.player) > 2.0 * aim_deg(scatterOf(PlayerLevel::Expert)),
           qPrintable(QString::number(aim_deg(estimate.player))));
}

/// 500 shots give a spread within 5 of its relative standard errors, 1 / sqrt(2 n) = 3.2 %.
void ScatterEstimateTest::manyShotsFindTheTrueSpread() {
  const auto strikes = aims(500, 0.3, 0.0, StrikeKind::Plain, 5);
  const ScatterEstimate estimate = estimateScatter(strikes, scatterOf(PlayerLevel::Club));
  QVERIFY2(std::abs(aim_deg(estimate.byKind[0]) / 0.3 - 1.0) < 0.16,
           qPrintable(QString::number(aim_deg(estimate.byKind[0]))));
  QCOMPARE(estimate.aims, 500);
  // What was not observed keeps the prior.
  QCOMPARE(estimate.player.speed, scatterOf(PlayerLevel::Club).speed);
}

void ScatterEstimateTest::theMeasurementsOwnUncertaintyIsTakenOff() {
  const auto strikes = aims(500, 0.1, 0.2, StrikeKind::Plain, 6);
  const double found_deg = aim_deg(estimateScatter(strikes, scatterOf(PlayerLevel::Club)).byKind[0]);
  QVERIFY2(std::abs(found_deg - 0.1) < 0.05, qPrintable(QString::number(found_deg)));
}

void ScatterEstimateTest::kindsAreToldApartWithEnoughShots() {
  auto strikes = aims(300, 0.12, 0.02, StrikeKind::Plain, 7);
  const auto firm = aims(300, 0.3, 0.02, StrikeKind::Firm, 8);
  strikes.insert(strikes.end(), firm.begin(), firm.end());
  const ScatterEstimate estimate = estimateScatter(strikes, scatterOf(PlayerLevel::Club));
  QVERIFY(aim_deg(estimate.byKind[1]) > 1.7 * aim_deg(estimate.byKind[0]));
  // A kind without shots lies between.
  QVERIFY(estimate.byKind[2].aim_rad > estimate.byKind[0].aim_rad);
}

/// A ball along the whole table at a thin cut: an expert's pot, a beginner's safety. Common practice, no source.
void ScatterEstimateTest::beginnerAndExpertAreToldDifferentThings() {
  const Position balls{ballAt(0, 1.7, 0.2), ballAt(1, 0.3, 0.55), ballAt(8, 0.2, 0.2), ballAt(9, 1.9, 0.85),
                       ballAt(10, 1.6, 0.7)};
  SearchBudget budget;
  budget.mostSimulations = 6000;
  const std::array players{scatterOf(PlayerLevel::Beginner), scatterOf(PlayerLevel::Expert)};
  const auto answers = suggestToEach(ninefoot(), situationOf(Game::EightBall, balls, "solids"), players, budget);
  QVERIFY(answers.has_value());
  QVERIFY(answers->at(1).suggestion.plans.front().plan.pocket.has_value());
  const double expert = answers->at(1).suggestion.plans.front().chances.pot;
  const RankedPlan& beginners = answers->at(0).suggestion.plans.front();
  const double beginner = beginners.plan.pocket ? beginners.chances.pot : 0.0;
  QVERIFY2(expert > beginner + 0.25, qPrintable(QString("%1 and %2").arg(expert).arg(beginner)));
}

void ScatterEstimateTest::aPlaceFromWhichABeginnerPlaysSafeIsFound() {
  const Position balls{ballAt(0, 0.5, 0.4), ballAt(1, 0.12, 0.35), ballAt(8, 1.0, 0.5), ballAt(9, 1.9, 0.85),
                       ballAt(10, 1.6, 0.7)};
  SearchBudget budget;
  budget.mostSimulations = 4000;
  const Situation situation = situationOf(Game::EightBall, balls, "solids");
  const auto found = firstSafetyPlace(ninefoot(), situation, scatterOf(PlayerLevel::Beginner),
                                      ballAt(0, 0.3, 0.55).position, ballAt(0, 1.9, 0.1).position, 6, budget);
  QVERIFY(found.has_value());
  QVERIFY(found->safety >= found->attack);
}

FERRULE_TEST(ScatterEstimateTest)
#include "scatter_estimate_test.moc"
