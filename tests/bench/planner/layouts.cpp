// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/planner/layouts.h"

#include <algorithm>

#include "core/base/random.h"
#include "core/measure/plan_situation.h"

namespace ferrule::bench {

Situation randomEightBall(int objectBalls, std::uint64_t seed) {
  Random random(seed);
  std::vector<int> names{1, 2, 3, 4, 5, 6, 7, 9, 10, 11, 12, 13, 14, 15};
  for (std::size_t i = names.size() - 1; i > 0; --i)
    std::swap(names[i], names[static_cast<std::size_t>(random.uniform() * static_cast<double>(i + 1))]);
  names.resize(static_cast<std::size_t>(objectBalls - 1));
  names.insert(names.end(), {0, 8});
  // Somebody has a ball to play.
  if (std::ranges::none_of(names, [](int n) { return n >= 1 && n <= 7; })) names.front() = 3;
  std::ranges::sort(names);
  const Table table;
  Position balls;
  for (const int name : names) {
    for (;;) {
      const TablePoint place{(random.uniform() - 0.5) * (table.length_m - 0.08),
                             (random.uniform() - 0.5) * (table.width_m - 0.08)};
      if (std::ranges::any_of(balls, [&](const BallAt& b) { return distance(b.position, place) < 0.0585; })) continue;
      balls.push_back({BallName(name), place});
      break;
    }
  }
  std::vector<BallName> objects;
  for (const BallAt& ball : balls) {
    if (!ball.ball.isCueBall()) objects.push_back(ball.ball);
  }
  GameState state = joinedFrame(worldRules(Game::EightBall), objects);
  state.groupsKnown = true;
  state.groupOfFirst = Group::Solids;
  return situationFrom(state, balls, table);
}

}  // namespace ferrule::bench
