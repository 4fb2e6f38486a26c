// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/measured_path.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/base/contract.h"

namespace ferrule {

namespace {

double median(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::ranges::nth_element(values, middle);
  return *middle;
}

}  // namespace

const BallSample* sampleOf(const ImageReading& reading, BallName ball) {
  const auto found = std::ranges::find(reading.balls, ball, &BallSample::ball);
  return found == reading.balls.end() ? nullptr : &*found;
}

bool isMeasured(const BallSample& sample) {
  return sample.seen && !sample.inHand && std::isfinite(sample.position.x) && std::isfinite(sample.position.y);
}

MeasuredPath pathOf(BallName ball, std::span<const ImageReading> readings) {
  MeasuredPath path;
  for (const ImageReading& reading : readings) {
    const BallSample* sample = sampleOf(reading, ball);
    if (sample == nullptr || !isMeasured(*sample)) continue;
    path.push_back({reading.time_s, sample->position, std::hypot(sample->standardUncertainty_m, kBestUncertainty_m)});
  }
  return path;
}

MeasuredPath withoutStrays(const MeasuredPath& path) {
  constexpr double kStray_m = 0.006;
  constexpr double kStrayUncertainties = 8.0;
  constexpr double kAgreement_m = 0.003;
  constexpr double kAgreementUncertainties = 5.0;
  MeasuredPath kept;
  for (std::size_t i = 0; i < path.size(); ++i) {
    const PathPoint& here = path[i];
    bool stray = false;
    // At the path's ends there are too few neighbours to judge by.
    if (i >= 2 && i + 2 < path.size()) {
      // The parabola through three neighbours, its place at the fourth and at this point (Lagrange).
      const PathPoint& a = path[i - 2];
      const PathPoint& b = path[i - 1];
      const PathPoint& c = path[i + 1];
      const PathPoint& d = path[i + 2];
      const auto through = [&](double t) {
        const double ab = a.time_s - b.time_s;
        const double ac = a.time_s - c.time_s;
        const double bc = b.time_s - c.time_s;
        const double lb = -(t - a.time_s) * (t - c.time_s) / (ab * bc);
        const double lc = (t - a.time_s) * (t - b.time_s) / (ac * bc);
        return a.position + lb * (b.position - a.position) + lc * (c.position - a.position);
      };
      const double u_m = std::max(
          {a.standardUncertainty_m, b.standardUncertainty_m, c.standardUncertainty_m, d.standardUncertainty_m});
      // The fourth is extrapolated, which multiplies the noise by about four.
      const double off_m = distance(here.position, through(here.time_s));
      const double disagreement_m = distance(d.position, through(d.time_s));
      stray = off_m > std::max(kStray_m, kStrayUncertainties * u_m) && off_m > 2.0 * disagreement_m &&
              disagreement_m < kAgreement_m + kAgreementUncertainties * u_m;
    }
    if (!stray) kept.push_back(here);
  }
  return kept;
}

Track trackOf(BallName ball, std::span<const ImageReading> readings) {
  Track track{ball, {}};
  for (const ImageReading& reading : readings) {
    const BallSample* sample = sampleOf(reading, ball);
    if (sample == nullptr) continue;
    track.samples.push_back(
        {reading.time_s, sample->position, sample->standardUncertainty_m, sample->seen && !sample->inHand});
  }
  return track;
}

std::vector<BallName> ballsIn(std::span<const ImageReading> readings) {
  std::array<bool, BallName::kCount> there{};
  for (const ImageReading& reading : readings) {
    for (const BallSample& sample : reading.balls)
      there[static_cast<std::size_t>(sample.ball.number())] = true;
  }
  std::vector<BallName> balls;
  for (int number = 0; number < BallName::kCount; ++number) {
    if (there[static_cast<std::size_t>(number)]) balls.emplace_back(number);
  }
  return balls;
}

double imageInterval_s(std::span<const ImageReading> readings) {
  if (readings.size() < 2) return 1.0 / 30.0;
  std::vector<double> gaps;
  gaps.reserve(readings.size());
  for (std::size_t i = 1; i < readings.size(); ++i)
    gaps.push_back(readings[i].time_s - readings[i - 1].time_s);
  return median(std::move(gaps));
}

RestingPlace restingPlace(std::span<const PathPoint> points) {
  FERRULE_REQUIRE(!points.empty());
  std::vector<double> xs;
  std::vector<double> ys;
  for (const PathPoint& point : points) {
    xs.push_back(point.position.x);
    ys.push_back(point.position.y);
  }
  const TablePoint middle{median(xs), median(ys)};
  std::vector<double> distances;
  for (const PathPoint& point : points)
    distances.push_back(distance(point.position, middle));
  const double limit_m = std::max(5.0 * median(distances), kBestUncertainty_m);
  double weights = 0.0;
  TableVector sum;
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (distances[i] > limit_m) continue;
    const double weight = 1.0 / (points[i].standardUncertainty_m * points[i].standardUncertainty_m);
    weights += weight;
    sum = sum + weight * (points[i].position - middle);
  }
  if (weights == 0.0) return {middle, points.front().standardUncertainty_m};
  // Averaging takes the noise away, not what lens and pose leave.
  return {middle + sum / weights, std::max(std::sqrt(1.0 / weights), kBestUncertainty_m / 2.0)};
}

}  // namespace ferrule
