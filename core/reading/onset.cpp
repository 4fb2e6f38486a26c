// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/onset.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace ferrule {

namespace {

/// A speed is measured over at least this time: over single images the noise would swamp it at 240 images a second.
constexpr double kSpeedBase_s = 0.03;
/// The departure is watched for this long at least: a hand that starts at 2 m/s^2 has 0.1 m/s after the shorter time,
/// so that a slow ball needs the longer one to tell. Judged at the latest after the third figure.
constexpr double kWatch_s = 0.06;
constexpr double kSlowWatch_s = 0.2;
constexpr double kSlow_mps = 0.5;
constexpr double kLongest_s = 0.3;
/// Less than this is a touch, not a shot (the softest shot that reaches anything rolls at 0.1 m/s).
constexpr double kLeastSpeed_mps = 0.05;
constexpr double kLeastTravel_m = 0.008;
/// First speed over greatest speed: 1 / 1.07 for a full follow stroke, less what the start of the path may hide.
constexpr double kFullSpeedShare = 0.7;

struct Speed {
  double value_mps = 0.0;
  double uncertainty_mps = 0.0;
};

}  // namespace

OnsetJudgement judgeOnset(const RestingPlace& place, double lastAtPlace_s, std::span<const PathPoint> departure,
                          double imageInterval_s) {
  OnsetJudgement judgement;
  if (departure.size() < 2) return judgement;
  const double watched_s = departure.back().time_s - departure.front().time_s;
  double travel_m = 0.0;
  for (const PathPoint& point : departure)
    travel_m = std::max(travel_m, distance(point.position, place.position));

  std::vector<Speed> speeds;
  std::size_t to = 0;
  for (std::size_t from = 0; from < departure.size(); ++from) {
    to = std::max(to, from + 1);
    while (to < departure.size() && departure[to].time_s - departure[from].time_s < kSpeedBase_s)
      ++to;
    if (to >= departure.size()) break;
    const double base_s = departure[to].time_s - departure[from].time_s;
    speeds.push_back({distance(departure[to].position, departure[from].position) / base_s,
                      std::hypot(departure[to].standardUncertainty_m, departure[from].standardUncertainty_m) / base_s});
  }
  if (speeds.empty()) return judgement;
  const Speed first = speeds.front();
  const Speed greatest = *std::ranges::max_element(speeds, {}, &Speed::value_mps);
  judgement.speed_mps = first.value_mps;
  judgement.start_s = departure.front().time_s;
  if (first.value_mps > 0.0) {
    judgement.start_s -= distance(departure.front().position, place.position) / first.value_mps;
  }
  judgement.start_s = std::max(judgement.start_s, lastAtPlace_s - imageInterval_s);

  const bool late = watched_s >= kLongest_s;
  const double watch_s = first.value_mps < kSlow_mps ? kSlowWatch_s : kWatch_s;
  if (watched_s < std::max(watch_s, 2.0 * imageInterval_s) || departure.size() < 3) return judgement;
  if (travel_m < kLeastTravel_m) {
    judgement.onset = late ? Onset::Pushed : Onset::Waiting;
    return judgement;
  }
  const double unsure_mps = std::hypot(first.uncertainty_mps, greatest.uncertainty_mps);
  const double allowed_mps = kFullSpeedShare * greatest.value_mps - 2.0 * unsure_mps;
  const bool atFullSpeed = first.value_mps >= kLeastSpeed_mps && first.value_mps >= allowed_mps;
  // The film's noise alone may make a gentle push look like this: time tells.
  if (atFullSpeed && !late && first.value_mps < kFullSpeedShare * greatest.value_mps + unsure_mps) return judgement;
  judgement.onset = atFullSpeed ? Onset::Struck : Onset::Pushed;
  return judgement;
}

}  // namespace ferrule
