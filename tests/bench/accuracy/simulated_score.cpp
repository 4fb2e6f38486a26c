// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/simulated_score.h"

#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <memory>
#include <string>

#include "core/geometry/units.h"
#include "core/reading/shot_reader.h"
#include "tests/bench/accuracy/delivery_floor.h"
#include "tests/bench/accuracy/simulated_shots.h"

namespace ferrule::bench {

namespace {

Truth truthOf(const SimulatedShot& shot) {
  Truth truth;
  truth.radius_m = shot.measured.balls.radius_m();
  TrueShot one;
  one.strike_s = shot.strike_s;
  one.rest_s = shot.strike_s + shot.simulation.duration_s;
  one.aim_rad = shot.departure_rad;
  one.speed_mps = shot.strike.speed_mps;
  one.side = shot.strike.side;
  one.height = shot.strike.height;
  one.elevation_rad = shot.strike.elevation_rad;
  one.events = shot.simulation.events;
  one.firstContact = firstContactIn(shot.simulation);
  one.pocketed = pocketedIn(shot.simulation);
  truth.shots.push_back(one);
  TrueImage rest;
  rest.time_s = one.rest_s;
  for (const FinalBall& ball : shot.simulation.after) {
    if (ball.fate != BallFate::OnTable) continue;
    TrueBall there;
    there.ball = ball.ball;
    there.position = {ball.position.x, ball.position.y, truth.radius_m};
    there.inPlay = true;
    rest.balls.push_back(there);
  }
  truth.images.push_back(rest);
  return truth;
}

/// The stroke's kind by what decides how much of it shows.
std::size_t groupOf(const SimulatedShot& shot) {
  const auto& events = shot.simulation.events;
  if (events.empty() || events.front().kind == EventKind::Cushion) return 0;
  return events.front().time_s < 0.15 ? 1 : 2;
}

void writeLine(std::FILE* file, long number, const SimulatedShot& shot, const std::vector<ShotReading>& readings) {
  if (file == nullptr) return;
  std::fprintf(file, "%ld true aim %.3f speed %.3f side %+.3f height %+.3f elev %.2f |", number,
               degreesFromRadians(shot.departure_rad), shot.strike.speed_mps, shot.strike.side, shot.strike.height,
               degreesFromRadians(shot.strike.elevation_rad));
  if (!readings.empty()) {
    const Delivery& d = readings.front().delivery;
    const auto put = [&](const char* name, const std::optional<Measured>& m, double truth, double unit) {
      if (m) std::fprintf(file, " %s %+.3f/%.3f", name, (m->value - truth) * unit, m->standardUncertainty * unit);
    };
    put("aim", d.aim_rad, shot.departure_rad, degreesFromRadians(1.0));
    put("speed%", d.speed_mps, shot.strike.speed_mps, 100.0 / shot.strike.speed_mps);
    put("side", d.side, shot.strike.side, 1.0);
    put("height", d.height, shot.strike.height, 1.0);
    put("elev", d.elevation_rad, shot.strike.elevation_rad, degreesFromRadians(1.0));
    if (d.whyNoStrike) std::fprintf(file, " no strike: %s", std::string(toText(*d.whyNoStrike)).c_str());
    if (d.whyNoSide == NotShown::NotFitted) std::fprintf(file, " NOT FITTED");
  }
  std::fprintf(file, "\n   true:");
  for (const ShotEvent& event : shot.simulation.events)
    std::fprintf(file, " [%.3f %s]", event.time_s + shot.strike_s, eventWords(event).c_str());
  std::fprintf(file, "\n   read:");
  if (!readings.empty()) {
    for (const ShotEvent& event : readings.front().events)
      std::fprintf(file, " [%.3f %s]", event.time_s, eventWords(event).c_str());
  }
  std::fprintf(file, "\n");
}

/// One shot's errors beside what its film leaves at best.
void addFloor(SimulatedScore& group, const SimulatedShot& shot, const Delivery& delivery, const DeliveryFloor& floor) {
  const auto add = [](FlooredErrors& both, const std::optional<Measured>& measured, double truth, double scale,
                      double least) {
    if (!measured) return;
    both.errors.push_back((measured->value - truth) / scale);
    both.floors.push_back(least);
  };
  if (delivery.aim_rad) {
    group.aim_rad.errors.push_back(wrapAngle(delivery.aim_rad->value - shot.departure_rad));
    group.aim_rad.floors.push_back(floor.aim_rad);
  }
  add(group.speed, delivery.speed_mps, shot.strike.speed_mps, shot.strike.speed_mps, floor.speed);
  add(group.side, delivery.side, shot.strike.side, 1.0, floor.side);
  add(group.height, delivery.height, shot.strike.height, 1.0, floor.height);
}

}  // namespace

std::vector<SimulatedScore> scoreSimulatedShots(long count) {
  std::vector<SimulatedScore> groups(4);
  groups[0].name = "cushion or nothing first";
  groups[1].name = "ball within 0.15 s";
  groups[2].name = "ball later";
  groups[3].name = "all";
  const char* path = std::getenv("FERRULE_BENCH_SHOTS");
  const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(path != nullptr ? std::fopen(path, "w") : nullptr,
                                                             [](std::FILE* f) { return f ? std::fclose(f) : 0; });
  for (long number = 0; number < count; ++number) {
    const SimulatedShot shot = simulatedShot(static_cast<std::uint64_t>(number));
    ShotReader reader(shot.measured, shot.camera);
    std::vector<ShotReading> readings;
    double longest_s = 0.0;
    const auto take = [&](auto&& step) {
      const std::clock_t from = std::clock();
      step();
      auto shots = reader.takeShots();
      // Of the step that closed the shot: cutting before it is the price of an image each.
      if (!shots.empty()) longest_s = static_cast<double>(std::clock() - from) / CLOCKS_PER_SEC;
      for (ReadShot& read : shots)
        readings.push_back(std::move(read.reading));
    };
    for (const ImageReading& reading : shot.readings)
      take([&] { reader.feed(reading); });
    take([&] { reader.finish(); });
    const ShotScore score = compareShots(truthOf(shot), readings);
    const auto floor = deliveryFloor(shot);
    for (const std::size_t group : {groupOf(shot), std::size_t{3}}) {
      if (floor && readings.size() == 1) addFloor(groups[group], shot, readings.front().delivery, *floor);
      groups[group].shots.add(score);
      groups[group].fit_s.push_back(longest_s);
    }
    writeLine(file.get(), number, shot, readings);
  }
  return groups;
}

}  // namespace ferrule::bench
