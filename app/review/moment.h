// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/record/record_values.h"

namespace ferrule {

/// A ball as it stands at one moment of a shot.
struct BallNow {
  BallName ball;
  TablePoint position;
  double standardUncertainty_m = 0.0;
  bool seen = true;  ///< false: predicted while hidden

  bool operator==(const BallNow&) const = default;
};

/// Every ball on the table at a time of the film: from the tracks while they run, before and after them from the
/// positions at rest. Between two images a moving ball is interpolated.
[[nodiscard]] std::vector<BallNow> ballsAt(const StoredShot& shot, double time_s);

/// The event that happens at a time, within half the given spacing of images.
[[nodiscard]] std::optional<ShotEvent> eventAt(const StoredShot& shot, double time_s, double spacing_s);

/// The times of all images that the shot's tracks saw, rising, each once.
[[nodiscard]] std::vector<double> trackTimes(const StoredShot& shot);

/// Strike, every event and rest, rising, each once: where a step by event stops.
[[nodiscard]] std::vector<double> eventTimes(const StoredShot& shot);

}  // namespace ferrule
