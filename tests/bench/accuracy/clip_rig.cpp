// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/clip_rig.h"

namespace ferrule::bench {

Result<Rig> RigMaker::make(const std::string& film, const Truth& truth, const MeasuredTable& measured) {
  (void)measured;
  if (!trueRig_) return failure(ErrorCode::NotFound, film, "calibrated rig; call with --true-rig");
  return truth.rig;
}

}  // namespace ferrule::bench
