// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/pocket_windows.h"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

/// A pot that a player means may touch the rail beside the pocket, not a cushion farther away.
constexpr double kBesidePocket_m = 0.25;
constexpr int kLooks = 9;
constexpr int kBisections = 7;
/// A window wider than this to one side only comes from a ball that hangs in the jaws.
constexpr double kMostSpan_rad = 1.2;
/// Nearer to the mouth's middle than this a ball falls in whatever it does.
constexpr double kLeastAway_m = 0.03;

const PocketWell& wellOf(const Bed& bed, PocketName pocket) {
  return bed.wells.at(static_cast<std::size_t>(pocket));
}

bool drops(const Simulator& simulator, PocketName pocket, TablePoint from, double direction_rad, double speed_mps) {
  const PhysicsParameters& p = simulator.parameters();
  const Vector3 velocity{speed_mps * std::cos(direction_rad), speed_mps * std::sin(direction_rad), 0.0};
  const BallState ball{
      BallName(1), {from.x, from.y, p.ballRadius_m}, velocity, rollingSpin(velocity, 0.0, p.ballRadius_m)};
  SimulationOptions options;
  options.keepPaths = false;
  const auto played = simulator.run({&ball, 1}, options);
  if (!played || played->after.front().pocket != pocket) return false;
  const TablePoint mouth = mouthOf(simulator.bed(), pocket);
  return std::ranges::all_of(played->events, [&](const ShotEvent& event) {
    return event.kind != EventKind::Cushion || distance(event.position, mouth) < kBesidePocket_m;
  });
}

}  // namespace

TablePoint mouthOf(const Bed& bed, PocketName pocket) {
  const PocketWell& well = wellOf(bed, pocket);
  return {0.5 * (well.jaws[0].point.x + well.jaws[1].point.x), 0.5 * (well.jaws[0].point.y + well.jaws[1].point.y)};
}

std::optional<PocketWindow> pocketWindow(const Simulator& simulator, PocketName pocket, TablePoint from,
                                         double speed_mps) {
  const PocketWell& well = wellOf(simulator.bed(), pocket);
  const TablePoint mouth = mouthOf(simulator.bed(), pocket);
  const double away_m = distance(from, mouth);
  // From behind the mouth's line there is nothing to aim at.
  if (dot(mouth - from, well.inward) < 0.0 && away_m > simulator.bed().radius_m) return std::nullopt;
  const double line_rad = direction(mouth - from);
  const double halfMouth_m = 0.5 * distance(well.jaws[0].point, well.jaws[1].point);
  const double span_rad = std::min(kMostSpan_rad, std::atan2(halfMouth_m, away_m));
  const auto good = [&](double offset_rad) { return drops(simulator, pocket, from, line_rad + offset_rad, speed_mps); };
  // Looks from the middle outward until one drops.
  std::optional<double> seed_rad;
  for (int look = 0; look < kLooks && !seed_rad; ++look) {
    const double offset_rad = span_rad * ((look + 1) / 2) * (look % 2 == 0 ? 1.0 : -1.0) / (0.5 * kLooks);
    if (good(offset_rad)) seed_rad = offset_rad;
  }
  if (!seed_rad) return std::nullopt;
  const auto edge = [&](double outside_rad) {
    double inside_rad = *seed_rad;
    for (int step = 0; step < kBisections; ++step) {
      const double middle_rad = 0.5 * (inside_rad + outside_rad);
      (good(middle_rad) ? inside_rad : outside_rad) = middle_rad;
    }
    return 0.5 * (inside_rad + outside_rad);
  };
  const double least_rad = edge(*seed_rad - 1.5 * span_rad);
  const double most_rad = edge(*seed_rad + 1.5 * span_rad);
  return PocketWindow{wrapAngle(line_rad + 0.5 * (least_rad + most_rad)), 0.5 * (most_rad - least_rad)};
}

PocketWindows::PocketWindows(const Simulator& simulator)
    : halfLength_m_(simulator.bed().halfLength_m - simulator.bed().reach_m),
      halfWidth_m_(simulator.bed().halfWidth_m - simulator.bed().reach_m),
      nodes_(2 * kSpeeds_mps.size() * kAlong * kAcross) {
  for (const PocketName name : kPocketNames)
    mouths_.at(static_cast<std::size_t>(name)) = mouthOf(simulator.bed(), name);
  tbb::parallel_for(std::size_t{0}, nodes_.size(), [&](std::size_t index) {
    const std::size_t j = index % kAcross;
    const std::size_t i = index / kAcross % kAlong;
    const std::size_t speed = index / (kAcross * kAlong) % kSpeeds_mps.size();
    const PocketName pocket =
        index / (kAcross * kAlong * kSpeeds_mps.size()) == 0 ? PocketName::FootLeft : PocketName::SideLeft;
    const TablePoint from = placeOf(i, j);
    const auto window = pocketWindow(simulator, pocket, from, kSpeeds_mps.at(speed));
    if (!window) return;
    const double line_rad = direction(mouths_.at(static_cast<std::size_t>(pocket)) - from);
    nodes_[index] = {wrapAngle(window->middle_rad - line_rad), window->halfWidth_rad * awayFrom(pocket, from)};
  });
}

double PocketWindows::awayFrom(PocketName pocket, TablePoint from) const {
  return std::max(distance(mouths_.at(static_cast<std::size_t>(pocket)), from), kLeastAway_m);
}

std::size_t PocketWindows::indexOf(std::size_t kind, std::size_t speed, std::size_t i, std::size_t j) {
  return ((kind * kSpeeds_mps.size() + speed) * kAlong + i) * kAcross + j;
}

TablePoint PocketWindows::placeOf(std::size_t i, std::size_t j) const {
  // Just off the cushions, where a ball can roll along them.
  constexpr double kOff_m = 1e-4;
  const double along = 2.0 * static_cast<double>(i) / (kAlong - 1) - 1.0;
  const double across = 2.0 * static_cast<double>(j) / (kAcross - 1) - 1.0;
  return {along * (halfLength_m_ - kOff_m), across * (halfWidth_m_ - kOff_m)};
}

PocketWindow PocketWindows::at(PocketName pocket, TablePoint from, double speed_mps) const {
  const bool side = isSidePocket(pocket);
  const bool head = pocket == PocketName::HeadLeft || pocket == PocketName::HeadRight;
  const TablePoint mouth = mouths_.at(static_cast<std::size_t>(pocket));
  const double mirrorX = head ? -1.0 : 1.0;
  const double mirrorY = mouth.y < 0.0 ? -1.0 : 1.0;
  const double u = std::clamp(0.5 * (mirrorX * from.x / halfLength_m_ + 1.0), 0.0, 1.0) * (kAlong - 1);
  const double v = std::clamp(0.5 * (mirrorY * from.y / halfWidth_m_ + 1.0), 0.0, 1.0) * (kAcross - 1);
  const auto i = std::min(static_cast<std::size_t>(u), kAlong - 2);
  const auto j = std::min(static_cast<std::size_t>(v), kAcross - 2);
  const double fu = u - static_cast<double>(i);
  const double fv = v - static_cast<double>(j);
  const double fast = std::clamp(
      std::log(std::max(speed_mps, 0.1) / kSpeeds_mps[0]) / std::log(kSpeeds_mps[1] / kSpeeds_mps[0]), 0.0, 1.0);
  // A closed node has no middle: only the open ones say where to aim.
  double offset_rad = 0.0;
  double room_m = 0.0;
  double open = 0.0;
  for (std::size_t corner = 0; corner < 8; ++corner) {
    const double share = ((corner & 1) != 0 ? fu : 1.0 - fu) * ((corner & 2) != 0 ? fv : 1.0 - fv) *
                         ((corner & 4) != 0 ? fast : 1.0 - fast);
    const Node& node = nodes_[indexOf(side ? 1 : 0, corner / 4, i + (corner & 1), j + (corner >> 1 & 1))];
    if (node.room_m <= 0.0) continue;
    open += share;
    offset_rad += share * node.offset_rad;
    room_m += share * node.room_m;
  }
  PocketWindow window{direction(mouth - from), 0.0};
  if (open <= 0.0) return window;
  window.middle_rad += mirrorX * mirrorY * offset_rad / open;
  window.halfWidth_rad = room_m / awayFrom(pocket, from);
  return window;
}

}  // namespace ferrule
