// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <algorithm>

#include "core/geometry/units.h"
#include "core/physics/simulator.h"
#include "tests/physics/physics_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class AirborneTest : public QObject {
  Q_OBJECT
 private slots:
  void aJumpedBallClearsAnother();
  void whatClearsABallMustRiseByItsDiameter();
  void aBallHitFromAboveIsOvercutAsDerived();
  void aHeadOnRollHopsByTheFrictionOfTheBalls();
  void aBallThatComesDownOnTheRailIsLost();
  void aBallThatLandsInAPocketIsPocketed();
};

namespace {

const PhysicsParameters kP = referenceParameters();

Simulator simulator(const PhysicsParameters& p = kP) {
  return *Simulator::create(Table{}, p);
}

BallState flying(TablePoint3 from, Vector3 velocity) {
  return {kCueBall, from, velocity, {}};
}

}  // namespace

/// 45 degrees, 4 m/s, slate 0.55: 123 mm high, 0.897 m far (launch formulas; slate value from memory of Alciatore's
/// analyses). A ball in the middle of the flight is not touched; struck level along the same line it is.
void AirborneTest::aJumpedBallClearsAnother() {
  PhysicsParameters p = kP;
  p.slateRestitution = 0.55;
  const double elevation = radiansFromDegrees(45.0);
  const Position before{{kCueBall, {-0.6, 0.0}}, {BallName(1), {-0.6 + 0.897 / 2.0, 0.0}}};
  const auto jumped = simulator(p).shoot(before, {0.0, 4.0 * std::cos(elevation), 0.0, 0.0, elevation});
  QVERIFY(jumped.has_value());
  QVERIFY(std::ranges::none_of(
      jumped->events, [](const ShotEvent& event) { return event.kind == EventKind::Ball && event.time_s < 0.3; }));
  const auto height = jumped->paths.front().stateAt(0.31715 / 2.0).position.z - p.ballRadius_m;
  COMPARE_WITHIN(height, 0.12334, 1e-4);
  const auto level = simulator(p).shoot(before, {0.0, 4.0 * std::cos(elevation), 0.0, 0.0, 0.0});
  QCOMPARE(firstContactIn(*level), std::optional(BallName(1)));
}

/// vz ≥ √(4 g R) = 1.0589 m/s lifts a ball by 2R (launch formulas).
void AirborneTest::whatClearsABallMustRiseByItsDiameter() {
  COMPARE_WITHIN(std::sqrt(4.0 * kP.gravity_mps2 * kP.ballRadius_m), 1.0589, 6e-5);
  // Slowly over the table, so that the apex lies over the other ball.
  for (const double share : {0.97, 1.05}) {
    const double vz = 1.0589 * share;
    const double vx = 0.2;
    const double apex_s = vz / kP.gravity_mps2;
    const BallState balls[] = {flying({0.0, 0.0, kP.ballRadius_m + 0.5 * vz * apex_s}, {vx, 0.0, 0.0}),
                               ballAtRest(BallName(1), {0.002, 0.0}, kP)};
    const auto s = simulator().run(balls);
    if (share < 1.0) {
      QVERIFY(!s.has_value());
      QCOMPARE(s.error().code, ErrorCode::BallsOverlap);
    } else {
      QVERIFY(s.has_value());
    }
  }
}

/// Centres apart in height by h: sin φ = offset/√(4R² − h²), half-ball aim: 30.262, 31.091, 35.264, 49.107 degrees.
/// That airborne balls cut more: a public coaching page on airborne over-cut.
void AirborneTest::aBallHitFromAboveIsOvercutAsDerived() {
  PhysicsParameters p = kP;
  p.ballFriction = constantBallFriction(0.0);
  const double radius = p.ballRadius_m;
  for (const auto& [height, cut] : {std::pair{0.25, 30.262}, {0.5, 31.091}, {1.0, 35.264}, {1.5, 49.107}}) {
    // From close by and fast, so that it falls by no more than a micrometre on the way.
    const double fall_m = 1e-3;
    const double reach = std::sqrt(radius * radius * (4.0 - height * height) - radius * radius);
    const BallState balls[] = {flying({-reach - fall_m, 0.0, (1.0 + height) * radius}, {10.0, 0.0, 0.0}),
                               ballAtRest(BallName(1), {0.0, radius}, p)};
    const auto s = simulator(p).run(balls);
    QVERIFY(s.has_value());
    QCOMPARE(firstContactIn(*s), std::optional(BallName(1)));
    const Vector3 object = s->paths[1].stateAt(s->events.front().time_s + 1e-9).velocity;
    COMPARE_WITHIN(degreesFromRadians(std::atan2(object.y, object.x)), cut, 2e-2);
  }
}

/// vz = μ v for an elastic head-on hit of a rolling ball: 0.12 m/s and 0.73 mm at 2 m/s with μ = 0.06 (from the impulse
/// equations).
void AirborneTest::aHeadOnRollHopsByTheFrictionOfTheBalls() {
  PhysicsParameters p = kP;
  p.ballRestitution = 1.0;
  p.ballFriction = constantBallFriction(0.06);
  const Vector3 v{2.0, 0.0, 0.0};
  const BallState balls[] = {
      {kCueBall, {-2.0 * p.ballRadius_m - 1e-6, 0.0, p.ballRadius_m}, v, rollingSpin(v, 0.0, p.ballRadius_m)},
      ballAtRest(BallName(1), {0.0, 0.0}, p)};
  const auto s = simulator(p).run(balls);
  const double hit_s = s->events.front().time_s;
  COMPARE_WITHIN(s->paths[0].stateAt(hit_s + 1e-9).velocity.z, 0.12, 1e-4);
  const double apex_s = hit_s + 0.12 / p.gravity_mps2;
  COMPARE_WITHIN(s->paths[0].stateAt(apex_s).position.z - p.ballRadius_m, 0.73e-3, 6e-6);
}

void AirborneTest::aBallThatComesDownOnTheRailIsLost() {
  const BallState ball = flying({1.0, 0.2, kP.ballRadius_m + 0.15}, {2.5, 0.0, 0.5});
  const auto s = simulator().run(std::span(&ball, 1));
  QVERIFY(s.has_value());
  QCOMPARE(s->after.front().fate, BallFate::OffTable);
  QCOMPARE(s->events.back().kind, EventKind::OffTable);
}

void AirborneTest::aBallThatLandsInAPocketIsPocketed() {
  const Pocket pocket = pockets(Table{})[static_cast<std::size_t>(PocketName::SideRight)];
  const double fall_s = std::sqrt(2.0 * 0.1 / kP.gravity_mps2);
  const TablePoint from = pocket.hole - (1.0 * fall_s) * pocket.inward;
  const BallState ball = flying({from.x, from.y, kP.ballRadius_m + 0.1}, horizontal(1.0 * pocket.inward));
  const auto s = simulator().run(std::span(&ball, 1));
  QVERIFY(s.has_value());
  QCOMPARE(s->after.front().fate, BallFate::Pocketed);
  QCOMPARE(*s->after.front().pocket, PocketName::SideRight);
}

FERRULE_TEST(AirborneTest)
#include "airborne_test.moc"
