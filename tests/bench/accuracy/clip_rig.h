// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/error.h"
#include "core/camera/rig.h"
#include "core/table/measured_table.h"
#include "tests/bench/accuracy/truth.h"

namespace ferrule::bench {

/// Makes the rigs of the films.
class RigMaker {
 public:
  /// trueRig: take lens and pose from the truth.
  RigMaker(std::string folder, bool trueRig) : folder_(std::move(folder)), trueRig_(trueRig) {}

  [[nodiscard]] Result<Rig> make(const std::string& film, const Truth& truth, const MeasuredTable& measured);

 private:
  std::string folder_;
  bool trueRig_;
};

}  // namespace ferrule::bench
