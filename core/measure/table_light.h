// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "core/drills/drill.h"
#include "core/physics/position_file.h"
#include "core/planner/chances.h"
#include "core/vision/projection_picture.h"

/// What a projector can show on the cloth, as lines of light in the table frame, m.
namespace ferrule {

/// A ring that each ball just covers, with the number of an object ball beside it.
[[nodiscard]] LightDrawing lightOf(const Position& balls, const MeasuredTable& measured);

/// The rings of a position file's balls, and their ways, dashed, when it asks for a strike.
/// Errors: those of the simulator about the position and the strike.
[[nodiscard]] Result<LightDrawing> lightOf(const PositionFile& file);

/// A drill's set-up: rings where the balls belong; dashed the zone for a cue ball in hand, and
/// those in which balls are to come to rest.
[[nodiscard]] LightDrawing lightOf(const DrillStation& station, const MeasuredTable& measured, std::uint64_t seed = 1);

/// A suggested shot: rings under the balls that move, their ways dashed, a ring where the cue ball meets the object
/// ball's line first (its first bend), and the landing area: where the cue ball rests in 95 of 100 plays.
[[nodiscard]] LightDrawing lightOfPlan(const std::vector<std::pair<BallName, std::vector<TablePoint>>>& ways,
                                       const Leave& leave, const MeasuredTable& measured);

/// A ball that lies elsewhere than before an interruption, or is gone.
struct DisplacedBall {
  BallName ball;
  TablePoint belongs;
  std::optional<TablePoint> lies;  ///< nothing: nobody sees it
  double apart_m = 0.0;            ///< 0 where nobody sees it

  bool operator==(const DisplacedBall&) const = default;
};
/// In the order of before; balls that lie where they did are left out.
[[nodiscard]] std::vector<DisplacedBall> displacedBalls(const Position& before, const Position& now);

/// Where balls must be put back: a ring where each belongs, with a dashed line from where it lies. What they are called
/// and how far they are off is left to whoever knows the language.
[[nodiscard]] LightDrawing lightOfPuttingBack(const std::vector<DisplacedBall>& balls, const MeasuredTable& measured);
/// Where words about such a ball begin, clear of its ring.
[[nodiscard]] TablePoint besideRing(TablePoint place, const MeasuredTable& measured);

/// A ball this far from its place was moved: well beyond what a camera misreads, far less than a hand moves it.
inline constexpr double kMovedByHand_m = 0.005;

}  // namespace ferrule
