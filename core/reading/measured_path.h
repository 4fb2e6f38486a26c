// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/table/track.h"

namespace ferrule {

/// One measured place of a ball.
struct PathPoint {
  double time_s = 0.0;
  TablePoint position;
  double standardUncertainty_m = 0.0;  ///< of each coordinate

  bool operator==(const PathPoint&) const = default;
};

/// The measured places of one ball, in time order. Predictions and places in a hand are not among them.
using MeasuredPath = std::vector<PathPoint>;

/// What a position is trusted to at best, whatever its stated uncertainty: the lens and the pose leave some tenths of a
/// millimetre that drift slowly over the table.
inline constexpr double kBestUncertainty_m = 0.0002;

/// The sample of a ball in a reading; null when the reading does not hold the ball.
[[nodiscard]] const BallSample* sampleOf(const ImageReading& reading, BallName ball);
/// Whether a sample is a measurement of a ball that lies or rolls on the table.
[[nodiscard]] bool isMeasured(const BallSample& sample);

[[nodiscard]] MeasuredPath pathOf(BallName ball, std::span<const ImageReading> readings);
/// The path without single points that lie far from a curve which the two points before and the two after agree on: a
/// wrong measurement, since an impact would leave them disagreeing.
[[nodiscard]] MeasuredPath withoutStrays(const MeasuredPath& path);
/// All samples of the ball, predicted ones too.
[[nodiscard]] Track trackOf(BallName ball, std::span<const ImageReading> readings);
/// Every name that occurs, in the order of the names.
[[nodiscard]] std::vector<BallName> ballsIn(std::span<const ImageReading> readings);
/// The time from one image to the next, s: the median. 1/30 when there are fewer than two.
[[nodiscard]] double imageInterval_s(std::span<const ImageReading> readings);

/// A place from many measurements of a ball at rest.
struct RestingPlace {
  TablePoint position;
  double standardUncertainty_m = 0.0;  ///< of each coordinate

  bool operator==(const RestingPlace&) const = default;
};

/// Weighted mean without outliers (points beyond five times the median distance are left out). points is not empty.
[[nodiscard]] RestingPlace restingPlace(std::span<const PathPoint> points);

}  // namespace ferrule
