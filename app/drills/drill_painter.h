// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <optional>
#include <span>

#include "app/picture/plan_mapping.h"
#include "app/window/inks.h"
#include "app/words/numbers.h"
#include "core/drills/aim_lines.h"
#include "core/drills/leave_scatter.h"
#include "core/drills/set_up_check.h"

namespace ferrule {

/// A target zone: hatched, with a dashed edge that reads on every cloth; ends at the cushions.
void paintZone(QPainter& painter, const Zone& zone, const Table& table, const PlanMapping& mapping, const Inks& inks);
/// The station's zones, the way that it is played by geometry, and the ghost ball.
void paintStation(QPainter& painter, const DrillStation& station, const MeasuredTable& measured,
                  const PlanMapping& mapping, const Inks& inks);
/// How to find a ball's place with a rule: thin lines to the two nearest cushions with their lengths in mm, and
/// diamonds at the rails.
void paintMeasures(QPainter& painter, TablePoint place, const MeasuredTable& measured, const PlanMapping& mapping,
                   const Inks& inks, const Numbers& numbers);
/// Where the balls of a set-up lie: a ring each, with how far it is off in mm.
void paintPlaced(QPainter& painter, const SetUpCheck& check, const MeasuredTable& measured, const PlanMapping& mapping,
                 const Inks& inks, const Numbers& numbers);
/// Rest places of the cue ball as dots, with their 95 % ellipse where there are enough.
void paintLeaves(QPainter& painter, std::span<const TablePoint> leaves, const Table& table, const PlanMapping& mapping,
                 const Inks& inks);

}  // namespace ferrule
