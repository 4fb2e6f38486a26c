// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <vector>

#include "core/planner/pot_line.h"
#include "core/planner/situation.h"

namespace ferrule {

/// What a position is worth at a glance.
struct Glance {
  /// For who is at the table: the chance of winning the frame, 0 to 1; in games of points the points by which this
  /// visit and the opponent's next are expected to differ.
  double value = 0.0;
  std::optional<PotLine> best;  ///< the pot that the value rests on
  double bestChance = 0.0;
  bool safety = false;  ///< a safety is worth more than any pot
};

/// Values positions by geometry: the best pot's chance, how easily the other balls can be had in line, and the race
/// that follows when a shot fails. No simulation: some microseconds.
///
/// Assumed: after a pot the next ball is reached with a chance that depends on the player's speed and tip scatter only;
/// after a miss the opponent finds an average position. A deeper search corrects both where it matters.
class FrameValue {
 public:
  /// players: the scatter of who asks, and of the opponent.
  FrameValue(const Simulator& simulator, const PocketWindows& windows, const std::array<Scatter, 2>& players);

  /// player: 0 or 1, who is at the table.
  [[nodiscard]] Glance glance(const Situation& situation, std::size_t player) const;

  /// What a value is to the other player.
  [[nodiscard]] static double toOther(const Situation& situation, double value) {
    return situation.rules.points ? -value : 1.0 - value;
  }

 private:
  struct Skill {
    Scatter scatter;
    double inLine = 0.0;    ///< chance of a pot after having played for position
    double fresh = 0.0;     ///< chance of a first pot in a position that the opponent left
    double position = 0.0;  ///< chance that the next ball is reached
    double safety = 0.0;    ///< how much of the way from a miss to a good position a safety gets
  };
  struct Ease {
    BallName ball;
    double chance = 0.0;  ///< of its pot from a good position
  };
  static constexpr std::size_t kMost = 17;

  [[nodiscard]] double fresh(const Situation& s, std::size_t player, int own, int other) const;
  [[nodiscard]] double afterFailing(const Situation& s, std::size_t player, int own, int other) const;
  [[nodiscard]] double chain(const Situation& s, std::size_t player, const std::vector<Ease>& eases, BallName without,
                             int other) const;

  PhysicsParameters parameters_;
  const PocketWindows& windows_;
  std::array<Skill, 2> skills_;
  /// [player][own balls][other's balls]: chance of winning when at the table after the other's failure.
  std::array<std::array<std::array<double, kMost>, kMost>, 2> race_{};
  /// [player][balls]: the same where both clear the same balls.
  std::array<std::array<double, kMost>, 2> shared_{};
  std::array<double, 2> run_{};  ///< points of a visit from a fresh position
};

}  // namespace ferrule
