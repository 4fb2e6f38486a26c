// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/planner/frame_value.h"
#include "core/planner/judge.h"
#include "core/planner/open_shot.h"

namespace ferrule {

/// What one simulated play of a plan came to.
struct Sample {
  double value = 0.0;  ///< for the player: chance of winning the frame, or points
  bool potted = false;
  bool foul = false;
  bool scratch = false;
  bool keeps = false;                 ///< the player shoots again, or has won
  bool opponentOpen = false;          ///< the opponent is left a pot likelier than not
  std::optional<TablePoint> cueBall;  ///< where it rests; nothing after a scratch
  BallName next;            ///< the ball of the best next pot, while the player keeps the turn; else the cue ball
  double nextChance = 0.0;  ///< of that pot
};

/// Where the cue ball comes to rest, over all samples that left it on the table.
struct Leave {
  TablePoint mean;
  double along_m = 0.0;   ///< standard deviation along the direction in which it varies most
  double across_m = 0.0;  ///< and across it
  double direction_rad = 0.0;

  bool operator==(const Leave&) const = default;
};

/// What a plan comes to under a player's scatter, each with its Monte-Carlo standard error.
struct Chances {
  long samples = 0;
  double pot = 0.0;
  double potError = 0.0;
  double foul = 0.0;  ///< scratches included
  double scratch = 0.0;
  double keeps = 0.0;  ///< the player shoots again, or has won
  double value = 0.0;
  double valueError = 0.0;
  Leave leave;
  /// Of the plays that keep the turn: the ball that most often has the best next pot, and how often any next pot is
  /// likelier than not.
  std::optional<BallName> nextBall;
  double nextOpen = 0.0;
  double opponentOpen = 0.0;  ///< of all plays: the opponent is left a pot likelier than not

  bool operator==(const Chances&) const = default;
};

/// Errors of plays, one for each sample, the same for every plan.
[[nodiscard]] std::vector<Deviates> commonDeviates(std::uint64_t seed, std::size_t count);

/// Plays one sample. scatter: of this strike (see scatterFor). Not for a strike that the simulator refuses: such a
/// sample counts as a foul that gives the opponent the cue ball in hand.
[[nodiscard]] Sample playSample(const Simulator& simulator, const FrameValue& value, const ReadyShot& shot,
                                const Scatter& scatter, const Deviates& deviates);

/// The strike's own scatter: the player's, wider for the stance and the length.
[[nodiscard]] Scatter scatterOfShot(const Simulator& simulator, const ReadyShot& shot, const Scatter& player);

/// correction: added to the value, for what a deeper look found.
[[nodiscard]] Chances chancesFrom(const std::vector<Sample>& samples, double correction = 0.0);

}  // namespace ferrule
