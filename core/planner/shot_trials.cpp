// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/shot_trials.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

struct TipPoint {
  double side = 0.0;
  double height = 0.0;
};

constexpr std::array kFullTips{TipPoint{0.0, 0.0},   TipPoint{0.0, 0.3},   TipPoint{0.0, -0.2},  TipPoint{0.0, -0.4},
                               TipPoint{0.3, 0.0},   TipPoint{-0.3, 0.0},  TipPoint{0.25, 0.25}, TipPoint{-0.25, 0.25},
                               TipPoint{0.25, -0.3}, TipPoint{-0.25, -0.3}};
constexpr std::array kCoarseTips{TipPoint{0.0, 0.0}, TipPoint{0.0, 0.3}, TipPoint{0.0, -0.35}, TipPoint{0.3, 0.1},
                                 TipPoint{-0.3, 0.1}};
constexpr double kFullRatio = 1.42;
constexpr double kCoarseRatio = 1.8;
constexpr double kMostSpeed_mps = 6.0;
constexpr int kFullSpeeds = 5;
constexpr int kCoarseSpeeds = 3;
/// With a straight pot this likely other kinds are not looked for.
constexpr double kGoodChance = 0.85;
constexpr std::size_t kPotsOfPlacement = 2;
constexpr double kMostTip = 0.48;

std::optional<Simulation> playFaultless(const TrialContext& context, const ReadyShot& shot) {
  SimulationOptions options;
  options.keepPaths = false;
  auto played = context.table.simulator.shoot(shot.situation.balls, shot.plan.strike, options);
  if (!played || played->end != SimulationEnd::AtRest) return std::nullopt;
  return std::move(*played);
}

/// The value of a faultless play; nothing for a foul or loss.
std::optional<double> valueOf(const TrialContext& context, const Judgement& judged) {
  switch (judged.ending) {
    case ShotEnding::Win:
      return 1.0;
    case ShotEnding::KeepsTurn:
      return judged.points + context.value.glance(judged.next, 0).value;
    case ShotEnding::PassesTurn:
      return judged.points + FrameValue::toOther(judged.next, context.value.glance(judged.next, 1).value);
    case ShotEnding::Loss:
    case ShotEnding::Foul:
      break;
  }
  return std::nullopt;
}

}  // namespace

std::vector<std::shared_ptr<const Candidate>> candidatesOf(const PlanningTable& table, const Situation& s,
                                                           const Scatter& player, std::size_t most) {
  std::vector<Candidate> found;
  if (s.breakShot) return {};
  if (s.cueBall != CueBallFreedom::AsItLies) {
    for (const TablePoint place : placements(table, s, player)) {
      auto direct = directCandidates(table, withCueBallAt(s, place), player);
      if (direct.size() > kPotsOfPlacement) direct.resize(kPotsOfPlacement);
      for (Candidate& candidate : direct) {
        candidate.plan.cueBall = place;
        found.push_back(std::move(candidate));
      }
    }
  } else {
    found = directCandidates(table, s, player);
    if (found.empty() || found.front().chance < kGoodChance || s.rules.deciderRule == DeciderRule::AnyTime) {
      for (auto* more : {&combinationCandidates, &caromCandidates, &bankCandidates}) {
        for (Candidate& candidate : more(table, s, player))
          found.push_back(std::move(candidate));
      }
    }
  }
  std::ranges::stable_sort(found, std::greater(), &Candidate::chance);
  if (found.size() > most) found.resize(most);
  std::vector<std::shared_ptr<const Candidate>> shared;
  shared.reserve(found.size());
  for (Candidate& candidate : found)
    shared.push_back(std::make_shared<const Candidate>(std::move(candidate)));
  return shared;
}

std::vector<ReadyShot> openShotsOf(const PlanningTable& table, const Situation& s, const Scatter& player) {
  if (s.breakShot) return breakShots(table, s);
  if (s.cueBall != CueBallFreedom::AsItLies) {
    std::vector<ReadyShot> shots;
    auto places = placements(table, s, player);
    constexpr std::size_t kSafetyPlaces = 3;
    if (places.size() > kSafetyPlaces) places.resize(kSafetyPlaces);
    for (const TablePoint place : places) {
      for (ReadyShot& shot : safetyShots(table, withCueBallAt(s, place))) {
        shot.plan.cueBall = place;
        shots.push_back(std::move(shot));
      }
    }
    return shots;
  }
  auto shots = safetyShots(table, s);
  if (shots.empty()) shots = kickShots(table, s);
  return shots;
}

std::vector<Trial> trialsOf(const std::shared_ptr<const Candidate>& candidate, TrialGrid grid) {
  std::vector<Trial> trials;
  const auto add = [&](int speeds, double ratio, const auto& tips) {
    double speed_mps = candidate->leastSpeed_mps;
    for (int k = 0; k < speeds && (k == 0 || speed_mps <= kMostSpeed_mps); ++k, speed_mps *= ratio) {
      for (const TipPoint& tip : tips)
        trials.push_back({candidate, speed_mps, tip.side, tip.height});
    }
  };
  if (grid == TrialGrid::Full) {
    add(kFullSpeeds, kFullRatio, kFullTips);
  } else {
    add(kCoarseSpeeds, kCoarseRatio, kCoarseTips);
  }
  return trials;
}

std::optional<Entry> solveTrial(const TrialContext& context, const Trial& trial) {
  const Candidate& candidate = *trial.candidate;
  const PhysicsParameters& p = context.table.simulator.parameters();
  Strike guess = candidate.plan.strike;
  guess.speed_mps = trial.speed_mps;
  guess.side = trial.side;
  guess.height = trial.height;
  const TablePoint cueBall = ballIn(candidate.situation.balls, kCueBall)->position;
  const double aim_rad = candidate.plan.strike.aim_rad;
  const TablePoint through = cueBall + candidate.way_m * TableVector{std::cos(aim_rad), std::sin(aim_rad)};
  if (const auto curved = strikeThrough(cueBall, through, guess, p); curved && candidate.way_m > 0.05) {
    guess = *curved;
  } else {
    guess = strikeDeparting(aim_rad, guess, p);
  }
  const auto solved = solveAim(context.table.simulator, candidate.way, guess, candidate.slope);
  if (!solved) return std::nullopt;
  Entry entry;
  entry.candidate = trial.candidate;
  entry.shot = {candidate.plan, candidate.situation, candidate.way_m};
  entry.shot.plan.strike = *solved;
  const auto played = playFaultless(context, entry.shot);
  if (!played) return std::nullopt;
  const Judgement judged = judge(candidate.situation, callOf(entry.shot.plan), *played);
  if (!judged.potted) return std::nullopt;
  const auto value = valueOf(context, judged);
  if (!value) return std::nullopt;
  entry.score = candidate.chance * *value + (1.0 - candidate.chance) * context.failed;
  entry.scatter = scatterOfShot(context.table.simulator, entry.shot, context.player);
  return entry;
}

std::optional<Entry> tryOpenShot(const TrialContext& context, const ReadyShot& shot, bool evenFouls) {
  const auto played = playFaultless(context, shot);
  if (!played) return std::nullopt;
  const Judgement judged = judge(shot.situation, callOf(shot.plan), *played);
  auto value = valueOf(context, judged);
  if (!value && evenFouls && judged.ending == ShotEnding::Foul)
    value = judged.points + FrameValue::toOther(judged.next, context.value.glance(judged.next, 1).value);
  if (!value) return std::nullopt;
  Entry entry;
  entry.shot = shot;
  entry.score = *value;
  entry.scatter = scatterOfShot(context.table.simulator, shot, context.player);
  return entry;
}

std::vector<Entry> neighboursOf(const TrialContext& context, const Entry& entry) {
  const Strike& strike = entry.shot.plan.strike;
  std::vector<Entry> found;
  const auto keep = [&](const std::optional<Entry>& neighbour) {
    if (neighbour) found.push_back(*neighbour);
  };
  if (!entry.candidate) {
    for (const double factor : {0.85, 1.0, 1.18}) {
      for (const double turn_deg : {-0.5, 0.0, 0.5}) {
        if (factor == 1.0 && turn_deg == 0.0) continue;
        ReadyShot shot = entry.shot;
        shot.plan.strike.speed_mps *= factor;
        shot.plan.strike.aim_rad += radiansFromDegrees(turn_deg);
        keep(tryOpenShot(context, shot));
      }
    }
    return found;
  }
  for (const auto& [factor, side, height] : {std::tuple{0.87, 0.0, 0.0},
                                             {1.15, 0.0, 0.0},
                                             {1.0, 0.12, 0.0},
                                             {1.0, -0.12, 0.0},
                                             {1.0, 0.0, 0.12},
                                             {1.0, 0.0, -0.12}}) {
    const Trial trial{entry.candidate, strike.speed_mps * factor, strike.side + side, strike.height + height};
    if (trial.speed_mps < entry.candidate->leastSpeed_mps * 0.85) continue;
    if (std::hypot(trial.side, trial.height) > kMostTip) continue;
    keep(solveTrial(context, trial));
  }
  return found;
}

bool sameIdea(const Plan& a, const Plan& b) {
  if (a.kind != b.kind || a.ball != b.ball || a.pocket != b.pocket || a.first != b.first) return false;
  return a.kind != PlanKind::Break || a.cueBall == b.cueBall;
}

}  // namespace ferrule
