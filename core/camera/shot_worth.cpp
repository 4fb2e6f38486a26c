// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/shot_worth.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/base/contract.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

/// Where a strike sends the object ball, and what was wanted. Nothing when it misses the ball.
struct Sent {
  double cut_rad = 0.0;
  double lineError_rad = 0.0;
};

/// aim_rad: the cue ball's way.
std::optional<Sent> sent(TablePoint cueBall, TablePoint objectBall, double aim_rad, TablePoint target,
                         double radius_m) {
  const TableVector aim{std::cos(aim_rad), std::sin(aim_rad)};
  const TableVector toBall = objectBall - cueBall;
  const double beside_m = cross(aim, toBall);
  const double along_m = dot(aim, toBall);
  const double apart_m = 2.0 * radius_m;
  if (!(along_m > 0.0) || !(std::abs(beside_m) < apart_m)) return std::nullopt;
  const TablePoint contact = cueBall + (along_m - std::sqrt(apart_m * apart_m - beside_m * beside_m)) * aim;
  const double way_rad = direction(objectBall - contact);
  return Sent{wrapAngle(way_rad - aim_rad), wrapAngle(way_rad - direction(target - objectBall))};
}

/// effects at both balls, the same causes in the same order.
std::optional<ShotWorth> worthOf(const std::vector<ErrorEffect>& atCueBall,
                                 const std::vector<ErrorEffect>& atObjectBall, double radius_m, TablePoint cueBall,
                                 TablePoint objectBall, const Pocket& pocket) {
  const TableVector toPocket = unit(pocket.mouth - objectBall);
  const TablePoint ghost = objectBall - 2.0 * radius_m * toPocket;
  if (!(dot(ghost - cueBall, toPocket) > 0.0)) return std::nullopt;
  const double aim_rad = direction(ghost - cueBall);
  const auto meant = sent(cueBall, objectBall, aim_rad, pocket.mouth, radius_m);
  if (!meant) return std::nullopt;

  ShotWorth worth;
  worth.cut_rad = std::abs(meant->cut_rad);
  double cutVariance = 0.0;
  double lineVariance = 0.0;
  std::array<double, 6> byComponent{};
  const auto take = [&](ErrorComponent component, TableVector cueShift, TableVector objectShift) {
    // Differences to both sides, so that a straight shot's sensitivity is right too.
    const auto more = sent(cueBall + cueShift, objectBall + objectShift, aim_rad, pocket.mouth, radius_m);
    const auto less = sent(cueBall - cueShift, objectBall - objectShift, aim_rad, pocket.mouth, radius_m);
    if (!more || !less) return false;
    const double cut = 0.5 * (more->cut_rad - less->cut_rad);
    const double line = 0.5 * (more->lineError_rad - less->lineError_rad);
    cutVariance += cut * cut;
    lineVariance += line * line;
    byComponent.at(static_cast<std::size_t>(component)) += line * line;
    return true;
  };
  for (std::size_t i = 0; i < atCueBall.size(); ++i) {
    const ErrorEffect& atCue = atCueBall[i];
    const ErrorEffect& atObject = atObjectBall[i];
    const bool hits = atCue.shared
                          ? take(atCue.component, atCue.shift, atObject.shift)
                          : take(atCue.component, atCue.shift, {}) && take(atCue.component, {}, atObject.shift);
    if (!hits) return std::nullopt;
  }
  worth.cutU_rad = std::sqrt(cutVariance);
  worth.lineU_rad = std::sqrt(lineVariance);
  const double distance_m = distance(pocket.mouth, objectBall);
  worth.atPocketU_m = worth.lineU_rad * distance_m;
  // Seen from the ball the mouth is as wide as its line is square to the way.
  const double open_m = pocket.mouth_m * std::abs(dot(toPocket, pocket.inward));
  worth.room_m = std::max(0.0, 0.5 * open_m - radius_m);
  worth.chance = worth.atPocketU_m > 0.0 ? std::erf(worth.room_m / (std::numbers::sqrt2 * worth.atPocketU_m)) : 1.0;
  for (std::size_t i = 0; i < byComponent.size(); ++i) {
    if (byComponent[i] > 0.0) {
      worth.shares.emplace_back(static_cast<ErrorComponent>(i), byComponent[i] / lineVariance);
    }
  }
  std::ranges::stable_sort(worth.shares, std::ranges::greater{}, &std::pair<ErrorComponent, double>::second);
  return worth;
}

}  // namespace

std::optional<ShotWorth> shotWorth(const ErrorMap& map, TablePoint cueBall, TablePoint objectBall,
                                   const Pocket& pocket) {
  const auto atCueBall = map.effectsAt(cueBall);
  const auto atObjectBall = map.effectsAt(objectBall);
  if (!atCueBall || !atObjectBall) return std::nullopt;
  return worthOf(*atCueBall, *atObjectBall, map.radius_m(), cueBall, objectBall, pocket);
}

std::optional<ShotWorth> shotWorthOf(double off_m, double radius_m, TablePoint cueBall, TablePoint objectBall,
                                     const Pocket& pocket) {
  const double each_m = off_m / std::numbers::sqrt2;
  const std::vector<ErrorEffect> effects{{ErrorComponent::Finder, {each_m, 0.0}, false},
                                         {ErrorComponent::Finder, {0.0, each_m}, false}};
  auto worth = worthOf(effects, effects, radius_m, cueBall, objectBall, pocket);
  if (worth) worth->shares.clear();
  return worth;
}

TablePoint cueBallForCut(TablePoint objectBall, const Pocket& pocket, double radius_m, double cut_rad,
                         double distance_m) {
  FERRULE_REQUIRE(std::abs(cut_rad) < 0.5 * std::numbers::pi);
  const TableVector toPocket = unit(pocket.mouth - objectBall);
  const TablePoint ghost = objectBall - 2.0 * radius_m * toPocket;
  const double way_rad = direction(toPocket) - cut_rad;
  return ghost - distance_m * TableVector{std::cos(way_rad), std::sin(way_rad)};
}

}  // namespace ferrule
