// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/physics/ball_collision.h"
#include "core/physics/cushion_impact.h"

namespace ferrule {

namespace {

/// The ball in the contact's own frame: x along the rail, y into the rail, z up; speeds in m/s, spins as R ω.
struct Local {
  double vx = 0.0;
  double vy = 0.0;
  double wx = 0.0;
  double wy = 0.0;
  double wz = 0.0;
};

struct Geometry {
  double sine = 0.0;
  double cosine = 1.0;
  double cushionFriction = 0.0;
  double clothFriction = 0.0;
};

/// Change of the ball for each unit of normal impulse per mass.
Local rate(const Local& b, const Geometry& g) {
  const double s = g.sine;
  const double c = g.cosine;
  // Slip at the nose, along the rail and along (0, −s, c): v + ω × r with r = R (0, c, s).
  const double noseX = b.vx + b.wy * s - b.wz * c;
  const double noseUp = -b.vy * s + b.wx;
  const double nose = std::hypot(noseX, noseUp);
  const double alongX = nose > 0.0 ? -g.cushionFriction * noseX / nose : 0.0;
  const double alongUp = nose > 0.0 ? -g.cushionFriction * noseUp / nose : 0.0;
  // Impulse on the ball at the nose: −(0, c, s) + friction.
  const double fx = alongX;
  const double fy = -c - alongUp * s;
  const double fz = -s + alongUp * c;
  // The table takes what presses the ball down, and rubs in turn.
  const double press = std::max(0.0, -fz);
  const double clothX = b.vx - b.wy;
  const double clothY = b.vy + b.wx;
  const double cloth = std::hypot(clothX, clothY);
  const double tx = cloth > 0.0 ? -g.clothFriction * press * clothX / cloth : 0.0;
  const double ty = cloth > 0.0 ? -g.clothFriction * press * clothY / cloth : 0.0;
  Local d;
  d.vx = fx + tx;
  d.vy = fy + ty;
  // r × F / I, as R ω: (5/2) (c Fz − s Fy, s Fx, −c Fx), and from the cloth (5/2) (Ty, −Tx, 0).
  d.wx = 2.5 * (c * fz - s * fy + ty);
  d.wy = 2.5 * (s * fx - tx);
  d.wz = 2.5 * (-c * fx);
  return d;
}

Local advanced(const Local& b, const Local& d, double impulse_mps) {
  return {b.vx + impulse_mps * d.vx, b.vy + impulse_mps * d.vy, b.wx + impulse_mps * d.wx, b.wy + impulse_mps * d.wy,
          b.wz + impulse_mps * d.wz};
}

}  // namespace

void meetCushionByIntegration(BallState& state, const CushionContact& contact, const PhysicsParameters& p, int steps) {
  const double cosine = std::hypot(contact.toward.x, contact.toward.y);
  if (!contact.onCloth || !(cosine > 0.0)) return meetCushionByImpulse(state, contact, p);
  const TableVector into{contact.toward.x / cosine, contact.toward.y / cosine};
  const TableVector along{into.y, -into.x};  // along × into = up
  const double radius_m = p.ballRadius_m;
  Local b{dot(planOf(state.velocity), along), dot(planOf(state.velocity), into),
          radius_m * dot(planOf(state.spin), along), radius_m * dot(planOf(state.spin), into), radius_m * state.spin.z};
  if (!(b.vy > 0.0)) return;
  const Geometry g{contact.toward.z, cosine, p.cushionFriction, p.slidingFriction};
  const double restitution = b.vy * cosine < kLeastBounce_mps ? 0.0 : p.cushionRestitution;

  const double step_mps = 2.0 * b.vy * cosine / steps;
  double work = 0.0;
  while (b.vy > 0.0) {
    const Local d = rate(b, g);
    const double rest_mps = d.vy < 0.0 ? -b.vy / d.vy : step_mps;
    const double here_mps = std::min(step_mps, rest_mps);
    const Local next = advanced(b, d, here_mps);
    work += 0.5 * (b.vy + std::max(0.0, next.vy)) * cosine * here_mps;
    b = next;
    if (here_mps == rest_mps) b.vy = 0.0;
  }
  const double wanted = restitution * restitution * work;
  double given = 0.0;
  while (given < wanted) {
    const Local d = rate(b, g);
    const Local next = advanced(b, d, step_mps);
    const double part = -0.5 * (b.vy + next.vy) * cosine * step_mps;
    if (!(part > 0.0)) break;
    if (given + part >= wanted) {
      // Work grows with the square of the impulse within the step: solve ½ a q² + v q = left.
      const double a = -d.vy * cosine;
      const double v = -b.vy * cosine;
      const double left = wanted - given;
      b = advanced(b, d, 2.0 * left / (v + std::sqrt(v * v + 2.0 * a * left)));
      break;
    }
    given += part;
    b = next;
  }
  const TableVector velocity = b.vx * along + b.vy * into;
  const TableVector spin = (b.wx / radius_m) * along + (b.wy / radius_m) * into;
  state.velocity = {velocity.x, velocity.y, 0.0};
  state.spin = {spin.x, spin.y, b.wz / radius_m};
}

}  // namespace ferrule
