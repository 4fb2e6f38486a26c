// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/simulator.h"

#include <QtTest>
#include <algorithm>

#include "core/base/random.h"
#include "core/geometry/units.h"
#include "tests/physics/physics_support.h"
#include "tests/physics/random_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class SimulatorTest : public QObject {
  Q_OBJECT
 private slots:
  void aBallRollsIntoAnotherAtThePublishedTime();
  void aGrazeByAMicrometreIsAHit();
  void aFullBallStunStopsTheCueBall();
  void aStraightPotGoesDown();
  void aBallLeftAloneStaysWhereItIs();
  void aFrozenBallIsNotHitWithoutMovingTowardIt();
  void aRowOfFrozenBallsPassesTheBlowToItsEnd();
  void aHeadOnBreakStaysSymmetrical();
  void randomShotsObeyTheLaws_data();
  void randomShotsObeyTheLaws();
  void theOrderOfTheBallsDoesNotMatter();
  void measuredPositionsThatOverlapALittleArePartedFirst();
  void nonsenseIsRefusedByName();
  void aTimeLimitStopsTheRun();
};

namespace {

const PhysicsParameters kP = referenceParameters();

Simulator simulator(const PhysicsParameters& p = kP) {
  return *Simulator::create(Table{}, p);
}

const FinalBall& finalOf(const Simulation& s, BallName ball) {
  return *std::ranges::find(s.after, ball, &FinalBall::ball);
}

}  // namespace

/// One metre apart, 1 m/s, deceleration 0.0981: contact at 0.99102334 s (Leckie and Greenspan 2006, from memory).
void SimulatorTest::aBallRollsIntoAnotherAtThePublishedTime() {
  const BallState balls[] = {
      {kCueBall, {-0.5, 0.0, kP.ballRadius_m}, {1.0, 0.0, 0.0}, {0.0, 1.0 / kP.ballRadius_m, 0.0}},
      ballAtRest(BallName(1), {0.5, 0.0}, kP)};
  const auto s = simulator().run(balls);
  QVERIFY(s.has_value());
  QCOMPARE(s->events.front().kind, EventKind::Ball);
  COMPARE_WITHIN(s->events.front().time_s, 0.99102334, 5e-9);
  QCOMPARE(firstContactIn(*s), std::optional(BallName(1)));
}

/// Half chord 2R √(2ε): offset 2R (1 − ε) with ε = 1e-9 still touches.
void SimulatorTest::aGrazeByAMicrometreIsAHit() {
  for (const double epsilon : {1e-3, 1e-6, 1e-9}) {
    for (const double side : {1.0 - epsilon, 1.0 + epsilon}) {
      const BallState balls[] = {
          {kCueBall, {-0.5, 0.0, kP.ballRadius_m}, {1.0, 0.0, 0.0}, {0.0, 1.0 / kP.ballRadius_m, 0.0}},
          ballAtRest(BallName(1), {0.3, 2.0 * kP.ballRadius_m * side}, kP)};
      const auto s = simulator().run(balls);
      QCOMPARE(firstContactIn(*s).has_value(), side < 1.0);
      if (side < 1.0) {
        const double chord = 2.0 * kP.ballRadius_m * std::sqrt(2.0 * epsilon);
        COMPARE_WITHIN(0.3 - s->events.front().position.x, chord, 1e-3 * chord + 1e-10);
      }
    }
  }
}

void SimulatorTest::aFullBallStunStopsTheCueBall() {
  PhysicsParameters p = kP;
  p.ballRestitution = 1.0;
  p.slidingFriction = 0.2;
  // The spin that is used up on the way: S = −(5/7) · 2 a T with v at the hit as it falls out; here a short way.
  const Position before{{kCueBall, {0.0, 0.0}}, {BallName(1), {2.0 * p.ballRadius_m + 1e-6, 0.0}}};
  const auto s = simulator(p).shoot(before, {0.0, 1.0, 0.0, 0.0, 0.0});
  QVERIFY(s.has_value());
  COMPARE_WITHIN(finalOf(*s, kCueBall).position.x, 0.0, 2e-5);
  QVERIFY(finalOf(*s, BallName(1)).position.x > 0.5);
}

void SimulatorTest::aStraightPotGoesDown() {
  const Table table;
  for (const Pocket& pocket : pockets(table)) {
    const TablePoint object = pocket.mouth - 0.4 * pocket.inward;
    const TablePoint cueBall = pocket.mouth - 0.8 * pocket.inward;
    const auto s = simulator().shoot({{kCueBall, cueBall}, {BallName(3), object}},
                                     {direction(pocket.inward), 1.5, 0.0, -0.3, 0.0});
    QVERIFY(s.has_value());
    const FinalBall& ball = finalOf(*s, BallName(3));
    QCOMPARE(ball.fate, BallFate::Pocketed);
    QCOMPARE(*ball.pocket, pocket.name);
    QCOMPARE(finalOf(*s, kCueBall).fate, BallFate::OnTable);
    QCOMPARE(pocketedIn(*s).size(), std::size_t{1});
  }
}

void SimulatorTest::aBallLeftAloneStaysWhereItIs() {
  const BallState balls[] = {ballAtRest(BallName(5), {0.1, 0.2}, kP)};
  const auto s = simulator().run(balls);
  QCOMPARE(s->duration_s, 0.0);
  QCOMPARE(s->after.front().position, (TablePoint{0.1, 0.2}));
}

void SimulatorTest::aFrozenBallIsNotHitWithoutMovingTowardIt() {
  const double side = 2.0 * kP.ballRadius_m;
  const Position before{{kCueBall, {0.0, 0.0}}, {BallName(1), {side, 0.0}}, {BallName(2), {0.0, side}}};
  const auto s = simulator().shoot(before, {radiansFromDegrees(-120.0), 0.8, 0.0, 0.0, 0.0});
  QVERIFY(s->events.empty() || s->events.front().kind != EventKind::Ball || s->events.front().time_s > 0.1);
  QCOMPARE(finalOf(*s, BallName(1)).position, (TablePoint{side, 0.0}));
}

/// The same masses in a row, elastic: the last one takes all (a textbook case).
void SimulatorTest::aRowOfFrozenBallsPassesTheBlowToItsEnd() {
  PhysicsParameters p = kP;
  p.ballRestitution = 1.0;
  p.ballFriction = constantBallFriction(0.0);
  const double side = 2.0 * p.ballRadius_m;
  std::vector<BallState> balls{{kCueBall, {-0.2, 0.0, p.ballRadius_m}, {1.0, 0.0, 0.0}, {}}};
  for (int i = 1; i <= 4; ++i)
    balls.push_back(ballAtRest(BallName(i), {side * i, 0.0}, p));
  const auto s = simulator(p).run(balls);
  const double hit_s = s->events.front().time_s;
  const double brought = s->paths[0].stateAt(hit_s - 1e-9).velocity.x;
  QVERIFY(brought > 0.6);
  COMPARE_WITHIN(s->paths[4].stateAt(hit_s + 1e-9).velocity.x, brought, 1e-8);
  for (std::size_t i = 0; i < 4; ++i)
    COMPARE_WITHIN(s->paths[i].stateAt(hit_s + 1e-9).velocity.x, 0.0, 1e-8);
}

void SimulatorTest::aHeadOnBreakStaysSymmetrical() {
  std::vector<BallState> balls{{kCueBall, {-0.635, 0.0, kP.ballRadius_m}, {9.0, 0.0, 0.0}, {}}};
  const double row = kP.ballRadius_m * std::sqrt(3.0);
  int number = 1;
  std::vector<std::pair<int, int>> place;  // row, column from −row to row in steps of 2
  for (int i = 0; i < 5; ++i) {
    for (int j = -i; j <= i; j += 2) {
      balls.push_back(ballAtRest(BallName(number++), {0.635 + row * i, kP.ballRadius_m * j}, kP));
      place.emplace_back(i, j);
    }
  }
  SimulationOptions options;
  options.mostTime_s = 0.25;
  const auto s = simulator().run(balls, options);
  QVERIFY(s.has_value());
  for (std::size_t a = 0; a < place.size(); ++a) {
    for (std::size_t b = 0; b < place.size(); ++b) {
      if (place[a].first != place[b].first || place[a].second != -place[b].second) continue;
      const TablePoint one = s->after[a + 1].position;
      const TablePoint other = s->after[b + 1].position;
      QVERIFY2(std::abs(one.x - other.x) < 1e-6 && std::abs(one.y + other.y) < 1e-6,
               qPrintable(QStringLiteral("%1 %2 / %3 %4").arg(one.x).arg(one.y).arg(other.x).arg(other.y)));
    }
  }
}

void SimulatorTest::randomShotsObeyTheLaws_data() {
  QTest::addColumn<int>("seed");
  for (int seed = 0; seed < 8; ++seed)
    QTest::addRow("seed %d", seed) << seed;
}

/// A sample; tests/bench/physics plays a hundred thousand.
void SimulatorTest::randomShotsObeyTheLaws() {
  QFETCH(int, seed);
  const Simulator table = simulator();
  Random random(static_cast<std::uint64_t>(seed) + 100);
  for (int round = 0; round < 150; ++round) {
    const std::vector<BallState> balls = randomShot(table, random);
    const auto complaint = lawBrokenBy(table, balls);
    QVERIFY2(complaint.empty(),
             qPrintable(QString::fromStdString(complaint) + QStringLiteral(" in round %1").arg(round)));
  }
}

void SimulatorTest::theOrderOfTheBallsDoesNotMatter() {
  const Simulator table = simulator();
  Random random(9);
  std::vector<BallState> balls = randomShot(table, random);
  const auto one = table.run(balls);
  std::ranges::reverse(balls);
  const auto other = table.run(balls);
  QVERIFY(one.has_value() && other.has_value());
  for (const FinalBall& ball : one->after)
    QCOMPARE(finalOf(*other, ball.ball), ball);
}

void SimulatorTest::measuredPositionsThatOverlapALittleArePartedFirst() {
  const Position before{{kCueBall, {0.0, 0.0}}, {BallName(1), {0.0562, 0.0}}, {BallName(2), {0.0281, 0.049}}};
  const auto s = simulator().shoot(before, {1.0, 0.0, 0.0, 0.0, 0.0});
  QVERIFY(s.has_value());
  for (std::size_t i = 0; i < 3; ++i) {
    for (std::size_t j = i + 1; j < 3; ++j) {
      QVERIFY(distance(s->after[i].position, s->after[j].position) > 2.0 * kP.ballRadius_m - 1e-9);
    }
  }
}

void SimulatorTest::nonsenseIsRefusedByName() {
  const Simulator table = simulator();
  const auto refusal = [&](const Position& before, const Strike& strike = {0.0, 1.0, 0.0, 0.0, 0.0}) {
    const auto s = table.shoot(before, strike);
    return s ? Error{} : s.error();
  };
  QCOMPARE(refusal({{kCueBall, {std::nan(""), 0.0}}}).code, ErrorCode::FieldInvalid);
  QCOMPARE(refusal({{kCueBall, {0.0, HUGE_VAL}}}).code, ErrorCode::FieldInvalid);
  QCOMPARE(refusal({{kCueBall, {0.0, 0.0}}, {BallName(4), {0.05, 0.0}}}).code, ErrorCode::BallsOverlap);
  QCOMPARE(refusal({{kCueBall, {0.0, 0.0}}, {BallName(4), {0.05, 0.0}}}).detail, std::string("cue and 4"));
  QCOMPARE(refusal({{kCueBall, {0.0, 0.0}}, {BallName(4), {0.0, 0.0}}}).code, ErrorCode::BallsOverlap);
  QCOMPARE(refusal({{kCueBall, {0.0, 0.0}}, {BallName(4), {0.0, 0.7}}}).code, ErrorCode::BallOutsideTable);
  QCOMPARE(refusal({{kCueBall, {0.0, 0.0}}, {BallName(4), {0.3, 0.0}}, {BallName(4), {0.5, 0.0}}}).code,
           ErrorCode::FieldInvalid);
  QCOMPARE(refusal({{BallName(4), {0.3, 0.0}}}).code, ErrorCode::NotFound);
  QCOMPARE(refusal({{kCueBall, {0.0, 0.0}}}, {0.0, 2.0, 0.4, 0.4, 0.0}).code, ErrorCode::StrikePastMiscue);
  for (double PhysicsParameters::*field :
       {&PhysicsParameters::slidingFriction, &PhysicsParameters::rollingFriction, &PhysicsParameters::ballRestitution,
        &PhysicsParameters::cushionFriction, &PhysicsParameters::gravity_mps2, &PhysicsParameters::ballMass_kg}) {
    for (const double bad : {-0.1, std::nan(""), HUGE_VAL}) {
      PhysicsParameters p;
      p.*field = bad;
      const auto made = Simulator::create(Table{}, p);
      QVERIFY(!made.has_value());
      QCOMPARE(made.error().code, ErrorCode::FieldInvalid);
    }
  }
}

void SimulatorTest::aTimeLimitStopsTheRun() {
  SimulationOptions options;
  options.mostTime_s = 0.5;
  const auto s = simulator().shoot({{kCueBall, {0.0, 0.0}}}, {0.3, 3.0, 0.0, 0.0, 0.0}, options);
  QCOMPARE(s->end, SimulationEnd::TimeLimit);
  QCOMPARE(s->duration_s, 0.5);
}

FERRULE_TEST(SimulatorTest)
#include "simulator_test.moc"
