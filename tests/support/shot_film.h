// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/base/random.h"
#include "core/physics/simulation.h"
#include "core/table/track.h"

namespace ferrule::testing {

/// How a camera samples a simulated shot.
struct FilmSampling {
  double rate_hz = 60.0;
  double noise_m = 0.0007;                 ///< of each coordinate
  double shutter = 0.5;                    ///< share of the image interval over which a place is blurred
  double dropOut = 0.0;                    ///< share of samples that are missing one by one
  double strike_s = 1.0;                   ///< in the film
  std::optional<TablePoint3> camera = {};  ///< sees balls in the air aside of where they are; absent: from above
  double until_s = 1e9;                    ///< end of the film, if that comes before rest and kFilmTail_s more
};

inline constexpr double kFilmTail_s = 1.2;

/// A time during which one ball is hidden.
struct Hidden {
  std::size_t ball = 0;  ///< in the position
  double from_s = 0.0;
  double to_s = 0.0;
};

/// The film of a simulation with paths: each ball's mean place over the exposure with noise; balls that fell are gone.
[[nodiscard]] std::vector<ImageReading> filmOf(const Simulation& simulation, const FilmSampling& sampling,
                                               Random& random, const std::optional<Hidden>& hidden = {});

}  // namespace ferrule::testing
