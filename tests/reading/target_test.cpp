// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/target.h"

#include <QtTest>
#include <cmath>

#include "core/geometry/units.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;

Pocket footLeft() {
  return pockets(Table{})[static_cast<std::size_t>(PocketName::FootLeft)];
}

TableVector turned(TableVector way, double degrees) {
  const double angle = direction(way) + radiansFromDegrees(degrees);
  return {length(way) * std::cos(angle), length(way) * std::sin(angle)};
}

/// A ball that lies a metre before the foot-left pocket, to be cut to the left (counter-clockwise) by so many degrees,
/// sent off by error_deg from the pocket's middle.
FirstHit hitWith(double cut_deg, double error_deg) {
  FirstHit hit;
  hit.ball = BallName(4);
  hit.ballPlace = footLeft().mouth - 1.0 * footLeft().inward;
  const TableVector way = footLeft().mouth - hit.ballPlace;
  hit.cueCourse = turned(2.0 * unit(way), -cut_deg);
  hit.ballCourse = turned(1.5 * unit(way), error_deg);
  hit.ballTravel_m = 1.2;
  hit.line = unit(hit.ballCourse);
  hit.courseUncertainty_rad = 0.002;
  return hit;
}

}  // namespace

class TargetTest : public QObject {
  Q_OBJECT
 private slots:
  void aMissIsNamedByTheSideItWentTo_data();
  void aMissIsNamedByTheSideItWentTo();
  void aCourseThatFitsNoPocketHasNoTarget();
  void aBallThatStoppedShortWasNotMeantForThePocket();
  void noStrokeCutsByMoreThanARightAngle();
  void aPotHasNoMissSide();
  void aPotOverARailHasNoLine();
  void aCallStandsHoweverFarTheBallWentAside();
  void aCallThatMetARailIsMeasuredNearTheStraightLine();
  void theLineIsToldInMillimetresAtTheMouth();
  void fullnessFollowsTheSineOfTheCut_data();
  void fullnessFollowsTheSineOfTheCut();
  void twoJawsOrOneAndOutIsARattle();
};

void TargetTest::aMissIsNamedByTheSideItWentTo_data() {
  QTest::addColumn<double>("cut_deg");
  QTest::addColumn<double>("error_deg");
  QTest::addColumn<bool>("over");
  QTest::newRow("cut to the left, went further left") << 30.0 << 2.0 << true;
  QTest::newRow("cut to the left, not far enough") << 30.0 << -2.0 << false;
  QTest::newRow("cut to the right, went further right") << -30.0 << -2.0 << true;
  QTest::newRow("cut to the right, not far enough") << -30.0 << 2.0 << false;
}

void TargetTest::aMissIsNamedByTheSideItWentTo() {
  QFETCH(double, cut_deg);
  QFETCH(double, error_deg);
  QFETCH(bool, over);
  const auto target = targetOfMiss(Table{}, hitWith(cut_deg, error_deg));
  QVERIFY(target.has_value());
  QVERIFY(target->ball == BallName(4));
  QVERIFY(target->pocket == PocketName::FootLeft);
  QVERIFY(target->missSide == (over ? MissSide::Over : MissSide::Under));
  QVERIFY(std::abs(degreesFromRadians(*target->lineError_rad) - error_deg) < 1e-9);
  QVERIFY(std::abs(degreesFromRadians(*target->cut_rad) - std::abs(cut_deg + error_deg)) < 1e-9);
}

void TargetTest::aCourseThatFitsNoPocketHasNoTarget() {
  QVERIFY(!targetOfMiss(Table{}, hitWith(20.0, 25.0)).has_value());
}

void TargetTest::aBallThatStoppedShortWasNotMeantForThePocket() {
  FirstHit hit = hitWith(20.0, 1.0);
  hit.ballTravel_m = 0.6;
  QVERIFY(!targetOfMiss(Table{}, hit).has_value());
}

void TargetTest::noStrokeCutsByMoreThanARightAngle() {
  QVERIFY(targetOfMiss(Table{}, hitWith(85.0, 0.5)).has_value());
  QVERIFY(!targetOfMiss(Table{}, hitWith(95.0, 0.5)).has_value());
}

void TargetTest::aPotHasNoMissSide() {
  const Target target = targetOfPot(Table{}, {BallName(4), PocketName::FootLeft}, hitWith(40.0, 0.7));
  QVERIFY(!target.missSide.has_value());
  QVERIFY(!target.called);
  QVERIFY(std::abs(degreesFromRadians(*target.lineError_rad) - 0.7) < 1e-9);
  const Target other = targetOfPot(Table{}, {BallName(5), PocketName::FootLeft}, hitWith(40.0, 0.7));
  QVERIFY(!other.cut_rad.has_value() && !other.lineError_rad.has_value());
}

void TargetTest::aPotOverARailHasNoLine() {
  FirstHit hit = hitWith(40.0, 60.0);
  hit.ballMetRail = true;
  const Target target = targetOfPot(Table{}, {BallName(4), PocketName::FootLeft}, hit);
  QVERIFY(target.cut_rad.has_value());
  QVERIFY(!target.lineError_rad.has_value());
}

void TargetTest::aCallStandsHoweverFarTheBallWentAside() {
  const Target target = targetOfCall(Table{}, BallName(4), PocketName::FootLeft, hitWith(20.0, 25.0));
  QVERIFY(target.called);
  QVERIFY(target.missSide == MissSide::Over);
  QVERIFY(std::abs(degreesFromRadians(*target.lineError_rad) - 25.0) < 1e-9);
}

void TargetTest::aCallThatMetARailIsMeasuredNearTheStraightLine() {
  FirstHit hit = hitWith(20.0, 3.0);
  hit.ballMetRail = true;
  const Target missed = targetOfCall(Table{}, BallName(4), PocketName::FootLeft, hit);
  QVERIFY(std::abs(degreesFromRadians(*missed.lineError_rad) - 3.0) < 1e-9);
  QVERIFY(missed.missSide == MissSide::Over);
  // Farther aside it may have been meant over the cushion.
  FirstHit bank = hitWith(20.0, 25.0);
  bank.ballMetRail = true;
  QVERIFY(!targetOfCall(Table{}, BallName(4), PocketName::FootLeft, bank).lineError_rad);
}

/// A metre from the mouth, 2 degrees are 1000 sin(2 deg) = 34.90 mm; on the ball they are 28.575 * 0.0349 = 0.997 mm.
void TargetTest::theLineIsToldInMillimetresAtTheMouth() {
  const FirstHit hit = hitWith(30.0, 2.0);
  Target target = *targetOfMiss(Table{}, hit);
  describeLine(target, Table{}, hit, kRadius_m);
  QVERIFY(std::abs(1e3 * *target.missAtMouth_m - 34.8995) < 1e-3);
  QVERIFY(std::abs(1e3 * *target.contactError_m - 0.99746) < 1e-3);
  QCOMPARE(*target.lineErrorUncertainty_rad, 0.002);
}

void TargetTest::fullnessFollowsTheSineOfTheCut_data() {
  QTest::addColumn<double>("cut_deg");
  QTest::addColumn<double>("fullness");
  // Common names of fullness: three-quarter, half and quarter ball at asin 1/4, 1/2 and 3/4 (geometry).
  QTest::newRow("full") << 0.0 << 1.0;
  QTest::newRow("three quarters") << 14.477512 << 0.75;
  QTest::newRow("half") << 30.0 << 0.5;
  QTest::newRow("quarter") << 48.590378 << 0.25;
}

void TargetTest::fullnessFollowsTheSineOfTheCut() {
  QFETCH(double, cut_deg);
  QFETCH(double, fullness);
  const FirstHit hit = hitWith(cut_deg, 0.0);
  Target target;
  describeLine(target, Table{}, hit, kRadius_m);
  QVERIFY(std::abs(*target.fullness - fullness) < 1e-6);
}

void TargetTest::twoJawsOrOneAndOutIsARattle() {
  Target target;
  target.ball = BallName(4);
  target.pocket = PocketName::FootLeft;
  ShotEvent jaw;
  jaw.kind = EventKind::Cushion;
  jaw.ball = BallName(4);
  jaw.position = footLeft().mouth + 0.5 * footLeft().mouth_m * perpendicular(footLeft().inward);
  ShotReading reading;
  QVERIFY(!rattled(target, Table{}, reading, kRadius_m));
  reading.events = {jaw};
  QVERIFY(rattled(target, Table{}, reading, kRadius_m));
  reading.pocketed = {{BallName(4), PocketName::FootLeft}};
  QVERIFY(!rattled(target, Table{}, reading, kRadius_m));
  reading.events = {jaw, jaw};
  QVERIFY(rattled(target, Table{}, reading, kRadius_m));
  // Another ball's touch does not count, nor one far away.
  reading.pocketed.clear();
  jaw.ball = BallName(5);
  reading.events = {jaw};
  QVERIFY(!rattled(target, Table{}, reading, kRadius_m));
  jaw.ball = BallName(4);
  jaw.position = {0.0, 0.6};
  reading.events = {jaw};
  QVERIFY(!rattled(target, Table{}, reading, kRadius_m));
}

FERRULE_TEST(TargetTest)
#include "target_test.moc"
