// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/slate.h"

#include <algorithm>

namespace ferrule {

void meetSlate(BallState& state, const PhysicsParameters& p) {
  if (state.velocity.z < 0.0) {
    const double down_mps = -state.velocity.z;
    double up_mps = p.slateRestitution * down_mps;
    if (up_mps < kLeastHop_mps) up_mps = 0.0;
    const Vector3 slip = clothSlip(state.velocity, state.spin, p.ballRadius_m);
    const double slip_mps = length(slip);
    if (slip_mps > 0.0) {
      const double impulse_mps = std::min(p.slidingFriction * (down_mps + up_mps), 2.0 / 7.0 * slip_mps);
      const Vector3 push = (-impulse_mps / slip_mps) * slip;  // per mass
      state.velocity = state.velocity + push;
      // r × J / I with r = −R k and I = (2/5) m R²
      const double lever = 2.5 / p.ballRadius_m;
      state.spin.x += lever * push.y;
      state.spin.y -= lever * push.x;
    }
    state.velocity.z = up_mps;
  } else if (state.velocity.z < kLeastHop_mps) {
    state.velocity.z = 0.0;
  }
}

}  // namespace ferrule
