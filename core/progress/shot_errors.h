// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/progress/played_shot.h"
#include "core/progress/sample.h"

/// How far one shot was from what was meant. Every error of the reports is defined here and nowhere else.
namespace ferrule {

/// Of the cue ball's line, rad, + to the left:
///   -(line error of the object ball) * 2 R cos(cut) / (cue ball's way to the contact)
/// to first order: a contact that is moved to the left sends the object ball to the right. Everything that turned the
/// object ball (aim, squirt, swerve, throw) is counted as if the aim had done it. Errors of near and far shots compare.
/// Nothing where the object ball's line was not read.
[[nodiscard]] std::optional<double> aimError_rad(const PlayedShot& shot, const PlayedTable& table);

/// The same, + cut too thin, - too thick. Nothing for straight shots.
[[nodiscard]] std::optional<double> thinError_rad(const PlayedShot& shot, const PlayedTable& table);

/// The cue ball's speed against the meant one: speed / meant - 1. Nothing where no speed was meant or measured.
[[nodiscard]] std::optional<double> speedError(const PlayedShot& shot);

/// Of the tip point, in ball radii. Nothing where none was meant or none could be observed.
[[nodiscard]] std::optional<double> sideError(const PlayedShot& shot);
[[nodiscard]] std::optional<double> heightError(const PlayedShot& shot);

/// Where the cue ball came to rest, from where it was meant to. Nothing where no place was meant.
[[nodiscard]] std::optional<TableVector> positionError_m(const PlayedShot& shot);

/// One value for each shot that has one, in the order of the history.
template <class Error>
[[nodiscard]] std::vector<Observation> observed(const PlayerHistory& history, Error&& errorOf) {
  std::vector<Observation> all;
  for (const PlayedShot& shot : history.shots) {
    if (const std::optional<double> value = errorOf(shot, history.tableOf(shot)))
      all.push_back({shot.session, *value, shot.minutes});
  }
  return all;
}

}  // namespace ferrule
