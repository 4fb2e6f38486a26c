// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/planner/frozen_positions.h"

#include "core/table/rack.h"
#include "core/table/surface_coordinates.h"
#include "tests/planner/planner_support.h"

namespace ferrule::testing {

namespace {

using Idea = std::function<bool(const RankedPlan&)>;
constexpr auto kClub = PlayerLevel::Club;
constexpr auto kExpert = PlayerLevel::Expert;
constexpr auto kBeginner = PlayerLevel::Beginner;

Idea pots(int ball, std::optional<PocketName> pocket = std::nullopt) {
  return [=](const RankedPlan& p) {
    return p.plan.pocket && p.plan.ball == BallName(ball) && (!pocket || p.plan.pocket == pocket);
  };
}
Idea potsOneOf(BallMask balls) {
  return [=](const RankedPlan& p) { return p.plan.pocket && balls.has(p.plan.ball); };
}
Idea kindIs(PlanKind kind) {
  return [=](const RankedPlan& p) { return p.plan.kind == kind; };
}
Idea both(const Idea& a, const Idea& b) {
  return [=](const RankedPlan& p) { return a(p) && b(p); };
}
Idea either(const Idea& a, const Idea& b) {
  return [=](const RankedPlan& p) { return a(p) || b(p); };
}
Idea rarelyScratches() {
  return [](const RankedPlan& p) { return p.chances.scratch < 0.03; };
}
/// The cue ball comes to rest on average between these places, in widths of the surface from the head.
Idea leavesAlong(double least, double most) {
  return [=](const RankedPlan& p) {
    const double along = surfaceFromTable(Table{}, p.chances.leave.mean).along;
    return along >= least && along <= most;
  };
}
Idea opponentIsShutOut() {
  return [](const RankedPlan& p) { return !p.plan.pocket && p.chances.opponentOpen < 0.5; };
}

Situation solids(const Position& balls) {
  return situationOf(Game::EightBall, balls, "solids");
}
Situation open(const Position& balls) {
  return situationOf(Game::EightBall, balls, "open");
}
Situation nine(const Position& balls) {
  return situationOf(Game::NineBall, balls);
}
Situation inHand(Situation s) {
  s.cueBall = CueBallFreedom::Anywhere;
  return s;
}

Situation rack(Game game, RackKind kind) {
  Random random(7);
  Situation s = situationOf(game, racked(kind, Table{}, poolBalls(), random));
  s.breakShot = true;
  s.cueBall = CueBallFreedom::BehindString;
  return s;
}

std::vector<FrozenPosition> all() {
  const auto b = ballAt;
  return {
      // Play the open ball.
      {"the only ball with a way to a pocket", kClub,
       solids({b(0, 1.2, 0.5), b(1, 1.7, 0.75), b(2, 0.5, 0.06), b(9, 0.25, 0.06), b(10, 0.75, 0.06), b(11, 0.5, 0.2),
               b(8, 0.3, 0.7)}),
       pots(1)},
      {"a hanging ball before a long cut", kBeginner,
       solids({b(0, 1.4, 0.5), b(1, 1.95, 0.95), b(2, 0.2, 0.5), b(8, 1.0, 0.8), b(9, 0.7, 0.3)}), pots(1)},
      {"straight in the side", kClub,
       solids({b(0, 1.0, 0.3), b(1, 1.0, 0.7), b(2, 0.1, 0.5), b(8, 1.5, 0.3), b(9, 0.4, 0.8)}),
       pots(1, PocketName::SideLeft)},
      {"a rail-frozen ball into its corner", kClub,
       solids({b(0, 1.3, 0.25), b(1, 1.7, 0.0226), b(8, 0.5, 0.5), b(9, 0.4, 0.9)}), pots(1, PocketName::FootRight)},
      {"the cue ball on the rail", kClub, solids({b(0, 0.75, 0.0226), b(1, 1.25, 0.5), b(8, 0.4, 0.7), b(9, 0.2, 0.2)}),
       pots(1)},
      {"a two-ball-width gap is enough", kExpert,
       solids({b(0, 0.9, 0.5), b(1, 1.6, 0.5), b(9, 1.25, 0.42), b(10, 1.25, 0.58), b(8, 0.3, 0.3)}), pots(1)},
      // The eight.
      {"the eight straight in", kClub, solids({b(0, 1.5, 0.75), b(8, 1.8, 0.9), b(9, 0.5, 0.5), b(10, 0.3, 0.2)}),
       both(pots(8, PocketName::FootLeft), rarelyScratches())},
      {"the eight near the side, no follow into the pocket", kClub,
       solids({b(0, 1.0, 0.55), b(8, 1.0, 0.87), b(9, 0.5, 0.5), b(10, 1.5, 0.4)}),
       both(pots(8, PocketName::SideLeft), rarelyScratches())},
      {"the eight in the jaws", kBeginner, solids({b(0, 1.0, 0.5), b(8, 1.96, 0.96), b(9, 0.5, 0.5)}),
       both(pots(8), [](const RankedPlan& p) { return p.chances.foul < 0.1; })},
      {"a half-ball cut on the eight, not into the other corner", kExpert,
       solids({b(0, 1.1, 0.45), b(8, 1.5, 0.5), b(9, 0.3, 0.1), b(10, 0.2, 0.9)}), both(pots(8), rarelyScratches())},
      {"the last solid before the eight", kClub,
       solids({b(0, 1.3, 0.4), b(3, 1.7, 0.3), b(8, 0.6, 0.5), b(9, 0.3, 0.2), b(12, 0.2, 0.8)}), pots(3)},
      // Position.
      {"draw back for a ball behind", kExpert,
       solids({b(0, 1.3, 0.65), b(1, 1.6, 0.8), b(8, 0.5, 0.12), b(9, 0.1, 0.5)}),
       both(pots(1, PocketName::FootLeft), leavesAlong(0.0, 1.5))},
      {"follow on for a ball ahead", kExpert,
       solids({b(0, 0.7, 0.2), b(1, 0.85, 0.1), b(8, 1.75, 0.5), b(9, 0.1, 0.6)}),
       both(pots(1), leavesAlong(0.7, 2.0))},
      {"stay for the neighbour", kExpert, solids({b(0, 1.4, 0.6), b(1, 1.7, 0.75), b(8, 1.5, 0.2), b(9, 0.2, 0.5)}),
       both(pots(1), leavesAlong(1.0, 1.95))},
      {"three balls in a row leave the last one for later", kClub,
       solids({b(0, 1.3, 0.5), b(1, 1.6, 0.8), b(2, 1.7, 0.2), b(3, 0.2, 0.2), b(8, 0.4, 0.6), b(9, 1.0, 0.9)}),
       potsOneOf(BallMask::range(1, 2))},
      // Safety.
      {"nothing goes and the opponent is on the eight", kClub,
       solids({b(0, 1.7, 0.5), b(1, 0.06, 0.5), b(8, 1.0, 0.85), b(2, 0.06, 0.43), b(3, 0.06, 0.57)}),
       opponentIsShutOut()},
      {"frozen together on the rail", kClub,
       solids({b(0, 1.2, 0.5), b(1, 0.4, 0.0226), b(9, 0.355, 0.0226), b(10, 0.445, 0.0226), b(8, 1.5, 0.8),
               b(11, 0.4, 0.08)}),
       either(kindIs(PlanKind::Safety), kindIs(PlanKind::Bank))},
      {"a beginner does not play the length of the table thin", kBeginner,
       solids({b(0, 1.9, 0.1), b(1, 0.12, 0.35), b(8, 1.0, 0.5), b(9, 1.9, 0.85), b(10, 1.6, 0.7)}),
       kindIs(PlanKind::Safety)},
      {"hidden behind a wall: kick", kClub,
       solids({b(0, 0.5, 0.25), b(1, 1.5, 0.25), b(9, 1.0, 0.25), b(10, 1.0, 0.31), b(8, 1.0, 0.19)}),
       kindIs(PlanKind::Kick)},
      {"hidden close to a ball: kick", kExpert,
       solids({b(0, 0.3, 0.1), b(1, 1.7, 0.12), b(9, 0.38, 0.1), b(10, 0.36, 0.16), b(8, 1.2, 0.9)}),
       kindIs(PlanKind::Kick)},
      // Open table.
      {"take the group that lies open", kClub,
       open({b(0, 1.2, 0.5), b(1, 1.8, 0.8), b(2, 1.6, 0.2), b(9, 0.06, 0.06), b(10, 0.5, 0.03), b(11, 0.545, 0.03),
             b(12, 0.59, 0.03), b(8, 0.9, 0.4)}),
       potsOneOf(kSolids)},
      {"the fewer the better", kClub,
       open({b(0, 1.2, 0.5), b(1, 1.8, 0.25), b(9, 1.8, 0.75), b(2, 0.3, 0.03), b(3, 0.35, 0.03), b(4, 0.4, 0.03),
             b(5, 0.2, 0.5), b(8, 0.9, 0.4)}),
       potsOneOf(kStripes)},
      // Nine- and ten-ball.
      {"nine-ball: the one is the shot", kClub, nine({b(0, 1.0, 0.4), b(1, 1.6, 0.7), b(5, 0.5, 0.5), b(9, 0.3, 0.8)}),
       pots(1)},
      {"nine-ball: the nine hangs behind the one", kClub,
       nine({b(0, 1.3, 0.4), b(1, 1.7, 0.72), b(9, 1.93, 0.93), b(4, 0.3, 0.5), b(5, 0.2, 0.2), b(6, 0.5, 0.8)}),
       pots(9)},
      {"nine-ball: the nine alone", kClub, nine({b(0, 1.2, 0.6), b(9, 1.7, 0.75)}), pots(9)},
      {"nine-ball: the lowest hidden is kicked at", kClub,
       nine({b(0, 0.5, 0.5), b(1, 1.5, 0.5), b(7, 1.0, 0.5), b(8, 1.0, 0.44), b(9, 1.0, 0.56)}),
       kindIs(PlanKind::Kick)},
      {"ten-ball: the two before the ten", kClub,
       situationOf(Game::TenBall, {b(0, 0.8, 0.5), b(2, 0.3, 0.25), b(10, 1.8, 0.8)}), pots(2)},
      // Straight pool.
      {"straight pool: the ball at the pocket", kClub,
       situationOf(Game::StraightPool, {b(0, 1.4, 0.5), b(3, 1.85, 0.85), b(7, 0.2, 0.5), b(11, 0.3, 0.45)}), pots(3)},
      // The cue ball in hand.
      {"in hand for the eight", kBeginner, inHand(solids({b(8, 1.7, 0.6), b(9, 0.5, 0.5)})),
       both(pots(8), [](const RankedPlan& p) { return p.chances.pot > 0.7; })},
      {"in hand with two to go", kClub,
       inHand(solids({b(1, 0.3, 0.25), b(8, 0.6, 0.6), b(9, 1.5, 0.5), b(10, 1.8, 0.2)})),
       both(pots(1), [](const RankedPlan& p) { return p.chances.pot > 0.85; })},
      {"in hand in nine-ball", kClub, inHand(nine({b(3, 1.5, 0.4), b(6, 0.5, 0.7), b(9, 1.0, 0.3)})), pots(3)},
      // The break.
      {"a full rack is broken", kClub, rack(Game::EightBall, RackKind::EightBall), kindIs(PlanKind::Break)},
      {"a diamond is broken on the one", kExpert, rack(Game::NineBall, RackKind::NineBall),
       both(kindIs(PlanKind::Break), [](const RankedPlan& p) { return p.plan.ball == BallName(1); })},
  };
}

}  // namespace

const std::vector<FrozenPosition>& frozenPositions() {
  static const std::vector<FrozenPosition> kPositions = all();
  return kPositions;
}

}  // namespace ferrule::testing
