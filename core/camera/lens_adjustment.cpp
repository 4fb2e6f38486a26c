// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/lens_adjustment.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/calib3d.hpp>

#include "core/camera/pose_fit.h"

namespace ferrule {

namespace {

using Vector6 = Eigen::Matrix<double, 6, 1>;
using Matrix6 = Eigen::Matrix<double, 6, 6>;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr int kMostSteps = 100;
constexpr double kPoseStep = 1e-6;   // of the central differences, rad and m
constexpr double kPixelStep = 1e-3;  // px
constexpr double kCoefficientStep = 1e-5;
constexpr double kSettled = 1e-12;  // relative fall of the cost

struct State {
  Lens lens;
  std::vector<CameraFromTable> poses;
};

double& parameter(Lens& lens, int index) {
  switch (index) {
    case 0:
      return lens.focalX_px;
    case 1:
      return lens.focalY_px;
    case 2:
      return lens.centre.x;
    case 3:
      return lens.centre.y;
    default:
      return lens.coefficients[static_cast<std::size_t>(index - 4)];
  }
}

/// Residuals of one view, x and y in turn; false when a corner is out of the model's reach.
bool residualsOf(const Lens& lens, const CameraFromTable& pose, const Board& board, const BoardView& view,
                 VectorXd& result) {
  result.resize(2 * static_cast<Eigen::Index>(view.corners.size()));
  Eigen::Index row = 0;
  for (const BoardCorner& corner : view.corners) {
    const TablePoint3 place = board.corner(corner.index);
    const Eigen::Vector3d seen = pose.rotation * Eigen::Vector3d(place.x, place.y, place.z) + pose.translation_m;
    if (!(seen.z() > 0.0)) return false;
    const auto pixel = imageFromRay(lens, {seen.x() / seen.z(), seen.y() / seen.z()});
    if (!pixel) return false;
    result[row++] = corner.pixel.x - pixel->x;
    result[row++] = corner.pixel.y - pixel->y;
  }
  return true;
}

double costOf(const State& state, const Board& board, std::span<const BoardView> views) {
  double cost = 0.0;
  VectorXd residuals;
  for (std::size_t v = 0; v < views.size(); ++v) {
    if (!residualsOf(state.lens, state.poses[v], board, views[v], residuals)) return INFINITY;
    cost += residuals.squaredNorm();
  }
  return cost;
}

/// One view's part of the normal equations.
struct ViewBlock {
  MatrixXd lensPose;  // parameters x 6
  Matrix6 pose;
  Vector6 poseGradient;
};

struct NormalEquations {
  MatrixXd lens;
  VectorXd lensGradient;
  std::vector<ViewBlock> views;
};

bool build(const State& state, int parameters, const Board& board, std::span<const BoardView> views,
           NormalEquations& normal) {
  normal.lens = MatrixXd::Zero(parameters, parameters);
  normal.lensGradient = VectorXd::Zero(parameters);
  normal.views.resize(views.size());
  VectorXd here;
  VectorXd after;
  VectorXd before;
  for (std::size_t v = 0; v < views.size(); ++v) {
    const CameraFromTable& pose = state.poses[v];
    if (!residualsOf(state.lens, pose, board, views[v], here)) return false;
    MatrixXd byLens(here.size(), parameters);
    for (int k = 0; k < parameters; ++k) {
      const double step = k < 4 ? kPixelStep : kCoefficientStep;
      Lens more = state.lens;
      Lens less = state.lens;
      parameter(more, k) += step;
      parameter(less, k) -= step;
      const bool hasAfter = residualsOf(more, pose, board, views[v], after);
      const bool hasBefore = residualsOf(less, pose, board, views[v], before);
      // Beside the fold of a model only one side can be reached.
      if (hasAfter && hasBefore) {
        byLens.col(k) = (before - after) / (2.0 * step);
      } else if (hasAfter) {
        byLens.col(k) = (here - after) / step;
      } else if (hasBefore) {
        byLens.col(k) = (before - here) / step;
      } else {
        return false;
      }
    }
    MatrixXd byPose(here.size(), 6);
    for (int k = 0; k < 6; ++k) {
      const Vector6 step = kPoseStep * Vector6::Unit(k);
      if (!residualsOf(state.lens, movedPose(pose, step), board, views[v], after)) return false;
      if (!residualsOf(state.lens, movedPose(pose, -step), board, views[v], before)) return false;
      byPose.col(k) = (before - after) / (2.0 * kPoseStep);
    }
    normal.lens += byLens.transpose() * byLens;
    normal.lensGradient += byLens.transpose() * here;
    normal.views[v] = {byLens.transpose() * byPose, byPose.transpose() * byPose, byPose.transpose() * here};
  }
  return true;
}

/// The normal equations of the lens alone, the poses eliminated.
MatrixXd reduced(const NormalEquations& normal, double damping, VectorXd& gradient) {
  MatrixXd matrix = normal.lens;
  matrix.diagonal() *= 1.0 + damping;
  gradient = normal.lensGradient;
  for (const ViewBlock& view : normal.views) {
    Matrix6 pose = view.pose;
    pose.diagonal() *= 1.0 + damping;
    const Matrix6 inverse = pose.inverse();
    matrix -= view.lensPose * inverse * view.lensPose.transpose();
    gradient -= view.lensPose * inverse * view.poseGradient;
  }
  return matrix;
}

bool refine(State& state, int parameters, const Board& board, std::span<const BoardView> views, double& cost) {
  cost = costOf(state, board, views);
  if (!std::isfinite(cost)) return false;
  double damping = 1e-3;
  NormalEquations normal;
  bool fresh = false;
  for (int step = 0; step < kMostSteps; ++step) {
    if (!fresh && !build(state, parameters, board, views, normal)) return false;
    fresh = true;
    VectorXd gradient;
    const MatrixXd matrix = reduced(normal, damping, gradient);
    const VectorXd move = matrix.ldlt().solve(gradient);
    if (!move.allFinite()) return false;
    State next = state;
    for (int k = 0; k < parameters; ++k)
      parameter(next.lens, k) += move[k];
    for (std::size_t v = 0; v < views.size(); ++v) {
      const ViewBlock& view = normal.views[v];
      Matrix6 pose = view.pose;
      pose.diagonal() *= 1.0 + damping;
      next.poses[v] =
          movedPose(state.poses[v], pose.inverse() * (view.poseGradient - view.lensPose.transpose() * move));
    }
    const double nextCost =
        next.lens.focalX_px > 0.0 && next.lens.focalY_px > 0.0 ? costOf(next, board, views) : INFINITY;
    if (nextCost <= cost) {
      const bool settled = cost - nextCost <= kSettled * cost;
      state = std::move(next);
      cost = nextCost;
      fresh = false;
      damping = std::max(0.1 * damping, 1e-12);
      if (settled) break;
    } else {
      damping *= 10.0;
      if (damping > 1e10) break;
    }
  }
  return true;
}

/// Focal length of a pinhole that explains the views' homographies best.
std::optional<double> focalFromHomographies(const Board& board, std::span<const BoardView> views) {
  std::vector<std::vector<cv::Point3f>> points;
  std::vector<std::vector<cv::Point2f>> pixels;
  for (const BoardView& view : views) {
    points.emplace_back();
    pixels.emplace_back();
    for (const BoardCorner& corner : view.corners) {
      const TablePoint3 place = board.corner(corner.index);
      points.back().emplace_back(static_cast<float>(place.x), static_cast<float>(place.y), 0.0F);
      pixels.back().emplace_back(static_cast<float>(corner.pixel.x), static_cast<float>(corner.pixel.y));
    }
  }
  try {
    const cv::Mat camera = cv::initCameraMatrix2D(points, pixels, {views[0].size.width, views[0].size.height}, 1.0);
    const double focal = camera.at<double>(0, 0);
    if (std::isfinite(focal) && focal > 0.0) return focal;
  } catch (const cv::Exception&) {
  }
  return std::nullopt;
}

std::vector<Lens> starts(const LensShape& shape, const Board& board, std::span<const BoardView> views) {
  const ImageSize size = views[0].size;
  Lens lens;
  lens.size = size;
  lens.model = shape.model;
  lens.centre = {0.5 * (size.width - 1), 0.5 * (size.height - 1)};
  std::vector<double> focals;
  if (const auto focal = focalFromHomographies(board, views)) focals.push_back(*focal);
  for (const double share : {0.8, 1.2, 0.4})
    focals.push_back(share * size.width);
  std::vector<Lens> all;
  for (const double focal : focals) {
    lens.focalX_px = lens.focalY_px = focal;
    all.push_back(lens);
  }
  return all;
}

std::optional<State> stateWithPoses(const Lens& lens, const Board& board, std::span<const BoardView> views) {
  State state{lens, {}};
  for (const BoardView& view : views) {
    std::vector<Sighting> sightings;
    for (const BoardCorner& corner : view.corners)
      sightings.push_back({board.corner(corner.index), corner.pixel, 1.0});
    const auto fit = fitPose(lens, sightings);
    if (!fit) return std::nullopt;
    state.poses.push_back(fit->pose);
  }
  return state;
}

}  // namespace

std::optional<LensAdjustment> adjustLens(const LensShape& shape, const Board& board, std::span<const BoardView> views,
                                         const std::optional<Lens>& start) {
  if (views.empty()) return std::nullopt;
  const int parameters = 4 + shape.coefficients;
  const auto all = start ? std::vector<Lens>{*start} : starts(shape, board, views);
  std::optional<State> best;
  double bestCost = INFINITY;
  for (Lens lens : all) {
    lens.model = shape.model;
    auto state = stateWithPoses(lens, board, views);
    double cost = INFINITY;
    if (!state || !refine(*state, parameters, board, views, cost)) continue;
    // A start that is not better by more than its last digits leads to the same solution.
    if (cost < bestCost * (1.0 - 1e-6)) {
      bestCost = cost;
      best = std::move(state);
    }
  }
  if (!best) return std::nullopt;

  LensAdjustment result;
  NormalEquations normal;
  if (!build(*best, parameters, board, views, normal)) return std::nullopt;
  VectorXd gradient;
  const MatrixXd matrix = reduced(normal, 0.0, gradient);
  // Pixels and coefficients differ by many orders of size; scaled to a unit diagonal the rank can be judged.
  const VectorXd scale = matrix.diagonal().cwiseMax(0.0).cwiseSqrt().cwiseInverse();
  if (!scale.allFinite()) return std::nullopt;
  const Eigen::FullPivLU<MatrixXd> solver(scale.asDiagonal() * matrix * scale.asDiagonal());
  if (!solver.isInvertible()) return std::nullopt;
  std::size_t corners = 0;
  for (const BoardView& view : views)
    corners += view.corners.size();
  const double freedom = 2.0 * static_cast<double>(corners) - parameters - 6.0 * static_cast<double>(views.size());
  if (freedom <= 0.0) return std::nullopt;
  result.covariance = (bestCost / freedom) * (scale.asDiagonal() * solver.inverse() * scale.asDiagonal());
  result.rms_px = std::sqrt(bestCost / static_cast<double>(corners));
  result.lens = best->lens;
  result.lens.rms_px = result.rms_px;
  result.poses = best->poses;
  for (std::size_t v = 0; v < views.size(); ++v) {
    VectorXd residuals;
    if (!residualsOf(result.lens, result.poses[v], board, views[v], residuals)) return std::nullopt;
    result.residuals.emplace_back();
    for (Eigen::Index row = 0; row < residuals.size(); row += 2) {
      result.residuals.back().push_back({residuals[row], residuals[row + 1]});
    }
  }
  return result;
}

}  // namespace ferrule
