// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/rack.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>

#include "core/base/contract.h"

namespace ferrule {

namespace {

constexpr int kTriangleOf15[] = {1, 2, 3, 4, 5};
constexpr int kTriangleOf10[] = {1, 2, 3, 4};
constexpr int kDiamond[] = {1, 2, 3, 2, 1};
/// The middle of the third row in rackPlaces' order, the same in all three forms.
constexpr std::size_t kMiddle = 4;
/// The rear corners of a triangle of 15.
constexpr std::size_t kRearLeft = 10;
constexpr std::size_t kRearRight = 14;

std::span<const int> rowsOf(RackKind kind) {
  switch (kind) {
    case RackKind::NineBall:
      return kDiamond;
    case RackKind::TenBall:
      return kTriangleOf10;
    case RackKind::EightBall:
    case RackKind::StraightPool:
    case RackKind::StraightPoolRest:
      break;
  }
  return kTriangleOf15;
}

/// Fisher and Yates 1938 in Durstenfeld's form; the standard's shuffle may differ between libraries.
void shuffle(std::vector<BallName>& balls, Random& random) {
  for (std::size_t left = balls.size(); left > 1; --left) {
    const auto other = static_cast<std::size_t>(random.uniform() * static_cast<double>(left));
    std::swap(balls[left - 1], balls[other]);
  }
}

void putAt(std::vector<BallName>& order, std::size_t place, BallName ball) {
  std::iter_swap(order.begin() + static_cast<std::ptrdiff_t>(place), std::ranges::find(order, ball));
}

/// The balls in the order of the places, full to the apex.
std::vector<BallName> orderOf(RackKind kind, std::size_t places, Random& random, const RackOptions& options) {
  std::vector<BallName> order;
  for (int number = 1; order.size() < places; ++number) {
    if (kind != RackKind::StraightPoolRest || BallName(number) != options.leftOut) order.emplace_back(number);
  }
  shuffle(order, random);
  switch (kind) {
    case RackKind::EightBall: {
      putAt(order, kMiddle, BallName(8));
      // Of two balls alike in the rear corners, the right one changes with the first of the other kind elsewhere.
      const bool solid = order[kRearLeft].isSolid();
      if (order[kRearRight].isSolid() == solid) {
        const auto other = std::ranges::find_if(
            order, [solid](BallName ball) { return ball != BallName(8) && ball.isSolid() != solid; });
        std::iter_swap(order.begin() + kRearRight, other);
      }
      break;
    }
    case RackKind::NineBall:
      putAt(order, 0, BallName(1));
      putAt(order, kMiddle, BallName(9));
      break;
    case RackKind::TenBall:
      putAt(order, 0, BallName(1));
      putAt(order, kMiddle, BallName(10));
      break;
    case RackKind::StraightPool:
    case RackKind::StraightPoolRest:
      break;
  }
  return order;
}

}  // namespace

std::vector<TablePoint> rackPlaces(RackKind kind, const Table& table, const BallSet& balls,
                                   const RackOptions& options) {
  const double rowStep_m = balls.radius_m() * std::numbers::sqrt3;
  const double apexShift_m = kind == RackKind::NineBall && options.nineOnFootSpot ? 2.0 * rowStep_m : 0.0;
  std::vector<TablePoint> places;
  double x = footSpot(table).x - apexShift_m;
  for (const int inRow : rowsOf(kind)) {
    for (int i = 0; i < inRow; ++i)
      places.push_back({x, balls.radius_m() * (inRow - 1 - 2 * i)});
    x += rowStep_m;
  }
  if (kind == RackKind::StraightPoolRest) places.erase(places.begin());
  return places;
}

Position racked(RackKind kind, const Table& table, const BallSet& balls, Random& random, const RackOptions& options) {
  FERRULE_REQUIRE(!options.leftOut.isCueBall());
  const std::vector<TablePoint> places = rackPlaces(kind, table, balls, options);
  const std::vector<BallName> order = orderOf(kind, places.size(), random, options);
  Position position;
  for (std::size_t i = 0; i < places.size(); ++i)
    position.push_back({order[i], places[i]});
  std::ranges::sort(position, {}, &BallAt::ball);
  return position;
}

}  // namespace ferrule
