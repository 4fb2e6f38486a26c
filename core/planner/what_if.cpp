// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/what_if.h"

#include "core/planner/candidate.h"
#include "core/planner/shot_review.h"

namespace ferrule {

namespace {

constexpr double kFirstTurn_rad = 2e-4;
constexpr double kMostTurn_rad = 0.1;
constexpr double kGrowth = 1.5;
constexpr int kHalvings = 6;
constexpr std::size_t kSamples = 800;

Situation placed(const Situation& situation, const Plan& plan) {
  return plan.cueBall ? withCueBallAt(situation, *plan.cueBall) : situation;
}

bool pots(const Planner& planner, const Situation& situation, const Plan& plan, double turn_rad) {
  SimulationOptions options;
  options.keepPaths = false;
  Strike strike = plan.strike;
  strike.aim_rad += turn_rad;
  const auto played = planner.simulator().shoot(situation.balls, strike, options);
  return played && judge(situation, callOf(plan), *played).potted;
}

/// side: +1 or -1.
double marginOn(const Planner& planner, const Situation& situation, const Plan& plan, double side) {
  double good = 0.0;
  double bad = kFirstTurn_rad;
  while (bad < kMostTurn_rad && pots(planner, situation, plan, side * bad)) {
    good = bad;
    bad *= kGrowth;
  }
  if (bad >= kMostTurn_rad) return kMostTurn_rad;
  for (int i = 0; i < kHalvings; ++i) {
    const double middle = 0.5 * (good + bad);
    (pots(planner, situation, plan, side * middle) ? good : bad) = middle;
  }
  return good;
}

}  // namespace

std::optional<AimMargin> aimMargin(const Planner& planner, const Situation& situation, const Plan& plan) {
  const Situation there = placed(situation, plan);
  if (!plan.pocket || !pots(planner, there, plan, 0.0)) return std::nullopt;
  return AimMargin{marginOn(planner, there, plan, 1.0), marginOn(planner, there, plan, -1.0)};
}

std::optional<RankedPlan> withOtherStrike(const Planner& planner, const Situation& situation, const Plan& plan,
                                          const StrikeWish& wish, const std::array<Scatter, 2>& players,
                                          std::uint64_t seed) {
  RankedPlan other;
  other.plan = plan;
  other.plan.strike.speed_mps = wish.speed_mps;
  other.plan.strike.side = wish.side;
  other.plan.strike.height = wish.height;
  if (const auto call = callOf(plan)) {
    const bool straight = plan.kind == PlanKind::Direct;
    const auto aimed = meantPlan(planner, placed(situation, plan), *call, straight, other.plan.strike, players.front());
    if (!aimed) return std::nullopt;
    other.plan = *aimed;
    other.plan.cueBall = plan.cueBall;
  }
  const auto chances = planner.chances(situation, other.plan, players, kSamples, seed);
  if (!chances) return std::nullopt;
  other.chances = *chances;
  return other;
}

}  // namespace ferrule
