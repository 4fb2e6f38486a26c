// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/base/error.h"
#include "core/physics/ball_state.h"

namespace ferrule {

/// How the cue meets the cue ball.
struct Strike {
  double aim_rad = 0.0;        ///< direction in which the cue points, seen from above
  double speed_mps = 0.0;      ///< of the cue ball over the cloth just after the strike, up to 20
  double side = 0.0;           ///< tip point, in ball radii, + right of centre seen along the cue
  double height = 0.0;         ///< tip point, in ball radii, + above centre, across the cue's axis
  double elevation_rad = 0.0;  ///< of the cue, butt up, 0 to 85 degrees

  bool operator==(const Strike&) const = default;
};

/// The farthest offset from the centre, in ball radii, at which a tip of this friction does not slip off: sin(atan μ).
/// Source: the friction cone; practical limit 0.5, as in a public derivation of 2006.
[[nodiscard]] double miscueLimit(const PhysicsParameters& parameters);

/// The cue ball just after the strike.
///
/// An impulse along the cue at the tip point gives velocity v and spin (5/2) v (offset × direction) / R. The tip sticks
/// and carries its end mass sideways, so that the ball leaves on the other side of the cue's line by squirtOf(). An
/// elevated cue presses the ball on the slate, which sends it up with slateRestitution times the downward speed; the
/// cloth's rub in that instant is left out, as in the published launch formulas.
/// Source: Coriolis (1835) as told by Alciatore, Billiards Digest, November 2005; squirt: Alciatore, technical proof
/// A.31 (from memory). Errors: FieldInvalid (not finite, or out of range), StrikePastMiscue (numbers: offset, limit).
[[nodiscard]] Result<BallState> struckBall(TablePoint3 cueBall, const Strike& strike,
                                           const PhysicsParameters& parameters);

/// How far the ball's way turns from the cue's line for a level cue: + is to the left, for a tip point on the right.
/// tan α = (5/2) s √(1 − b²) / (1 + m/m_e + (5/2)(1 − b²)), b the whole offset, s its side part.
[[nodiscard]] double squirtOf(const Strike& strike, const PhysicsParameters& parameters);

/// The same strike with the aim that makes the ball leave in this direction.
[[nodiscard]] Strike strikeDeparting(double departure_rad, Strike strike, const PhysicsParameters& parameters);

/// The same strike with the aim whose curved way over an empty cloth passes through the target. Nothing when the ball
/// does not reach so far, turns back, or cannot be struck so.
[[nodiscard]] std::optional<Strike> strikeThrough(TablePoint cueBall, TablePoint target, Strike strike,
                                                  const PhysicsParameters& parameters);

/// Ball speed along the cue for a cue that moves at this speed: (1 + e) / (1 + (5/2) b² + m/m_cue) times it.
/// offset: in ball radii. Source: impulse along the cue, restitution at the tip; compare Alciatore, technical proof
/// A.30.
[[nodiscard]] double ballSpeedFromCueSpeed(double cueSpeed_mps, double offset, const PhysicsParameters& parameters);
[[nodiscard]] double cueSpeedFromBallSpeed(double ballSpeed_mps, double offset, const PhysicsParameters& parameters);

/// The restitution at the tip with which a strike keeps this share of the cue's energy: √(η − (1 − η)(m_cue/m) κ),
/// κ = 1 + (5/2) b². Nothing when no strike keeps so much or so little.
/// Source: energy form of the impulse along the cue, as in Alciatore, technical proof A.30 (from memory).
[[nodiscard]] std::optional<double> tipRestitutionKeeping(double energyShare, double offset,
                                                          const PhysicsParameters& parameters);

}  // namespace ferrule
