// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/reading/measured_path.h"
#include "core/table/shot.h"

namespace ferrule {

/// What is known of cloth and strikes before a path is looked at: middle values and spreads.
struct PathFitPriors {
  double slidingFriction = 0.2;         ///< 0.15 to 0.4. Source: Alciatore, physical properties (from memory)
  double slidingFrictionSpread = 0.25;  ///< of its natural logarithm
  double rollingFriction = 0.01;        ///< 0.005 to 0.015. Source: the same
  double rollingFrictionSpread = 0.35;  ///< of its natural logarithm
  double forwardSpin = 0.1;             ///< R w / v, + follow; -1.25 to 1.25 by the miscue limit of half a radius
  double forwardSpinSpread = 0.7;
  /// R w / v about the line of travel, which bends the path: 2.5 x side x sin(elevation), with side about 0.15 and
  /// elevation about 4 degrees in most strokes and much more in masse, hence the scale of a Cauchy distribution.
  double sideSpinScale = 0.025;
  /// Upward speed over forward speed just after the strike: a cue is never level, so the ball hops and slides only
  /// half of the first moments. Half of sin(elevation); its median, and the spread of its natural logarithm.
  /// Source: the launch off a slate with restitution, from mechanics. Elevations of 2 to 10 degrees: common practice,
  /// no source.
  double hop = 0.035;
  double hopSpread = 0.8;
  double slateRestitution = 0.5;  ///< 0.5 to 0.6, from memory
  double gravity_mps2 = 9.81;
};

/// Start of a path that was fitted with the laws of motion.
struct PathFit {
  double strike_s = 0.0;
  double strikeUncertainty_s = 0.0;
  Measured aim_rad;
  Measured speed_mps;
  TablePoint start;
  std::size_t points = 0;  ///< used
  double chiSquare = 0.0;  ///< of the points, per degree of freedom
  bool usable = false;     ///< false: too few points, or the path is not that of a struck ball
};

/// Fits the cue ball's path from the strike to its first event: sliding along a parabola, then rolling, with unknown
/// time of the strike, speed, direction, spin and friction, by robust weighted least squares.
///
/// A straight line through the path would be biased: over a window of 0.15 s it reads the start speed 0.15 m/s low.
/// Source: Coulomb friction on a solid sphere, sliding until it rolls (Coriolis 1835); the bias is half of the loss of
/// speed over the window.
///
/// place: where the ball lay. points: from the strike until its first event. approximateStrike_s: to an image.
[[nodiscard]] PathFit fitStruckPath(const RestingPlace& place, std::span<const PathPoint> points,
                                    double approximateStrike_s, const PathFitPriors& priors = {});

}  // namespace ferrule
