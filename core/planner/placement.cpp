// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>

#include "core/geometry/units.h"
#include "core/planner/candidate.h"

namespace ferrule {

namespace {

constexpr std::array kCuts_deg{0.0, -15.0, 15.0, -30.0, 30.0, -48.0, 48.0};
constexpr std::array kWays_m{0.22, 0.45};
constexpr std::array kBehind_m{0.02, 0.2, 0.42};
constexpr std::array kAcross{-0.8, -0.4, 0.0, 0.4, 0.8};
/// A bridge hand wants this much room to a rail.
constexpr double kRoomToRail_m = 0.06;
constexpr double kRoomToBall_m = 0.004;
constexpr std::size_t kMostPlacements = 60;
/// How much less likely a further place for the same pot may count as, so that other pots are looked at too.
constexpr double kShareOfRank = 0.03;

struct Placed {
  TablePoint place;
  double chance = 0.0;
};

}  // namespace

std::vector<TablePoint> placements(const PlanningTable& table, const Situation& s, const Scatter& scatter) {
  const Bed& bed = table.simulator.bed();
  const double radius_m = table.radius_m();
  Layout layout = layoutOf(s.balls);
  layout.present = layout.present - BallMask::of(kCueBall);
  const auto stands = [&](TablePoint p) {
    if (std::abs(p.x) > bed.halfLength_m - kRoomToRail_m || std::abs(p.y) > bed.halfWidth_m - kRoomToRail_m) {
      return false;
    }
    if (s.cueBall == CueBallFreedom::BehindString && p.x >= s.headString_m) return false;
    return isOpen(layout, p, p, {}, radius_m, kRoomToBall_m);
  };
  std::vector<Placed> found;
  std::vector<TablePoint> behind;
  if (s.cueBall == CueBallFreedom::BehindString) {
    for (const double back_m : kBehind_m) {
      for (const double across : kAcross)
        behind.push_back({s.headString_m - back_m, across * bed.halfWidth_m});
    }
  }
  BallMask targets = legalFirst(s) & countingPots(s);
  for (; !targets.empty(); targets = targets - BallMask::of(targets.lowest())) {
    for (const PocketName pocket : kPocketNames) {
      const auto run = openRun(layout, targets.lowest(), pocket, table.windows, radius_m);
      if (!run) continue;
      std::vector<TablePoint> places = behind;
      for (const double cut_deg : kCuts_deg) {
        for (const double way_m : kWays_m) {
          const double back_rad = run->window.middle_rad + radiansFromDegrees(180.0 + cut_deg);
          places.push_back(run->ghost + way_m * TableVector{std::cos(back_rad), std::sin(back_rad)});
        }
      }
      std::vector<Placed> ofPot;
      for (const TablePoint place : places) {
        if (!stands(place)) continue;
        const auto line = withCueBall(*run, layout, place, radius_m);
        if (line) ofPot.push_back({place, chanceOf(*line, scatter, radius_m)});
      }
      std::ranges::stable_sort(ofPot, std::greater(), &Placed::chance);
      // Every pot has its turn before any has many.
      for (std::size_t rank = 0; rank < ofPot.size(); ++rank) {
        ofPot[rank].chance -= kShareOfRank * static_cast<double>(rank);
        found.push_back(ofPot[rank]);
      }
    }
  }
  std::ranges::stable_sort(found, std::greater(), &Placed::chance);
  std::vector<TablePoint> places;
  for (const Placed& placed : found) {
    if (places.size() == kMostPlacements) break;
    if (std::ranges::none_of(places, [&](TablePoint p) { return distance(p, placed.place) < 0.01; }))
      places.push_back(placed.place);
  }
  // With nothing to pot somewhere to play safe from.
  if (places.empty()) {
    if (behind.empty()) behind = {{s.headString_m, 0.0}, {0.0, 0.0}, {-s.headString_m, 0.0}};
    std::ranges::copy_if(behind, std::back_inserter(places), stands);
  }
  return places;
}

}  // namespace ferrule
