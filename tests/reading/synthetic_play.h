// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/base/random.h"
#include "core/table/measured_table.h"
#include "core/table/shot.h"

namespace ferrule::synthetic {

struct Strike {
  double time_s = 1.0;
  double aim_rad = 0.0;
  double speed_mps = 1.5;
  double forwardSpin = 0.0;  ///< R w / v, + follow
};

/// What the film of a play looks like.
struct FilmLook {
  double rate_hz = 60.0;
  double noise_m = 0.0005;
  double dropOut = 0.0;  ///< share of samples that are missing
  std::uint64_t seed = 1;
};

/// A ball as it is, for the time being.
struct Body {
  BallName ball;
  TablePoint position;
  TableVector velocity;   ///< m/s
  TableVector spinSpeed;  ///< R (w x k): the speed at which the ball would roll
  bool onTable = true;
};

/// A small play in time steps, apart from the project's own simulator: sliding and rolling friction, smooth collisions
/// with restitution, straight cushions between the pockets' mouths, balls lost over the holes.
class Play {
 public:
  Play(MeasuredTable measured, const Position& position);

  void strike(const Strike& strike) { strikes_.push_back(strike); }
  /// Puts a ball down at a time, after it was out of sight for a while before.
  void place(BallName ball, TablePoint point, double time_s) { placings_.push_back({ball, time_s, point}); }

  /// Plays on to a time and films it.
  [[nodiscard]] std::vector<ImageReading> film(double until_s, const FilmLook& look = {});
  /// Everything that happened, in time order. Valid after film().
  [[nodiscard]] const std::vector<ShotEvent>& events() const { return events_; }
  [[nodiscard]] std::optional<ShotEvent> firstEvent(EventKind kind) const;
  [[nodiscard]] TablePoint at(BallName ball) const;
  /// When the last ball stopped.
  [[nodiscard]] double lastMotion_s() const { return lastMotion_s_; }

 private:
  void step(double time_s, double step_s);
  void roll(Body& body, double step_s) const;
  void bounce(Body& body, double time_s);
  void collide(double time_s);
  Body& body(BallName ball);

  MeasuredTable measured_;
  std::vector<Body> bodies_;
  std::vector<Strike> strikes_;
  std::vector<Placement> placings_;
  std::vector<ShotEvent> events_;
  double lastMotion_s_ = 0.0;
};

/// A table of nine feet with its balls.
[[nodiscard]] MeasuredTable nineFeet();

}  // namespace ferrule::synthetic
