// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/camera/rig.h"

namespace ferrule {

/// The camera moved against the table while a film ran.
struct CameraMove {
  long image = 0;          ///< the first that was seen to show it
  double time_s = 0.0;     ///< of that image
  double since_s = 0.0;    ///< the last time at which nothing had moved yet; between the two the film is doubtful
  double settled_s = 0.0;  ///< from when on the new rig holds
  double moved_m = 0.0;    ///< on the table, middle of the tags' shifts under the rig before
  Rig rig;                 ///< made from the tags as they are seen after the move

  bool operator==(const CameraMove&) const = default;
};

}  // namespace ferrule
