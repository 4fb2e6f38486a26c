// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/stroke.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <vector>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr double kSteady_s = 1.0;
constexpr int kFewestImages = 5;
/// A forward stroke takes 0.1 to 0.3 s; its second half is what counts. From memory.
constexpr double kForward_s = 0.15;
constexpr double kLeastPlace_m = 0.0003;

double headingFrom(const CuePose& pose, double near_rad) {
  return wrapAngle(pose.heading_rad - near_rad);
}

}  // namespace

double aimSpread(const AddressFit& fit, std::span<const double> weights) {
  const double near_rad = fit.pose(fit.seen().size() - 1).heading_rad;
  double n = 0.0, mean = 0.0, noise = 0.0;
  std::vector<double> aims;
  for (std::size_t i = 0; i < weights.size(); ++i) {
    if (weights[i] == 0.0) continue;
    const auto aim = [&](const CuePose& pose) { return headingFrom(pose, near_rad); };
    aims.push_back(aim(fit.pose(i)));
    const double own = fit.ownNoise(i, aim);
    mean += aims.back();
    noise += own * own;
    n += 1.0;
  }
  if (n < 2.0) return 0.0;
  mean /= n;
  double squares = 0.0;
  for (const double aim : aims)
    squares += (aim - mean) * (aim - mean);
  return std::sqrt(std::max(0.0, squares / (n - 1.0) - noise / n));
}

std::optional<Measured> steadiness(const AddressFit& fit, double strike_s) {
  std::vector<double> weights;
  int images = 0;
  double noise = 0.0;
  for (std::size_t i = 0; i < fit.seen().size(); ++i) {
    const bool late = strike_s - fit.seen()[i].time_s <= kSteady_s;
    weights.push_back(late ? 1.0 : 0.0);
    if (!late) continue;
    ++images;
    const double own = fit.ownNoise(i, [](const CuePose& pose) { return pose.heading_rad; });
    noise += own * own;
  }
  if (images < kFewestImages) return std::nullopt;
  const double spread = aimSpread(fit, weights);
  const double seen = std::sqrt(spread * spread + noise / images);
  return Measured{spread, seen / std::sqrt(2.0 * (images - 1))};
}

std::optional<Measured> tipSpeed(const AddressFit& fit, const CueModel& model, double strike_s) {
  const auto& seen = fit.seen();
  const Eigen::Vector3d forward = axesOf(fit.pose(seen.size() - 1)).forward;
  std::vector<double> times_s;
  std::vector<double> places_m;
  std::vector<double> noise_m;
  for (std::size_t i = 0; i < seen.size(); ++i) {
    if (strike_s - seen[i].time_s > kForward_s) continue;
    const auto place = [&](const CuePose& pose) { return model.tipOf(pose).dot(forward); };
    times_s.push_back(seen[i].time_s - strike_s);
    places_m.push_back(place(fit.pose(i)));
    noise_m.push_back(std::max(kLeastPlace_m, fit.ownNoise(i, place)));
  }
  if (times_s.size() < 3 || places_m.back() <= places_m[places_m.size() - 2]) return std::nullopt;
  Eigen::MatrixXd rows(times_s.size(), 3);
  Eigen::VectorXd right(times_s.size());
  for (std::size_t i = 0; i < times_s.size(); ++i) {
    const auto row = static_cast<Eigen::Index>(i);
    rows.row(row) << 1.0, times_s[i], times_s[i] * times_s[i];
    rows.row(row) /= noise_m[i];
    right[row] = places_m[i] / noise_m[i];
  }
  const Eigen::Matrix3d normal = rows.transpose() * rows;
  const Eigen::Vector3d parabola = normal.ldlt().solve(rows.transpose() * right);
  return Measured{parabola[1], std::sqrt(normal.inverse()(1, 1))};
}

}  // namespace ferrule
