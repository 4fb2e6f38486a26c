// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/snapping.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace ferrule {

namespace {

/// Balls put down as frozen may overlap by this much from rounding.
constexpr double kTouch_m = 1e-9;
/// How far around a crowded point room is looked for, in ball radii, and in how many directions.
constexpr double kSearch_radii = 6.0;
constexpr int kDirections = 24;

/// One ball to be put among others.
class Placing {
 public:
  Placing(const Table& table, double radius_m, const Position& others)
      : table_(table), radius_m_(radius_m), others_(others) {}

  [[nodiscard]] TablePoint inside(TablePoint point) const {
    const double x = table_.length_m / 2.0 - radius_m_;
    const double y = table_.width_m / 2.0 - radius_m_;
    return {std::clamp(point.x, -x, x), std::clamp(point.y, -y, y)};
  }
  [[nodiscard]] bool isFree(TablePoint place) const {
    return std::ranges::none_of(
        others_, [&](const BallAt& other) { return length(other.position - place) < 2.0 * radius_m_ - kTouch_m; });
  }
  [[nodiscard]] bool isOn(TablePoint place) const { return inside(place) == place; }

  /// The place itself, or the nearest free one around it.
  [[nodiscard]] std::optional<TablePoint> freeNear(TablePoint place) const {
    if (isFree(place)) return place;
    const double step_m = radius_m_ / 8.0;
    for (double away_m = step_m; away_m <= kSearch_radii * radius_m_; away_m += step_m) {
      for (int i = 0; i < kDirections; ++i) {
        const double turn_rad = 2.0 * std::numbers::pi * i / kDirections;
        const TablePoint tried = place + away_m * TableVector{std::cos(turn_rad), std::sin(turn_rad)};
        if (isOn(tried) && isFree(tried)) return tried;
      }
    }
    return std::nullopt;
  }

  [[nodiscard]] std::optional<TablePoint> spotNear(TablePoint place, double reach_m) const {
    for (const TablePoint spot : {headSpot(table_), centreSpot(table_), footSpot(table_)}) {
      if (length(spot - place) <= reach_m && isFree(spot)) return spot;
    }
    return std::nullopt;
  }
  /// Touching the nearest ball within reach, on the side that was pointed at.
  [[nodiscard]] std::optional<TablePoint> ballNear(TablePoint place, double reach_m) const {
    std::optional<TablePoint> best;
    double least_m = reach_m;
    for (const BallAt& other : others_) {
      const TableVector from = place - other.position;
      const double gap_m = std::abs(length(from) - 2.0 * radius_m_);
      if (gap_m > least_m || length(from) == 0.0) continue;
      const TablePoint touching = other.position + 2.0 * radius_m_ * unit(from);
      if (!isOn(touching) || !isFree(touching)) continue;
      best = touching;
      least_m = gap_m;
    }
    return best;
  }
  [[nodiscard]] std::optional<TablePoint> railNear(TablePoint place, double reach_m) const {
    const double x = table_.length_m / 2.0 - radius_m_;
    const double y = table_.width_m / 2.0 - radius_m_;
    const bool nearX = x - std::abs(place.x) <= reach_m;
    const bool nearY = y - std::abs(place.y) <= reach_m;
    if (!nearX && !nearY) return std::nullopt;
    return TablePoint{nearX ? std::copysign(x, place.x) : place.x, nearY ? std::copysign(y, place.y) : place.y};
  }

 private:
  const Table& table_;
  double radius_m_;
  const Position& others_;
};

}  // namespace

std::optional<Snapped> snapped(const Table& table, double radius_m, const Position& others, TablePoint wanted,
                               double reach_m) {
  const Placing placing(table, radius_m, others);
  const TablePoint inside = placing.inside(wanted);
  if (reach_m > 0.0) {
    if (const auto spot = placing.spotNear(inside, reach_m)) return Snapped{*spot, SnapKind::Spot};
    if (const auto touching = placing.ballNear(inside, reach_m)) return Snapped{*touching, SnapKind::Ball};
    const auto rail = placing.railNear(inside, reach_m);
    if (rail && placing.isFree(*rail)) return Snapped{*rail, SnapKind::Cushion};
  }
  const auto free = placing.freeNear(inside);
  if (!free) return std::nullopt;
  return Snapped{*free, SnapKind::None};
}

}  // namespace ferrule
