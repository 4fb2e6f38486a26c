// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/shot_film.h"

#include <algorithm>

namespace ferrule::testing {

namespace {

constexpr int kExposureSteps = 5;

/// Where the film sees a ball whose picture is blurred over the exposure; nothing once it is gone.
std::optional<TablePoint> seenAt(const BallPath& path, double time_s, double exposure_s,
                                 const std::optional<TablePoint3>& camera) {
  TableVector sum;
  const TablePoint base = planOf(path.stateAt(time_s).position);
  const double lies_m = path.motions.front().position.z;
  // The ray from the camera through the centre goes on to the height of resting centres: similar triangles.
  const auto shown = [&](TablePoint3 p) {
    if (!camera || p.z <= lies_m) return planOf(p);
    const double stretch = (camera->z - lies_m) / (camera->z - p.z);
    return TablePoint{camera->x + stretch * (p.x - camera->x), camera->y + stretch * (p.y - camera->y)};
  };
  for (int i = 0; i < kExposureSteps; ++i) {
    const double t = std::max(0.0, time_s + exposure_s * ((i + 0.5) / kExposureSteps - 0.5));
    const Motion& motion = path.motionAt(t);
    if (motion.kind == MotionKind::Gone || motion.kind == MotionKind::Falling) return std::nullopt;
    sum = sum + (shown(motion.positionAt(t)) - base);
  }
  return base + sum / kExposureSteps;
}

}  // namespace

std::vector<ImageReading> filmOf(const Simulation& simulation, const FilmSampling& sampling, Random& random,
                                 const std::optional<Hidden>& hidden) {
  const double end_s = std::min(sampling.until_s, sampling.strike_s + simulation.duration_s + kFilmTail_s);
  const double offset_s = random.uniform() / sampling.rate_hz;
  std::vector<ImageReading> readings;
  for (long image = 0;; ++image) {
    ImageReading reading{image, offset_s + static_cast<double>(image) / sampling.rate_hz, {}};
    if (reading.time_s > end_s) break;
    for (std::size_t i = 0; i < simulation.paths.size(); ++i) {
      const auto place = seenAt(simulation.paths[i], reading.time_s - sampling.strike_s,
                                sampling.shutter / sampling.rate_hz, sampling.camera);
      const double dx_m = sampling.noise_m * random.normal();
      const double dy_m = sampling.noise_m * random.normal();
      const bool missing = random.uniform() < sampling.dropOut;
      const bool behindArm =
          hidden && i == hidden->ball && reading.time_s > hidden->from_s && reading.time_s < hidden->to_s;
      if (!place || missing || behindArm) continue;
      reading.balls.push_back(
          {simulation.paths[i].ball, {place->x + dx_m, place->y + dy_m}, sampling.noise_m, true, false});
    }
    readings.push_back(std::move(reading));
  }
  return readings;
}

}  // namespace ferrule::testing
