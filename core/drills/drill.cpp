// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/drill.h"

#include <algorithm>
#include <numeric>

#include "core/base/random.h"
#include "core/base/word_list.h"
#include "core/table/rack.h"

namespace ferrule {

namespace {

constexpr WordList<10> kGoalWords{"pot",           "rest",       "contact", "hidden",     "angle-left",
                                  "meets-cushion", "comes-back", "clear",   "no-cushion", "said"};

/// Places tried for one loose ball, and how often all of them are thrown anew, before there is no room.
constexpr int kPlacesTried = 400;
constexpr int kThrows = 50;

TablePoint somewhere(const Table& table, double clear_m, Random& random) {
  const double x = table.length_m / 2.0 - clear_m;
  const double y = table.width_m / 2.0 - clear_m;
  const double along = 2.0 * random.uniform() - 1.0;
  const double across = 2.0 * random.uniform() - 1.0;
  return {x * along, y * across};
}

/// One throw of loose balls among what lies there; nothing when one finds no room.
std::optional<Position> thrown(const LooseBalls& loose, const Position& there, const MeasuredTable& measured,
                               Random& random) {
  const double apart_m = std::max(loose.apart_widths * measured.table.width_m, measured.balls.diameter_m);
  Position all = there;
  for (int number = 1; number < BallName::kCount && all.size() < there.size() + static_cast<std::size_t>(loose.count);
       ++number) {
    const BallName ball(number);
    if (ballIn(there, ball) != nullptr) continue;
    bool placed = false;
    for (int i = 0; i < kPlacesTried && !placed; ++i) {
      const TablePoint place = somewhere(measured.table, apart_m, random);
      placed =
          std::ranges::all_of(all, [&](const BallAt& other) { return distance(other.position, place) >= apart_m; });
      if (placed) all.push_back({ball, place});
    }
    if (!placed) return std::nullopt;
  }
  return all;
}

RackKind rackKindOf(DrillRack rack) {
  switch (rack) {
    case DrillRack::EightBall:
      return RackKind::EightBall;
    case DrillRack::NineBall:
      return RackKind::NineBall;
    case DrillRack::TenBall:
      return RackKind::TenBall;
  }
  return RackKind::EightBall;
}

}  // namespace

int trialsOf(const Drill& drill) {
  return std::accumulate(drill.stations.begin(), drill.stations.end(), 0,
                         [](int sum, const DrillStation& station) { return sum + station.trials; });
}

std::size_t stationOf(const Drill& drill, std::size_t trial) {
  if (drill.stations.empty()) return 0;
  if (drill.order == StationOrder::InTurn) return trial % drill.stations.size();
  std::size_t station = 0;
  while (station + 1 < drill.stations.size() && trial >= static_cast<std::size_t>(drill.stations[station].trials)) {
    trial -= static_cast<std::size_t>(drill.stations[station].trials);
    ++station;
  }
  return station;
}

TablePoint placeOf(const DrillBall& ball, const MeasuredTable& measured) {
  TablePoint place = tableFromSurface(measured.table, ball.place);
  if (!ball.frozen) return place;
  const double x = measured.table.length_m / 2.0 - measured.balls.radius_m();
  const double y = measured.table.width_m / 2.0 - measured.balls.radius_m();
  switch (*ball.frozen) {
    case CushionName::Head:
      place.x = -x;
      break;
    case CushionName::Foot:
      place.x = x;
      break;
    case CushionName::LeftHead:
    case CushionName::LeftFoot:
      place.y = y;
      break;
    case CushionName::RightHead:
    case CushionName::RightFoot:
      place.y = -y;
      break;
  }
  return place;
}

Position setUpOf(const DrillStation& station, const MeasuredTable& measured, std::uint64_t seed) {
  Random random(seed);
  Position balls;
  if (station.rack) balls = racked(rackKindOf(*station.rack), measured.table, measured.balls, random);
  for (const DrillBall& ball : station.balls)
    balls.push_back({ball.ball, placeOf(ball, measured)});
  if (station.cueBall) balls.push_back({kCueBall, placeOf(*station.cueBall, measured)});
  if (station.loose) {
    for (int i = 0; i < kThrows; ++i) {
      if (auto all = thrown(*station.loose, balls, measured, random)) {
        balls = std::move(*all);
        break;
      }
    }
  }
  std::ranges::sort(balls, {}, &BallAt::ball);
  return balls;
}

std::string_view toText(GoalKind kind) {
  return wordOf(kGoalWords, kind);
}

std::optional<GoalKind> goalKindFromText(std::string_view text) {
  return valueOf<GoalKind>(kGoalWords, text);
}

}  // namespace ferrule
