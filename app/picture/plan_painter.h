// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>

#include "app/picture/plan_mapping.h"
#include "app/picture/planned_ways.h"
#include "app/window/inks.h"
#include "core/planner/chances.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// Suggested things are dashed and cool: the ways with a thin casing, the leave as a hatched 95 % ellipse that ends at
/// the cushions.
void paintPlannedWays(QPainter& painter, const PlannedWays& ways, const PlanMapping& mapping, const Inks& inks);
void paintLeave(QPainter& painter, const Leave& leave, const Table& table, const PlanMapping& mapping,
                const Inks& inks);
/// Of the taken shot: a filled warm ellipse.
void paintTakenLeave(QPainter& painter, const Leave& leave, const Table& table, const PlanMapping& mapping,
                     const Inks& inks);

}  // namespace ferrule
