// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reading/synthetic_play.h"

#include <algorithm>
#include <cmath>

namespace ferrule::synthetic {

namespace {

// Middle values of the reference sheet on motion, friction and restitution.
constexpr double kGravity_mps2 = 9.81;
constexpr double kSliding = 0.2;
constexpr double kRolling = 0.01;
constexpr double kBallRestitution = 0.95;
constexpr double kCushionRestitution = 0.75;
constexpr double kStep_s = 0.0001;

TableVector slowed(TableVector v, double by_mps) {
  const double speed_mps = length(v);
  return speed_mps <= by_mps ? TableVector{} : v * ((speed_mps - by_mps) / speed_mps);
}

}  // namespace

MeasuredTable nineFeet() {
  MeasuredTable measured;
  measured.table = tableOfSize(*tableSizeNamed("9ft"));
  return measured;
}

Play::Play(MeasuredTable measured, const Position& position) : measured_(std::move(measured)) {
  for (const BallAt& at : position)
    bodies_.push_back({at.ball, at.position, {}, {}, true});
}

Body& Play::body(BallName ball) {
  return *std::ranges::find(bodies_, ball, &Body::ball);
}

std::optional<ShotEvent> Play::firstEvent(EventKind kind) const {
  for (const ShotEvent& event : events_) {
    if (event.kind == kind) return event;
  }
  return std::nullopt;
}

TablePoint Play::at(BallName ball) const {
  return std::ranges::find(bodies_, ball, &Body::ball)->position;
}

void Play::roll(Body& body, double step_s) const {
  const TableVector slip = body.velocity - body.spinSpeed;
  const double grip_mps = kSliding * kGravity_mps2 * step_s;
  if (length(slip) > 3.5 * grip_mps) {
    // Friction acts against the slip; the spin gains 5/2 of what the velocity loses (I = 2/5 m R^2).
    body.velocity = body.velocity - grip_mps * unit(slip);
    body.spinSpeed = body.spinSpeed + 2.5 * grip_mps * unit(slip);
  } else {
    const TableVector rolling = (5.0 / 7.0) * body.velocity + (2.0 / 7.0) * body.spinSpeed;
    body.velocity = slowed(rolling, kRolling * kGravity_mps2 * step_s);
    body.spinSpeed = body.velocity;
  }
  body.position = body.position + step_s * body.velocity;
}

void Play::bounce(Body& body, double time_s) {
  const double radius_m = measured_.balls.radius_m();
  for (const Cushion& cushion : cushions(measured_.table)) {
    const TableVector from = body.position - cushion.nose.start;
    const TableVector along = unit(cushion.nose.end - cushion.nose.start);
    const double share_m = dot(from, along);
    if (share_m < 0.0 || share_m > distance(cushion.nose.start, cushion.nose.end)) continue;
    const double toward_mps = -dot(body.velocity, cushion.inward);
    if (dot(from, cushion.inward) > radius_m || toward_mps <= 0.0) continue;
    body.velocity = body.velocity + (1.0 + kCushionRestitution) * toward_mps * cushion.inward;
    events_.push_back({time_s, EventKind::Cushion, body.ball, {}, cushion.name, {}, body.position});
  }
  for (const Pocket& pocket : pockets(measured_.table)) {
    if (distance(body.position, pocket.hole) > pocket.holeRadius_m) continue;
    body.onTable = false;
    body.velocity = {};
    body.spinSpeed = {};
    events_.push_back({time_s, EventKind::Pocket, body.ball, {}, {}, pocket.name, body.position});
    return;
  }
}

void Play::collide(double time_s) {
  const double reach_m = 2.0 * measured_.balls.radius_m();
  for (std::size_t a = 0; a < bodies_.size(); ++a) {
    for (std::size_t b = a + 1; b < bodies_.size(); ++b) {
      if (!bodies_[a].onTable || !bodies_[b].onTable) continue;
      const TableVector apart = bodies_[b].position - bodies_[a].position;
      if (length(apart) > reach_m) continue;
      const TableVector line = unit(apart);
      const double closing_mps = dot(bodies_[a].velocity - bodies_[b].velocity, line);
      if (closing_mps <= 0.0) continue;
      const TableVector push = (0.5 * (1.0 + kBallRestitution) * closing_mps) * line;
      bodies_[a].velocity = bodies_[a].velocity - push;
      bodies_[b].velocity = bodies_[b].velocity + push;
      events_.push_back({time_s, EventKind::Ball, bodies_[a].ball, bodies_[b].ball, {}, {}, bodies_[a].position});
    }
  }
}

void Play::step(double time_s, double step_s) {
  for (const Strike& strike : strikes_) {
    if (strike.time_s < time_s || strike.time_s >= time_s + step_s) continue;
    Body& cue = body(kCueBall);
    cue.velocity = strike.speed_mps * TableVector{std::cos(strike.aim_rad), std::sin(strike.aim_rad)};
    cue.spinSpeed = strike.forwardSpin * cue.velocity;
  }
  for (const Placement& placing : placings_) {
    if (placing.time_s < time_s || placing.time_s >= time_s + step_s) continue;
    Body& placed = body(placing.ball);
    placed.position = placing.position;
    placed.onTable = true;
  }
  for (Body& each : bodies_) {
    if (!each.onTable || length(each.velocity) + length(each.spinSpeed) <= 0.0) continue;
    lastMotion_s_ = time_s;
    roll(each, step_s);
    bounce(each, time_s + step_s);
  }
  collide(time_s + step_s);
}

std::vector<ImageReading> Play::film(double until_s, const FilmLook& look) {
  Random random(look.seed);
  std::vector<ImageReading> readings;
  long image = 0;
  for (long i = 0;; ++i) {
    const double time_s = static_cast<double>(i) * kStep_s;
    if (time_s > until_s) break;
    while (static_cast<double>(image) / look.rate_hz <= time_s) {
      ImageReading reading{image, static_cast<double>(image) / look.rate_hz, {}};
      ++image;
      for (const Body& each : bodies_) {
        const double dx = look.noise_m * random.normal();
        const double dy = look.noise_m * random.normal();
        const bool missing = random.uniform() < look.dropOut;
        const double early_s = time_s - reading.time_s;
        if (!each.onTable || missing) continue;
        const TablePoint p = each.position - early_s * each.velocity;
        reading.balls.push_back({each.ball, {p.x + dx, p.y + dy}, look.noise_m, true, false});
      }
      readings.push_back(std::move(reading));
    }
    step(time_s, kStep_s);
  }
  return readings;
}

}  // namespace ferrule::synthetic
