// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

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

/// Whether the camera moved between these times of the film: what was read of them is doubtful.
[[nodiscard]] inline bool isDuring(const CameraMove& move, double from_s, double until_s) {
  return from_s < move.settled_s && until_s > move.since_s;
}

/// The rig that held at a time of the film. moves: in order.
[[nodiscard]] inline const Rig& rigAt(const Rig& first, std::span<const CameraMove> moves, double time_s) {
  const Rig* rig = &first;
  for (const CameraMove& move : moves) {
    if (time_s >= move.time_s) rig = &move.rig;
  }
  return *rig;
}

}  // namespace ferrule
