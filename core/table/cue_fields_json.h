// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <optional>

#include "core/base/error.h"
#include "core/table/field_reader_json.h"
#include "core/table/measured_table.h"

/// What table.json and cue.json say of the cue, in the same fields.
namespace ferrule::tablefile {

/// The object "cue_tags". Errors: FieldMissing, FieldInvalid.
[[nodiscard]] Result<CueTags> readCueTags(const nlohmann::json& object, const FieldReader& reader);
/// "bridge_height_to_cue_axis" where it is there. Errors: FieldInvalid.
[[nodiscard]] Result<std::optional<double>> readBridgeHeight(const FieldReader& reader);

}  // namespace ferrule::tablefile
