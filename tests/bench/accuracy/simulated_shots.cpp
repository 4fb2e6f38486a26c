// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/simulated_shots.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "core/base/random.h"
#include "core/geometry/units.h"
#include "tests/support/shot_film.h"

namespace ferrule::bench {

namespace {

constexpr double kLead_s = 1.0;  ///< of film before the strike
constexpr double kLongest_s = 30.0;
constexpr double kMostTip = 0.45;

PhysicsParameters drawParameters(const BallSet& balls, Random& random) {
  PhysicsParameters p = parametersFor(balls);
  p.slidingFriction *= std::exp(0.2 * random.normal());
  p.rollingFriction *= std::exp(0.3 * random.normal());
  p.spinDecay_radps2 *= std::exp(0.3 * random.normal());
  p.slateRestitution += 0.05 * random.normal();
  p.ballRestitution = std::min(0.99, p.ballRestitution + 0.015 * random.normal());
  const double friction = std::exp(0.3 * random.normal());
  p.ballFriction.floor *= friction;
  p.ballFriction.extra *= friction;
  p.cushionRestitution = std::min(0.97, p.cushionRestitution + 0.05 * random.normal());
  p.cushionFriction = std::max(0.05, p.cushionFriction + 0.05 * random.normal());
  return p;
}

Position drawBalls(const MeasuredTable& measured, Random& random) {
  const double radius_m = measured.balls.radius_m();
  const int count = 2 + static_cast<int>(7.0 * random.uniform());
  Position balls;
  while (static_cast<int>(balls.size()) < count) {
    const TablePoint place{(random.uniform() - 0.5) * (measured.table.length_m - 5.0 * radius_m),
                           (random.uniform() - 0.5) * (measured.table.width_m - 5.0 * radius_m)};
    const bool free = std::ranges::all_of(
        balls, [&](const BallAt& other) { return distance(other.position, place) > 2.5 * radius_m; });
    if (free) balls.push_back({BallName(static_cast<int>(balls.size())), place});
  }
  return balls;
}

Strike drawStrike(const Position& balls, double radius_m, Random& random) {
  Strike strike;
  strike.speed_mps = std::clamp(1.7 * std::exp(0.5 * random.normal()), 0.5, 6.0);
  const double reach = kMostTip * std::sqrt(random.uniform());
  const double around_rad = 2.0 * std::numbers::pi * random.uniform();
  strike.side = reach * std::cos(around_rad);
  strike.height = reach * std::sin(around_rad);
  strike.elevation_rad = std::min(radiansFromDegrees(45.0), 0.075 * std::exp(0.6 * random.normal()));
  const TableVector way = balls[1].position - balls[0].position;
  const double miss_m = 2.0 * radius_m * (1.8 * random.uniform() - 0.9);
  strike.aim_rad = direction(way) + std::asin(std::clamp(miss_m / length(way), -1.0, 1.0));
  if (random.uniform() < 0.1) strike.aim_rad = 2.0 * std::numbers::pi * random.uniform();
  return strike;
}

std::vector<ImageReading> filmed(const SimulatedShot& shot, const SimulatedLook& look, Random& random) {
  testing::FilmSampling sampling;
  sampling.rate_hz = look.rate_hz;
  sampling.noise_m = look.noise_m;
  sampling.shutter = look.shutter;
  sampling.dropOut = look.dropOut;
  sampling.strike_s = shot.strike_s;
  sampling.camera = shot.camera;
  std::optional<testing::Hidden> hidden;
  if (random.uniform() < 0.5) {
    hidden.emplace();
    hidden->ball = random.uniform() < 0.5 ? 0 : 1;
    hidden->from_s = shot.strike_s + 1.5 * random.uniform();
    hidden->to_s = hidden->from_s + look.longestGap_s * random.uniform();
  }
  return testing::filmOf(shot.simulation, sampling, random, hidden);
}

}  // namespace

SimulatedShot simulatedShot(std::uint64_t number, const SimulatedLook& look) {
  Random random(number + 1);
  for (;;) {
    SimulatedShot shot;
    shot.measured.table = tableOfSize(*tableSizeNamed(random.uniform() < 0.5 ? "9ft" : "8ft"));
    shot.parameters = drawParameters(shot.measured.balls, random);
    shot.before = drawBalls(shot.measured, random);
    shot.strike = drawStrike(shot.before, shot.measured.balls.radius_m(), random);
    const auto simulator = Simulator::create(shot.measured.table, shot.parameters);
    if (!simulator) continue;
    auto simulation = simulator->shoot(shot.before, shot.strike);
    if (!simulation || simulation->duration_s > kLongest_s) continue;
    shot.simulation = std::move(*simulation);
    shot.strike_s = kLead_s;
    shot.camera = {random.normal() * 0.2, random.normal() * 0.2, 2.2 + 0.6 * random.uniform()};
    const TablePoint cue = shot.before.front().position;
    const auto struck = struckBall({cue.x, cue.y, shot.measured.balls.radius_m()}, shot.strike, shot.parameters);
    shot.departure_rad = direction(planOf(struck->velocity));
    shot.readings = filmed(shot, look, random);
    return shot;
  }
}

}  // namespace ferrule::bench
