// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/measure/judged_shots.h"

#include <cmath>

#include "core/measure/film_referee.h"
#include "core/measure/plan_situation.h"
#include "core/measure/record_entries.h"
#include "core/physics/simulator.h"

namespace ferrule::judged {

const Position kBefore{{kCueBall, {0.3, 0.2}},      {BallName(1), {1.04, 0.49}}, {BallName(2), {-1.0, -0.5303}},
                       {BallName(8), {-0.85, 0.3}}, {BallName(9), {0.0, -0.4}},  {BallName(10), {-0.4, 0.1}}};

namespace {

Planner planner() {
  const MeasuredTable measured = sample::table();
  return *Planner::create(measured.table, parametersFor(measured.balls));
}

Situation solids(const Position& balls) {
  const MeasuredTable measured = sample::table();
  GameState state =
      joinedFrame(worldRules(Game::EightBall), {BallName(1), BallName(2), BallName(8), BallName(9), BallName(10)},
                  Seat::First, surfaceLines(measured.table, measured.balls));
  return situationFrom(state, balls, measured.table);
}

}  // namespace

ShotReading played(int number, const Strike& strike, const PocketedBall& meant) {
  const MeasuredTable measured = sample::table();
  const auto simulated = Simulator::create(measured.table, parametersFor(measured.balls))->shoot(kBefore, strike);
  ShotReading reading;
  reading.number = number;
  reading.strike_s = 10.0 * number;
  reading.rest_s = reading.strike_s + simulated->duration_s;
  reading.before = kBefore;
  const Vector3 v = simulated->paths.front().motions.front().velocity;
  reading.delivery.aim_rad = Measured{std::atan2(v.y, v.x), 1e-4};
  reading.delivery.speed_mps = Measured{strike.speed_mps, 1e-3};
  reading.delivery.side = Measured{strike.side, 1e-3};
  reading.delivery.height = Measured{strike.height, 1e-3};
  reading.target = Target{meant.ball, meant.pocket, {}, {}, {}};
  reading.outcome = Outcome::Miss;
  for (ShotEvent event : simulated->events) {
    event.time_s += reading.strike_s;
    reading.events.push_back(event);
    if (event.kind == EventKind::Ball && !reading.firstContact && event.other) reading.firstContact = event.other;
    if (event.kind != EventKind::Pocket) continue;
    reading.pocketed.push_back({event.ball, *event.pocket});
    if (event.ball == meant.ball) reading.outcome = Outcome::Pot;
  }
  for (const FinalBall& ball : simulated->after) {
    if (ball.fate == BallFate::OnTable) reading.after.push_back({ball.ball, ball.position});
  }
  return reading;
}

Kept::Kept(const std::vector<ShotReading>& readings, bool ruled, const std::string& player) {
  std::optional<PlayerId> who;
  if (!player.empty()) who = *record.addPlayer(sample::player(player));
  session = *record.addSession({"Evening", 1'772'389'800'000, "table", sample::table(), {}, SessionKind::Practice});
  frame = *record.addFrame({session, ruled ? "eight-ball" : "", std::nullopt, std::nullopt});
  for (const ShotReading& reading : readings) {
    FilmReferee referee(worldRules(Game::EightBall), sample::table());
    std::optional<RulingEntry> entry;
    if (ruled) entry = entryOf(referee.judge({reading, {}}).ruled);
    shots.push_back(*record.appendShot(frame, reading, {}, who, entry));
  }
}

JudgeOptions quick() {
  JudgeOptions options;
  options.mostSimulations = 6000;
  return options;
}

Strike easyStrike() {
  const auto meant = meantPlan(planner(), solids(kBefore), kEasy, true, {std::atan2(0.29, 0.74), 1.5, 0.0, 0.0, 0.0},
                               scatterOf(PlayerLevel::Club));
  if (!meant) qFatal("the easy ball cannot be potted");
  return meant->strike;
}

}  // namespace ferrule::judged
