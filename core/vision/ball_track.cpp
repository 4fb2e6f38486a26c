// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_track.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <opencv2/core.hpp>

namespace ferrule {

namespace {

constexpr std::size_t kMostFixes = 16;
/// Between a rolling ball's 0.1 and a sliding ball's 2 m/s2; a prediction over a few images needs no better.
constexpr double kSlowing_mps2 = 0.15;
constexpr double kStandstill_s = 0.13;
constexpr double kStandstill_mps = 0.004;
constexpr double kStandstillSpread_m = 0.0008;

}  // namespace

void RestAverage::add(TablePoint point) {
  ++count_;
  mean_ = mean_ + (point - mean_) / static_cast<double>(count_);
}

TablePoint BallTrack::predicted(double time_s) const {
  const double dt = time_s - lastSeen_s;
  const double speed_mps = length(velocity_mps);
  if (dt <= 0.0 || speed_mps == 0.0) return position;
  const double rolling_s = std::min(dt, speed_mps / kSlowing_mps2);
  const double way_m = speed_mps * rolling_s - 0.5 * kSlowing_mps2 * rolling_s * rolling_s;
  return position + (way_m / speed_mps) * velocity_mps;
}

double BallTrack::uncertainty_m(double time_s, bool seen) const {
  constexpr double kSystematic_px = 0.3;  // shading, shadow and compression: what repeats from image to image
  double own_m = standardUncertainty_m;
  if (state == TrackState::Resting && rest.count() > 1) own_m /= std::sqrt(std::min(rest.count(), 9));
  if (!seen && state != TrackState::Resting)
    own_m = std::hypot(own_m, 0.002 + 0.3 * (time_s - lastSeen_s) * length(velocity_mps));
  return std::hypot(own_m, kSystematic_px * std::sqrt(std::abs(outline.tableFromImage.determinant())));
}

void BallTrack::see(const BallCandidate& candidate, double time_s) {
  const TablePoint place = candidate.position;
  const double dt = time_s - lastSeen_s;
  if (!fixes.empty() && dt > 0.0) {
    const TablePoint expected = predicted(time_s);
    const TableVector innovation = place - expected;
    const TableVector measured_mps = (place - position) / dt;
    // On its expected way the speed is smoothed; after a contact it starts anew.
    const double expected_m = 0.003 + 0.05 * length(velocity_mps) * dt;
    if (length(innovation) < expected_m && fixes.size() > 2) {
      velocity_mps = 0.5 * (velocity_mps + measured_mps);
    } else {
      velocity_mps = measured_mps;
    }
  }
  position = place;
  outline = candidate.outline;
  standardUncertainty_m = candidate.standardUncertainty_m;
  constexpr double kStill_m = 0.003;
  if (hits == 0 || distance(place, stillPlace) > kStill_m) {
    stillPlace = place;
    stillSince_s = time_s;
  }
  if (hits == 0) firstSeen_s = time_s;
  lastSeen_s = time_s;
  missed = 0;
  ++hits;
  beliefSum += candidate.belief();
  // Rises to what it is when clear at once, falls slowly while something passes.
  quality = std::max(candidate.quality(), 0.98 * quality + 0.02 * candidate.quality());
  if (candidate.alone) ++aloneHits;
  fixes.push_back({time_s, place});
  if (fixes.size() > kMostFixes) fixes.pop_front();
  constexpr double kNewLook_m = 0.003;
  constexpr int kLooksAtOnce = 12;
  // A streak mixes the ball's colours with each other and with the cloth.
  constexpr double kNoStreak_mps = 0.2;
  const bool slow = fixes.size() > 1 && length(velocity_mps) < kNoStreak_mps;
  const bool sharp = slow || length(candidate.blur) < 0.3 * candidate.outline.radius_px();
  if (sharp && candidate.belief() > 0.4 && (looks < kLooksAtOnce || distance(position, lastLook) > kNewLook_m)) {
    for (std::size_t i = 0; i < names.size(); ++i)
      names[i] += candidate.names[i];
    ++looks;
    lastLook = position;
  }
}

std::optional<double> BallTrack::patchDifference(const cv::Mat& picture, const Eigen::Array3f& light) const {
  constexpr float kSameLight = 0.002F;
  if (patch.empty()) return std::nullopt;
  const Eigen::Array3f change = light / patchLight;
  cv::Mat before = patch;
  if ((change - 1.0F).abs().maxCoeff() > kSameLight)
    cv::multiply(patch, cv::Scalar(change[0], change[1], change[2]), before);
  return cv::norm(picture(patchArea), before, cv::NORM_L1) / (3.0 * patchArea.area());
}

void BallTrack::keepPatch(const cv::Mat& picture, const Eigen::Array3f& light) {
  patchLight = light;
  const double reach = 1.25 * outline.radius_px();
  const int side = static_cast<int>(2.0 * reach) + 1;
  const cv::Rect area(static_cast<int>(outline.centre.x - reach), static_cast<int>(outline.centre.y - reach), side,
                      side);
  patchArea = area & cv::Rect(0, 0, picture.cols, picture.rows);
  patch = patchArea.empty() ? cv::Mat() : picture(patchArea).clone();
}

std::optional<TablePoint> BallTrack::stoodStill() const {
  if (fixes.size() < 5) return std::nullopt;
  std::size_t first = fixes.size() - 1;
  while (first > 0 && fixes.back().time_s - fixes[first].time_s < kStandstill_s)
    --first;
  const std::size_t n = fixes.size() - first;
  if (fixes.back().time_s - fixes[first].time_s < kStandstill_s || n < 5) return std::nullopt;
  double meanTime = 0.0;
  TablePoint mean;
  for (std::size_t i = first; i < fixes.size(); ++i) {
    meanTime += fixes[i].time_s / static_cast<double>(n);
    mean.x += fixes[i].position.x / static_cast<double>(n);
    mean.y += fixes[i].position.y / static_cast<double>(n);
  }
  TableVector slope;
  double timeSquares = 0.0;
  double spread = 0.0;
  for (std::size_t i = first; i < fixes.size(); ++i) {
    const double t = fixes[i].time_s - meanTime;
    const TableVector away = fixes[i].position - mean;
    slope = slope + t * away;
    timeSquares += t * t;
    spread = std::max(spread, length(away));
  }
  if (length(slope) / timeSquares > kStandstill_mps || spread > kStandstillSpread_m) return std::nullopt;
  return mean;
}

}  // namespace ferrule
