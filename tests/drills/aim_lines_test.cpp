// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/aim_lines.h"

#include <QtTest>
#include <numbers>

#include "tests/drills/drill_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::drillshots;

class AimLinesTest : public QObject {
  Q_OBJECT
 private slots:
  void aSquareSetUpIsCutByItsAngle();
  void aBallCutToTheLeftSaysSo();
  void aWayOverOneCushionLeavesItAsItCame();
  void aWayOverTwoCushionsComesBackParallel();
  void aKickEndsFullOnTheBall();
  void aCueBallInHandHasNoLine();
};

void AimLinesTest::aSquareSetUpIsCutByItsAngle() {
  // The object ball in front of a side pocket, the cue ball on the line that meets the ghost ball at 30 degrees.
  const double radius_m = nineFoot().balls.radius_m();
  const double ghostAcross_m = 0.1 - 2.0 * radius_m;
  DrillStation station = cutDrill().stations[0];
  station.balls = {{BallName(1), surfaceFromTable(Table{}, {0.0, 0.1})}};
  station.goals[0].pocket = PocketName::SideLeft;
  const TablePoint cueBall{-0.5 * std::sin(std::numbers::pi / 6.0),
                           ghostAcross_m - 0.5 * std::cos(std::numbers::pi / 6.0)};
  station.cueBall = DrillBall{kCueBall, surfaceFromTable(Table{}, cueBall)};
  const auto lines = aimLines(station, nineFoot());
  QVERIFY(lines.has_value());
  QVERIFY(std::abs(*lines->cut_rad - std::numbers::pi / 6.0) < 1e-9);
  QVERIFY(distance(*lines->ghost, {0.0, ghostAcross_m}) < 1e-9);
  QCOMPARE(lines->objectBall.size(), std::size_t{2});
}

void AimLinesTest::aBallCutToTheLeftSaysSo() {
  DrillStation station = cutDrill().stations[0];
  station.balls = {{BallName(1), {1.5, 0.5}}};
  // Straight down the table and off to the left foot pocket.
  station.cueBall = DrillBall{kCueBall, {0.5, 0.5}};
  QVERIFY(aimLines(station, nineFoot())->cutSide == CutSide::Left);
  station.goals[0].pocket = PocketName::FootRight;
  QVERIFY(aimLines(station, nineFoot())->cutSide == CutSide::Right);
}

void AimLinesTest::aWayOverOneCushionLeavesItAsItCame() {
  const MeasuredTable table = nineFoot();
  const double nose_m = -table.table.width_m / 2.0 + table.balls.radius_m();
  const auto way = mirroredWay({-0.3, 0.1}, {0.5, 0.1}, {CushionName::RightHead}, table);
  QCOMPARE(way.size(), std::size_t{3});
  // Both ends as far from the cushion: in the middle.
  QVERIFY(distance(way[1], {0.1, nose_m}) < 1e-12);
}

void AimLinesTest::aWayOverTwoCushionsComesBackParallel() {
  const auto way = mirroredWay({0.6, -0.2}, {0.1, 0.3}, {CushionName::Foot, CushionName::LeftFoot}, nineFoot());
  QCOMPARE(way.size(), std::size_t{4});
  const TableVector out = way[1] - way[0];
  const TableVector back = way[3] - way[2];
  QVERIFY(std::abs(cross(unit(out), unit(back))) < 1e-12);
  QVERIFY(dot(out, back) < 0.0);
  QVERIFY(std::abs(way[1].x - (1.27 - 0.028575)) < 1e-12);
  QVERIFY(std::abs(way[2].y - (0.635 - 0.028575)) < 1e-12);
}

void AimLinesTest::aKickEndsFullOnTheBall() {
  DrillStation station = cutDrill().stations[0];
  station.cueBall = DrillBall{kCueBall, {0.5, 0.25}};
  station.balls = {{BallName(1), {1.75, 0.25}}};
  station.goals = {{GoalKind::Contact, BallName(1), {}, {CushionName::LeftFoot}}};
  const auto lines = aimLines(station, nineFoot());
  QVERIFY(lines.has_value());
  QCOMPARE(lines->cueBall.size(), std::size_t{3});
  QVERIFY(std::abs(distance(*lines->ghost, at(1.75, 0.25)) - 0.05715) < 1e-12);
  // Half way between the two, since both lie as far from the cushion.
  QVERIFY(std::abs(lines->cueBall[1].x - at(1.125, 0.0).x) < 1e-12);
  QVERIFY(!lines->cut_rad.has_value());
}

void AimLinesTest::aCueBallInHandHasNoLine() {
  DrillStation station = cutDrill().stations[0];
  station.cueBall.reset();
  QVERIFY(!aimLines(station, nineFoot()).has_value());
}

FERRULE_TEST(AimLinesTest)
#include "aim_lines_test.moc"
