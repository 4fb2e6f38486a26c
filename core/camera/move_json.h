// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <vector>

#include "core/base/error.h"
#include "core/camera/camera_move.h"

namespace ferrule {

/// A move as files have it: {"image", "time_s", "since_s", "settled_s", "moved_mm", "rig": a whole rig file}.
[[nodiscard]] nlohmann::ordered_json jsonOf(const CameraMove& move);

/// Reads a list of them; further fields are skipped. name stands for the file in errors.
/// Errors: FieldInvalid (detail "moves"); those of parseRig.
[[nodiscard]] Result<std::vector<CameraMove>> movesFrom(const nlohmann::json& list, const std::string& name);

}  // namespace ferrule
