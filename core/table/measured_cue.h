// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/base/error.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// An instrumented cue as an owner measures it with a steel rule: printed tags, stuck on top of the shaft.
struct MeasuredCue {
  CueTags tags;
  /// From the shaft's upper edge to the print: paper and what it is stuck on.
  double tagThickness_m = 0.0006;
  std::optional<double> bridgeHeight_m;  ///< of the cue's axis at the bridge, above the cloth

  bool operator==(const MeasuredCue&) const = default;
};

/// What a table's file says of the cue; nothing when it has no tags on a cue.
[[nodiscard]] std::optional<MeasuredCue> cueOf(const MeasuredTable& measured);

/// Reads cue.json (DEVELOPERS.md, file formats); a table.json with the same fields will do. Errors: FileMissing,
/// FileEmpty, FileUnreadable, FileMalformed, FieldMissing, FieldInvalid (tags of one id, or at one place).
[[nodiscard]] Result<MeasuredCue> readMeasuredCue(const std::string& path);
/// cue.json's content; name stands for the file in errors.
[[nodiscard]] Result<MeasuredCue> parseMeasuredCue(const std::string& json, const std::string& name);

}  // namespace ferrule
