// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/drills/drill_shots.h"

#include <algorithm>

namespace ferrule::drillshots {

MeasuredTable nineFoot() {
  return {};
}

TablePoint at(double along, double across) {
  return tableFromSurface(nineFoot().table, {along, across});
}

BallAt ball(int number, double along, double across) {
  return {BallName(number), at(along, across)};
}

ShotReading shot(const Position& before, const std::optional<TablePoint>& cueBallRests) {
  ShotReading reading;
  reading.before = before;
  for (const BallAt& there : before) {
    if (!there.ball.isCueBall()) {
      reading.after.push_back(there);
    } else if (cueBallRests) {
      reading.after.push_back({kCueBall, *cueBallRests});
    }
  }
  reading.scratch = !cueBallRests;
  return reading;
}

void pot(ShotReading& shot, int number, PocketName pocket) {
  shot.outcome = Outcome::Pot;
  shot.pocketed.push_back({BallName(number), pocket});
  std::erase_if(shot.after, [&](const BallAt& there) { return there.ball == BallName(number); });
}

void meetCushion(ShotReading& shot, int number, CushionName cushion, TablePoint place) {
  ShotEvent event;
  event.time_s = static_cast<double>(shot.events.size());
  event.kind = EventKind::Cushion;
  event.ball = BallName(number);
  event.cushion = cushion;
  event.position = place;
  shot.events.push_back(event);
}

void meetBall(ShotReading& shot, int number, int other, TablePoint place) {
  ShotEvent event;
  event.time_s = static_cast<double>(shot.events.size());
  event.kind = EventKind::Ball;
  event.ball = BallName(number);
  event.other = BallName(other);
  event.position = place;
  shot.events.push_back(event);
  if (!shot.firstContact) shot.firstContact = BallName(other);
}

Drill cutDrill() {
  DrillStation station;
  station.balls = {{BallName(1), {1.5, 0.5}}};
  station.cueBall = DrillBall{kCueBall, {1.035, 0.218}};
  station.goals = {{GoalKind::Pot, BallName(1), PocketName::FootLeft}};
  Drill drill;
  drill.key = "cut";
  drill.stations = {station};
  return drill;
}

}  // namespace ferrule::drillshots
