// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/camera/mark_sighting.h"
#include "core/camera/rig_calibration.h"
#include "core/table/cushion.h"

namespace ferrule {

/// A straight line of the table as a picture shows it.
struct LineTrace {
  enum class Kind {
    Nose,  ///< of a cushion, at the nose's height
    Back,  ///< where the cushion's cloth meets the rail; its place is less well known
  };
  Kind kind = Kind::Nose;
  CushionName cushion = CushionName::Head;
  std::vector<ImagePoint> places;  ///< in order along the cushion
  double u_px = 0.0;               ///< standard uncertainty of a place across the line

  bool operator==(const LineTrace&) const = default;
};

/// A ball at rest as a picture shows it.
struct BallSighting {
  ImagePoint centre;       ///< of its outline
  double radius_px = 0.0;  ///< square root of the outline's half-axes' product
  double u_px = 0.0;       ///< standard uncertainty of the radius
  int images = 0;          ///< it was averaged over

  bool operator==(const BallSighting&) const = default;
};

/// Everything that a film tells about a rig, without any correction: pixels as they are.
struct CheckEvidence {
  ImageSize filmSize;  ///< upright
  std::vector<AveragedTag> tags;
  std::vector<LineTrace> lines;
  std::vector<MarkSighting> marks;  ///< only where lines say how large the picture is
  std::vector<BallSighting> balls;

  bool operator==(const CheckEvidence&) const = default;
};

}  // namespace ferrule
