// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/scatter_estimate.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

constexpr double kPlayerSpread = 0.405;  ///< ln 1.5
constexpr double kKindSpread = 0.223;    ///< ln 1.25
constexpr double kFirm_mps = 2.5;
// Grids over the logarithm of a spread, relative to the prior's.
constexpr int kSteps = 121;
constexpr double kRange = 3.0;

struct Deviation {
  std::size_t kind = 0;
  double value = 0.0;
  double uncertainty = 0.0;
};

struct Spread {
  double player = 0.0;
  std::array<double, 3> byKind{};
  double least = 0.0;
  double most = 0.0;
};

double gridAt(int step) {
  return kRange * (2.0 * step / (kSteps - 1) - 1.0);
}

/// Normalises logarithms of weights.
std::vector<double> weightsFrom(const std::vector<double>& logs) {
  const double top = std::ranges::max(logs);
  std::vector<double> weights;
  double sum = 0.0;
  for (const double value : logs) {
    weights.push_back(std::exp(value - top));
    sum += weights.back();
  }
  for (double& weight : weights)
    weight /= sum;
  return weights;
}

Spread spreadOf(const std::vector<Deviation>& errors, double prior) {
  // [kind][step]: log likelihood of that kind's errors when its spread is prior * exp(grid).
  std::array<std::vector<double>, 3> likelihood;
  for (std::size_t kind = 0; kind < 3; ++kind) {
    likelihood.at(kind).assign(kSteps, 0.0);
    for (int step = 0; step < kSteps; ++step) {
      const double spread = prior * std::exp(gridAt(step));
      for (const Deviation& error : errors) {
        if (error.kind != kind) continue;
        const double variance = spread * spread + error.uncertainty * error.uncertainty;
        likelihood.at(kind).at(static_cast<std::size_t>(step)) -=
            0.5 * (std::log(variance) + error.value * error.value / variance);
      }
    }
  }
  // For each player's spread, each kind's spread integrated out.
  const auto kindLogs = [&](std::size_t kind, double player) {
    std::vector<double> logs(kSteps);
    for (int step = 0; step < kSteps; ++step) {
      const double off = (gridAt(step) - player) / kKindSpread;
      logs[static_cast<std::size_t>(step)] = likelihood.at(kind).at(static_cast<std::size_t>(step)) - 0.5 * off * off;
    }
    return logs;
  };
  std::vector<double> playerLogs(kSteps);
  for (int step = 0; step < kSteps; ++step) {
    const double player = gridAt(step);
    double log = -0.5 * player * player / (kPlayerSpread * kPlayerSpread);
    for (std::size_t kind = 0; kind < 3; ++kind) {
      const auto logs = kindLogs(kind, player);
      const double top = std::ranges::max(logs);
      double sum = 0.0;
      for (const double value : logs)
        sum += std::exp(value - top);
      log += top + std::log(sum);
    }
    playerLogs[static_cast<std::size_t>(step)] = log;
  }
  const auto players = weightsFrom(playerLogs);
  Spread spread;
  double squares = 0.0;
  double share = 0.0;
  std::array<double, 3> kindSquares{};
  for (int step = 0; step < kSteps; ++step) {
    const double weight = players[static_cast<std::size_t>(step)];
    const double value = prior * std::exp(gridAt(step));
    if (share < 0.025) spread.least = value;
    if (share < 0.975) spread.most = value;
    share += weight;
    squares += weight * value * value;
    if (weight < 1e-9) continue;
    for (std::size_t kind = 0; kind < 3; ++kind) {
      const auto weights = weightsFrom(kindLogs(kind, gridAt(step)));
      for (int k = 0; k < kSteps; ++k) {
        const double s = prior * std::exp(gridAt(k));
        kindSquares.at(kind) += weight * weights[static_cast<std::size_t>(k)] * s * s;
      }
    }
  }
  spread.player = std::sqrt(squares);
  for (std::size_t kind = 0; kind < 3; ++kind)
    spread.byKind.at(kind) = std::sqrt(kindSquares.at(kind));
  return spread;
}

}  // namespace

StrikeKind strikeKindOf(const Stance& stance, double speed_mps) {
  if (stance.stretched || stance.railBridge || stance.overBall) return StrikeKind::Awkward;
  return speed_mps > kFirm_mps ? StrikeKind::Firm : StrikeKind::Plain;
}

ScatterEstimate estimateScatter(std::span<const StrikeEvidence> strikes, const Scatter& prior) {
  ScatterEstimate estimate;
  estimate.player = prior;
  estimate.byKind.fill(prior);
  struct Dimension {
    std::optional<StrikeEvidence::Part> StrikeEvidence::*part;
    double Scatter::*spread;
    bool relative;
  };
  const Dimension dimensions[] = {{&StrikeEvidence::aim_rad, &Scatter::aim_rad, false},
                                  {&StrikeEvidence::speed_mps, &Scatter::speed, true},
                                  {&StrikeEvidence::side, &Scatter::side, false},
                                  {&StrikeEvidence::height, &Scatter::height, false}};
  for (const Dimension& dimension : dimensions) {
    std::vector<Deviation> errors;
    for (const StrikeEvidence& strike : strikes) {
      const auto& part = strike.*dimension.part;
      if (!part) continue;
      const double scale = dimension.relative ? std::max(part->asked, 0.1) : 1.0;
      errors.push_back(
          {static_cast<std::size_t>(strike.kind), (part->delivered - part->asked) / scale, part->uncertainty / scale});
    }
    const bool isAim = dimension.spread == &Scatter::aim_rad;
    if (isAim) estimate.aims = static_cast<int>(errors.size());
    if (prior.*dimension.spread <= 0.0 || (errors.empty() && !isAim)) continue;
    const Spread spread = spreadOf(errors, prior.*dimension.spread);
    if (isAim) {
      estimate.leastAim_rad = spread.least;
      estimate.mostAim_rad = spread.most;
    }
    if (errors.empty()) continue;
    estimate.player.*dimension.spread = spread.player;
    for (std::size_t kind = 0; kind < 3; ++kind)
      estimate.byKind.at(kind).*dimension.spread = spread.byKind.at(kind);
  }
  return estimate;
}

}  // namespace ferrule
