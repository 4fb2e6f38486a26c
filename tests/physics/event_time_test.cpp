// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/event_time.h"

#include <QtTest>

#include "core/geometry/units.h"
#include "core/physics/simulator.h"
#include "tests/physics/physics_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class EventTimeTest : public QObject {
  Q_OBJECT
 private slots:
  void constantSpeedMeetsAtThePublishedTime();
  void aSlideMeetsARollAtThePublishedPlace();
  void anExactTangentIsEitherAGrazeOrNothing();
  void anEventAfterTheStopIsNone();
  void aBallMeetsACushionAtThePublishedTime();
  void smallErrorsOfAimGrowAsDerived();
};

namespace {

const PhysicsParameters kP = referenceParameters();

Motion motion(TablePoint from, TableVector velocity, TableVector acceleration, double end_s = kNever) {
  Motion m;
  m.kind = MotionKind::Rolling;
  m.end_s = end_s;
  m.position = {from.x, from.y, kP.ballRadius_m};
  m.velocity = horizontal(velocity);
  m.acceleration = horizontal(acceleration);
  return m;
}

Motion resting(TablePoint at) {
  Motion m;
  m.position = {at.x, at.y, kP.ballRadius_m};
  return m;
}

}  // namespace

/// One metre apart, 1 m/s: (1 − 2R)/v = 0.94285 s.
void EventTimeTest::constantSpeedMeetsAtThePublishedTime() {
  const double time_s =
      ballContactTime(motion({0.0, 0.0}, {1.0, 0.0}, {}, 10.0), resting({1.0, 0.0}), 0.0, kP.ballRadius_m);
  COMPARE_WITHIN(time_s, 0.94285, 1e-12);
}

/// Scheme of Leckie and Greenspan (2006, from memory); roots by an eigenvalue solver: 0.3261590870 s, the balls at
/// (0.55197494, −0.02866949) and (0.6089716, −0.0244858).
void EventTimeTest::aSlideMeetsARollAtThePublishedPlace() {
  const Motion slide = motion({0.0, 0.0}, {2.0, 0.0}, {-1.88650999, -0.53900285}, 0.53);
  const Motion roll = motion({0.8, -0.12}, {-0.6, 0.3}, {0.08774331, -0.04387165}, 6.0);
  const double time_s = ballContactTime(slide, roll, 0.0, kP.ballRadius_m);
  COMPARE_WITHIN(time_s, 0.3261590870, 5e-10);
  COMPARE_WITHIN(slide.positionAt(time_s).x, 0.55197494, 6e-9);
  COMPARE_WITHIN(slide.positionAt(time_s).y, -0.02866949, 6e-9);
  COMPARE_WITHIN(roll.positionAt(time_s).x, 0.6089716, 6e-8);
  COMPARE_WITHIN(roll.positionAt(time_s).y, -0.0244858, 6e-8);
}

/// Offset 2R exactly, deceleration 0.0981: a double root at 1.054547 s. Either answer is right; another time is not.
void EventTimeTest::anExactTangentIsEitherAGrazeOrNothing() {
  const double side = 2.0 * kP.ballRadius_m;
  const Motion passing = motion({-1.0, side}, {1.0, 0.0}, {-0.0981, 0.0}, 10.19);
  const double time_s = ballContactTime(passing, resting({0.0, 0.0}), 0.0, kP.ballRadius_m);
  if (time_s != kNever) COMPARE_WITHIN(time_s, 1.054547, 1e-5);
  // A nanometre nearer it is a hit, half a chord of 2R √(2ε) before that.
  const Motion nearer = motion({-1.0, side - 1e-9}, {1.0, 0.0}, {-0.0981, 0.0}, 10.19);
  const double hit_s = ballContactTime(nearer, resting({0.0, 0.0}), 0.0, kP.ballRadius_m);
  QVERIFY(hit_s < 1.054547);
  COMPARE_WITHIN(hit_s, 1.054547, 2e-5);
}

/// A ball that stops 0.1 mm short: the parabola goes on, and would come back.
void EventTimeTest::anEventAfterTheStopIsNone() {
  const double stop_m = 1.0 / (2.0 * 0.0981);
  const Motion rolling = motion({0.0, 0.0}, {1.0, 0.0}, {-0.0981, 0.0}, 1.0 / 0.0981);
  const double apart = 2.0 * kP.ballRadius_m;
  QCOMPARE(ballContactTime(rolling, resting({stop_m + apart + 1e-4, 0.0}), 0.0, kP.ballRadius_m), kNever);
  QVERIFY(ballContactTime(rolling, resting({stop_m + apart - 1e-4, 0.0}), 0.0, kP.ballRadius_m) < 10.194);
}

/// Half a metre from touching, 1 m/s, deceleration 0.0981: 0.51290359 s.
void EventTimeTest::aBallMeetsACushionAtThePublishedTime() {
  const Bed bed = bedOf(Table{}, kP.ballRadius_m);
  const double from_m = bed.halfLength_m - bed.reach_m - 0.5;
  const BoundaryEvent event = nextBoundary(motion({from_m, 0.2}, {1.0, 0.0}, {-0.0981, 0.0}, 10.0), 0.0, bed);
  QCOMPARE(event.kind, BoundaryKind::Cushion);
  QCOMPARE(event.cushion, CushionName::Foot);
  COMPARE_WITHIN(event.time_s, 0.51290359, 5e-9);
}

/// dα/dδ = 1 − w cos γ/(2R cos φ): an aim that is off by δ turns the object ball by so much (exact geometry of the
/// ghost ball; numbers from it): 1 m straight, 0.1° −1.7501°, 0.5° −8.7894°; 30° ∓1.9988°/+2.0441°; 45° −2.4201°; 2 m
/// straight 0.5° −17.808°. Played without friction between the balls.
void EventTimeTest::smallErrorsOfAimGrowAsDerived() {
  PhysicsParameters p = kP;
  p.ballFriction = constantBallFriction(0.0);
  p.squirtMassRatio = 0.0;
  const auto table = Simulator::create(Table{}, p);
  for (const auto& [way_m, cut_deg, off_deg, turn_deg] : {std::tuple{1.0, 0.0, 0.1, -1.7501},
                                                          {1.0, 0.0, 0.5, -8.7894},
                                                          {1.0, 30.0, 0.1, -1.9988},
                                                          {1.0, 30.0, -0.1, 2.0441},
                                                          {1.0, 45.0, 0.1, -2.4201},
                                                          {2.0, 0.0, 0.5, -17.808}}) {
    const double cut = radiansFromDegrees(cut_deg);
    const TablePoint cueBall{-1.1, 0.0};
    const TablePoint object =
        cueBall + TableVector{way_m + 2.0 * p.ballRadius_m * std::cos(cut), 2.0 * p.ballRadius_m * std::sin(cut)};
    const Position before{{kCueBall, cueBall}, {BallName(1), object}};
    // Aimed to the other side of the ball, the cut grows by what the geometry says.
    const auto s = table->shoot(before, {radiansFromDegrees(off_deg), 3.0, 0.0, 0.0, 0.0});
    QVERIFY(s.has_value());
    const Vector3 v = s->paths[1].stateAt(s->events.front().time_s + 1e-9).velocity;
    const double half_unit = std::abs(turn_deg) > 10.0 ? 6e-4 : 6e-5;
    COMPARE_WITHIN(degreesFromRadians(std::atan2(v.y, v.x)) - cut_deg, turn_deg, half_unit);
  }
}

FERRULE_TEST(EventTimeTest)
#include "event_time_test.moc"
