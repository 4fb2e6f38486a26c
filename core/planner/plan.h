// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "core/physics/strike.h"
#include "core/table/shot.h"

namespace ferrule {

enum class PlanKind {
  Direct,       ///< cue ball, object ball, pocket
  Combination,  ///< cue ball, object ball, the target, pocket
  Carom,        ///< the cue ball glances off an object ball into the target, which is potted
  Bank,         ///< the target is potted off one or two cushions
  Kick,         ///< the cue ball meets its ball off one or two cushions
  Safety,       ///< nothing is meant to fall
  Break,
};

/// A shot as it could be played.
struct Plan {
  PlanKind kind = PlanKind::Direct;
  BallName ball;                      ///< the target; of a safety or kick the ball to be met, of a break the apex ball
  std::optional<PocketName> pocket;   ///< nothing where nothing is meant to fall
  BallName first;                     ///< the ball to be met first
  int cushions = 0;                   ///< that the target (bank) or the cue ball (kick) meets on its way
  Strike strike;                      ///< asked for
  std::optional<TablePoint> cueBall;  ///< where a cue ball in hand is put

  bool operator==(const Plan&) const = default;
};

/// What is called before the plan is played.
[[nodiscard]] inline std::optional<PocketedBall> callOf(const Plan& plan) {
  if (!plan.pocket) return std::nullopt;
  return PocketedBall{plan.ball, *plan.pocket};
}

/// "direct", "combination", "carom", "bank", "kick", "safety", "break".
[[nodiscard]] std::string_view toText(PlanKind kind);
[[nodiscard]] std::optional<PlanKind> planKindFromText(std::string_view text);

}  // namespace ferrule
