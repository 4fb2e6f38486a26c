// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/frame_value.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

// A ball in line, a first ball, and one with the cue ball in hand: cue ball's way and cut. Common practice, no source.
constexpr double kInLineWay_m = 0.5;
constexpr double kFreshWay_m = 1.0;
constexpr double kInHandWay_m = 0.35;
constexpr double kInLineCut_rad = 0.35;
constexpr double kFreshCut_rad = 0.6;
constexpr double kTypicalRun_m = 0.8;
constexpr double kTypicalRoom_m = 0.0286;
/// What a ball without an open pocket is worth: somebody has to free it first.
constexpr double kClosedShare = 0.25;
/// Pots that are there in spite of the geometry's worst.
constexpr double kMostChance = 0.995;
/// Legal kicks at a hidden ball. Common practice, no source.
constexpr double kKickChance = 0.45;

double typicalChance(const Scatter& scatter, double way_m, double cut_rad, double radius_m) {
  PotLine line;
  line.way_m = way_m;
  line.cut_rad = cut_rad;
  line.run_m = kTypicalRun_m;
  line.window.halfWidth_rad = kTypicalRoom_m / kTypicalRun_m;
  return chanceOf(line, scatter, radius_m);
}

}  // namespace

FrameValue::FrameValue(const Simulator& simulator, const PocketWindows& windows, const std::array<Scatter, 2>& players)
    : parameters_(simulator.parameters()), windows_(windows) {
  for (std::size_t i = 0; i < 2; ++i) {
    Skill& skill = skills_.at(i);
    skill.scatter = players.at(i);
    skill.position = std::clamp(1.0 - 1.5 * skill.scatter.speed, 0.5, 1.0);
    skill.inLine = std::min(kMostChance, skill.position * typicalChance(skill.scatter, kInLineWay_m, kInLineCut_rad,
                                                                        parameters_.ballRadius_m));
    skill.fresh = 0.85 * typicalChance(skill.scatter, kFreshWay_m, kFreshCut_rad, parameters_.ballRadius_m);
    skill.safety = std::clamp(0.45 - skill.scatter.speed, 0.15, 0.45);
    run_.at(i) = std::min(skill.fresh / (1.0 - skill.inLine), 40.0);
  }
  // Small races first: each failure leads to one of the same size, each pot to a smaller one.
  for (std::size_t total = 2; total <= 2 * (kMost - 1); ++total) {
    for (std::size_t n = 1; n < kMost; ++n) {
      if (total <= n || total - n >= kMost) continue;
      const std::size_t m = total - n;
      // W0(n,m) = c0 + d0 (1 - W1(m,n)) and the same for the other: visit by visit.
      const auto visit = [&](std::size_t player, std::size_t own, std::size_t other) {
        const Skill& skill = skills_.at(player);
        double constant = 0.0;
        double reach = skill.fresh;  // having potted k balls of this visit
        for (std::size_t k = 1; k <= own; ++k) {
          if (k == own) {
            constant += reach;
          } else {
            constant += reach * (1.0 - skill.inLine) * (1.0 - race_.at(1 - player).at(other).at(own - k));
            reach *= skill.inLine;
          }
        }
        return std::pair{constant, 1.0 - skill.fresh};
      };
      const auto [c0, d0] = visit(0, n, m);
      const auto [c1, d1] = visit(1, m, n);
      // x = c0 + d0 (1 - y), y = c1 + d1 (1 - x)
      const double x = (c0 + d0 * (1.0 - c1 - d1)) / std::max(1e-9, 1.0 - d0 * d1);
      race_[0].at(n).at(m) = std::clamp(x, 0.0, 1.0);
      race_[1].at(m).at(n) = std::clamp(c1 + d1 * (1.0 - x), 0.0, 1.0);
    }
  }
  for (std::size_t n = 1; n < kMost; ++n) {
    const auto visit = [&](std::size_t player) {
      const Skill& skill = skills_.at(player);
      double constant = 0.0;
      double reach = skill.fresh;
      for (std::size_t k = 1; k <= n; ++k) {
        if (k == n) {
          constant += reach;
        } else {
          constant += reach * (1.0 - skill.inLine) * (1.0 - shared_.at(1 - player).at(n - k));
          reach *= skill.inLine;
        }
      }
      return std::pair{constant, 1.0 - skill.fresh};
    };
    const auto [c0, d0] = visit(0);
    const auto [c1, d1] = visit(1);
    const double x = (c0 + d0 * (1.0 - c1 - d1)) / std::max(1e-9, 1.0 - d0 * d1);
    shared_[0].at(n) = std::clamp(x, 0.0, 1.0);
    shared_[1].at(n) = std::clamp(c1 + d1 * (1.0 - x), 0.0, 1.0);
  }
}

double FrameValue::fresh(const Situation& s, std::size_t player, int own, int other) const {
  if (s.rules.points) return run_.at(player) - run_.at(1 - player);
  const auto n = static_cast<std::size_t>(std::clamp(own, 0, static_cast<int>(kMost) - 1));
  const auto m = static_cast<std::size_t>(std::clamp(other, 0, static_cast<int>(kMost) - 1));
  if (n == 0) return 1.0;
  if (m == 0) return 0.0;
  return s.rules.first == FirstContactRule::Own ? race_.at(player).at(n).at(m) : shared_.at(player).at(n);
}

double FrameValue::afterFailing(const Situation& s, std::size_t player, int own, int other) const {
  if (s.rules.points) return -run_.at(1 - player);
  return 1.0 - fresh(s, 1 - player, other, own);
}

double FrameValue::chain(const Situation& s, std::size_t player, const std::vector<Ease>& eases, BallName without,
                         int other) const {
  const Skill& skill = skills_.at(player);
  const bool shared = s.rules.first != FirstContactRule::Own;
  // Beyond the rack a run goes on as it does on average.
  double value = s.rules.points ? std::min(skill.inLine / (1.0 - skill.inLine), 30.0) : 1.0;
  int left = 0;
  for (const Ease& ease : eases) {
    if (ease.ball == without) continue;
    ++left;
    const double chance = std::min(kMostChance, skill.position * ease.chance);
    const double failed = afterFailing(s, player, left, shared ? left : other);
    value = chance * ((s.rules.points ? 1.0 : 0.0) + value) + (1.0 - chance) * failed;
  }
  return value;
}

Glance FrameValue::glance(const Situation& s, std::size_t player) const {
  const Skill& skill = skills_.at(player);
  const double radius_m = parameters_.ballRadius_m;
  const Layout layout = layoutOf(s.balls);
  const BallMask present = ballsOnTable(s);
  const BallMask first = legalFirst(s);
  const bool inHand = s.cueBall != CueBallFreedom::AsItLies || !layout.present.has(kCueBall);
  const BallMask decider = s.rules.decider ? BallMask::of(*s.rules.decider) & present : BallMask();
  Glance glance;
  struct Pot {
    PotLine line;
    double chance = 0.0;
  };
  std::vector<Pot> pots;
  pots.reserve(24);
  BallMask looked = s.rules.first == FirstContactRule::Own ? (s.open ? s.own | s.other : s.own) & present : present;
  looked = looked | decider;
  std::array<double, BallName::kCount> easeOf{};
  for (; !looked.empty(); looked = looked - BallMask::of(looked.lowest())) {
    const BallName ball = looked.lowest();
    double best = 0.0;
    double missing = 1.0;
    for (const PocketName pocket : kPocketNames) {
      auto run = openRun(layout, ball, pocket, windows_, radius_m);
      if (!run) continue;
      PotLine typical = *run;
      typical.way_m = inHand ? kInHandWay_m : kInLineWay_m;
      typical.cut_rad = kInLineCut_rad;
      const double chance = chanceOf(typical, skill.scatter, radius_m);
      best = std::max(best, chance);
      missing *= 1.0 - 0.5 * chance;
      if (!first.has(ball)) continue;
      if (inHand) {
        pots.push_back({typical, chance});
      } else if (const auto line = withCueBall(*run, layout, layout.at(kCueBall), radius_m)) {
        pots.push_back({*line, chanceOf(*line, scatterFor(skill.scatter, {}, 0.0, line->way_m), radius_m)});
      }
    }
    const double closed = kClosedShare * skill.inLine;
    easeOf.at(static_cast<std::size_t>(ball.number())) =
        std::clamp(1.0 - missing * (1.0 - best) / (1.0 - 0.5 * best), closed, kMostChance);
  }
  // What is left for who takes this group, the last ball first, as the chain is built from its end.
  const auto listOf = [&](BallMask group) {
    std::vector<Ease> eases;
    eases.reserve(16);
    const auto add = [&](BallName ball) {
      eases.push_back({ball, easeOf.at(static_cast<std::size_t>(ball.number()))});
    };
    if (!decider.empty()) add(decider.lowest());
    const BallMask mine = (s.rules.first == FirstContactRule::Own ? group & present : present) - decider;
    for (int number = BallName::kCount - 1; number > 0; --number) {
      if (mine.has(BallName(number))) add(BallName(number));
    }
    return eases;
  };
  const bool ahead = !s.open || (s.own & present).count() <= (s.other & present).count();
  const BallMask group = ahead ? s.own : s.other;
  const BallMask against = ahead ? s.other : s.own;
  const std::vector<Ease> eases = listOf(group);
  const std::vector<Ease> otherEases = s.open ? listOf(against) : std::vector<Ease>();
  const int own = static_cast<int>(eases.size());
  const int other = ((against & present) | decider).count();
  const double failed = afterFailing(s, player, own, other);
  double attack = -1e9;
  for (const Pot& pot : pots) {
    const double gained = s.rules.points ? 1.0 : 0.0;
    const bool turned = s.open && against.has(pot.line.ball);
    const double rest =
        turned ? chain(s, player, otherEases, pot.line.ball, own) : chain(s, player, eases, pot.line.ball, other);
    const double value = pot.chance * (gained + rest) + (1.0 - pot.chance) * failed;
    if (value <= attack) continue;
    attack = value;
    glance.best = pot.line;
    glance.bestChance = pot.chance;
  }
  double safety = failed + skill.safety * (chain(s, player, eases, kCueBall, other) - failed);
  if (!inHand) {
    bool seen = false;
    for (BallMask rest = first; !rest.empty() && !seen; rest = rest - BallMask::of(rest.lowest()))
      seen = canMeet(layout, layout.at(kCueBall), rest.lowest(), radius_m);
    if (!seen) {
      // A hidden ball: kicked at, or the opponent has the cue ball in hand.
      const Skill& theirs = skills_.at(1 - player);
      const double given = s.rules.points ? failed - 1.0 : failed * (1.0 - 0.7 * theirs.inLine);
      safety = kKickChance * failed + (1.0 - kKickChance) * given;
    }
  }
  glance.safety = safety >= attack;
  glance.value = std::max(attack, safety);
  return glance;
}

}  // namespace ferrule
