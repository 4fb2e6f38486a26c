// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/ball_state.h"

namespace ferrule {

/// Where a ball touches a cushion.
struct CushionContact {
  /// Unit vector from the ball's centre to the point of contact. For a ball on the cloth it rises by
  /// sin Θ = nose height / R − 1, which is what keeps the ball down.
  Vector3 toward;
  bool onCloth = true;  ///< the table holds the ball down during the impact
};

/// The contact of a ball that lies on the cloth and meets a nose at height noseHeight_m. toward: horizontal, unit.
[[nodiscard]] CushionContact clothContact(TableVector toward, double noseHeight_m, double radius_m);

/// Changes velocity and spin by the model that the parameters name. No effect on a ball that leaves. A ball that meets
/// the cushion more slowly than kLeastBounce_mps does not bounce.
void meetCushion(BallState& state, const CushionContact& contact, const PhysicsParameters& parameters);

/// One impulse: Pn = (1 + e) m v·n along the contact's normal and min(μ Pn, (2/7) m |s|) against the slip s; a ball on
/// the cloth then keeps no upright speed. The cloth's friction during the impact is left out.
/// Source: structure of Han, J. Mech. Sci. Tech. 19(4), 976 (2005), from memory; constants are ours to choose.
void meetCushionByImpulse(BallState& state, const CushionContact& contact, const PhysicsParameters& parameters);

/// The impulse grows in small steps with Coulomb friction at the nose and at the cloth; compression ends when the ball
/// stands, restitution when it has given back e² of the work. Steps are the unit of accuracy: 20,000 give four digits.
/// A ball in the air takes the one-impulse form.
/// Source: Mathavan, Jackson and Parkin, Proc. IMechE C 224(9), 1863 (2010): assumptions as in its abstract, equations
/// derived anew.
void meetCushionByIntegration(BallState& state, const CushionContact& contact, const PhysicsParameters& parameters,
                              int steps = 20000);

}  // namespace ferrule
