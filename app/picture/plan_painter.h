// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <utility>
#include <vector>

#include "app/picture/plan_mapping.h"
#include "app/window/inks.h"
#include "core/planner/chances.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// The ways of the balls of a plan that comes out as asked, each as points along it.
using PlannedWays = std::vector<std::pair<BallName, std::vector<TablePoint>>>;

/// Suggested things are dashed and cool: the ways with a thin casing, the leave as a hatched 95 % ellipse that ends at
/// the cushions.
void paintPlannedWays(QPainter& painter, const PlannedWays& ways, const PlanMapping& mapping, const Inks& inks);
void paintLeave(QPainter& painter, const Leave& leave, const Table& table, const PlanMapping& mapping,
                const Inks& inks);

}  // namespace ferrule
