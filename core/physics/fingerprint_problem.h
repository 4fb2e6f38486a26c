// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>
#include <optional>
#include <vector>

#include "core/physics/fingerprint.h"

namespace ferrule {

/// The numbers behind fitFingerprint: unknowns, samples, residuals and their slopes. Not for others.
namespace fingerprint {

inline constexpr Eigen::Index kShared = 7;  ///< unknowns of the table
/// Unknowns of a shot: aim, speed, side, height, instant, then x and y of each ball that takes part.
inline constexpr Eigen::Index kStrike = 5;
/// Contacts in a row after which a ball's way says more about the contacts than about the table.
inline constexpr int kMostDepth = 3;

using SharedVector = Eigen::Matrix<double, kShared, 1>;

/// A coefficient of the table: how it is set, and what the literature leaves open (half the ranges in
/// physics_parameters.h).
struct Shared {
  const char* name;
  double literature;
  double spread;
  double least;
  double most;
  void (*set)(PhysicsParameters&, double);
};

[[nodiscard]] std::array<Shared, kShared> sharedOf(const PhysicsParameters& literature);
[[nodiscard]] PhysicsParameters parametersAt(const SharedVector& values, PhysicsParameters literature);

/// One sample that takes part.
struct Sample {
  std::size_t ball = 0;  ///< in the shot's position
  double time_s = 0.0;   ///< after the recorded strike
  TablePoint place;
  double sigma_m = 0.0;
  int depth = 0;             ///< contacts in a row, of this ball and of those that sent it, that it hangs on
  std::size_t contacts = 0;  ///< of this ball until then, as recorded
};

/// A contact of one ball.
struct Contact {
  double time_s = 0.0;
  EventKind kind = EventKind::Ball;
  int partner = 0;  ///< the other ball's number, or the cushion's or pocket's place in its list

  bool operator==(const Contact&) const = default;
};

/// A shot that can be fitted.
struct Shot {
  Position before;
  Strike recorded;                 ///< where the fit begins
  std::vector<std::size_t> parts;  ///< balls with samples, in the position
  std::vector<Sample> samples;
  std::vector<std::vector<Contact>> contacts;  ///< of each ball of the position, as recorded, after the strike
  Eigen::VectorXd spreads;                     ///< what is known of the own unknowns beforehand, next to the film
};

/// Nothing for a shot without a cue ball that can be seen to move.
[[nodiscard]] std::optional<Shot> prepare(const FingerprintShot& shot, const PhysicsParameters& literature);

/// What a simulation says about a shot's samples.
struct Outcome {
  Eigen::VectorXd residuals;     ///< two for each sample, in sigmas
  std::vector<bool> samePlayed;  ///< for each sample: whether its ball went through the recorded contacts until then
};

/// own: away from what was recorded. Nothing when that cannot be played.
[[nodiscard]] std::optional<Outcome> play(const Table& table, const PhysicsParameters& parameters, const Shot& shot,
                                          const Eigen::VectorXd& own);

/// The residuals' slopes by differences from both sides: columns of the shared unknowns, then of the shot's own. Where
/// an event appears or vanishes within a step the quotient would be a jump, not a slope, and is left out.
/// withShared: false leaves the shared columns 0, which spares half the work.
[[nodiscard]] Eigen::MatrixXd slopes(const Table& table, const PhysicsParameters& literature, const Shot& shot,
                                     const SharedVector& values, const Eigen::VectorXd& own,
                                     const Eigen::VectorXd& base, bool withShared);

}  // namespace fingerprint
}  // namespace ferrule
