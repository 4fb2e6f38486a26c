// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/filmed_shot.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

constexpr double kStrike_s = 3.0;
/// By which the reading tells the strike too late.
constexpr double kLate_s = 0.003;

}  // namespace

FingerprintShot filmed(const PhysicsParameters& p, const Position& before, const Strike& strike, Random& random) {
  const auto s = Simulator::create(Table{}, p)->shoot(before, strike);
  FingerprintShot shot;
  for (const BallAt& ball : before) {
    const TableVector slip{1.5e-4 * random.normal(), 1.5e-4 * random.normal()};
    shot.before.push_back({ball.ball, ball.position + slip});
  }
  for (const BallPath& path : s->paths) {
    Track track{path.ball, {}};
    for (double t = 0.008; t < s->duration_s + 0.2; t += 1.0 / 60.0) {
      if (path.motionAt(t).kind == MotionKind::Gone) break;
      const TablePoint place = planOf(path.stateAt(t).position);
      track.samples.push_back(
          {t + kStrike_s, {place.x + 5e-4 * random.normal(), place.y + 5e-4 * random.normal()}, 5e-4, true});
    }
    shot.tracks.push_back(track);
  }
  shot.strike_s = kStrike_s + kLate_s;
  shot.rest_s = kStrike_s + s->duration_s;
  shot.events = s->events;
  for (ShotEvent& event : shot.events)
    event.time_s += kStrike_s;
  const Vector3 v = s->paths.front().motions.front().velocity;
  shot.delivery.aim_rad = Measured{std::atan2(v.y, v.x) + 0.002 * random.normal(), 0.002};
  shot.delivery.speed_mps = Measured{strike.speed_mps * (1.0 + 0.01 * random.normal()), 0.01 * strike.speed_mps};
  shot.delivery.side = Measured{strike.side + 0.05 * random.normal(), 0.05};
  shot.delivery.height = Measured{strike.height + 0.05 * random.normal(), 0.05};
  return shot;
}

Planted planted(Random& random) {
  PhysicsParameters p;
  const auto around = [&](double value, double spread, double least, double most) {
    return std::clamp(value + spread * random.normal(), least, most);
  };
  p.slidingFriction = around(p.slidingFriction, 0.04, 0.1, 0.35);
  p.rollingFriction = around(p.rollingFriction, 0.003, 0.004, 0.02);
  p.spinDecay_radps2 = around(p.spinDecay_radps2, 3.0, 4.0, 18.0);
  p.cushionRestitution = around(p.cushionRestitution, 0.05, 0.6, 0.95);
  p.cushionFriction = around(p.cushionFriction, 0.06, 0.05, 0.4);
  p.ballRestitution = around(p.ballRestitution, 0.015, 0.9, 0.985);
  const double factor = around(1.0, 0.3, 0.3, 2.0);
  p.ballFriction.floor *= factor;
  p.ballFriction.extra *= factor;
  return {p,
          {{"sliding_friction", p.slidingFriction},
           {"rolling_friction", p.rollingFriction},
           {"spin_decay_rad_s2", p.spinDecay_radps2},
           {"cushion_restitution", p.cushionRestitution},
           {"cushion_friction", p.cushionFriction},
           {"ball_restitution", p.ballRestitution},
           {"ball_friction_factor", factor}}};
}

std::vector<FingerprintShot> filmedSet(const PhysicsParameters& parameters, int count, Random& random) {
  std::vector<FingerprintShot> shots;
  for (int i = 0; i < count; ++i) {
    const Position before{{kCueBall, {-0.6 + 0.3 * random.uniform(), 0.4 * (random.uniform() - 0.5)}},
                          {BallName(1), {0.3 * random.uniform(), 0.4 * (random.uniform() - 0.5)}},
                          {BallName(2), {0.6 + 0.3 * random.uniform(), 0.6 * (random.uniform() - 0.5)}}};
    // Half of them hit the 1, half go where they go.
    const double toOne = direction(before[1].position - before[0].position) + 0.05 * (random.uniform() - 0.5);
    const Strike strike{i % 2 == 0 ? toOne : 6.28 * random.uniform(), 1.0 + 2.0 * random.uniform(),
                        0.5 * (random.uniform() - 0.5), 0.6 * (random.uniform() - 0.5), 0.0};
    shots.push_back(filmed(parameters, before, strike, random));
  }
  return shots;
}

}  // namespace ferrule
