// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/rest_watch.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

/// Points that a still ball needs in the window, and the share of the window that they must span.
constexpr std::size_t kFewestPoints = 4;
constexpr double kLeastSpan = 0.6;
/// A ball slower than this stops within 0.16 s and 0.7 mm at the least rolling friction.
constexpr double kStillSpeed_mps = 0.008;
/// A still ball stays this near to its place: in standard uncertainties, and at least, m.
constexpr double kStayUncertainties = 4.5;
constexpr double kStay_m = 0.0020;
/// A place is averaged over at most this many points, so that it follows a slow drift of the camera.
constexpr double kMostPoints = 120.0;
/// A ball unseen for this long may have been taken away.
constexpr double kTakenAfter_s = 0.6;
/// A departure keeps this much, s: enough to judge it.
constexpr double kDepartureKept_s = 0.6;

}  // namespace

void RestWatch::add(double time_s, const BallSample* sample) {
  now_s_ = time_s;
  if (sample != nullptr && sample->inHand) {
    taken_ = true;
    still_ = false;
    window_.clear();
    departure_.clear();
    return;
  }
  if (sample == nullptr && latest_ && time_s - latest_->time_s > kTakenAfter_s) taken_ = true;
  if (sample == nullptr || !isMeasured(*sample)) return;
  measure({time_s, sample->position, std::hypot(sample->standardUncertainty_m, kBestUncertainty_m)});
}

void RestWatch::measure(const PathPoint& point) {
  latest_ = point;
  window_.push_back(point);
  while (window_.front().time_s < point.time_s - kStillWindow_s)
    window_.pop_front();

  if (place_ && !taken_) {
    const double stay_m = std::max(kStay_m, kStayUncertainties * point.standardUncertainty_m);
    if (distance(point.position, place_->position) <= stay_m) {
      const bool returned = departure_.empty() || departure_.size() < 2 || windowIsStill();
      lastAtPlace_s_ = point.time_s;
      if (returned) {
        departure_.clear();
        still_ = true;
        if (point.time_s - placedSince_s_ < kSettling_s && windowIsStill()) {
          settle();
          return;
        }
        const double weight = 1.0 / (point.standardUncertainty_m * point.standardUncertainty_m);
        weight_ = std::min(weight_ + weight, kMostPoints * weight);
        place_->position = place_->position + (weight / weight_) * (point.position - place_->position);
        place_->standardUncertainty_m = std::max(std::sqrt(1.0 / weight_), kBestUncertainty_m / 2.0);
        return;
      }
    }
  }
  departure_.push_back(point);
  if (departure_.size() >= 2) still_ = false;
  if (windowIsStill()) {
    settle();
    placedSince_s_ = window_.front().time_s;
    lastAtPlace_s_ = point.time_s;
    departure_.clear();
    still_ = true;
    putDown_ = taken_;
    taken_ = false;
    return;
  }
  const double oldest_s = departure_.front().time_s;
  if (point.time_s - oldest_s > kDepartureKept_s) departure_.pop_back();
}

void RestWatch::settle() {
  const std::vector<PathPoint> points(window_.begin(), window_.end());
  place_ = restingPlace(points);
  weight_ = 1.0 / (place_->standardUncertainty_m * place_->standardUncertainty_m);
}

bool RestWatch::windowIsStill() const {
  if (window_.size() < kFewestPoints) return false;
  const double span_s = window_.back().time_s - window_.front().time_s;
  if (span_s < kLeastSpan * kStillWindow_s) return false;
  double weights = 0.0;
  double time = 0.0;
  TableVector mean;
  const TablePoint reference = window_.front().position;
  for (const PathPoint& point : window_) {
    const double weight = 1.0 / (point.standardUncertainty_m * point.standardUncertainty_m);
    weights += weight;
    time += weight * point.time_s;
    mean = mean + weight * (point.position - reference);
  }
  time /= weights;
  mean = mean / weights;
  double times = 0.0;
  TableVector slope;
  for (const PathPoint& point : window_) {
    const double weight = 1.0 / (point.standardUncertainty_m * point.standardUncertainty_m);
    const TableVector off = (point.position - reference) - mean;
    if (length(off) > std::max(kStay_m, kStayUncertainties * point.standardUncertainty_m)) return false;
    times += weight * (point.time_s - time) * (point.time_s - time);
    slope = slope + weight * (point.time_s - time) * off;
  }
  slope = slope / times;
  return length(slope) < kStillSpeed_mps + 2.0 / std::sqrt(times);
}

bool RestWatch::settled(double patience_s) const {
  return still_ || !latest_ || now_s_ - latest_->time_s > patience_s;
}

}  // namespace ferrule
