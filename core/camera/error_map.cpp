// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/error_map.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "core/base/word_list.h"
#include "core/camera/check_hypotheses.h"
#include "core/camera/following_pose.h"
#include "core/camera/pose_fit.h"
#include "core/camera/rig_from_lines.h"

namespace ferrule {

namespace {

constexpr WordList<6> kTexts{"pose", "lens", "tag height", "finder", "ball height", "rolling shutter"};
constexpr int kComponents = 6;

/// The 95 % point of chi-square with two degrees of freedom. Source: JCGM 102:2011, 6.5.2 (its square root is 2.45).
constexpr double kChiSquare95 = 5.991464547107979;

Eigen::Matrix2d squareOf(TableVector v) {
  Eigen::Matrix2d result;
  result << v.x * v.x, v.x * v.y, v.x * v.y, v.y * v.y;
  return result;
}

}  // namespace

std::string_view toText(ErrorComponent component) {
  return wordOf(kTexts, component);
}

double BudgetLine::u_m() const {
  return std::hypot(uX_m, uY_m);
}

double ErrorAt::u_m() const {
  return std::sqrt(covariance.trace());
}

double ErrorAt::reach95_m() const {
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d> solver(covariance);
  return std::sqrt(kChiSquare95 * std::max(0.0, solver.eigenvalues()[1]));
}

bool ErrorAt::holds95(TablePoint point) const {
  const Eigen::Vector2d off(point.x - place.x, point.y - place.y);
  return off.dot(covariance.inverse() * off) <= kChiSquare95;
}

ErrorMap::ErrorMap(const Rig& rig, const MeasuredTable& measured, const ErrorSources& sources)
    : rig_(rig), radius_m_(measured.balls.radius_m()), sources_(sources) {
  for (const Eigen::VectorXd& axis : principalAxes(rig.poseCovariance)) {
    Rig moved = rig;
    moved.pose = movedPose(rig.pose, axis);
    causes_.push_back({ErrorComponent::Pose, std::move(moved)});
  }
  const FollowingPose following(rig, measured);
  for (const Eigen::VectorXd& axis : principalAxes(rig.lensUncertainty.matrix())) {
    Rig other = rig;
    other.lens = changedLens(rig.lens, axis);
    other.pose = movedPose(rig.pose, following.step(other.lens, measured));
    causes_.push_back({ErrorComponent::Lens, std::move(other)});
  }
  if (!measured.tags.empty() && !isFromCushions(rig)) {
    MeasuredTable raised = measured;
    for (RailTag& tag : raised.tags) {
      for (TablePoint3& corner : tag.corners)
        corner.z += sources.tagHeight_m;
    }
    Rig other = rig;
    other.pose = movedPose(rig.pose, following.step(rig.lens, raised));
    causes_.push_back({ErrorComponent::TagHeight, std::move(other)});
  }
}

std::optional<std::vector<ErrorEffect>> ErrorMap::effectsAt(TablePoint place) const {
  const auto pixel = imageFromTable(rig_, {place.x, place.y, radius_m_});
  if (!pixel) return std::nullopt;
  std::vector<ErrorEffect> effects;
  const auto add = [&](ErrorComponent component, std::optional<TablePoint> moved, bool shared) {
    if (!moved) return false;
    effects.push_back({component, *moved - place, shared});
    return true;
  };
  for (const Cause& cause : causes_) {
    if (!add(cause.component, tableFromImage(cause.rig, *pixel, radius_m_), true)) return std::nullopt;
  }
  const double u_px = sources_.finder_px;
  for (const ImageVector& off : {ImageVector{u_px, 0.0}, ImageVector{0.0, u_px}}) {
    if (!add(ErrorComponent::Finder, tableFromImage(rig_, *pixel + off, radius_m_), false)) return std::nullopt;
  }
  if (!add(ErrorComponent::BallHeight, tableFromImage(rig_, *pixel, radius_m_ + sources_.ballHeight_m), false)) {
    return std::nullopt;
  }
  // Image times are those of the middle row; the readout is between none and the longest.
  const double rows = std::max(1, rig_.lens.size.height - 1);
  const double late_s = sources_.readout_s * std::abs(pixel->y / rows - 0.5) / std::sqrt(3.0);
  const double travelled_m = sources_.speed_mps * late_s / std::sqrt(2.0);  // any direction
  for (const TableVector& way : {TableVector{travelled_m, 0.0}, TableVector{0.0, travelled_m}}) {
    add(ErrorComponent::RollingShutter, place + way, false);
  }
  return effects;
}

std::optional<ErrorAt> ErrorMap::at(TablePoint place) const {
  const auto effects = effectsAt(place);
  if (!effects) return std::nullopt;
  ErrorAt result;
  result.place = place;
  for (int component = 0; component < kComponents; ++component) {
    Eigen::Matrix2d sum = Eigen::Matrix2d::Zero();
    for (const ErrorEffect& effect : *effects) {
      if (static_cast<int>(effect.component) == component) sum += squareOf(effect.shift);
    }
    result.covariance += sum;
    result.budget.push_back({static_cast<ErrorComponent>(component), std::sqrt(sum(0, 0)), std::sqrt(sum(1, 1))});
  }
  return result;
}

}  // namespace ferrule
