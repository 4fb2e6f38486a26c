// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "core/physics/simulator.h"
#include "core/table/measured_table.h"
#include "core/table/shot.h"

namespace ferrule::bench {

/// What the film of a simulated shot looks like.
struct SimulatedLook {
  double rate_hz = 60.0;
  double noise_m = 0.0007;     ///< of each coordinate
  double shutter = 0.5;        ///< share of the image interval over which a place is blurred
  double dropOut = 0.01;       ///< share of samples that are missing one by one
  double longestGap_s = 0.25;  ///< an arm hides one ball for up to this long in every other shot
};

/// A shot that was played by the simulator and filmed, with its answers.
struct SimulatedShot {
  MeasuredTable measured;
  PhysicsParameters parameters;  ///< of this shot's cloth, balls and cushions
  Position before;
  Strike strike;
  double strike_s = 0.0;       ///< in the film
  double departure_rad = 0.0;  ///< of the cue ball
  TablePoint3 camera;
  Simulation simulation;
  std::vector<ImageReading> readings;
};

/// The shot of a number: position, strike, cloth and film are drawn by a generator seeded with it. One to seven object
/// balls, most strokes at one of them; speeds from 0.5 to 6 m/s; tip points over a disc of 0.45 radii; elevations of
/// some degrees, a few of them high; coefficients spread as the literature's ranges are.
[[nodiscard]] SimulatedShot simulatedShot(std::uint64_t number, const SimulatedLook& look = {});

}  // namespace ferrule::bench
