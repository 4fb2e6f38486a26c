// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/physics/strike.h"
#include "core/table/measured_table.h"
#include "core/table/track.h"

namespace ferrule {

/// What only a suggestion needs to know besides the position. Words of the rules stay words here.
struct SuggestionWish {
  std::string game;                     ///< "eight-ball" ...; empty where the file does not say
  std::string group;                    ///< "solids", "stripes", "open"; empty where the file does not say
  bool ballInHand = false;              ///< the cue ball may be put anywhere the rules allow
  std::optional<double> aimSpread_rad;  ///< the player's standard deviations
  std::optional<double> speedSpread;    ///< relative
  std::optional<double> tipSpread;      ///< ball radii

  bool operator==(const SuggestionWish&) const = default;
};

/// What `simulate` and `suggest` read: a table, the balls on it, what they are made of, and perhaps a strike.
///
///     {"table": "9ft" or the content of table.json,
///      "balls": [{"ball": "cue", "x_mm": -635, "y_mm": 0}, ...],
///      "strike": {"aim_deg", "speed_m_s", "side", "height", "elevation_deg"},
///      "coefficients": {"sliding_friction", "rolling_friction", "spin_decay_rad_s2", "ball_restitution",
///         "ball_friction", "cushion_restitution", "cushion_friction", "gravity_m_s2", "ball_mass_kg",
///         "squirt_mass_ratio"},
///      "game", "group", "ball_in_hand", "player": {"aim_sd_deg", "speed_sd", "tip_sd"}}
///
/// side, height and elevation_deg may be left out (0); so may any coefficient (the literature's value, the mass of the
/// table's balls). A number for ball_friction holds at every speed. An unknown coefficient is refused, since it would
/// silently do nothing; other fields that are not named here are notes and are skipped.
struct PositionFile {
  MeasuredTable measured;
  Position balls;  ///< in the order of their names
  std::optional<Strike> strike;
  PhysicsParameters parameters;
  SuggestionWish wish;

  bool operator==(const PositionFile&) const = default;
};

/// name: the file, for errors. Where the balls lie is judged by what is done with them, not here.
/// Errors: FileMalformed (detail: where), FieldMissing, FieldInvalid (with the value and the limits where they are
/// numbers).
[[nodiscard]] Result<PositionFile> parsePositionFile(const std::string& json, const std::string& name);
/// Errors: also FileMissing, FileEmpty, FileUnreadable.
[[nodiscard]] Result<PositionFile> readPositionFile(const std::string& path);
/// A position in that form, without a strike; places are rounded to 0.01 mm.
[[nodiscard]] std::string positionFileText(const MeasuredTable& measured, const Position& balls);

}  // namespace ferrule
