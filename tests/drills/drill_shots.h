// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drills/drill.h"
#include "core/table/shot.h"

/// Invented shots for the tests of drills, on the 9 ft table; places in widths from the head right corner.
namespace ferrule::drillshots {

[[nodiscard]] MeasuredTable nineFoot();
[[nodiscard]] TablePoint at(double along, double across);
[[nodiscard]] BallAt ball(int number, double along, double across);

/// A shot that only moved the cue ball to its rest; before as it stood.
[[nodiscard]] ShotReading shot(const Position& before, const std::optional<TablePoint>& cueBallRests);
/// The ball falls into the pocket: it is off the table afterwards.
void pot(ShotReading& shot, int number, PocketName pocket);
void meetCushion(ShotReading& shot, int number, CushionName cushion, TablePoint place);
void meetBall(ShotReading& shot, int number, int other, TablePoint place);

/// One station: the 1 at (1.5, 0.5) for the foot left pocket, the cue ball at (1.035, 0.218).
[[nodiscard]] Drill cutDrill();

}  // namespace ferrule::drillshots
