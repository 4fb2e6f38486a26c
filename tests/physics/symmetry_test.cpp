// SPDX-License-Identifier: GPL-3.0-or-later
// What must not matter: where a run begins, what the balls are called, which machine it runs on. Mirrors and turns of
// whole shots are among the laws of random_shots.h.
#include <QtTest>
#include <algorithm>

#include "core/physics/simulator.h"
#include "tests/physics/physics_support.h"
#include "tests/physics/random_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class SymmetryTest : public QObject {
  Q_OBJECT
 private slots:
  void aRunThatIsPausedEndsTheSame();
  void namesDoNotMatter();
  void mirroredStrikesGiveMirroredShots_data();
  void mirroredStrikesGiveMirroredShots();
  void theSameInputGivesTheSameBits();
};

namespace {

const PhysicsParameters kP = referenceParameters();

Simulator simulator(const PhysicsParameters& p = kP) {
  return *Simulator::create(Table{}, p);
}

Position someBalls() {
  return {{kCueBall, {-0.61, 0.12}}, {BallName(3), {0.32, 0.05}}, {BallName(9), {0.71, -0.31}}};
}

const FinalBall& finalOf(const Simulation& s, BallName ball) {
  return *std::ranges::find(s.after, ball, &FinalBall::ball);
}

}  // namespace

/// The laws of motion do not know the time: what stands still in the middle of a shot and is let go again, with the
/// clock at zero, ends at the same place.
void SymmetryTest::aRunThatIsPausedEndsTheSame() {
  const Strike strike{-0.075, 2.2, 0.2, -0.15, 0.0};
  const auto whole = simulator().shoot(someBalls(), strike);
  QVERIFY(whole.has_value());
  QVERIFY(whole->events.size() >= 3);
  for (const double pause_s : {0.05, 0.4, 0.9, 1.7, 3.0}) {
    std::vector<BallState> balls;
    for (const BallPath& path : whole->paths) {
      if (path.motionAt(pause_s).kind == MotionKind::Gone) continue;
      QVERIFY(path.motionAt(pause_s).kind != MotionKind::Falling);
      balls.push_back(path.stateAt(pause_s));
    }
    const auto rest = simulator().run(balls);
    QVERIFY(rest.has_value());
    COMPARE_WITHIN(rest->duration_s + pause_s, whole->duration_s, 1e-8);
    for (const FinalBall& ball : rest->after) {
      QCOMPARE(ball.fate, finalOf(*whole, ball.ball).fate);
      QVERIFY(distance(ball.position, finalOf(*whole, ball.ball).position) < 1e-8);
    }
  }
}

void SymmetryTest::namesDoNotMatter() {
  Random random(31);
  const Simulator table = simulator();
  for (int round = 0; round < 40; ++round) {
    std::vector<BallState> balls = randomShot(table, random);
    if (balls.size() > 4) balls.resize(4);
    std::vector<BallState> renamed = balls;
    for (BallState& ball : renamed)
      ball.ball = BallName(15 - ball.ball.number());
    const auto one = table.run(balls);
    const auto other = table.run(renamed);
    QVERIFY(one.has_value() && other.has_value());
    for (std::size_t i = 0; i < balls.size(); ++i) {
      QCOMPARE(other->after[i].fate, one->after[i].fate);
      QVERIFY(distance(other->after[i].position, one->after[i].position) < 1e-6);
    }
  }
}

void SymmetryTest::mirroredStrikesGiveMirroredShots_data() {
  QTest::addColumn<double>("x");
  QTest::addColumn<double>("y");
  QTest::newRow("across the length") << 1.0 << -1.0;
  QTest::newRow("across the width") << -1.0 << 1.0;
  QTest::newRow("turned by 180 degrees") << -1.0 << -1.0;
}

/// From the cue on: aim mirrored, side changed over when the mirror turns left into right.
void SymmetryTest::mirroredStrikesGiveMirroredShots() {
  QFETCH(double, x);
  QFETCH(double, y);
  const Strike strike{-0.075, 2.2, 0.2, -0.15, 0.05};
  Strike other = strike;
  other.aim_rad = std::atan2(y * std::sin(strike.aim_rad), x * std::cos(strike.aim_rad));
  other.side = x * y * strike.side;
  Position before = someBalls();
  Position mirrored = before;
  for (BallAt& ball : mirrored)
    ball.position = {x * ball.position.x, y * ball.position.y};
  const auto one = simulator().shoot(before, strike);
  const auto two = simulator().shoot(mirrored, other);
  QVERIFY(one.has_value() && two.has_value());
  QCOMPARE(two->events.size(), one->events.size());
  for (std::size_t i = 0; i < one->after.size(); ++i) {
    QCOMPARE(two->after[i].fate, one->after[i].fate);
    COMPARE_WITHIN(two->after[i].position.x, x * one->after[i].position.x, 1e-9);
    COMPARE_WITHIN(two->after[i].position.y, y * one->after[i].position.y, 1e-9);
  }
}

/// A scene whose digits come from sums, products and square roots alone, which every machine of the standard rounds
/// alike: constant ball friction, no strike. When this number changes, every recorded simulation changes too.
void SymmetryTest::theSameInputGivesTheSameBits() {
  PhysicsParameters p = kP;
  p.ballFriction = constantBallFriction(0.05);
  const double r = p.ballRadius_m;
  const BallState balls[] = {{kCueBall, {-0.5, 0.03125, r}, {2.5, 0.25, 0.0}, {10.0, -20.0, 30.0}},
                             ballAtRest(BallName(1), {0.25, 0.125}, p),
                             ballAtRest(BallName(2), {0.75, 0.25}, p),
                             ballAtRest(BallName(3), {0.75, -0.25}, p)};
  const auto s = simulator(p).run(balls);
  QVERIFY(s.has_value());
  QVERIFY(s->events.size() >= 4);
  QCOMPARE(QString::number(hashOf(*s), 16), QStringLiteral("7392a10c8644ff52"));
  QCOMPARE(hashOf(*simulator(p).run(balls)), hashOf(*s));
}

FERRULE_TEST(SymmetryTest)
#include "symmetry_test.moc"
