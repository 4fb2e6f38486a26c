// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/player_scatter.h"

#include <QtTest>
#include <cmath>

#include "core/base/random.h"
#include "core/geometry/units.h"
#include "core/measure/record_entries.h"
#include "core/physics/simulator.h"
#include "tests/measure/judged_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::judged;

/// A player's scatter from recorded shots that were made by simulation with a known one.
class PlayerScatterTest : public QObject {
  Q_OBJECT
 private slots:
  void withoutShotsThePriorStands();
  void repeatsOfOnePositionTellSpeedAndTip();
  void shotsOfManyPositionsTellTheAimAlone();
  void aPlayerWhoIsNotThereIsNamed();
};

namespace {

constexpr int kRepeats = 40;
constexpr double kSpeedSpread = 0.02;
constexpr double kTipSpread = 0.10;

/// One position struck again and again; every second one from elsewhere when it is not the same position.
std::vector<ShotReading> strikes(bool samePosition) {
  Random random(11);
  std::vector<ShotReading> shots;
  for (int i = 1; i <= kRepeats; ++i) {
    Strike strike = easyStrike();
    strike.aim_rad += radiansFromDegrees(0.1) * random.normal();
    strike.speed_mps *= 1.0 + kSpeedSpread * random.normal();
    strike.side += kTipSpread * random.normal();
    strike.height += kTipSpread * random.normal();
    ShotReading shot = played(i, strike, kEasy);
    if (!samePosition) {
      for (BallAt& ball : shot.before) {
        if (ball.ball.isCueBall()) ball.position.y += 0.02 * i;
      }
      shot.target.reset();
    }
    shots.push_back(shot);
  }
  return shots;
}

ScatterEstimate estimateOf(Kept& kept, const std::string& player) {
  const auto estimate = playerScatter(kept.record, player, scatterOf(PlayerLevel::Club), {});
  return estimate ? *estimate : ScatterEstimate{};
}

}  // namespace

void PlayerScatterTest::withoutShotsThePriorStands() {
  Kept kept({}, true, "Ada");
  const ScatterEstimate estimate = estimateOf(kept, "Ada");
  QCOMPARE(estimate.player, scatterOf(PlayerLevel::Club));
  QCOMPARE(estimate.aims, 0);
}

void PlayerScatterTest::repeatsOfOnePositionTellSpeedAndTip() {
  Kept kept(strikes(true), true, "Ada");
  // The middle of the table is reached by stretching, which widens every part by the same share.
  const MeasuredTable measured = sample::table();
  const auto simulator = Simulator::create(measured.table, parametersFor(measured.balls));
  const Stance stance = stanceOf(simulator->bed(), kBefore, ballIn(kBefore, kCueBall)->position, easyStrike().aim_rad);
  QVERIFY(stance.stretched);
  const double factor = scatterFor({0.0, 1.0, 0.0, 0.0, 0.0}, stance, 0.0, 0.0).speed;
  const Scatter found = estimateOf(kept, "Ada").byKind[static_cast<std::size_t>(StrikeKind::Awkward)];
  const Scatter prior = scatterOf(PlayerLevel::Club);
  // Forty repeats must bring the estimate from a prior that is far off to the truth, within their own chance: 1 /
  // sqrt(2
  // * 39) = 11 % of a spread at one standard deviation. Source: standard error of a standard deviation, JCGM 100:2008,
  // E.4.3.
  QVERIFY(prior.speed > 2.0 * kSpeedSpread / factor && prior.side < 0.6 * kTipSpread / factor &&
          prior.height < 0.75 * kTipSpread / factor);
  QVERIFY2(std::abs(factor * found.speed / kSpeedSpread - 1.0) < 0.3, qPrintable(QString::number(found.speed)));
  QVERIFY2(std::abs(factor * found.side / kTipSpread - 1.0) < 0.3, qPrintable(QString::number(found.side)));
  QVERIFY2(std::abs(factor * found.height / kTipSpread - 1.0) < 0.3, qPrintable(QString::number(found.height)));
}

void PlayerScatterTest::shotsOfManyPositionsTellTheAimAlone() {
  Kept kept(strikes(false), true, "Ada");
  const ScatterEstimate found = estimateOf(kept, "Ada");
  QCOMPARE(found.player.speed, scatterOf(PlayerLevel::Club).speed);
  QCOMPARE(found.player.side, scatterOf(PlayerLevel::Club).side);
}

void PlayerScatterTest::aPlayerWhoIsNotThereIsNamed() {
  Kept kept({}, true, "Ada");
  const auto estimate = playerScatter(kept.record, "Nobody", scatterOf(PlayerLevel::Club), {});
  QVERIFY(!estimate);
  QVERIFY(estimate.error().code == ErrorCode::NotFound);
  QCOMPARE(estimate.error().subject, std::string("Nobody"));
}

FERRULE_TEST(PlayerScatterTest)
#include "player_scatter_test.moc"
