// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>

#include "core/physics/bed.h"
#include "core/physics/motion.h"

namespace ferrule {

inline constexpr double kNever = std::numeric_limits<double>::infinity();

/// Balls this close touch; a contact that was just resolved leaves a gap of rounding, some 1e-16 m.
inline constexpr double kTouching_m = 1e-9;
/// A touching pair that closes more slowly than this rests against each other and is not hit at once again.
inline constexpr double kPressing_mps = 1e-4;
/// How far such a pair may sink into each other before it is parted again; far below the 1 µm that is allowed in all.
inline constexpr double kPressedIn_m = 2e-7;

/// When two balls next touch while closing in, from now_s until the first of the two motions ends; kNever if not.
/// |Δr(t)| = 2R is a quartic in t. Touching balls are judged by their closing speed, never by the time alone.
[[nodiscard]] double ballContactTime(const Motion& first, const Motion& second, double now_s, double radius_m);

enum class BoundaryKind {
  None,
  Cushion,   ///< a nose, a facing or a jaw
  HoleEdge,  ///< the centre passes over the edge of a pocket's hole, inward
  HoleExit,  ///< and outward again
  RailTop,   ///< comes down on a rail
};

/// What a ball next meets of the table.
struct BoundaryEvent {
  double time_s = kNever;
  BoundaryKind kind = BoundaryKind::None;
  std::size_t well = 0;                     ///< HoleEdge and HoleExit: place in Bed::wells
  CushionName cushion = CushionName::Head;  ///< Cushion
  Vector3 toward;                           ///< Cushion: unit, from the ball's centre to the contact
  double sunk_m = 0.0;                      ///< Cushion: how far the ball has sunk in that rested against it
};

/// The first such meeting from now_s until the motion's end. well: the pocket a Falling ball is in.
[[nodiscard]] BoundaryEvent nextBoundary(const Motion& motion, double now_s, const Bed& bed, std::size_t well = 0);

/// Whether a place lies over a pocket's throat or hole rather than over a rail.
[[nodiscard]] bool overPocket(const PocketWell& well, TablePoint place);

}  // namespace ferrule
