// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/table/shot.h"
#include "core/table/table.h"

namespace ferrule {

/// How the cue ball met the first object ball.
struct FirstHit {
  BallName ball;
  TablePoint ballPlace;       ///< where the object ball lay
  TableVector cueCourse;      ///< the cue ball's velocity before, m/s
  TableVector ballCourse;     ///< the object ball's velocity after, m/s
  double ballTravel_m = 0.0;  ///< how far the object ball went in all
  bool ballMetRail = false;   ///< it met a cushion or a jaw before it fell or stopped
  TableVector line;           ///< unit vector from the cue ball's centre to the object ball's at the contact; or zero
  double courseUncertainty_rad = 0.0;  ///< standard, of the object ball's course
};

/// How far a tried pot may be off and still be read as one.
struct TargetLimits {
  double lineError_rad = 0.26;   ///< 15 degrees: more than players miss by who tried. Common practice, no source
  double missDistance_m = 0.35;  ///< at the pocket
  double leastEntry = 0.35;      ///< cosine of the entry angle against the pocket's axis
  double leastReach = 0.85;      ///< share of the way to the pocket that the ball must have gone
};

/// The pocket and the line error of a pot that was made. Where the ball came to the pocket off a rail, only ball,
/// pocket and cut are given.
[[nodiscard]] Target targetOfPot(const Table& table, const PocketedBall& pocketed, const std::optional<FirstHit>& hit);

/// The pocket that a missed ball was most likely meant for, or nothing when its course fits none.
[[nodiscard]] std::optional<Target> targetOfMiss(const Table& table, const FirstHit& hit,
                                                 const TargetLimits& limits = {});

/// A pot that a person named: ball and pocket stand, the line is measured where the ball was the first hit.
[[nodiscard]] Target targetOfCall(const Table& table, BallName ball, PocketName pocket,
                                  const std::optional<FirstHit>& hit);

/// Adds to a target what follows from its line: fullness, the line at the mouth, and where on the ball the contact lay
/// against where it should have.
void describeLine(Target& target, const Table& table, const FirstHit& hit, double radius_m);

/// Whether the target's ball met both jaws of its pocket, or one and stayed out.
[[nodiscard]] bool rattled(const Target& target, const Table& table, const ShotReading& reading, double radius_m);

}  // namespace ferrule
