// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include "core/camera/error_map.h"
#include "core/camera/rig.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// A rig with all that follows from it. Long work: the map is worked out over the whole table.
struct MadeRig {
  Rig rig;
  MeasuredTable measured;
  std::shared_ptr<const ErrorMap> map;
};

[[nodiscard]] MadeRig withMap(Rig rig, MeasuredTable measured);
/// Errors: those of readRigFile and readMeasuredTable.
[[nodiscard]] Result<MadeRig> readMadeRig(const std::string& rigPath, const std::string& tablePath);
/// The same rig; what its chain says to come from one file is said to come from another.
[[nodiscard]] Rig withSource(const Rig& rig, const std::string& before, const std::string& after);

}  // namespace ferrule
