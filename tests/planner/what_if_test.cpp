// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/what_if.h"

#include <QtTest>
#include <cmath>

#include "core/geometry/units.h"
#include "core/planner/shot_review.h"
#include "tests/planner/planner_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class WhatIfTest : public QObject {
  Q_OBJECT
 private slots:
  void theMarginOfAStraightPotIsWhatGeometrySays();
  void aLongerPotAllowsLess();
  void aSafetyHasNoMargin();
  void anotherStrikeStillPotsAndLeavesElsewhere();
  void aStrikeThatCannotBePlayedIsNone();
};

namespace {

const std::array<Scatter, 2> kClub{scatterOf(PlayerLevel::Club), scatterOf(PlayerLevel::Club)};

/// A straight pot of the 1 into the foot left pocket, so far from the pocket along its middle line, the cue ball 0.5 m
/// behind it.
Situation straightPot(double toPocket_m) {
  const Pocket pocket = pockets(Table{})[static_cast<std::size_t>(PocketName::FootLeft)];
  const TableVector back{-std::sqrt(0.5), -std::sqrt(0.5)};
  const TablePoint ball = pocket.mouth + toPocket_m * back;
  return situationOf(Game::EightBall, {{kCueBall, ball + 0.5 * back}, {BallName(1), ball}, {BallName(9), {-1.0, 0.4}}},
                     "solids");
}

Plan potOf(const Situation& situation) {
  const auto plan = meantPlan(ninefoot(), situation, {BallName(1), PocketName::FootLeft}, true,
                              {radiansFromDegrees(45.0), 1.5, 0.0, 0.0, 0.0}, kClub.front());
  if (!plan) qFatal("the straight pot has no plan");
  return *plan;
}

}  // namespace

void WhatIfTest::theMarginOfAStraightPotIsWhatGeometrySays() {
  // For a straight pot an aim off by a turns the object ball by a (d - 2R) / 2R at first order, d the balls' distance;
  // the ball falls as long as its centre passes the mouth within half of what the mouth leaves beside it.
  const Situation situation = straightPot(0.6);
  const auto margin = aimMargin(ninefoot(), situation, potOf(situation));
  QVERIFY(margin.has_value());
  const double radius_m = ninefoot().simulator().bed().radius_m;
  const double clear_m = 0.5 * pockets(Table{})[static_cast<std::size_t>(PocketName::FootLeft)].mouth_m - radius_m;
  const double geometric_rad = clear_m / 0.6 * 2.0 * radius_m / (0.5 - 2.0 * radius_m);
  // Balls also fall off the jaws, and friction throws the object ball back: as much again at most.
  QVERIFY2(margin->left_rad > 0.8 * geometric_rad && margin->left_rad < 2.5 * geometric_rad,
           qPrintable(QString::number(margin->left_rad / geometric_rad)));
  QVERIFY(std::abs(margin->left_rad - margin->right_rad) < 0.25 * margin->left_rad);
}

void WhatIfTest::aLongerPotAllowsLess() {
  const Situation near = straightPot(0.4);
  const Situation far = straightPot(1.0);
  QVERIFY(aimMargin(ninefoot(), far, potOf(far))->left_rad < aimMargin(ninefoot(), near, potOf(near))->left_rad);
}

void WhatIfTest::aSafetyHasNoMargin() {
  const Situation situation = straightPot(0.6);
  Plan safety = potOf(situation);
  safety.kind = PlanKind::Safety;
  safety.pocket.reset();
  QVERIFY(!aimMargin(ninefoot(), situation, safety).has_value());
}

void WhatIfTest::anotherStrikeStillPotsAndLeavesElsewhere() {
  const Situation situation = straightPot(0.6);
  const Plan plan = potOf(situation);
  const auto stun = withOtherStrike(ninefoot(), situation, plan, {2.0, 0.0, -0.1}, kClub);
  const auto draw = withOtherStrike(ninefoot(), situation, plan, {2.0, 0.0, -0.4}, kClub);
  QVERIFY(stun && draw);
  QVERIFY(stun->chances.pot > 0.5 && draw->chances.pot > 0.5);
  QCOMPARE(stun->plan.strike.height, -0.1);
  // Draw comes back farther from the pocket.
  QVERIFY(stun->chances.leave.mean.x > draw->chances.leave.mean.x + 0.2);
}

void WhatIfTest::aStrikeThatCannotBePlayedIsNone() {
  const Situation situation = straightPot(0.6);
  const Plan plan = potOf(situation);
  QVERIFY(!withOtherStrike(ninefoot(), situation, plan, {1.5, 0.7, 0.7}, kClub).has_value());
  // Too soft to reach the pocket.
  QVERIFY(!withOtherStrike(ninefoot(), situation, plan, {0.1, 0.0, 0.0}, kClub).has_value());
}

FERRULE_TEST(WhatIfTest)
#include "what_if_test.moc"
