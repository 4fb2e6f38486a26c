// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/physics/simulation.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// The table from above with every ball's way, as SVG text in millimetres: full discs where balls started, rings where
/// they rest, a cross where one was pocketed or left, a dashed line while it flies. Every ball bears its number. The
/// simulation must have kept its paths.
[[nodiscard]] std::string pathPicture(const MeasuredTable& measured, const Simulation& simulation);

}  // namespace ferrule
