// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/chances.h"

#include <QtTest>

#include "core/geometry/units.h"
#include "tests/planner/planner_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class ChancesTest : public QObject {
  Q_OBJECT
 private slots:
  void aStraightPotFollowsTheErrorFunction_data();
  void aStraightPotFollowsTheErrorFunction();
  void theSameSeedGivesTheSameChances();
  void aMirroredTableGivesTheSameValue();
  void aBetterPositionIsWorthMore();
};

namespace {

/// The spot ball straight to a corner from this far away, asked for without error.
struct StraightShot {
  Situation situation;
  Plan plan;
};

StraightShot straight(double way_m) {
  const TablePoint ball = footSpot(Table{});
  const double along_rad = pocketWindow(ninefoot().simulator(), PocketName::FootLeft, ball, 1.5)->middle_rad;
  const TablePoint cue = ball - (way_m + 2.0 * 0.028575) * TableVector{std::cos(along_rad), std::sin(along_rad)};
  StraightShot shot;
  shot.situation = situationOf(Game::EightBall, {{kCueBall, cue}, {BallName(1), ball}, ballAt(8, 0.1, 0.1)}, "solids");
  shot.plan = {
      PlanKind::Direct, BallName(1), PocketName::FootLeft, BallName(1), 0, {along_rad, 2.0, 0.0, 0.0, 0.0}, {}};
  return shot;
}

}  // namespace

void ChancesTest::aStraightPotFollowsTheErrorFunction_data() {
  QTest::addColumn<double>("aim_deg");
  QTest::addColumn<double>("way_m");
  QTest::newRow("0.2 at 0.7 m") << 0.2 << 0.7;
  QTest::newRow("0.25 at 0.5 m") << 0.25 << 0.5;
  QTest::newRow("0.5 at 0.3 m") << 0.5 << 0.3;
}

/// P = erf(Δ / (σ √2)) for an aim's spread alone, with Δ the aim's half window: the ball's half window over s / 2R, and
/// 7/6 of that because throw takes tan φ / 7 off a small cut by a sliding ball. Source: Alciatore, technical proof A.14
/// (from memory). The window is the simulator's own. Linear theory against the whole simulation, in which a ball may
/// also come in off the rail: 5 points besides 4 standard errors.
void ChancesTest::aStraightPotFollowsTheErrorFunction() {
  QFETCH(double, aim_deg);
  QFETCH(double, way_m);
  const StraightShot shot = straight(way_m);
  const Scatter scatter{radiansFromDegrees(aim_deg), 0.0, 0.0, 0.0, 0.0};
  const auto chances = ninefoot().chances(shot.situation, shot.plan, {scatter, scatter}, 4000, 3);
  QVERIFY(chances.has_value());
  const auto window = pocketWindow(ninefoot().simulator(), PocketName::FootLeft, footSpot(Table{}), 1.5);
  const double half_rad = 7.0 / 6.0 * window->halfWidth_rad * 2.0 * 0.028575 / way_m;
  const Stance stance = stanceOf(ninefoot().simulator().bed(), shot.situation.balls, shot.situation.balls[0].position,
                                 shot.plan.strike.aim_rad);
  const double spread_rad = scatterFor(scatter, stance, 0.0, way_m).aim_rad;
  const double expected = std::erf(half_rad / (spread_rad * std::numbers::sqrt2));
  QVERIFY2(std::abs(chances->pot - expected) < 0.05 + 4.0 * chances->potError,
           qPrintable(QString("%1, expected %2").arg(chances->pot).arg(expected)));
}

void ChancesTest::theSameSeedGivesTheSameChances() {
  const StraightShot shot = straight(0.8);
  const Scatter scatter = scatterOf(PlayerLevel::Club);
  const auto one = ninefoot().chances(shot.situation, shot.plan, {scatter, scatter}, 300, 9);
  const auto same = ninefoot().chances(shot.situation, shot.plan, {scatter, scatter}, 300, 9);
  const auto other = ninefoot().chances(shot.situation, shot.plan, {scatter, scatter}, 300, 10);
  QCOMPARE(*one, *same);
  QVERIFY(*one != *other);
}

void ChancesTest::aMirroredTableGivesTheSameValue() {
  const std::array players{scatterOf(PlayerLevel::Club), scatterOf(PlayerLevel::Club)};
  const FrameValue value(ninefoot().simulator(), ninefoot().windows(), players);
  const Position balls{ballAt(0, 0.6, 0.2),  ballAt(1, 1.3, 0.7), ballAt(4, 0.3, 0.4),
                       ballAt(8, 1.6, 0.45), ballAt(9, 1.1, 0.9), ballAt(13, 1.8, 0.6)};
  const double here = value.glance(situationOf(Game::EightBall, balls, "solids"), 0).value;
  const double there = value.glance(situationOf(Game::EightBall, mirroredAcross(balls), "solids"), 0).value;
  QVERIFY(std::abs(here - there) < 1e-9);
  QVERIFY(here > 0.0 && here < 1.0);
}

void ChancesTest::aBetterPositionIsWorthMore() {
  const std::array players{scatterOf(PlayerLevel::Club), scatterOf(PlayerLevel::Club)};
  const FrameValue value(ninefoot().simulator(), ninefoot().windows(), players);
  const Position near{ballAt(0, 1.5, 0.6), ballAt(1, 1.75, 0.8), ballAt(8, 1.6, 0.2), ballAt(9, 0.3, 0.5)};
  const Position far{ballAt(0, 0.1, 0.1), ballAt(1, 1.75, 0.8), ballAt(8, 1.6, 0.2), ballAt(9, 0.3, 0.5)};
  const Position more{ballAt(0, 1.5, 0.6), ballAt(1, 1.75, 0.8), ballAt(2, 0.5, 0.3), ballAt(8, 1.6, 0.2),
                      ballAt(9, 0.3, 0.5)};
  const auto worth = [&](const Position& balls) {
    return value.glance(situationOf(Game::EightBall, balls, "solids"), 0).value;
  };
  QVERIFY(worth(near) > worth(far));
  QVERIFY(worth(near) > worth(more));
  Situation inHand = situationOf(Game::EightBall, far, "solids");
  inHand.cueBall = CueBallFreedom::Anywhere;
  QVERIFY(value.glance(inHand, 0).value > worth(far));
}

FERRULE_TEST(ChancesTest)
#include "chances_test.moc"
