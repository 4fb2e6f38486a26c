// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "core/base/random.h"
#include "core/physics/bed.h"
#include "core/physics/strike.h"
#include "core/table/track.h"

namespace ferrule {

/// How a player's strikes scatter around what was asked: standard deviations of independent normal errors.
///
/// aim is of the cue ball's direction of travel just after the strike, as a film measures it; squirt from an unmeant
/// tip point is part of it.
struct Scatter {
  double aim_rad = 0.0;
  double speed = 0.0;   ///< relative to the speed asked for
  double side = 0.0;    ///< ball radii
  double height = 0.0;  ///< ball radii
  double elevation_rad = 0.0;

  bool operator==(const Scatter&) const = default;
};

enum class PlayerLevel { Beginner, Club, Expert };

inline constexpr std::array kPlayerLevels{PlayerLevel::Beginner, PlayerLevel::Club, PlayerLevel::Expert};

/// Starting points for players without shots. An aim of 0.125 degrees with 0.5 mm at the tip is what computational-pool
/// papers gave a strong machine player (Archibald, Altman, Greenspan and Shoham, AI Magazine 31(4), 2010, from memory);
/// no published angular spread of people was found. The erf formula turns pot rates of a straight 1 m shot on a spot
/// ball into spreads: 96 % is 0.05 degrees, 60 % 0.125, 32 % 0.25. Levels by that scale: common practice, no source.
[[nodiscard]] Scatter scatterOf(PlayerLevel level);

/// "beginner", "club", "expert".
[[nodiscard]] std::string_view toText(PlayerLevel level);
[[nodiscard]] std::optional<PlayerLevel> playerLevelFromText(std::string_view text);

/// What makes a strike harder than one from an open table.
struct Stance {
  double leastElevation_rad = 0.0;  ///< that the cue needs to clear rails and balls behind the cue ball
  bool stretched = false;
  bool railBridge = false;  ///< the bridge hand rests on the rail
  bool overBall = false;    ///< the cue is raised over a ball

  bool operator==(const Stance&) const = default;
};

/// Where the cue must pass for this direction. A cue is thought 6 mm thick in radius near the tip; a bridge reaches
/// 200 mm behind the ball; a player reaches 900 mm over the bed: common practice, no source.
[[nodiscard]] Stance stanceOf(const Bed& bed, std::span<const BallAt> balls, TablePoint cueBall, double aim_rad);

/// The scatter of a strike from such a stance at such a length: wider for stretched, rail-bridge, jacked-up and long
/// shots. The factors are common practice, no source. way_m: of the cue ball until its first contact.
[[nodiscard]] Scatter scatterFor(const Scatter& base, const Stance& stance, double elevation_rad, double way_m);

/// Five standard normal numbers: aim, speed, side, height, elevation. The same ones for every plan make plans
/// comparable with few samples (common random numbers).
using Deviates = std::array<double, 5>;
[[nodiscard]] Deviates drawDeviates(Random& random);

/// What is delivered when this is asked for. The tip stays within the miscue limit.
[[nodiscard]] Strike delivered(const Strike& asked, const Scatter& scatter, const Deviates& deviates,
                               const PhysicsParameters& parameters);

}  // namespace ferrule
