// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/set_up_check.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/assignment.h"

namespace ferrule {

namespace {

/// What a place costs that stays empty: more than any ball that belongs to it.
constexpr double kEmpty_m2 = 1.5 * kBelongs_m * kBelongs_m;
/// Stations whose largest errors differ by less are the same set-up.
constexpr double kSame_m = 1e-6;

/// Moves the balls that belong to places there; the others stay.
void putAtPlaces(std::vector<PlacedBall>& places, std::vector<BallAt>& balls) {
  if (places.empty()) return;
  // As many further columns as places: every place may stay empty.
  Eigen::MatrixXd costs = Eigen::MatrixXd::Constant(static_cast<Eigen::Index>(places.size()),
                                                    static_cast<Eigen::Index>(balls.size() + places.size()), kEmpty_m2);
  for (std::size_t place = 0; place < places.size(); ++place) {
    for (std::size_t ball = 0; ball < balls.size(); ++ball) {
      const double away_m = distance(balls[ball].position, places[place].wanted.position);
      costs(static_cast<Eigen::Index>(place), static_cast<Eigen::Index>(ball)) =
          away_m <= kBelongs_m ? away_m * away_m : 2.0 * kEmpty_m2;
    }
  }
  const std::vector<int> columns = assignCheapest(costs);
  std::vector<bool> used(balls.size(), false);
  for (std::size_t place = 0; place < places.size(); ++place) {
    const auto column = static_cast<std::size_t>(columns[place]);
    if (column >= balls.size()) continue;
    places[place].found = balls[column];
    used[column] = true;
  }
  std::vector<BallAt> left;
  for (std::size_t ball = 0; ball < balls.size(); ++ball) {
    if (!used[ball]) left.push_back(balls[ball]);
  }
  balls = std::move(left);
}

void checkCueBall(SetUpCheck& check, const DrillStation& station, const MeasuredTable& measured,
                  const BallAt* cueBall) {
  if (!station.cueBall) {
    check.cueBallAmiss = cueBall == nullptr ||
                         (station.cueBallZone &&
                          distanceFrom_m(*station.cueBallZone, measured.table, cueBall->position) > kSetUpTolerance_m);
    return;
  }
  const BallAt wanted{kCueBall, placeOf(*station.cueBall, measured)};
  check.places.push_back({wanted, {}});
  if (cueBall == nullptr) return;
  if (distance(cueBall->position, wanted.position) <= kBelongs_m) {
    check.places.back().found = *cueBall;
  } else {
    check.extra.push_back(*cueBall);
  }
}

bool looseAreAmiss(const LooseBalls& loose, const MeasuredTable& measured, const std::vector<BallAt>& balls) {
  if (balls.size() < static_cast<std::size_t>(loose.count)) return true;
  const double apart_m = loose.apart_widths * measured.table.width_m - kSetUpTolerance_m;
  for (std::size_t i = 0; i < balls.size(); ++i) {
    const TablePoint at = balls[i].position;
    if (measured.table.length_m / 2.0 - std::abs(at.x) < apart_m) return true;
    if (measured.table.width_m / 2.0 - std::abs(at.y) < apart_m) return true;
    for (std::size_t k = 0; k < i; ++k) {
      if (distance(at, balls[k].position) < apart_m) return true;
    }
  }
  return false;
}

}  // namespace

std::optional<double> SetUpCheck::largestError_m() const {
  double largest_m = 0.0;
  for (const PlacedBall& place : places) {
    if (!place.found) return std::nullopt;
    largest_m = std::max(largest_m, length(*place.error()));
  }
  return largest_m;
}

bool SetUpCheck::isWithin(double tolerance_m) const {
  const auto largest_m = largestError_m();
  return largest_m && *largest_m <= tolerance_m && !looseAmiss && !cueBallAmiss;
}

SetUpCheck checkSetUp(const DrillStation& station, const MeasuredTable& measured, const Position& found) {
  SetUpCheck check;
  checkCueBall(check, station, measured, ballIn(found, kCueBall));
  DrillStation listed = station;
  listed.loose.reset();
  listed.cueBall.reset();
  std::vector<PlacedBall> places;
  for (const BallAt& ball : setUpOf(listed, measured))
    places.push_back({ball, {}});
  std::vector<BallAt> others;
  std::ranges::copy_if(found, std::back_inserter(others), [](const BallAt& ball) { return !ball.ball.isCueBall(); });
  putAtPlaces(places, others);
  check.places.insert(check.places.end(), places.begin(), places.end());
  if (station.loose) {
    check.looseAmiss = looseAreAmiss(*station.loose, measured, others);
  } else {
    check.extra.insert(check.extra.end(), others.begin(), others.end());
  }
  return check;
}

std::optional<std::size_t> stationSetUp(const Drill& drill, const MeasuredTable& measured, const Position& found,
                                        std::size_t wanted) {
  std::optional<std::size_t> best;
  double least_m = kBelongs_m;
  for (std::size_t station = 0; station < drill.stations.size(); ++station) {
    const SetUpCheck check = checkSetUp(drill.stations[station], measured, found);
    if (!check.isWithin(kBelongs_m)) continue;
    const double error_m = *check.largestError_m();
    const bool better = error_m < least_m - kSame_m;
    const bool sameButWanted = station == wanted && error_m <= least_m + kSame_m;
    if (best && !better && !sameButWanted) continue;
    best = station;
    least_m = error_m;
  }
  return best;
}

}  // namespace ferrule
