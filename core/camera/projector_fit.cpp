// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/projector_fit.h"

#include <ceres/tiny_solver.h>
#include <ceres/tiny_solver_autodiff_function.h>

#include <Eigen/QR>
#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <utility>

#include "core/camera/projector_model.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr double kLeastGain = 0.95;  ///< held-out error with bending over that without, from which on it is believed
constexpr double kOutlier_px = 1.0;  ///< where a corner begins to count less
constexpr double kMostRms_m = 0.010;
constexpr int kRounds = 6;

Eigen::Vector2d straightened(ImageSize size, ImagePoint pixel) {
  return {(pixel.x - 0.5 * (size.width - 1)) / size.width, (pixel.y - 0.5 * (size.height - 1)) / size.width};
}

/// How far the corners are from where the model sends them, projector pixels, each by its weight. The first eight
/// parameters are the perspective, further four the bending.
template <int kCount>
struct CornerErrors {
  using Scalar = double;
  enum { NUM_RESIDUALS = Eigen::Dynamic, NUM_PARAMETERS = kCount };

  ImageSize size;
  std::span<const ProjectedCorner> corners;
  std::vector<double> weights;

  [[nodiscard]] int NumResiduals() const { return 2 * static_cast<int>(corners.size()); }

  template <class T>
  bool operator()(const T* p, T* errors) const {
    for (std::size_t i = 0; i < corners.size(); ++i) {
      const T x = T(corners[i].place.x);
      const T y = T(corners[i].place.y);
      const T w = p[6] * x + p[7] * y + T(1.0);
      Eigen::Matrix<T, 2, 1> at((p[0] * x + p[1] * y + p[2]) / w, (p[3] * x + p[4] * y + p[5]) / w);
      if constexpr (kCount > 8) at = bend(p + 8, at);
      const Eigen::Vector2d wanted = straightened(size, corners[i].pixel);
      const double scale = weights[i] * size.width;
      errors[2 * i] = T(scale) * (at.x() - T(wanted.x()));
      errors[2 * i + 1] = T(scale) * (at.y() - T(wanted.y()));
    }
    return true;
  }
};

/// The perspective alone, from all corners at once: linear in its eight numbers.
std::array<double, 8> startOf(ImageSize size, std::span<const ProjectedCorner> corners) {
  Eigen::MatrixXd a(2 * static_cast<Eigen::Index>(corners.size()), 8);
  Eigen::VectorXd b(a.rows());
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const auto row = 2 * static_cast<Eigen::Index>(i);
    const double x = corners[i].place.x;
    const double y = corners[i].place.y;
    const Eigen::Vector2d u = straightened(size, corners[i].pixel);
    a.row(row) << x, y, 1, 0, 0, 0, -u.x() * x, -u.x() * y;
    a.row(row + 1) << 0, 0, 0, x, y, 1, -u.y() * x, -u.y() * y;
    b.segment<2>(row) = u;
  }
  const Eigen::VectorXd h = a.colPivHouseholderQr().solve(b);
  std::array<double, 8> start{};
  std::copy(h.begin(), h.end(), start.begin());
  return start;
}

template <int kCount>
Projector fittedWith(ImageSize size, std::span<const ProjectedCorner> corners) {
  const std::array<double, 8> start = startOf(size, corners);
  Eigen::Matrix<double, kCount, 1> p = Eigen::Matrix<double, kCount, 1>::Zero();
  std::copy(start.begin(), start.end(), p.begin());
  CornerErrors<kCount> errors{size, corners, std::vector<double>(corners.size(), 1.0)};
  using Function = ceres::TinySolverAutoDiffFunction<CornerErrors<kCount>, Eigen::Dynamic, kCount>;
  // Huber's weights, from the errors of the fit before. Source: Huber, Ann. Math. Stat. 35 (1964) 73.
  for (int round = 0; round < kRounds; ++round) {
    Function function(errors);
    ceres::TinySolver<Function> solver;
    solver.Solve(function, &p);
    std::vector<double> left(2 * corners.size());
    const std::vector<double> weights = std::exchange(errors.weights, std::vector<double>(corners.size(), 1.0));
    errors(p.data(), left.data());
    for (std::size_t i = 0; i < corners.size(); ++i) {
      const double off_px = std::hypot(left[2 * i], left[2 * i + 1]);
      if (off_px > kOutlier_px) errors.weights[i] = std::sqrt(kOutlier_px / off_px);
    }
    if (errors.weights == weights) break;
  }
  Projector projector;
  projector.size = size;
  projector.straightFromTable << p[0], p[1], p[2], p[3], p[4], p[5], p[6], p[7], 1.0;
  if constexpr (kCount > 8) std::copy(p.begin() + 8, p.end(), projector.bending.begin());
  return projector;
}

Projector fitted(ImageSize size, std::span<const ProjectedCorner> corners, bool bends) {
  return bends ? fittedWith<12>(size, corners) : fittedWith<8>(size, corners);
}

/// On the cloth, m.
double rmsOf(const Projector& projector, std::span<const ProjectedCorner> corners) {
  double sum = 0.0;
  std::size_t count = 0;
  for (const ProjectedCorner& corner : corners) {
    const auto place = tableFromProjector(projector, corner.pixel);
    if (!place) continue;
    sum += std::pow(distance(*place, corner.place), 2);
    ++count;
  }
  return count == 0 ? 0.0 : std::sqrt(sum / static_cast<double>(count));
}

/// Each tag told by the others.
double heldOutRms(ImageSize size, std::span<const ProjectedCorner> corners, const std::set<int>& tags, bool bends) {
  double sum = 0.0;
  double count = 0.0;
  for (const int tag : tags) {
    std::vector<ProjectedCorner> rest;
    std::vector<ProjectedCorner> own;
    for (const ProjectedCorner& corner : corners)
      (corner.tag == tag ? own : rest).push_back(corner);
    const double rms_m = rmsOf(fitted(size, rest, bends), own);
    sum += rms_m * rms_m * static_cast<double>(own.size());
    count += static_cast<double>(own.size());
  }
  return std::sqrt(sum / count);
}

}  // namespace

Result<Projector> fitProjector(ImageSize size, std::span<const ProjectedCorner> corners, const std::string& name) {
  std::set<int> tags;
  for (const ProjectedCorner& corner : corners)
    tags.insert(corner.tag);
  const auto count = static_cast<int>(tags.size());
  if (count < kLeastProjectedTags) {
    return failure(ErrorCode::TagsTooFew, name, "projected",
                   {static_cast<double>(count), static_cast<double>(kLeastProjectedTags)});
  }
  const double straight_m = heldOutRms(size, corners, tags, false);
  const double bent_m = heldOutRms(size, corners, tags, true);
  const bool bends = bent_m < kLeastGain * straight_m;
  Projector projector = fitted(size, corners, bends);
  projector.rms_m = rmsOf(projector, corners);
  projector.heldOutRms_m = bends ? bent_m : straight_m;
  projector.tags = count;
  if (!(projector.rms_m < kMostRms_m)) {
    return failure(ErrorCode::TagsInconsistent, name, "projected", {millimetresFromMetres(projector.rms_m)});
  }
  return projector;
}

}  // namespace ferrule
