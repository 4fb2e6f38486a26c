// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/fingerprint_block.h"

#include <Eigen/Dense>
#include <cmath>

namespace ferrule::fingerprint {

namespace {

/// Sigmas by which the doubt about a ball's start may move a sample that counts.
constexpr double kHair = 15.0;
constexpr double kOtherTip = 0.25;  ///< ball radii
constexpr int kReconsiderRounds = 6;
constexpr int kAttempts = 4;
/// A strike must be clearly better to replace another.
constexpr double kClearly = 0.95;

double huberCost(double residual) {
  const double a = std::abs(residual);
  return a <= kHuber ? a * a : 2.0 * kHuber * a - kHuber * kHuber;
}

/// The cost of all samples up to a depth; one that did not come by its recorded contacts costs as if it were far off.
double fullCost(const Model& model, const Shot& shot, const SharedVector& values, const Eigen::VectorXd& own,
                int depth) {
  constexpr double kFar = 20.0;
  const auto outcome = play(model.table, model.at(values), shot, own);
  if (!outcome) return HUGE_VAL;
  double sum = own.cwiseQuotient(shot.spreads).squaredNorm();
  for (std::size_t n = 0; n < shot.samples.size(); ++n) {
    if (shot.samples[n].depth > depth) continue;
    const auto i = 2 * static_cast<Eigen::Index>(n);
    sum += outcome->samePlayed[n] ? huberCost(outcome->residuals(i)) + huberCost(outcome->residuals(i + 1))
                                  : 2.0 * huberCost(kFar);
  }
  return sum;
}

/// The own unknowns alone, by damped steps.
Eigen::VectorXd descended(const Model& model, const Shot& shot, const SharedVector& values, Eigen::VectorXd own,
                          int depth) {
  double damping = 1e-2;
  for (int round = 0; round < kReconsiderRounds; ++round) {
    const Linear linear = linearAt(model, shot, values, own, false);
    const Active active = activeSamples(shot, linear, depth);
    const Block block = blockOf(shot, linear, active);
    const double before = costOf(model, shot, values, own, active);
    bool better = false;
    for (int attempt = 0; attempt < kAttempts && !better; ++attempt) {
      const Eigen::VectorXd next = own - damped(block.own, damping).ldlt().solve(block.ownSlope);
      better = costOf(model, shot, values, next, active) < before;
      if (better) own = next;
      damping *= better ? 0.2 : 10.0;
    }
    if (!better) break;
  }
  return own;
}

}  // namespace

Linear linearAt(const Model& model, const Shot& shot, const SharedVector& values, const Eigen::VectorXd& own,
                bool withShared) {
  Linear linear;
  linear.own = own;
  const auto outcome = play(model.table, model.at(values), shot, own);
  if (!outcome) return linear;
  linear.residuals = outcome->residuals;
  linear.samePlayed = outcome->samePlayed;
  linear.slopes = slopes(model.table, model.literature, shot, values, own, outcome->residuals, withShared);
  return linear;
}

Active activeSamples(const Shot& shot, const Linear& linear, int depth) {
  Active active(shot.samples.size(), false);
  if (linear.residuals.size() == 0) return active;
  for (std::size_t n = 0; n < active.size(); ++n) {
    const auto rows = linear.slopes.middleRows(2 * static_cast<Eigen::Index>(n), 2);
    double byStart = 0.0;
    for (Eigen::Index column = kStrike; column < shot.spreads.size(); ++column) {
      byStart = std::max(byStart, rows.col(kShared + column).cwiseAbs().maxCoeff() * shot.spreads(column));
    }
    active[n] = linear.samePlayed[n] && shot.samples[n].depth <= depth && byStart < kHair;
  }
  return active;
}

double costOf(const Model& model, const Shot& shot, const SharedVector& values, const Eigen::VectorXd& own,
              const Active& active) {
  const auto outcome = play(model.table, model.at(values), shot, own);
  if (!outcome) return HUGE_VAL;
  double sum = own.cwiseQuotient(shot.spreads).squaredNorm();
  for (std::size_t n = 0; n < active.size(); ++n) {
    const auto i = 2 * static_cast<Eigen::Index>(n);
    if (active[n]) sum += huberCost(outcome->residuals(i)) + huberCost(outcome->residuals(i + 1));
  }
  return sum;
}

Block blockOf(const Shot& shot, const Linear& linear, const Active& active) {
  Block block;
  const Eigen::VectorXd information = shot.spreads.cwiseAbs2().cwiseInverse();
  const Eigen::Index count = information.size();
  block.own = information.asDiagonal();
  block.ownSlope = linear.own.cwiseProduct(information);
  block.mixed.setZero(kShared, count);
  const Eigen::VectorXd& r = linear.residuals;
  const Eigen::MatrixXd& jacobian = linear.slopes;
  if (r.size() == 0) return block;
  Eigen::VectorXd weight(r.size());
  for (Eigen::Index i = 0; i < r.size(); ++i) {
    const double a = std::abs(r(i));
    const bool counts = active[static_cast<std::size_t>(i / 2)];
    weight(i) = !counts ? 0.0 : a <= kHuber ? 1.0 : kHuber / a;
    block.squares += counts ? a * a : 0.0;
    block.count += counts ? 1.0 : 0.0;
  }
  const Eigen::MatrixXd normal = jacobian.transpose() * weight.asDiagonal() * jacobian;
  const Eigen::VectorXd slope = jacobian.transpose() * weight.asDiagonal() * r;
  block.shared = normal.topLeftCorner<kShared, kShared>();
  block.mixed = normal.topRightCorner(kShared, count);
  block.own += normal.bottomRightCorner(count, count);
  block.sharedSlope = slope.head<kShared>();
  block.ownSlope += slope.tail(count);
  return block;
}

Eigen::MatrixXd damped(Eigen::MatrixXd matrix, double damping) {
  matrix.diagonal() *= 1.0 + damping;
  return matrix;
}

Eigen::VectorXd reconsidered(const Model& model, const Shot& shot, const SharedVector& values,
                             const Eigen::VectorXd& own, int depth) {
  Eigen::VectorXd best = own;
  double bestCost = fullCost(model, shot, values, best, depth);
  for (const double side : {-kOtherTip, 0.0, kOtherTip}) {
    for (const double height : {-kOtherTip, 0.0, kOtherTip}) {
      Eigen::VectorXd other = own;
      other(2) = side;
      other(3) = height;
      other = descended(model, shot, values, other, depth);
      const double cost = fullCost(model, shot, values, other, depth);
      if (cost >= kClearly * bestCost) continue;
      bestCost = cost;
      best = other;
    }
  }
  return best;
}

}  // namespace ferrule::fingerprint
