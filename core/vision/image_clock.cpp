// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/image_clock.h"

#include <cmath>

namespace ferrule {

namespace {

constexpr double kWholeMillisecond_ms = 1e-6;  ///< a rounded time differs from a whole number by less than this
constexpr double kRounding_ms = 0.5 + 1e-6;    ///< rounding to a whole millisecond moves a time by no more
constexpr double kUnknownInterval_s = 1.0 / 30.0;

}  // namespace

double ImageClock::next(double claimed_ms) {
  const long number = count_++;
  if (number == 0) {
    first_ms_ = claimed_ms;
    interval_s_ = rate_hz_ > 0.0 ? 1.0 / rate_hz_ : kUnknownInterval_s;
    return 0.0;
  }
  const double since_ms = claimed_ms - first_ms_;
  double time_s = since_ms / 1000.0;
  bool risen = time_s > last_s_;
  if (roundedToRate_ && risen) {
    const double exact_s = rate_hz_ > 0.0 ? static_cast<double>(number) / rate_hz_ : 0.0;
    roundedToRate_ = rate_hz_ > 0.0 && std::abs(claimed_ms - std::round(claimed_ms)) < kWholeMillisecond_ms &&
                     std::abs(since_ms - 1000.0 * exact_s) < kRounding_ms;
    if (roundedToRate_) time_s = exact_s;
    risen = time_s > last_s_;
  }
  if (!risen) time_s = last_s_ + interval_s_;
  interval_s_ = time_s - last_s_;
  last_s_ = time_s;
  return time_s;
}

}  // namespace ferrule
