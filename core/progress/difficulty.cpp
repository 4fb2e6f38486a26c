// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/difficulty.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

constexpr double kRidge = 1.0;
constexpr int kMostSteps = 50;
/// Cushions give way and jaws help: a pocket is never quite closed.
constexpr double kLeastMargin_m = 0.002;
/// A cut near a right angle is magnified without end.
constexpr double kLeastCosine = 0.1;

constexpr int kFeatures = 4;

Eigen::Matrix<double, kFeatures, 1> featuresOf(const PlayedShot& shot, const PlayedTable& table) {
  return {std::log(pocketMargin_rad(shot, table)) + 3.0, std::log(reach(shot, table)) - 2.0,
          *shot.cut_rad * *shot.cut_rad, isSidePocket(*shot.pocket) ? 1.0 : 0.0};
}

}  // namespace

double Logistic::chance(const Eigen::VectorXd& x) const {
  return 1.0 / (1.0 + std::exp(-(intercept + coefficients.dot(x))));
}

std::optional<Logistic> fitLogistic(const Eigen::MatrixXd& rows, const Eigen::VectorXd& made, double ridge) {
  const Eigen::Index n = rows.rows();
  const Eigen::Index k = rows.cols() + 1;
  const double sum = made.sum();
  if (n == 0 || sum <= 0.0 || sum >= static_cast<double>(n)) return std::nullopt;
  Eigen::VectorXd fit = Eigen::VectorXd::Zero(k);
  fit[0] = std::log(sum / (static_cast<double>(n) - sum));
  Eigen::VectorXd x(k);
  x[0] = 1.0;
  for (int step = 0; step < kMostSteps; ++step) {
    Eigen::VectorXd gradient = Eigen::VectorXd::Zero(k);
    Eigen::MatrixXd information = Eigen::MatrixXd::Zero(k, k);
    for (Eigen::Index i = 0; i < n; ++i) {
      x.tail(k - 1) = rows.row(i).transpose();
      const double p = 1.0 / (1.0 + std::exp(-fit.dot(x)));
      gradient += (made[i] - p) * x;
      information.selfadjointView<Eigen::Lower>().rankUpdate(x, p * (1.0 - p));
    }
    for (Eigen::Index j = 1; j < k; ++j) {
      gradient[j] -= ridge * fit[j];
      information(j, j) += ridge;
    }
    const Eigen::VectorXd change = information.selfadjointView<Eigen::Lower>().ldlt().solve(gradient);
    if (!change.allFinite()) return std::nullopt;
    fit += change;
    if (change.cwiseAbs().maxCoeff() < 1e-10) return Logistic{fit[0], fit.tail(k - 1)};
  }
  return std::nullopt;
}

double pocketMargin_rad(const PlayedShot& shot, const PlayedTable& table) {
  const PocketShape& shape = isSidePocket(*shot.pocket) ? table.table.side : table.table.corner;
  return std::atan2(std::max(kLeastMargin_m, shape.mouth_m / 2.0 - table.ballRadius_m), *shot.objectToPocket_m);
}

double reach(const PlayedShot& shot, const PlayedTable& table) {
  return *shot.cueToGhost_m / (2.0 * table.ballRadius_m * std::max(kLeastCosine, std::cos(*shot.cut_rad)));
}

std::optional<Difficulty> Difficulty::of(const PlayerHistory& history) {
  const auto attempts = std::ranges::count_if(history.shots, isPotAttempt);
  if (attempts < kFewestForDifficulty) return std::nullopt;
  Eigen::MatrixXd rows(attempts, kFeatures);
  Eigen::VectorXd made(attempts);
  Eigen::Index row = 0;
  for (const PlayedShot& shot : history.shots) {
    if (!isPotAttempt(shot)) continue;
    rows.row(row) = featuresOf(shot, history.tableOf(shot)).transpose();
    made[row++] = shot.made ? 1.0 : 0.0;
  }
  auto logistic = fitLogistic(rows, made, kRidge);
  if (!logistic) return std::nullopt;
  Difficulty difficulty;
  difficulty.logistic_ = std::move(*logistic);
  return difficulty;
}

double Difficulty::chance(const PlayedShot& shot, const PlayedTable& table) const {
  return logistic_.chance(featuresOf(shot, table));
}

}  // namespace ferrule
