// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/physics/scenes.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/units.h"
#include "core/table/rack.h"

namespace ferrule::bench {

namespace {

constexpr int kBalls = 8;
constexpr double kLargestCut_rad = 1.0;

double between(Random& random, double low, double high) {
  return low + (high - low) * random.uniform();
}

bool free(const Position& balls, TablePoint place, double apart_m) {
  return std::ranges::all_of(balls, [&](const BallAt& ball) { return distance(ball.position, place) > apart_m; });
}

Strike strikeToward(double aim_rad, double speed_mps, double mostTip, Random& random) {
  Strike strike;
  strike.speed_mps = speed_mps;
  strike.side = between(random, -mostTip, mostTip);
  strike.height = between(random, -mostTip, mostTip);
  strike.elevation_rad = radiansFromDegrees(between(random, 1.0, 4.0));
  return strikeDeparting(aim_rad, strike, PhysicsParameters{});
}

}  // namespace

Scene eightBallShot(const Table& table, Random& random) {
  const double radius_m = poolBalls().radius_m();
  const double x_m = table.length_m / 2.0 - 2.0 * radius_m;
  const double y_m = table.width_m / 2.0 - 2.0 * radius_m;
  while (true) {
    Scene scene;
    while (scene.before.size() < kBalls) {
      const TablePoint place{between(random, -x_m, x_m), between(random, -y_m, y_m)};
      if (!free(scene.before, place, 2.2 * radius_m)) continue;
      scene.before.push_back({BallName(static_cast<int>(scene.before.size())), place});
    }
    const TablePoint cueBall = scene.before.front().position;
    const TablePoint object = scene.before.back().position;
    for (const Pocket& pocket : pockets(table)) {
      const TableVector line = unit(pocket.mouth - object);
      const TablePoint ghost = object - (2.0 * radius_m) * line;
      const TableVector way = ghost - cueBall;
      if (length(way) < 4.0 * radius_m || std::acos(dot(unit(way), line)) > kLargestCut_rad) continue;
      scene.strike = strikeToward(direction(way), between(random, 1.0, 3.5), 0.25, random);
      return scene;
    }
  }
}

Scene breakShot(const Table& table, Random& random) {
  Scene scene;
  const TablePoint spot = headSpot(table);
  scene.before = racked(RackKind::EightBall, table, poolBalls(), random);
  scene.before.insert(scene.before.begin(), {kCueBall, {spot.x - 0.1, between(random, -0.3, 0.3)}});
  const TableVector way = footSpot(table) - scene.before.front().position;
  scene.strike =
      strikeToward(direction(way) + between(random, -0.004, 0.004), between(random, 8.0, 10.0), 0.05, random);
  return scene;
}

std::vector<Scene> eightBallShots(int count) {
  Random random(8);
  std::vector<Scene> scenes;
  for (int i = 0; i < count; ++i)
    scenes.push_back(eightBallShot(Table{}, random));
  return scenes;
}

std::vector<Scene> breakShots(int count) {
  Random random(15);
  std::vector<Scene> scenes;
  for (int i = 0; i < count; ++i)
    scenes.push_back(breakShot(Table{}, random));
  return scenes;
}

}  // namespace ferrule::bench
