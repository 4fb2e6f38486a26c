// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/candidate.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr double kSpeedAtPocket_mps = 0.35;
/// A target of a combination or carom is cut less than this.
constexpr double kMostSecondCut_rad = 0.95;
constexpr double kMostCombination_m = 1.2;
constexpr double kMostCarom_m = 0.8;
constexpr double kMostCaromRun_m = 0.6;
constexpr std::size_t kMostCombinations = 5;
constexpr std::size_t kMostCaroms = 3;
/// Less likely ones are no plan.
constexpr double kLeastChance = 0.02;
/// A typical object ball's speed.
constexpr double kTypicalSpeed_mps = 1.5;

double slopeOf(double way_m, double cut_rad, double radius_m) {
  return -way_m / (2.0 * radius_m * std::max(0.15, std::cos(cut_rad)));
}

ShotWay wayOf(const Situation& s, const std::vector<BallName>& balls, const Plan& plan) {
  ShotWay way;
  for (const BallName ball : balls)
    way.balls.push_back(*ballIn(s.balls, ball));
  std::ranges::sort(way.balls, {}, &BallAt::ball);
  way.target = plan.ball;
  way.kind = plan.kind;
  way.first = plan.first;
  way.cushions = plan.cushions;
  return way;
}

/// The exact window of a resting ball; the grid's where the exact one finds none.
double wantedDirection(const PlanningTable& table, PocketName pocket, TablePoint from) {
  const auto window = pocketWindow(table.simulator, pocket, from, kTypicalSpeed_mps);
  return window ? window->middle_rad : table.windows.at(pocket, from, kTypicalSpeed_mps).middle_rad;
}

void setStrike(const PlanningTable& table, const Situation& s, Candidate& candidate, TablePoint cueBall,
               TablePoint toward) {
  Strike& strike = candidate.plan.strike;
  strike.aim_rad = direction(toward - cueBall);
  strike.elevation_rad = stanceOf(table.simulator.bed(), s.balls, cueBall, strike.aim_rad).leastElevation_rad;
}

double chanceWith(const PlanningTable& table, const Situation& s, const Candidate& candidate, PotLine line,
                  const Scatter& scatter) {
  const Strike& strike = candidate.plan.strike;
  const TablePoint cueBall = ballIn(s.balls, kCueBall)->position;
  const Stance stance = stanceOf(table.simulator.bed(), s.balls, cueBall, strike.aim_rad);
  return chanceOf(line, scatterFor(scatter, stance, strike.elevation_rad, line.way_m), table.radius_m());
}

void keepLikeliest(std::vector<Candidate>& candidates, std::size_t most) {
  std::ranges::stable_sort(candidates, std::greater(), &Candidate::chance);
  if (candidates.size() > most) candidates.resize(most);
}

std::vector<BallName> ballsIn(BallMask mask) {
  std::vector<BallName> balls;
  for (; !mask.empty(); mask = mask - BallMask::of(mask.lowest()))
    balls.push_back(mask.lowest());
  return balls;
}

/// A target that a first ball, or the cue ball coming off it, plays to its pocket.
struct SecondLeg {
  PotLine run;
  double cut_rad = 0.0;
  double way_m = 0.0;  ///< of what hits the target
};

std::optional<SecondLeg> secondLeg(const PlanningTable& table, const Layout& layout, BallName from, BallName target,
                                   PocketName pocket, double most_m) {
  const auto run = openRun(layout, target, pocket, table.windows, table.radius_m());
  if (!run) return std::nullopt;
  const TableVector to = run->ghost - layout.at(from);
  SecondLeg leg{*run, 0.0, length(to)};
  if (leg.way_m > most_m) return std::nullopt;
  const TableVector along{std::cos(run->window.middle_rad), std::sin(run->window.middle_rad)};
  if (leg.way_m > 1e-4) leg.cut_rad = std::acos(std::clamp(dot(to, along) / leg.way_m, -1.0, 1.0));
  if (leg.cut_rad > kMostSecondCut_rad) return std::nullopt;
  const BallMask moving = BallMask::of(from) | BallMask::of(target) | BallMask::of(kCueBall);
  if (!isOpen(layout, layout.at(from), run->ghost, moving, table.radius_m())) return std::nullopt;
  return leg;
}

}  // namespace

double leastSpeed_mps(const PlanningTable& table, double way_m, double cut_rad, double run_m) {
  const PhysicsParameters& p = table.simulator.parameters();
  const double drag = 2.0 * p.rollingFriction * p.gravity_mps2;
  // A struck ball loses 2/7 of its speed until it rolls; so may the cue ball before.
  const double target_mps = 1.4 * std::sqrt(kSpeedAtPocket_mps * kSpeedAtPocket_mps + drag * run_m);
  const double contact_mps = target_mps / std::max(0.2, std::cos(cut_rad));
  return 1.15 * std::sqrt(contact_mps * contact_mps + drag * way_m);
}

std::vector<Candidate> directCandidates(const PlanningTable& table, const Situation& s, const Scatter& scatter) {
  const Layout layout = layoutOf(s.balls);
  const TablePoint cueBall = layout.at(kCueBall);
  const double radius_m = table.radius_m();
  std::vector<Candidate> found;
  for (const BallName ball : ballsIn(legalFirst(s) & countingPots(s))) {
    for (const PocketName pocket : kPocketNames) {
      auto run = openRun(layout, ball, pocket, table.windows, radius_m);
      if (!run) continue;
      const auto line = withCueBall(*run, layout, cueBall, radius_m);
      if (!line) continue;
      Candidate candidate;
      candidate.plan = {PlanKind::Direct, ball, pocket, ball, 0, {}, std::nullopt};
      candidate.situation = s;
      setStrike(table, s, candidate, cueBall, line->way_m > 1e-6 ? line->ghost : layout.at(ball));
      candidate.chance = chanceWith(table, s, candidate, *line, scatter);
      if (candidate.chance < kLeastChance) continue;
      candidate.slope = slopeOf(line->way_m, line->cut_rad, radius_m);
      candidate.way_m = line->way_m;
      candidate.leastSpeed_mps = leastSpeed_mps(table, line->way_m, line->cut_rad, line->run_m);
      candidate.way = wayOf(s, {kCueBall, ball}, candidate.plan);
      const double wanted_rad = wantedDirection(table, pocket, layout.at(ball));
      candidate.way.wanted_rad = [wanted_rad](TablePoint) { return wanted_rad; };
      found.push_back(std::move(candidate));
    }
  }
  std::ranges::stable_sort(found, std::greater(), &Candidate::chance);
  return found;
}

std::vector<Candidate> combinationCandidates(const PlanningTable& table, const Situation& s, const Scatter& scatter) {
  const Layout layout = layoutOf(s.balls);
  const TablePoint cueBall = layout.at(kCueBall);
  const double radius_m = table.radius_m();
  std::vector<Candidate> found;
  for (const BallName first : ballsIn(legalFirst(s))) {
    for (const BallName ball : ballsIn(countingPots(s) - BallMask::of(first))) {
      for (const PocketName pocket : kPocketNames) {
        const auto leg = secondLeg(table, layout, first, ball, pocket, kMostCombination_m);
        if (!leg) continue;
        // The first ball is potted, as it were, into the target.
        PotLine line;
        line.ball = first;
        line.window.middle_rad = leg->way_m > 1e-4 ? direction(leg->run.ghost - layout.at(first))
                                                   : direction(layout.at(ball) - layout.at(first));
        const TableVector along{std::cos(line.window.middle_rad), std::sin(line.window.middle_rad)};
        line.ghost = layout.at(first) - 2.0 * radius_m * along;
        const double gain = leg->way_m / (2.0 * radius_m * std::cos(leg->cut_rad));
        line.window.halfWidth_rad = leg->run.window.halfWidth_rad / std::max(gain, 0.3);
        const auto whole = withCueBall(line, layout, cueBall, radius_m);
        if (!whole) continue;
        Candidate candidate;
        candidate.plan = {PlanKind::Combination, ball, pocket, first, 0, {}, std::nullopt};
        candidate.situation = s;
        setStrike(table, s, candidate, cueBall, whole->ghost);
        candidate.chance = chanceWith(table, s, candidate, *whole, scatter);
        if (candidate.chance < kLeastChance) continue;
        candidate.slope =
            -slopeOf(whole->way_m, whole->cut_rad, radius_m) * slopeOf(leg->way_m, leg->cut_rad, radius_m);
        candidate.way_m = whole->way_m;
        const double cuts_rad = std::min(1.2, std::hypot(leg->cut_rad, whole->cut_rad));
        candidate.leastSpeed_mps = 1.3 * leastSpeed_mps(table, whole->way_m + leg->way_m, cuts_rad, leg->run.run_m);
        candidate.way = wayOf(s, {kCueBall, first, ball}, candidate.plan);
        const double wanted_rad = leg->run.window.middle_rad;
        candidate.way.wanted_rad = [wanted_rad](TablePoint) { return wanted_rad; };
        found.push_back(std::move(candidate));
      }
    }
  }
  keepLikeliest(found, kMostCombinations);
  return found;
}

std::vector<Candidate> caromCandidates(const PlanningTable& table, const Situation& s, const Scatter& scatter) {
  const Layout layout = layoutOf(s.balls);
  const TablePoint cueBall = layout.at(kCueBall);
  const double radius_m = table.radius_m();
  std::vector<Candidate> found;
  for (const BallName first : ballsIn(legalFirst(s))) {
    for (const BallName ball : ballsIn(countingPots(s) - BallMask::of(first))) {
      for (const PocketName pocket : kPocketNames) {
        const auto leg = secondLeg(table, layout, first, ball, pocket, kMostCarom_m);
        if (!leg || leg->run.run_m > kMostCaromRun_m) continue;
        // The cue ball stands beside the first ball and goes to the target's ghost along the tangent: from the two
        // places where that tangent touches the circle of contacts.
        const TableVector to = leg->run.ghost - layout.at(first);
        const double away_m = length(to);
        if (away_m <= 2.0 * radius_m) continue;
        for (const double side : {1.0, -1.0}) {
          const double turn_rad = side * std::acos(2.0 * radius_m / away_m);
          const double contact_rad = direction(to) + turn_rad;
          const TablePoint contact =
              layout.at(first) + 2.0 * radius_m * TableVector{std::cos(contact_rad), std::sin(contact_rad)};
          const TableVector come = contact - cueBall;
          const BallMask moving = BallMask::of(first) | BallMask::of(kCueBall);
          if (dot(come, leg->run.ghost - contact) <= 0.0) continue;
          if (!isOpen(layout, cueBall, contact, moving, radius_m)) continue;
          Candidate candidate;
          candidate.plan = {PlanKind::Carom, ball, pocket, first, 0, {}, std::nullopt};
          candidate.situation = s;
          setStrike(table, s, candidate, cueBall, contact);
          PotLine line = leg->run;
          line.way_m = length(come);
          line.cut_rad = leg->cut_rad;
          // Each radian of aim turns the cue ball's way by about the length over the ball's width; then again.
          const double gain = std::max(0.3, leg->way_m / (2.0 * radius_m * std::cos(leg->cut_rad)));
          line.window.halfWidth_rad /= gain;
          candidate.chance = chanceWith(table, s, candidate, line, scatter);
          if (candidate.chance < kLeastChance) continue;
          candidate.slope = side * gain * line.way_m / (2.0 * radius_m);
          candidate.way_m = line.way_m;
          candidate.leastSpeed_mps = 1.6 * leastSpeed_mps(table, line.way_m + leg->way_m, 0.8, leg->run.run_m);
          candidate.way = wayOf(s, {kCueBall, first, ball}, candidate.plan);
          const double wanted_rad = leg->run.window.middle_rad;
          candidate.way.wanted_rad = [wanted_rad](TablePoint) { return wanted_rad; };
          found.push_back(std::move(candidate));
        }
      }
    }
  }
  keepLikeliest(found, kMostCaroms);
  return found;
}

Situation withCueBallAt(const Situation& s, TablePoint place) {
  Situation placed = s;
  placed.cueBall = CueBallFreedom::AsItLies;
  std::erase_if(placed.balls, [](const BallAt& ball) { return ball.ball.isCueBall(); });
  placed.balls.insert(placed.balls.begin(), {kCueBall, place});
  return placed;
}

}  // namespace ferrule
