// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "core/progress/played_shot.h"

/// How hard a pot was, so that a player who tries harder shots is not taken for one who plays worse.
namespace ferrule {

/// Logistic regression: ln(p / (1 - p)) = intercept + coefficients . x, by Newton's iteration.
struct Logistic {
  double intercept = 0.0;
  Eigen::VectorXd coefficients;

  [[nodiscard]] double chance(const Eigen::VectorXd& x) const;
};

/// rows: one trial each; made: 0 or 1. ridge: half the penalty on each squared coefficient (not on the intercept),
/// which keeps the fit finite where every trial went the same way. Nothing where it does not settle or all trials
/// agree. Source: McCullagh and Nelder, Generalized linear models, 1989; le Cessie and van Houwelingen 1992 (the
/// penalty).
[[nodiscard]] std::optional<Logistic> fitLogistic(const Eigen::MatrixXd& rows, const Eigen::VectorXd& made,
                                                  double ridge);

/// The chance of a pot for one player at his own level in the whole period, from
///   the margin angle: half the mouth less half a ball, over the object ball's way (both sides of the pocket's middle
///                     that still pass the jaws), as a logarithm,
///   the reach: how much a stroke's error is magnified, cue ball's way / (2 R cos cut), as a logarithm,
///   the cut's square, side pocket or not.
/// Holds for straight pots only; knows nothing of speed, obstructed strokes or pressure.
class Difficulty {
 public:
  /// Nothing below kFewestForDifficulty attempts.
  [[nodiscard]] static std::optional<Difficulty> of(const PlayerHistory& history);

  /// The player's own chance for this attempt; isPotAttempt(shot).
  [[nodiscard]] double chance(const PlayedShot& shot, const PlayedTable& table) const;

 private:
  Logistic logistic_;
};

/// A fit of five numbers to fewer shots says more about chance than about the player.
inline constexpr int kFewestForDifficulty = 60;

/// How far to each side the object ball may stray and still pass the mouth without touching a nose point, rad:
/// atan((mouth / 2 - R) / way). The pocket is taken as met squarely.
[[nodiscard]] double pocketMargin_rad(const PlayedShot& shot, const PlayedTable& table);
/// Radians of the object ball's line for a radian of the cue ball's: way of the cue ball / (2 R cos cut), to first
/// order.
[[nodiscard]] double reach(const PlayedShot& shot, const PlayedTable& table);

}  // namespace ferrule
