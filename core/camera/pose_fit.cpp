// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/pose_fit.h"

#include <Eigen/Dense>
#include <Eigen/Geometry>
#include <cmath>
#include <opencv2/calib3d.hpp>
#include <opencv2/core.hpp>

namespace ferrule {

namespace {

using Vector6 = Eigen::Matrix<double, 6, 1>;
using Matrix6 = Eigen::Matrix<double, 6, 6>;

constexpr int kMostSteps = 60;
constexpr double kStep = 1e-6;  // of the central differences, rad and m

std::optional<ImagePoint> predicted(const Lens& lens, const CameraFromTable& pose, TablePoint3 point) {
  const Eigen::Vector3d seen = pose.rotation * Eigen::Vector3d(point.x, point.y, point.z) + pose.translation_m;
  if (!(seen.z() > 0.0)) return std::nullopt;
  return imageFromRay(lens, {seen.x() / seen.z(), seen.y() / seen.z()});
}

/// Residuals (x and y in turn), each divided by its uncertainty.
std::optional<Eigen::VectorXd> weighted(const Lens& lens, const CameraFromTable& pose,
                                        std::span<const Sighting> sightings) {
  Eigen::VectorXd result(2 * static_cast<Eigen::Index>(sightings.size()));
  for (std::size_t i = 0; i < sightings.size(); ++i) {
    const auto pixel = predicted(lens, pose, sightings[i].point);
    if (!pixel) return std::nullopt;
    const auto row = 2 * static_cast<Eigen::Index>(i);
    result[row] = (sightings[i].pixel.x - pixel->x) / sightings[i].u_px;
    result[row + 1] = (sightings[i].pixel.y - pixel->y) / sightings[i].u_px;
  }
  return result;
}

std::optional<Eigen::MatrixXd> derivative(const Lens& lens, const CameraFromTable& pose,
                                          std::span<const Sighting> sightings) {
  Eigen::MatrixXd result(2 * static_cast<Eigen::Index>(sightings.size()), 6);
  for (int k = 0; k < 6; ++k) {
    const Vector6 step = kStep * Vector6::Unit(k);
    const auto after = weighted(lens, movedPose(pose, step), sightings);
    const auto before = weighted(lens, movedPose(pose, -step), sightings);
    if (!after || !before) return std::nullopt;
    result.col(k) = (*after - *before) / (2.0 * kStep);
  }
  return result;
}

std::optional<CameraFromTable> startingPose(const Lens& lens, std::span<const Sighting> sightings) {
  std::vector<cv::Point3d> points;
  std::vector<cv::Point2d> rays;
  for (const Sighting& sighting : sightings) {
    const auto ray = rayFromImage(lens, sighting.pixel);
    if (!ray) continue;
    points.emplace_back(sighting.point.x, sighting.point.y, sighting.point.z);
    rays.emplace_back(ray->x, ray->y);
  }
  if (points.size() < 4) return std::nullopt;
  try {
    cv::Mat turn;
    cv::Mat shift;
    const cv::Mat pinhole = cv::Mat::eye(3, 3, CV_64F);
    if (!cv::solvePnP(points, rays, pinhole, cv::noArray(), turn, shift, false, cv::SOLVEPNP_SQPNP)) {
      return std::nullopt;
    }
    cv::Mat rotation;
    cv::Rodrigues(turn, rotation);
    CameraFromTable pose;
    for (int row = 0; row < 3; ++row) {
      for (int column = 0; column < 3; ++column)
        pose.rotation(row, column) = rotation.at<double>(row, column);
      pose.translation_m[row] = shift.at<double>(row);
    }
    if (!pose.rotation.allFinite() || !pose.translation_m.allFinite()) return std::nullopt;
    return pose;
  } catch (const cv::Exception&) {
    return std::nullopt;
  }
}

}  // namespace

CameraFromTable movedPose(const CameraFromTable& pose, const Eigen::Matrix<double, 6, 1>& step) {
  const Eigen::Vector3d turn = step.head<3>();
  const double angle = turn.norm();
  CameraFromTable result = pose;
  if (angle > 0.0) result.rotation = Eigen::AngleAxisd(angle, turn / angle).toRotationMatrix() * pose.rotation;
  result.translation_m += step.tail<3>();
  return result;
}

std::optional<PoseFit> fitPose(const Lens& lens, std::span<const Sighting> sightings) {
  if (sightings.size() < 4) return std::nullopt;
  const auto start = startingPose(lens, sightings);
  if (!start) return std::nullopt;

  CameraFromTable pose = *start;
  auto residual = weighted(lens, pose, sightings);
  if (!residual) return std::nullopt;
  double cost = residual->squaredNorm();
  double damping = 1e-3;
  Matrix6 normal = Matrix6::Zero();
  for (int step = 0; step < kMostSteps; ++step) {
    const auto jacobian = derivative(lens, pose, sightings);
    if (!jacobian) return std::nullopt;
    normal = jacobian->transpose() * *jacobian;
    Matrix6 damped = normal;
    damped.diagonal() *= 1.0 + damping;
    const Vector6 move = damped.ldlt().solve(-(jacobian->transpose() * *residual));
    if (!move.allFinite()) return std::nullopt;
    const CameraFromTable next = movedPose(pose, move);
    const auto nextResidual = weighted(lens, next, sightings);
    if (nextResidual && nextResidual->squaredNorm() <= cost) {
      pose = next;
      residual = nextResidual;
      cost = residual->squaredNorm();
      damping = std::max(damping * 0.1, 1e-12);
      if (move.norm() < 1e-12) break;
    } else {
      damping *= 10.0;
      if (damping > 1e8) break;
    }
  }

  PoseFit fit;
  fit.pose = pose;
  const Eigen::FullPivLU<Matrix6> solver(normal);
  if (!solver.isInvertible()) return std::nullopt;
  const double freedom = 2.0 * static_cast<double>(sightings.size()) - 6.0;
  const double widening = freedom > 0.0 ? std::max(1.0, cost / freedom) : 1.0;
  fit.covariance = widening * solver.inverse();
  double sum = 0.0;
  for (std::size_t i = 0; i < sightings.size(); ++i) {
    const auto row = 2 * static_cast<Eigen::Index>(i);
    fit.residuals.push_back({(*residual)[row] * sightings[i].u_px, (*residual)[row + 1] * sightings[i].u_px});
    sum += dot(fit.residuals.back(), fit.residuals.back());
  }
  fit.rms_px = std::sqrt(sum / static_cast<double>(sightings.size()));
  return fit;
}

}  // namespace ferrule
