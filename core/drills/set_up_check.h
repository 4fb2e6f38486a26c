// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/drills/drill.h"
#include "core/progress/set_ups.h"

/// Whether the balls stand as a drill wants them, from positions that a camera or a person gives.
namespace ferrule {

/// A ball farther from every place than this belongs to none of them: it lies there by itself. One and a half balls;
/// common practice, no source.
inline constexpr double kBelongs_m = 0.085;

/// One place of the set-up and the ball that was found there.
struct PlacedBall {
  BallAt wanted;
  std::optional<BallAt> found;  ///< nothing: the place is empty

  /// From where it should lie to where it lies, m.
  [[nodiscard]] std::optional<TableVector> error() const {
    return found ? std::optional(found->position - wanted.position) : std::nullopt;
  }
  bool operator==(const PlacedBall&) const = default;
};

struct SetUpCheck {
  std::vector<PlacedBall> places;  ///< in the order of the set-up
  std::vector<BallAt> extra;       ///< balls that the set-up does not have
  bool looseAmiss = false;         ///< loose balls: too few, or too close to each other or to a cushion
  bool cueBallAmiss = false;       ///< a cue ball in hand: not on the table, or outside its zone

  /// Nothing where a place is empty.
  [[nodiscard]] std::optional<double> largestError_m() const;
  /// Every place is taken within the tolerance, and nothing is amiss; extra balls do not matter.
  [[nodiscard]] bool isWithin(double tolerance_m) const;
  bool operator==(const SetUpCheck&) const = default;
};

/// Object balls are known by their places alone, each place by at most one ball: the assignment with the least squared
/// errors. found: the balls as they lie at rest.
[[nodiscard]] SetUpCheck checkSetUp(const DrillStation& station, const MeasuredTable& measured, const Position& found);

/// The station whose set-up lies there within kBelongs_m, the least error first; of equal ones (stations that differ in
/// their goals alone) the wanted one, else the first. Nothing where none does.
[[nodiscard]] std::optional<std::size_t> stationSetUp(const Drill& drill, const MeasuredTable& measured,
                                                      const Position& found, std::size_t wanted);

}  // namespace ferrule
