// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <cstdint>
#include <vector>

#include "core/physics/simulator.h"
#include "core/reading/delivery_window.h"
#include "core/reading/path_fit.h"

namespace ferrule {

/// What is known of strikes, cloth, balls and cushions before a shot is looked at.
struct DeliveryPriors {
  /// Middle values. The literature's, or a table's own when it has been measured.
  PhysicsParameters middle;
  double slidingFrictionSpread = 0.2;  ///< of its natural logarithm: 0.15 to 0.4. Source: as in PhysicsParameters
  double rollingFrictionSpread = 0.3;  ///< of its natural logarithm: 0.005 to 0.015
  double spinDecaySpread = 0.3;        ///< of its natural logarithm: 5 to 15 rad/s^2
  double slateRestitutionSpread = 0.05;
  double ballRestitutionSpread = 0.02;
  double ballFrictionSpread = 0.4;  ///< of the natural logarithm of a factor on the speed-dependent law
  double cushionRestitutionSpread = 0.07;
  double cushionFrictionSpread = 0.06;

  /// Tip point, in ball radii: most strokes stay well within the miscue limit of half a radius. Common practice, no
  /// source.
  double sideSpread = 0.22;
  double heightSpread = 0.25;
  /// Elevation of the cue: its median, and the spread of its natural logarithm; 2 to 10 degrees in most strokes, up to
  /// 40 and more in masse. Common practice, no source.
  double elevation_rad = 0.075;
  double elevationSpread = 0.8;
  /// Beyond the miscue limit no tip holds: where it lies and how sharply it acts, in ball radii.
  double miscueLimit = 0.52;
  double miscueSpread = 0.02;

  /// Around the start values, wide enough to leave them to the film.
  double aimSpread_rad = 0.03;
  double speedSpread = 0.1;  ///< of its natural logarithm
  double strikeSpread_s = 0.02;
};

/// What is unknown of a shot, each in units of its spread around its middle; after these come x and y of each object
/// ball's place.
enum DeliveryUnknown : Eigen::Index {
  kStrikeTime,
  kCueX,
  kCueY,
  kAim,
  kLogSpeed,
  kSide,
  kHeight,
  kLogElevation,
  kLogSliding,
  kLogRolling,
  kSlate,
  kLogSpinDecay,
  kBallRestitution,
  kLogBallFriction,
  kCushionRestitution,
  kCushionFriction,
  kDeliveryUnknowns
};

/// A strike with everything that it is played with.
struct PlayedStrike {
  double strike_s = 0.0;
  double departure_rad = 0.0;  ///< of the cue ball, not of the cue
  Strike strike;
  PhysicsParameters parameters;
  Position balls;
};

/// Where a film that takes every ball to lie on the cloth shows a ball's centre: the camera's ray through it meets the
/// plane of resting centres farther out, by its height over the camera's. Without a camera, below it.
[[nodiscard]] TablePoint seenFrom(const std::optional<TablePoint3>& camera, TablePoint3 centre, double radius_m);

/// The numbers behind fitDelivery: residuals of a simulated strike against the measured places, over their
/// uncertainties, then the priors.
class DeliveryProblem {
 public:
  /// table, window: outlive the problem.
  DeliveryProblem(const Table& table, const DeliveryWindow& window, const PathFit& start, const DeliveryPriors& priors);

  [[nodiscard]] Eigen::Index unknowns() const { return middle_.size(); }
  [[nodiscard]] Eigen::Index residuals() const { return 2 * sampleCount() + unknowns() + 1; }
  [[nodiscard]] Eigen::Index sampleCount() const { return static_cast<Eigen::Index>(weights_.size()); }
  /// Whether an unknown can show in this window at all.
  [[nodiscard]] bool matters(Eigen::Index unknown) const;

  [[nodiscard]] PlayedStrike at(const Eigen::VectorXd& z) const;
  [[nodiscard]] double middle(Eigen::Index unknown) const { return middle_[unknown]; }
  [[nodiscard]] double spread(Eigen::Index unknown) const { return spread_[unknown]; }

  /// What a simulation says.
  struct Played {
    Eigen::VectorXd residuals;
    std::uint64_t course = 0;  ///< changes with the events that were met
  };
  /// Residuals beyond any measure where the strike cannot be played.
  [[nodiscard]] Played play(const Eigen::VectorXd& z) const;
  /// Slopes of the residuals over the named unknowns, by differences to one side; to the other where the first side
  /// meets other events, and 0 where both do, since that quotient would be a jump.
  [[nodiscard]] Eigen::MatrixXd slopes(const Eigen::VectorXd& z, const Played& base,
                                       const std::vector<Eigen::Index>& free) const;

  /// Samples later than this do not count and are not simulated.
  void setHorizon(double time_s);
  [[nodiscard]] double horizon_s() const { return horizon_s_; }
  [[nodiscard]] Eigen::Index samplesInHorizon() const;
  /// Gives each sample within the horizon the weight that its distance from this strike's way deserves. Source: Huber,
  /// Ann. Math. Stat. 35, 73 (1964).
  void reweight(const Eigen::VectorXd& z);
  /// Of the samples within the horizon.
  [[nodiscard]] double weightSum() const;
  [[nodiscard]] double lastSample_s() const { return window_.end_s; }
  /// Sum of the weighted samples' squares.
  [[nodiscard]] double sampleSquares(const Played& played) const {
    return played.residuals.head(2 * sampleCount()).squaredNorm();
  }

 private:
  const Table& table_;
  const DeliveryWindow& window_;
  DeliveryPriors priors_;
  Eigen::VectorXd middle_;
  Eigen::VectorXd spread_;
  Eigen::VectorXd weights_;
  double horizon_s_;
};

}  // namespace ferrule
