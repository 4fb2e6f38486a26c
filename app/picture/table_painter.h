// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>

#include "app/picture/plan_mapping.h"
#include "app/window/inks.h"

namespace ferrule {

/// Draws an empty table from its geometry: rails, sights, cloth, cushions with their jaws, pockets, strings and spots.
/// The one table picture of live, review, drill and report.
void paintTable(QPainter& painter, const Table& table, const PlanMapping& mapping, const Inks& inks);

}  // namespace ferrule
