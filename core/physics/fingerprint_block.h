// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <vector>

#include "core/physics/fingerprint_problem.h"

namespace ferrule::fingerprint {

using SharedMatrix = Eigen::Matrix<double, kShared, kShared>;

inline constexpr double kHuber = 2.5;  ///< sigmas up to which a sample counts fully

/// What every shot is played with.
struct Model {
  const Table& table;
  PhysicsParameters literature;

  [[nodiscard]] PhysicsParameters at(const SharedVector& values) const { return parametersAt(values, literature); }
};

/// What a shot does at one place of the fit, and how that changes.
struct Linear {
  Eigen::VectorXd own;
  Eigen::VectorXd residuals;  ///< empty where the shot cannot be played
  std::vector<bool> samePlayed;
  Eigen::MatrixXd slopes;
};

/// withShared: as in slopes().
[[nodiscard]] Linear linearAt(const Model& model, const Shot& shot, const SharedVector& values,
                              const Eigen::VectorXd& own, bool withShared = true);

/// Which samples of a shot count for a while.
using Active = std::vector<bool>;

/// Those that hang on no more than depth contacts, of balls that went through the recorded contacts, and whose place
/// does not turn on a hair: where a third of a millimetre at the start is centimetres here, luck speaks, not the table.
[[nodiscard]] Active activeSamples(const Shot& shot, const Linear& linear, int depth);

/// Huber's cost of the active samples, and what the own unknowns cost by straying from what was recorded. Infinite
/// where the shot cannot be played.
[[nodiscard]] double costOf(const Model& model, const Shot& shot, const SharedVector& values,
                            const Eigen::VectorXd& own, const Active& active);

/// The normal equations of one shot, its own unknowns still in it, with what was known of them beforehand.
struct Block {
  SharedMatrix shared = SharedMatrix::Zero();
  Eigen::MatrixXd mixed;
  Eigen::MatrixXd own;
  SharedVector sharedSlope = SharedVector::Zero();
  Eigen::VectorXd ownSlope;
  double squares = 0.0;  ///< of the active residuals, without weights, so that what does not fit shows
  double count = 0.0;    ///< of active residuals
};

[[nodiscard]] Block blockOf(const Shot& shot, const Linear& linear, const Active& active);

/// The diagonal raised by a share of itself (Marquardt).
[[nodiscard]] Eigen::MatrixXd damped(Eigen::MatrixXd matrix, double damping);

/// Looks for a better strike of one shot from other tip points, the table left as it is: a wrong side of the ball is a
/// valley of its own.
[[nodiscard]] Eigen::VectorXd reconsidered(const Model& model, const Shot& shot, const SharedVector& values,
                                           const Eigen::VectorXd& own, int depth);

}  // namespace ferrule::fingerprint
