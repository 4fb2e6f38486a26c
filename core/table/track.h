// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <vector>

#include "core/geometry/frames.h"
#include "core/table/ball.h"

namespace ferrule {

/// Where a ball was at the middle of one image's exposure.
struct TrackSample {
  double time_s = 0.0;
  TablePoint position;                 ///< of the ball's centre
  double standardUncertainty_m = 0.0;  ///< of each coordinate
  bool seen = false;                   ///< false: predicted while hidden

  bool operator==(const TrackSample&) const = default;
};

/// One ball's way, in time order, one sample an image while the ball is on the table.
struct Track {
  BallName ball;
  std::vector<TrackSample> samples;

  bool operator==(const Track&) const = default;
};

/// A ball at rest.
struct BallAt {
  BallName ball;
  TablePoint position;

  bool operator==(const BallAt&) const = default;
};

/// All balls on the table, in the order of their names.
using Position = std::vector<BallAt>;

/// The ball of a name in a position; null where it is not on the table.
[[nodiscard]] inline const BallAt* ballIn(const Position& position, BallName ball) {
  const auto found = std::ranges::find(position, ball, &BallAt::ball);
  return found == position.end() ? nullptr : &*found;
}

/// One ball of one image.
struct BallSample {
  BallName ball;
  TablePoint position;
  double standardUncertainty_m = 0.0;
  bool seen = false;
  bool inHand = false;  ///< carried by a person, not in play

  bool operator==(const BallSample&) const = default;
};

/// Everything that was read from one image. Balls that are off the table are left out.
struct ImageReading {
  long image = 0;                 ///< counted from 0
  double time_s = 0.0;            ///< middle of the exposure, from the film's start
  std::vector<BallSample> balls;  ///< in the order of their names

  bool operator==(const ImageReading&) const = default;
};

}  // namespace ferrule
