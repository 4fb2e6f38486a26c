// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/rules/shot_events.h"

namespace ferrule {

/// A ball that fell or left, and by which event.
struct Departure {
  BallName ball;
  std::optional<PocketName> pocket;  ///< nothing: off the table
  int event = 0;

  bool operator==(const Departure&) const = default;
};

[[nodiscard]] std::vector<int> eventsOf(const std::vector<Departure>& departures);

/// What the rules ask of a shot's events. Numbers of events are places in ShotEvents::events.
struct ShotFacts {
  std::optional<BallName> firstContact;
  std::vector<int> contactEvents;      ///< the first contact, where it is among the events
  std::vector<int> railEvents;         ///< a ball driven to a rail after the first contact
  std::vector<BallName> drivenToRail;  ///< distinct object balls; one that fell or left counts
  bool cueBallToRail = false;          ///< after the first contact
  std::vector<Departure> pocketed;     ///< object balls, in time order
  std::vector<Departure> off;          ///< object balls that left the table
  std::optional<Departure> scratch;    ///< the cue ball, pocketed or off

  [[nodiscard]] bool fell(BallName ball) const;
  [[nodiscard]] bool left(BallName ball) const;
  /// The events by which object balls were driven to a rail.
  std::vector<int> drivenEvents;

  bool operator==(const ShotFacts&) const = default;
};

/// A cushion that a ball was declared frozen to counts only once the ball had left it. Source: world rules of play, 8.4
/// (driven to a rail; pocketed or off the table counts as driven) and 6.3 (after the first contact).
[[nodiscard]] ShotFacts shotFacts(const ShotEvents& shot);

}  // namespace ferrule
