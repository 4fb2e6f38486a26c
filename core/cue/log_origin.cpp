// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/log_origin.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/vision/outliers.h"

namespace ferrule {

namespace {

/// Shorter than any part of a stroke.
constexpr double kStep_s = 0.02;
constexpr double kLongestLog_s = 6.0 * 3600.0;
constexpr std::size_t kFewestImages = 8;
constexpr std::size_t kMostImages = 80;
/// An origin is only thought of where the log has a line for so many of the images.
constexpr double kCovered = 0.8;
/// So many must speak before a log that was broken off is doubted.
constexpr double kPart = 0.1;
/// A single image that misses by more than three standard deviations counts for no more.
constexpr double kMostSquare = 9.0;
/// Squares over the variance, as a difference: another origin must be this much better than the film's own clock, and
/// than any third. Twice the logarithm of a likelihood ratio of about 3000.
constexpr double kClearlyBetter = 16.0;
/// Origins nearer than this are the same.
constexpr double kApart_s = 0.5;
constexpr double kRefined_s = 0.3;
/// The pictures must follow the log as well as their own noise allows, within this factor.
constexpr double kMostMisfit = 3.0;
constexpr double kLeastNoise_rad = 0.0005;

/// The log on an even grid, so that many origins can be tried.
std::vector<std::optional<double>> gridOf(const PitchLog& log) {
  std::vector<std::optional<double>> grid;
  const double first_s = log.samples.front().time_s;
  const double last_s = std::min(log.samples.back().time_s, first_s + kLongestLog_s);
  for (double time_s = first_s; time_s <= last_s; time_s += kStep_s) {
    const auto pitch = pitchAt(log, time_s);
    grid.push_back(pitch ? std::optional(pitch->value) : std::nullopt);
  }
  return grid;
}

/// Of one image's elevation: neighbours differ by noise alone.
double noiseOf(std::span<const SeenElevation> seen) {
  std::vector<double> steps;
  for (std::size_t i = 1; i < seen.size(); ++i)
    steps.push_back(std::abs(seen[i].elevation_rad - seen[i - 1].elevation_rad));
  return std::max(kLeastNoise_rad, kDeviationFromMedian * median(std::move(steps)) / std::sqrt(2.0));
}

std::vector<SeenElevation> thinned(std::span<const SeenElevation> seen) {
  const std::size_t every = 1 + (seen.size() - 1) / kMostImages;
  std::vector<SeenElevation> kept;
  for (std::size_t i = 0; i < seen.size(); i += every)
    kept.push_back(seen[i]);
  return kept;
}

/// Whether the log has the film's time and lacks its lines: a gap, or an end before the strike.
bool brokenOff(const PitchLog& log, std::span<const SeenElevation> seen) {
  const double from_s = seen.front().time_s;
  const double until_s = seen.back().time_s;
  const bool gap =
      std::ranges::any_of(log.gaps, [&](const LogGap& hole) { return hole.from_s < until_s && hole.until_s > from_s; });
  const bool began = log.samples.front().time_s < from_s && log.samples.back().time_s > from_s;
  return gap || began;
}

class Comparison {
 public:
  Comparison(const PitchLog& log, std::span<const SeenElevation> seen)
      : grid_(gridOf(log)), first_s_(log.samples.front().time_s), seen_(thinned(seen)), noise_rad_(noiseOf(seen)) {}
  /// From now on with every image; for a few origins only.
  void takeAll(std::span<const SeenElevation> seen) { seen_.assign(seen.begin(), seen.end()); }

  /// Squares over the variance for one origin; nothing where the log does not cover this share of the images.
  [[nodiscard]] std::optional<double> misfit(double logMinusFilm_s, double covered = kCovered) const {
    std::vector<double> differences;
    for (const SeenElevation& image : seen_) {
      const double place = (image.time_s + logMinusFilm_s - first_s_) / kStep_s;
      if (place < 0.0) continue;
      const auto cell = static_cast<std::size_t>(std::lround(place));
      if (cell < grid_.size() && grid_[cell]) differences.push_back(*grid_[cell] - image.elevation_rad);
    }
    if (differences.empty() || static_cast<double>(differences.size()) < covered * images()) return std::nullopt;
    // The mean without what misses the middle widely.
    const double middle = median(differences);
    double bias = 0.0;
    double near = 0.0;
    for (const double difference : differences) {
      const double off = (difference - middle) / noise_rad_;
      if (off * off > kMostSquare) continue;
      bias += difference;
      near += 1.0;
    }
    bias /= near;
    double sum = 0.0;
    for (const double difference : differences) {
      const double off = (difference - bias) / noise_rad_;
      sum += std::min(kMostSquare, off * off);
    }
    return sum * images() / static_cast<double>(differences.size());
  }

  [[nodiscard]] double images() const { return static_cast<double>(seen_.size()); }
  [[nodiscard]] double length_s() const { return kStep_s * static_cast<double>(grid_.size()); }
  [[nodiscard]] double first_s() const { return first_s_; }

 private:
  std::vector<std::optional<double>> grid_;
  double first_s_;
  std::vector<SeenElevation> seen_;
  double noise_rad_;
};

}  // namespace

LogOrigin originOf(const PitchLog& log, std::span<const SeenElevation> seen) {
  if (seen.size() < kFewestImages) {
    // Too little to compare: believe the clock where it covers the images at all.
    const bool covered =
        std::ranges::any_of(seen, [&](const SeenElevation& image) { return pitchAt(log, image.time_s).has_value(); });
    return {covered ? LogClock::Same : LogClock::Unknown, 0.0};
  }
  Comparison comparison(log, seen);
  const std::optional<double> asItIs = comparison.misfit(0.0);
  if (!asItIs && brokenOff(log, seen)) {
    const auto part = comparison.misfit(0.0, kPart);
    if (!part || *part < kMostMisfit * comparison.images()) return {LogClock::Same, 0.0};
  }
  struct Tried {
    double shift_s = 0.0;
    double misfit = 0.0;
  };
  std::vector<Tried> tried;
  const double from_s = comparison.first_s() - seen.back().time_s;
  const double until_s = comparison.first_s() + comparison.length_s() - seen.front().time_s;
  for (double shift_s = from_s; shift_s <= until_s; shift_s += kStep_s) {
    if (const auto misfit = comparison.misfit(shift_s)) tried.push_back({shift_s, *misfit});
  }
  if (tried.empty()) return {asItIs ? LogClock::Same : LogClock::Unknown, 0.0};
  const Tried best = *std::ranges::min_element(tried, {}, &Tried::misfit);
  if (asItIs && *asItIs - best.misfit < kClearlyBetter) return {LogClock::Same, 0.0};
  double third = INFINITY;
  for (const Tried& other : tried) {
    if (std::abs(other.shift_s - best.shift_s) > kApart_s) third = std::min(third, other.misfit);
  }
  const bool follows = best.misfit < kMostMisfit * comparison.images();
  if (follows && third - best.misfit > kClearlyBetter && std::isfinite(third)) {
    comparison.takeAll(seen);
    Tried finer{best.shift_s, INFINITY};
    for (double shift_s = best.shift_s - kRefined_s; shift_s <= best.shift_s + kRefined_s; shift_s += kStep_s) {
      const auto misfit = comparison.misfit(shift_s);
      if (misfit && *misfit < finer.misfit) finer = {shift_s, *misfit};
    }
    return {LogClock::Shifted, finer.shift_s};
  }
  return {LogClock::Unknown, 0.0};
}

}  // namespace ferrule
