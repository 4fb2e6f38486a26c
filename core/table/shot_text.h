// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/table/shot.h"

/// Shots in the form of the files: one line of JSON, lengths in mm, angles in degrees, times in s of the film, each
/// rounded far below what a film shows (1 um, 1 us, 0.00001 degree). What was not observed is null.
namespace ferrule {

/// {"number", "strike_s", "rest_s", "before", "after", "delivery", "events", "first_contact", "pocketed", "scratch",
/// "target", "outcome"}
[[nodiscard]] std::string shotText(const ShotReading& shot);
/// {"ball", "t_s", "x_mm", "y_mm"}
[[nodiscard]] std::string placementText(const Placement& placement);

/// The shortest decimal of a value rounded to a step, the same in every locale.
[[nodiscard]] std::string numberText(double value, double step);

}  // namespace ferrule
