// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/drills/drill.h"

namespace ferrule {

/// A file of drills, "ferrule-drills/1":
///
///     {"format": "ferrule-drills/1", "drills": [
///       {"key": "own words", "title", "text", "tags": [...], "cautions": ["jump" | "break"], "order": "blocks" |
///        "in-turn", "turns_round": true, "stations": [
///          {"balls": [{"ball": "1", "place": [along, across], "frozen": cushion}],
///           "loose": {"count", "apart"}, "rack": "eight-ball" | "nine-ball" | "ten-ball",
///           "cue_ball": {"place", "frozen"}, "cue_ball_zone": zone,
///           "goals": [{"kind", "ball", "pocket", "cushions", "zone", "least_deg", "most_deg", "within"}],
///           "trials": 10, "run": false, "asked": {"speed_m_s", "side", "height"}}]}]}
///
/// with zone = {"corners": [[along, across], ...], "reach"}. Places and lengths are in widths of the playing surface
/// from the head right corner. Only key, stations and in them goals are required; other fields that are not named here
/// are notes and are skipped.
///
/// name: the file, for errors. Errors: FileMalformed (detail: where), FieldMissing, FieldInvalid (with value and limits
/// where they are numbers). Whether a drill can be played is judged by faultsOf, not here.
[[nodiscard]] Result<std::vector<Drill>> parseDrills(const std::string& json, const std::string& name);
/// Errors: also FileMissing, FileEmpty, FileUnreadable.
[[nodiscard]] Result<std::vector<Drill>> readDrills(const std::string& path);
/// What parseDrills makes of it equals the drills.
[[nodiscard]] std::string drillsText(std::span<const Drill> drills);
/// Errors: FileNotWritable.
[[nodiscard]] Result<void> writeDrills(const std::string& path, std::span<const Drill> drills);

/// The 25 that come with the program, in the order of resources/drills/drills.json.
[[nodiscard]] const std::vector<Drill>& builtInDrills();
/// Null where none has the key.
[[nodiscard]] const Drill* builtInDrill(std::string_view key);

}  // namespace ferrule
