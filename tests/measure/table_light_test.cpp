// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/table_light.h"

#include <QtTest>
#include <algorithm>
#include <cmath>

#include "core/drills/mirror.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// What is sent onto the cloth, in the table frame.
class TableLightTest : public QObject {
  Q_OBJECT
 private slots:
  void everyBallOfAPositionHasItsRingAndNumber();
  void aStrikeAddsTheWays();
  void aDrillShowsItsBallsAndItsZone();
  void aMirroredDrillIsMirroredLight();
  void aSuggestionShowsItsWaysAndTheLandingArea();
  void onlyBallsThatWereMovedArePutBack();

 private:
  static TablePoint middleOf(const LightLine& ring);
};

namespace {

constexpr double kRadius_m = 0.028575;

const BallName kThree{3};

DrillStation stopStation() {
  DrillStation station;
  station.cueBall = DrillBall{kCueBall, {0.5, 0.3}};
  station.balls.push_back({kThree, {1.0, 0.4}});
  DrillGoal goal;
  goal.kind = GoalKind::Rest;
  goal.zone = Zone{{{1.2, 0.25}}, 0.1};
  station.goals.push_back(goal);
  return station;
}

}  // namespace

TablePoint TableLightTest::middleOf(const LightLine& ring) {
  TableVector sum;
  for (const TablePoint p : ring.places)
    sum = sum + (p - TablePoint{});
  return TablePoint{} + sum / static_cast<double>(ring.places.size());
}

void TableLightTest::everyBallOfAPositionHasItsRingAndNumber() {
  const Position balls{{kCueBall, {-0.5, 0.1}}, {kThree, {0.4, -0.2}}};
  const LightDrawing drawing = lightOf(balls, MeasuredTable{});
  QCOMPARE(drawing.lines.size(), std::size_t{2});
  for (std::size_t i = 0; i < 2; ++i) {
    QVERIFY(distance(middleOf(drawing.lines[i]), balls[i].position) < 1e-9);
    for (const TablePoint p : drawing.lines[i].places)
      QVERIFY(std::abs(distance(p, balls[i].position) - kRadius_m) < 1e-9);
  }
  QCOMPARE(drawing.labels.size(), std::size_t{1});
  QCOMPARE(drawing.labels.front().text, std::string("3"));
}

void TableLightTest::aStrikeAddsTheWays() {
  PositionFile file;
  file.balls = {{kCueBall, {-0.5, 0.0}}, {kThree, {0.0, 0.0}}};
  Strike strike;
  strike.speed_mps = 1.5;
  file.strike = strike;
  const auto drawing = lightOf(file);
  QVERIFY(drawing.has_value());
  const auto ways = std::ranges::count(drawing->lines, true, &LightLine::dashed);
  QCOMPARE(ways, 2);
  // A ball on another is refused in the simulator's own words.
  file.balls[1].position = {-0.48, 0.0};
  QVERIFY(!lightOf(file));
}

void TableLightTest::aDrillShowsItsBallsAndItsZone() {
  const MeasuredTable measured;
  const DrillStation station = stopStation();
  const LightDrawing drawing = lightOf(station, measured);
  QCOMPARE(drawing.lines.size(), std::size_t{3});
  const LightLine& zone = drawing.lines.back();
  QVERIFY(zone.dashed && zone.closed);
  const TablePoint middle = ferrule::middleOf(*station.goals.front().zone, measured.table);
  for (const TablePoint p : zone.places)
    QVERIFY(std::abs(distance(p, middle) - 0.1 * measured.table.width_m) < 1e-6);
}

void TableLightTest::aMirroredDrillIsMirroredLight() {
  const MeasuredTable measured;
  Drill drill;
  drill.stations = {stopStation()};
  Mirroring sides;
  sides.sides = true;
  const LightDrawing plain = lightOf(drill.stations.front(), measured);
  const LightDrawing turned = lightOf(mirrored(drill, sides).stations.front(), measured);
  QCOMPARE(plain.lines.size(), turned.lines.size());
  for (std::size_t i = 0; i < plain.lines.size(); ++i) {
    const TablePoint a = middleOf(plain.lines[i]);
    const TablePoint b = middleOf(turned.lines[i]);
    QVERIFY(std::abs(a.x - b.x) < 1e-6 && std::abs(a.y + b.y) < 1e-6);
  }
}

void TableLightTest::aSuggestionShowsItsWaysAndTheLandingArea() {
  const std::vector<std::pair<BallName, std::vector<TablePoint>>> ways{
      {kCueBall, {{-0.5, 0.0}, {-0.06, 0.0}, {-0.06, 0.3}}}, {kThree, {{0.0, 0.0}, {0.9, 0.1}}}};
  const Leave leave{{-0.06, 0.3}, 0.05, 0.02, 0.5};
  const LightDrawing drawing = lightOfPlan(ways, leave, MeasuredTable{});
  QCOMPARE(std::ranges::count(drawing.lines, true, &LightLine::dashed), 2);
  // Under each ball that moves, and where the cue ball meets the object ball.
  QVERIFY(std::ranges::any_of(drawing.lines, [&](const LightLine& line) {
    return line.closed && distance(middleOf(line), TablePoint{-0.06, 0.0}) < 1e-9;
  }));
  const LightLine& area = drawing.lines.back();
  double longest_m = 0.0;
  for (const TablePoint p : area.places)
    longest_m = std::max(longest_m, distance(p, leave.mean));
  // The 95 % ellipse of a normal distribution in the plane: sqrt(5.991) standard deviations (chi-square, 2 degrees).
  QVERIFY(std::abs(longest_m - std::sqrt(5.9915) * leave.along_m) < 1e-4);
}

void TableLightTest::onlyBallsThatWereMovedArePutBack() {
  const Position before{{kCueBall, {-0.5, 0.0}}, {kThree, {0.2, 0.1}}, {BallName{8}, {0.6, 0.3}}};
  Position now = before;
  now[0].position = {-0.502, 0.0};  // misread by a hair
  now[1].position = {0.35, 0.1};
  now.pop_back();
  const auto displaced = displacedBalls(before, now);
  QCOMPARE(displaced.size(), std::size_t{2});
  QVERIFY(displaced[0].ball == kThree && displaced[0].lies.has_value());
  QVERIFY(std::abs(displaced[0].apart_m - 0.150) < 1e-12);
  QVERIFY(displaced[1].ball == BallName{8} && !displaced[1].lies.has_value());
  const LightDrawing drawing = lightOfPuttingBack(displaced, MeasuredTable{});
  QCOMPARE(drawing.lines.size(), std::size_t{3});
  QVERIFY(distance(middleOf(drawing.lines[0]), TablePoint{0.2, 0.1}) < 1e-9);
  QVERIFY(drawing.lines[1].dashed);
  QVERIFY(distance(middleOf(drawing.lines[2]), TablePoint{0.6, 0.3}) < 1e-9);
  QVERIFY(displacedBalls(before, before).empty());
}

FERRULE_TEST(TableLightTest)
#include "table_light_test.moc"
