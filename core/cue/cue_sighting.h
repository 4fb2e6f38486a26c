// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/camera/tag_observation.h"

namespace ferrule {

/// The cue's tags in one image; those that were read, in the order of the cue's own list.
struct CueSighting {
  long image = 0;
  double time_s = 0.0;
  std::vector<TagObservation> tags;

  bool operator==(const CueSighting&) const = default;
};

}  // namespace ferrule
