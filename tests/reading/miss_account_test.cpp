// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/miss_account.h"

#include <QtTest>
#include <cmath>

#include "core/geometry/units.h"
#include "core/reading/pocket_opening.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;

/// A stroke whose stunned cue ball meets the 1 at a cut to the left of its way, touching it at once: no swerve, no loss
/// of speed on the way. Level cue, no squirt, balls without loss, as the published tables assume.
MissEvidence stunCut(double cut_deg, double speed_mps) {
  MissEvidence evidence;
  PlayedStrike& played = evidence.strike;
  played.parameters.ballRestitution = 1.0;
  played.parameters.squirtMassRatio = 0.0;
  const double cut_rad = radiansFromDegrees(cut_deg);
  const double reach_m = 2.0 * kRadius_m + 1e-6;
  const TablePoint target{0.2, 0.1};
  const TablePoint cue{target.x - reach_m * std::cos(cut_rad), target.y - reach_m * std::sin(cut_rad)};
  played.balls = {{kCueBall, cue}, {BallName(1), target}};
  played.strike.speed_mps = speed_mps;
  evidence.target = BallName(1);
  evidence.aimedAt = target + 0.8 * TableVector{std::cos(cut_rad), std::sin(cut_rad)};
  return evidence;
}

double sumOf(const MissAccount& a) {
  return a.aim_rad.value + a.squirt_rad.value + a.swerve_rad.value + a.collisionThrow_rad.value +
         a.spinThrow_rad.value + a.speed_rad.value + a.remainder_rad.value;
}

}  // namespace

class MissAccountTest : public QObject {
  Q_OBJECT
 private slots:
  void throwOfAStunCutIsThePublishedOne_data();
  void throwOfAStunCutIsThePublishedOne();
  void sideSpinOnAFullHitThrowsAsPublished();
  void squirtIsThePublishedOne();
  void partsAddUpToTheWhole();
  void anAimOffTheGhostBallIsAimAndNothingElse();
  void aCueBallThatMissesHasNoAccount();
  void thePlainMouthBoundsTheOpening();
  void aFasterBallFindsASmallerPocket();
};

void MissAccountTest::throwOfAStunCutIsThePublishedOne_data() {
  // Collision-induced throw of a stunned cue ball, e = 1, mu(u) = 0.00995 + 0.108 exp(-1.088 u).
  // Source: Alciatore, technical proofs A.14 and A.28 (2007); table of the reference sheet, section 3c.
  QTest::addColumn<double>("cut_deg");
  QTest::addColumn<double>("speed_mps");
  QTest::addColumn<double>("throw_deg");
  QTest::newRow("15 at 1") << 15.0 << 1.0 << 2.192;
  QTest::newRow("30 at 1") << 30.0 << 1.0 << 4.154;
  QTest::newRow("30 at 2") << 30.0 << 2.0 << 2.653;
  QTest::newRow("45 at 1") << 45.0 << 1.0 << 3.433;
  QTest::newRow("60 at 3") << 60.0 << 3.0 << 0.936;
}

void MissAccountTest::throwOfAStunCutIsThePublishedOne() {
  QFETCH(double, cut_deg);
  QFETCH(double, speed_mps);
  QFETCH(double, throw_deg);
  const auto account = missAccount(Table{}, stunCut(cut_deg, speed_mps));
  QVERIFY(account.has_value());
  // The ball is cut to the left and dragged back to the right. The speed's part belongs to the throw as it was played.
  const double thrown_deg = -degreesFromRadians(account->collisionThrow_rad.value + account->speed_rad.value);
  QVERIFY2(std::abs(thrown_deg - throw_deg) < 0.01, qPrintable(QString::number(thrown_deg)));
}

void MissAccountTest::sideSpinOnAFullHitThrowsAsPublished() {
  // Spin-induced throw, full hit, stun, e = 1: 4.13 degrees at most at 1 m/s, at b = 0.202 R. Source: as above.
  MissEvidence evidence = stunCut(0.0, 1.0);
  evidence.strike.strike.side = 0.202;
  const auto account = missAccount(Table{}, evidence);
  QVERIFY(account.has_value());
  const double thrown_deg = degreesFromRadians(account->spinThrow_rad.value + account->speed_rad.value);
  QVERIFY2(std::abs(std::abs(thrown_deg) - 4.13) < 0.03, qPrintable(QString::number(thrown_deg)));
  // Right side throws to the left.
  QVERIFY(thrown_deg > 0.0);
}

void MissAccountTest::squirtIsThePublishedOne() {
  // 1.223 degrees at b = 0.25 R for a ball 25 times the end mass. Source: Alciatore, technical proof A.31; the
  // reference sheet's table, section 4. The line turns by distance over diameter times it: d / 2R - 1 for small angles,
  // section 6.
  MissEvidence evidence = stunCut(0.0, 2.0);
  evidence.strike.parameters.squirtMassRatio = 25.0;
  const double way_m = 0.10;
  evidence.strike.balls[0].position.x = 0.2 - 2.0 * kRadius_m - way_m;
  evidence.strike.strike.side = 0.25;
  evidence.strike.departure_rad = squirtOf(evidence.strike.strike, evidence.strike.parameters);
  const auto account = missAccount(Table{}, evidence);
  QVERIFY(account.has_value());
  const double expected_deg = -1.223 * way_m / (2.0 * kRadius_m);
  QVERIFY2(std::abs(degreesFromRadians(account->squirt_rad.value) - expected_deg) < 0.02,
           qPrintable(QString::number(degreesFromRadians(account->squirt_rad.value))));
}

void MissAccountTest::partsAddUpToTheWhole() {
  MissEvidence evidence = stunCut(25.0, 1.4);
  evidence.strike.parameters.squirtMassRatio = 25.0;
  evidence.strike.balls[0].position = {-0.4, -0.12};
  evidence.strike.strike = {0.0, 1.4, -0.2, 0.1, radiansFromDegrees(6.0)};
  const TableVector way = evidence.strike.balls[1].position - evidence.strike.balls[0].position;
  evidence.strike.departure_rad = direction(way) + 0.02;
  evidence.strike.strike =
      strikeDeparting(evidence.strike.departure_rad, evidence.strike.strike, evidence.strike.parameters);
  evidence.lineError_rad = {0.03, 0.002};
  const auto account = missAccount(Table{}, evidence);
  QVERIFY(account.has_value());
  QVERIFY(std::abs(sumOf(*account) - 0.03) < 1e-12);
  for (const Measured& part : {account->aim_rad, account->squirt_rad, account->swerve_rad, account->collisionThrow_rad,
                               account->spinThrow_rad, account->remainder_rad}) {
    QVERIFY(part.standardUncertainty > 0.0);
  }
}

void MissAccountTest::anAimOffTheGhostBallIsAimAndNothingElse() {
  MissEvidence evidence = stunCut(0.0, 2.0);
  evidence.strike.parameters.ballFriction = constantBallFriction(0.0);
  evidence.strike.balls[0].position.x = 0.2 - 2.0 * kRadius_m - 1.0;
  evidence.strike.strike.aim_rad = evidence.strike.departure_rad = radiansFromDegrees(0.1);
  const auto account = missAccount(Table{}, evidence);
  QVERIFY(account.has_value());
  // s = 1 m, full hit: 0.1 degrees of aim turn the line by -1.7501 degrees. Source: reference sheet, section 6.
  QVERIFY(std::abs(degreesFromRadians(account->aim_rad.value) + 1.7501) < 0.002);
  QVERIFY(std::abs(account->squirt_rad.value) < 1e-9);
  QVERIFY(std::abs(account->collisionThrow_rad.value) < 1e-9);
}

void MissAccountTest::aCueBallThatMissesHasNoAccount() {
  MissEvidence evidence = stunCut(0.0, 2.0);
  evidence.strike.balls[0].position = {-0.5, 0.1};
  evidence.strike.strike.aim_rad = evidence.strike.departure_rad = 0.5;
  QVERIFY(!missAccount(Table{}, evidence).has_value());
}

void MissAccountTest::thePlainMouthBoundsTheOpening() {
  // A ball of 57.15 mm must pass nose points 116 mm apart; facings may turn in a little more. Source: the simple mouth
  // model, reference sheet section 6.
  const Table table;
  const auto simulator = Simulator::create(table, PhysicsParameters{});
  QVERIFY(simulator.has_value());
  const Pocket pocket = pockets(table)[static_cast<std::size_t>(PocketName::FootLeft)];
  const TablePoint from = pocket.mouth - 0.6 * pocket.inward;
  const auto opening = pocketOpening(*simulator, pocket, from, 1.0);
  QVERIFY(opening.has_value());
  QVERIFY2(opening->width_m > 0.5 * (pocket.mouth_m - 2.0 * kRadius_m), qPrintable(QString::number(opening->width_m)));
  QVERIFY(opening->width_m < pocket.mouth_m);
  // Straight at the pocket both sides are alike.
  QVERIFY(std::abs(opening->clockwise_rad - opening->counterClockwise_rad) < 0.002);
}

void MissAccountTest::aFasterBallFindsASmallerPocket() {
  const Table table;
  const auto simulator = Simulator::create(table, PhysicsParameters{});
  const Pocket pocket = pockets(table)[static_cast<std::size_t>(PocketName::FootLeft)];
  const TablePoint from = pocket.mouth - 0.6 * pocket.inward;
  const auto soft = pocketOpening(*simulator, pocket, from, 0.8);
  const auto hard = pocketOpening(*simulator, pocket, from, 4.0);
  QVERIFY(soft && hard);
  QVERIFY(hard->width_m <= soft->width_m + 1e-4);
  QVERIFY(!pocketOpening(*simulator, pocket, from, 0.05).has_value());
}

FERRULE_TEST(MissAccountTest)
#include "miss_account_test.moc"
