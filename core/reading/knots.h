// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/reading/motion_pieces.h"

namespace ferrule {

/// A moment when a ball's velocity jumped: it was hit, hit something, or met a cushion.
struct Knot {
  double time_s = 0.0;
  double timeUncertainty_s = 0.0;
  double from_s = 0.0;                   ///< last measured time before
  double to_s = 0.0;                     ///< first measured time after
  TablePoint position;                   ///< of the ball's centre
  TableVector before;                    ///< velocity, m/s
  TableVector after;                     ///< velocity, m/s
  double velocityUncertainty_mps = 0.0;  ///< of each component of after - before
  MotionPiece pieceBefore;
  MotionPiece pieceAfter;

  [[nodiscard]] TableVector jump() const { return after - before; }
};

/// One ball's way through a shot.
struct BallMotion {
  BallName ball;
  MeasuredPath path;
  std::vector<MotionPiece> pieces;
  std::vector<Knot> knots;  ///< in time order

  /// Whether the ball ever moved.
  [[nodiscard]] bool moved() const;
  /// Where it was at a time: by the piece that holds then, carried on before the first and after the last.
  [[nodiscard]] TablePoint at(double time_s) const;
  [[nodiscard]] TableVector velocityAt(double time_s) const;
  /// When it came to rest, or its last measured time when it never did, s.
  [[nodiscard]] double restTime_s() const;
};

/// path: not empty. imageInterval_s: between images.
[[nodiscard]] BallMotion motionOf(BallName ball, MeasuredPath path, double imageInterval_s);

/// How badly two pieces disagree about where the ball was at a time, in chi-square.
[[nodiscard]] double disagreement(const Knot& knot, double time_s);

}  // namespace ferrule
