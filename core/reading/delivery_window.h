// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "core/reading/contacts.h"
#include "core/reading/knots.h"
#include "core/table/shot.h"

namespace ferrule {

/// A ball whose way tells about the strike, with where it lay.
struct WindowBall {
  BallName ball;
  RestingPlace place;
};

/// A measured place that takes part.
struct WindowSample {
  std::size_t ball = 0;  ///< index in DeliveryWindow::balls
  PathPoint point;       ///< its uncertainty grows with every impact that the ball's way hangs on
};

/// The part of a shot that a strike decides and that a simulation can follow.
struct DeliveryWindow {
  std::vector<WindowBall> balls;  ///< the cue ball first; empty when it was not followed
  std::vector<WindowSample> samples;
  double end_s = 0.0;    ///< of the last sample
  bool contact = false;  ///< a contact with another ball is in it
  bool cushion = false;  ///< a cushion is in it
  /// Where the camera is, when it is known: it sees a ball that hops aside of where it is.
  std::optional<TablePoint3> camera;
};

/// What the window is cut from.
struct WindowSource {
  const std::vector<BallMotion>& motions;
  const std::vector<Contact>& contacts;
  std::span<const ShotEvent> events;  ///< in time order
  std::span<const std::pair<BallName, RestingPlace>> before;
  double strike_s = 0.0;
  double imageInterval_s = 1.0 / 30.0;
  double radius_m = 0.028575;
};

/// Each ball's measured places from the strike until its second cushion, or the first impact that cannot be relied on:
/// in a cluster, with two at once, one that the film did not show on both sides, a jump that nothing explains, or the
/// second contact in a row. Predicted places are not measured and do not count; nor do those so near to an impact that
/// blur mixes the two ways.
[[nodiscard]] DeliveryWindow deliveryWindow(const WindowSource& source);

}  // namespace ferrule
