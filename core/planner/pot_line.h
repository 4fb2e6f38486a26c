// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/planner/layout.h"
#include "core/planner/pocket_windows.h"
#include "core/planner/scatter.h"

namespace ferrule {

/// A straight pot as geometry has it: cue ball to ghost ball, object ball to pocket.
struct PotLine {
  BallName ball;
  PocketName pocket = PocketName::HeadLeft;
  TablePoint ghost;      ///< the cue ball's centre when it meets the ball
  double cut_rad = 0.0;  ///< unsigned
  double way_m = 0.0;    ///< of the cue ball to the ghost
  double run_m = 0.0;    ///< of the object ball to the pocket's mouth
  PocketWindow window;
};

/// A cut beyond this is not thought of as a pot.
inline constexpr double kMostCut_rad = 1.36;

/// The line of a ball to a pocket without the cue ball's part (way_m and cut_rad stay 0); nothing where another ball is
/// in the way or the pocket is closed from there.
[[nodiscard]] std::optional<PotLine> openRun(const Layout& layout, BallName ball, PocketName pocket,
                                             const PocketWindows& windows, double ballRadius_m);
/// The same with the cue ball here; nothing where the cue ball cannot come to the ghost or the cut is too thin.
[[nodiscard]] std::optional<PotLine> withCueBall(PotLine run, const Layout& layout, TablePoint cueBall,
                                                 double ballRadius_m);

/// How likely the pot is for a strike that scatters so, from geometry alone: the aim's error grows by way / (2R cos φ),
/// throw varies with the tip's error and the speed. Within some percent of the simulator; for ranking many.
[[nodiscard]] double chanceOf(const PotLine& line, const Scatter& scatter, double ballRadius_m);

/// Whether the cue ball can meet some part of the ball on a straight way.
[[nodiscard]] bool canMeet(const Layout& layout, TablePoint cueBall, BallName ball, double ballRadius_m);

}  // namespace ferrule
