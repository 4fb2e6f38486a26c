// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/filmed_shot.h"

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

}  // namespace ferrule
