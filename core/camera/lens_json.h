// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "core/base/error.h"
#include "core/camera/lens.h"

/// A lens as a JSON object, shared by lens files and rig files. For this folder's .cpp files only.
namespace ferrule {

[[nodiscard]] nlohmann::ordered_json jsonFromLens(const Lens& lens);
/// file stands for the file in errors; field is the object's own place in it ("" at the top).
[[nodiscard]] Result<Lens> lensFromJson(const nlohmann::json& object, const std::string& file,
                                        const std::string& field);

}  // namespace ferrule
