// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>

#include "core/geometry/units.h"
#include "core/planner/candidate.h"
#include "core/table/ghost_ball.h"

namespace ferrule {

namespace {

constexpr std::size_t kMostBanks = 5;
constexpr double kLeastChance = 0.02;
constexpr double kMostLeg_m = 3.2;
constexpr double kTypicalSpeed_mps = 1.5;
/// What a cushion adds to a ball's scatter of direction, and what it costs in speed. Common practice, no source.
constexpr double kCushionSpread_rad = 0.015;
constexpr double kCushionLoss = 1.35;

/// The line on which a ball's centre meets a rail: x or y at this value.
struct Rail {
  bool across = false;  ///< head or foot: x is fixed
  double at_m = 0.0;
};

TablePoint mirrored(TablePoint p, const Rail& rail) {
  return rail.across ? TablePoint{2.0 * rail.at_m - p.x, p.y} : TablePoint{p.x, 2.0 * rail.at_m - p.y};
}

/// Where the straight way from a to b meets the rail, if it does in between.
std::optional<TablePoint> meeting(TablePoint a, TablePoint b, const Rail& rail) {
  const double from = rail.across ? a.x : a.y;
  const double to = rail.across ? b.x : b.y;
  if (std::abs(to - from) < 1e-9) return std::nullopt;
  const double share = (rail.at_m - from) / (to - from);
  if (share <= 0.0 || share >= 1.0) return std::nullopt;
  return a + share * (b - a);
}

/// Whether a ball may meet the rail here: not in a pocket's mouth.
bool onNose(const Bed& bed, TablePoint p) {
  return std::ranges::all_of(bed.wells, [&](const PocketWell& well) {
    const double mouth_m = distance(well.jaws[0].point, well.jaws[1].point);
    const TablePoint middle{0.5 * (well.jaws[0].point.x + well.jaws[1].point.x),
                            0.5 * (well.jaws[0].point.y + well.jaws[1].point.y)};
    return distance(p, middle) > 0.5 * mouth_m + bed.radius_m;
  });
}

}  // namespace

std::vector<Candidate> bankCandidates(const PlanningTable& table, const Situation& s, const Scatter& scatter) {
  const Bed& bed = table.simulator.bed();
  const double radius_m = table.radius_m();
  const Layout layout = layoutOf(s.balls);
  const TablePoint cueBall = layout.at(kCueBall);
  const double x = bed.halfLength_m - bed.reach_m;
  const double y = bed.halfWidth_m - bed.reach_m;
  const std::array<Rail, 4> rails{Rail{true, x}, Rail{true, -x}, Rail{false, y}, Rail{false, -y}};
  std::vector<std::vector<Rail>> ways;
  for (const Rail& one : rails) {
    ways.push_back({one});
    for (const Rail& two : rails) {
      if (one.across != two.across || one.at_m != two.at_m) ways.push_back({one, two});
    }
  }
  std::vector<Candidate> found;
  BallMask targets = legalFirst(s) & countingPots(s);
  for (; !targets.empty(); targets = targets - BallMask::of(targets.lowest())) {
    const BallName ball = targets.lowest();
    const TablePoint from = layout.at(ball);
    const BallMask moving = BallMask::of(ball) | BallMask::of(kCueBall);
    for (const PocketName pocket : kPocketNames) {
      const TablePoint mouth = mouthOf(bed, pocket);
      for (const std::vector<Rail>& way : ways) {
        // The mirror image of the pocket, last cushion first, is what the ball is played to.
        TablePoint image = mouth;
        for (auto rail = way.rbegin(); rail != way.rend(); ++rail)
          image = mirrored(image, *rail);
        TablePoint at = from;
        TablePoint goal = image;
        double run_m = 0.0;
        bool open = true;
        for (const Rail& rail : way) {
          const auto point = meeting(at, goal, rail);
          open = point && onNose(bed, *point) && isOpen(layout, at, *point, moving, radius_m);
          if (!open) break;
          run_m += distance(at, *point);
          at = *point;
          goal = mirrored(goal, rail);
        }
        if (!open || !isOpen(layout, at, mouth, moving, radius_m)) continue;
        run_m += distance(at, mouth);
        const PocketWindow window = table.windows.at(pocket, at, kTypicalSpeed_mps);
        if (run_m > kMostLeg_m || window.halfWidth_rad <= 0.0) continue;
        PotLine line;
        line.ball = ball;
        line.pocket = pocket;
        line.run_m = run_m;
        line.window.middle_rad = direction(image - from);
        line.ghost = ghostBall(from, image - from, radius_m);
        line.window.halfWidth_rad = window.halfWidth_rad * distance(at, mouth) / run_m;
        const auto whole = withCueBall(line, layout, cueBall, radius_m);
        if (!whole) continue;
        Candidate candidate;
        const int cushions = static_cast<int>(way.size());
        candidate.plan = {PlanKind::Bank, ball, pocket, ball, cushions, {}, std::nullopt};
        candidate.situation = s;
        candidate.plan.strike.aim_rad = direction(whole->ghost - cueBall);
        const Stance stance = stanceOf(bed, s.balls, cueBall, candidate.plan.strike.aim_rad);
        candidate.plan.strike.elevation_rad = stance.leastElevation_rad;
        const Scatter wide = scatterFor(scatter, stance, stance.leastElevation_rad, whole->way_m);
        PotLine rough = *whole;
        const double spread_rad = kCushionSpread_rad * cushions;
        rough.window.halfWidth_rad *= rough.window.halfWidth_rad / std::hypot(rough.window.halfWidth_rad, spread_rad);
        candidate.chance = chanceOf(rough, wide, radius_m);
        if (candidate.chance < kLeastChance) continue;
        candidate.slope = -whole->way_m / (2.0 * radius_m * std::max(0.15, std::cos(whole->cut_rad)));
        if (cushions % 2 == 1) candidate.slope = -candidate.slope;
        candidate.slope *= run_m / std::max(0.2, distance(at, mouth));
        candidate.way_m = whole->way_m;
        candidate.leastSpeed_mps =
            std::pow(kCushionLoss, cushions) * leastSpeed_mps(table, whole->way_m, whole->cut_rad, run_m);
        candidate.way.balls = {*ballIn(s.balls, kCueBall), *ballIn(s.balls, ball)};
        candidate.way.target = ball;
        candidate.way.kind = PlanKind::Bank;
        candidate.way.first = ball;
        candidate.way.cushions = cushions;
        const PocketWindows& windows = table.windows;
        candidate.way.wanted_rad = [&windows, pocket](TablePoint place) {
          return windows.at(pocket, place, kTypicalSpeed_mps).middle_rad;
        };
        found.push_back(std::move(candidate));
      }
    }
  }
  std::ranges::stable_sort(found, std::greater(), &Candidate::chance);
  if (found.size() > kMostBanks) found.resize(kMostBanks);
  return found;
}

}  // namespace ferrule
