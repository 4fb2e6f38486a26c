// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <vector>

#include "core/reading/measured_path.h"

namespace ferrule {

/// A stretch of a ball's path with one acceleration.
///
/// Between impacts a ball slides (parabola), rolls (straight, constant deceleration) or rests, each of which is a
/// polynomial of second degree in time; so a path is a chain of such pieces, and an impact is a joint with a jump of
/// the velocity, while slide-to-roll is one without. Source: Coulomb friction on a solid
/// sphere (Coriolis 1835).
struct MotionPiece {
  std::size_t first = 0;            ///< index of its first point in the path
  std::size_t last = 0;             ///< index of its last point
  std::vector<std::size_t> strays;  ///< points between first and last that the piece leaves out
  double start_s = 0.0;             ///< time of the first point
  double end_s = 0.0;               ///< time of the last point
  double origin_s = 0.0;            ///< when position and velocity hold
  TablePoint position;
  TableVector velocity;                                  ///< m/s
  TableVector acceleration;                              ///< m/s^2
  Eigen::Matrix3d covariance = Eigen::Matrix3d::Zero();  ///< of position, velocity, acceleration, of each coordinate
  bool resting = false;

  [[nodiscard]] std::size_t count() const { return last - first + 1 - strays.size(); }
  [[nodiscard]] TablePoint at(double time_s) const;
  [[nodiscard]] TableVector velocityAt(double time_s) const;
  /// Standard uncertainty of each coordinate, m.
  [[nodiscard]] double positionUncertainty_m(double time_s) const;
  /// Standard uncertainty of each velocity component, m/s.
  [[nodiscard]] double velocityUncertainty_mps(double time_s) const;
};

/// The chain of pieces that explains the path with the least sum of squares plus a price for each piece and a
/// lower one for each point left out as a wrong measurement (dynamic programming over all cuts). path: rising times.
/// Empty for an empty path.
///
/// Source: optimal partitioning, Jackson et al. 2005, IEEE Signal Processing Letters 12(2), 105-108 (from memory).
[[nodiscard]] std::vector<MotionPiece> motionPieces(const MeasuredPath& path);

}  // namespace ferrule
