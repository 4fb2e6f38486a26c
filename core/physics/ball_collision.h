// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/physics/ball_state.h"

namespace ferrule {

/// Two balls that meet more slowly than this do not bounce: it ends endless rows of ever smaller bounces, and moves
/// nothing by more than a hundredth of a millimetre.
inline constexpr double kLeastBounce_mps = 2e-3;

/// Speed of meeting along the line of centres, m/s; negative when the balls part.
[[nodiscard]] double approachSpeed(const BallState& first, const BallState& second);

/// Two equal balls meet: one instant, restitution along the line of centres, and across it an impulse against the slip
/// of the surfaces, min(μ(u) P, m u / 7). Momentum is kept, both spins change by the same amount. No effect on balls
/// that part. The cloth's reaction is not in it (slate.h).
///
/// Source: Marlow (1995); the sticking limit and μ(u) as in Alciatore, technical proofs A.14 and A.28.
void collideBalls(BallState& first, BallState& second, const PhysicsParameters& parameters);

/// Two balls of a cluster, by index.
struct TouchingPair {
  std::size_t first = 0;
  std::size_t second = 0;
};

/// Contacts that happen at one instant and share balls: every pair parts with restitution times its speed of meeting,
/// which one linear system decides, so the order of the pairs does not matter; friction then acts on each pair by its
/// own share (1 over the pairs of the group), which cannot add energy.
void collideCluster(std::span<BallState> balls, std::span<const TouchingPair> pairs,
                    const PhysicsParameters& parameters);

}  // namespace ferrule
