// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "core/geometry/frames.h"

namespace ferrule {

/// One printed tag as it is seen: the black square's corners, top-left, top-right, bottom-right, bottom-left of the
/// print.
struct TagObservation {
  int id = 0;
  std::array<ImagePoint, 4> corners;

  bool operator==(const TagObservation&) const = default;
};

}  // namespace ferrule
