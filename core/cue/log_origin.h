// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "core/cue/pitch_log.h"

namespace ferrule {

/// An elevation as one image shows it: rough, but with the film's time.
struct SeenElevation {
  double time_s = 0.0;
  double elevation_rad = 0.0;
};

/// What a log's clock has to do with the film's.
enum class LogClock {
  Same,     ///< the log goes with the film as it is
  Shifted,  ///< it began at another time, and the cue's movements tell when
  Unknown,  ///< it does not go with the film, and nothing tells how it would
};

struct LogOrigin {
  LogClock clock = LogClock::Unknown;
  double logMinusFilm_s = 0.0;  ///< time by the log less time by the film, of the same moment
};

/// Compares the rise and fall of a cue in the pictures with a log; a constant error of the sensor does not matter. The
/// log is believed to have the film's clock unless another origin fits clearly better. seen: in time order.
[[nodiscard]] LogOrigin originOf(const PitchLog& log, std::span<const SeenElevation> seen);

}  // namespace ferrule
