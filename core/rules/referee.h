// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/rules/ruling.h"

/// The referee: from a state and a shot to a ruling, from a ruling to the next state. Pure functions; what they do not
/// know they ask in the ruling's questions, and meanwhile rule as if there was no foul.
namespace ferrule {

/// What the rules in force make of a shot. The same input gives the same ruling. A shot on a frame that is over changes
/// nothing and asks.
[[nodiscard]] Ruling rule(const GameState& state, const ShotEvents& shot);

/// What is said without a shot.
enum class AnnouncementKind {
  Concession,  ///< by the seat: it loses the frame (1.11)
  Stalemate,   ///< the frame is broken again by who broke it first (1.12)
  Warning,     ///< the seat is told of two fouls in a row (6.14)
};

struct Announcement {
  AnnouncementKind kind = AnnouncementKind::Concession;
  Seat seat = Seat::First;

  bool operator==(const Announcement&) const = default;
};

[[nodiscard]] Ruling rule(const GameState& state, const Announcement& announcement);

/// What people chose where a ruling offers options.
struct Choices {
  std::optional<OptionKind> option;  ///< nothing: not chosen yet

  bool operator==(const Choices&) const = default;
};

/// The option that is in force: the chosen one where it is offered, else the first. Nothing without options.
[[nodiscard]] std::optional<Option> optionTaken(const Ruling& ruling, const Choices& choices);

/// The state after a ruling and what was chosen.
[[nodiscard]] GameState apply(const GameState& state, const Ruling& ruling, const Choices& choices = {});

}  // namespace ferrule
