// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/reading/delivery_problem.h"

namespace ferrule {

/// What a shot's account is made from.
struct MissEvidence {
  PlayedStrike strike;     ///< with its balls, among them the cue ball and the target
  Delivery delivery;       ///< for the uncertainties; what is absent counts with what was open beforehand
  BallName target;         ///< the first ball met, on a direct way
  TablePoint aimedAt;      ///< where the target should have gone: the middle of the pocket's mouth
  Measured lineError_rad;  ///< as it was measured, + counter-clockwise
  DeliveryPriors priors;
};

/// Splits the target's line error by playing the strike again with each effect put right, one after the other:
///
///  - aim: a ball that goes straight where the cue points and meets the target without friction;
///  - squirt: that ball sent where the tip really sent it;
///  - swerve: on its curved way; collision throw: friction of the cut; spin throw: side spin in it; all at the speed
///    that takes the target half a metre beyond the pocket (common practice, no source);
///  - speed: what these three changed by at the speed that was played;
///  - remainder: the measured line less all this.
///
/// Uncertainties: each part's slope over aim, speed, side, elevation and ball friction times what these are uncertain
/// by. Nothing where the re-played cue ball does not meet the target first, or not on a direct way.
[[nodiscard]] std::optional<MissAccount> missAccount(const Table& table, const MissEvidence& evidence);

}  // namespace ferrule
