// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/rules/ruling_case.h"

namespace ferrule {

/// The versions of a shot that a doubt leaves open, the shot as it was read first. Only that one where the doubt has no
/// versions.
[[nodiscard]] std::vector<ShotEvents> versionsOf(const ShotEvents& shot, const Doubt& doubt);

/// The doubts that follow from where the balls lay: a cue ball so near to the ball it met that a second hit does not
/// show, a ball that may have been frozen to the only cushion it met, and places too close to the head string to tell.
/// Those a person settled are left out.
[[nodiscard]] std::vector<Doubt> doubtsOfPlaces(const GameState& state, const ShotEvents& shot);

/// The rule that a doubt is about.
[[nodiscard]] RuleTopic topicOf(DoubtKind kind);

}  // namespace ferrule
