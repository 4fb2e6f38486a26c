// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/asked.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>

#include "core/progress/set_ups.h"

namespace ferrule {

namespace {

struct Repeats {
  int speeds = 0;
  double speed = 0.0;
  int rests = 0;
  double x_m = 0.0;
  double y_m = 0.0;
};

const double kQuantile = -2.0 * std::log(0.05);

}  // namespace

std::vector<Asked> askedOf(const PlayerHistory& history) {
  const auto setUps = setUpsOf(history);
  std::vector<Repeats> repeats;
  for (std::size_t i = 0; i < setUps.size(); ++i) {
    if (!setUps[i]) continue;
    if (*setUps[i] >= repeats.size()) repeats.resize(*setUps[i] + 1);
    Repeats& sum = repeats[*setUps[i]];
    const PlayedShot& shot = history.shots[i];
    if (shot.speed_mps) {
      ++sum.speeds;
      sum.speed += *shot.speed_mps;
    }
    if (shot.rest) {
      ++sum.rests;
      sum.x_m += shot.rest->x;
      sum.y_m += shot.rest->y;
    }
  }
  std::vector<Asked> all(history.shots.size());
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Meant& meant = history.shots[i].meant;
    Asked& asked = all[i];
    asked.speed_mps = meant.speed_mps;
    asked.rest = meant.rest;
    asked.restFromPlan = meant.rest && meant.restFromPlan;
    if (!setUps[i]) continue;
    const Repeats& sum = repeats[*setUps[i]];
    if (!asked.speed_mps && sum.speeds >= kFewestRepeats) {
      asked.speed_mps = sum.speed / sum.speeds;
      asked.speedFromRepeats = true;
    }
    if (!asked.rest && sum.rests >= kFewestRepeats) {
      asked.rest = TablePoint{sum.x_m / sum.rests, sum.y_m / sum.rests};
      asked.restFromRepeats = true;
    }
  }
  return all;
}

std::optional<SpreadEllipse> spreadEllipse(std::span<const std::array<double, 2>> points) {
  if (points.size() < 3) return std::nullopt;
  Eigen::Vector2d middle = Eigen::Vector2d::Zero();
  for (const auto& [x, y] : points)
    middle += Eigen::Vector2d(x, y);
  middle /= static_cast<double>(points.size());
  Eigen::Matrix2d covariance = Eigen::Matrix2d::Zero();
  for (const auto& [x, y] : points) {
    const Eigen::Vector2d away = Eigen::Vector2d(x, y) - middle;
    covariance += away * away.transpose();
  }
  covariance /= static_cast<double>(points.size() - 1);
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d> axes(covariance);
  const auto half = [&](int axis) { return std::sqrt(kQuantile * std::max(0.0, axes.eigenvalues()[axis])); };
  const Eigen::Vector2d along = axes.eigenvectors().col(1);
  return SpreadEllipse{middle.x(), middle.y(), half(1), half(0), std::atan2(along.y(), along.x())};
}

}  // namespace ferrule
