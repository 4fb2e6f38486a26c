// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/outline_fit.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <opencv2/imgproc.hpp>
#include <optional>
#include <vector>

#include "core/vision/edge_ray.h"
#include "core/vision/not_cloth.h"

namespace ferrule {

namespace {

constexpr int kRays = 48;
/// What a whole disc on bare cloth is worth beside rays whose edges agree.
constexpr double kContrastWorth = 30.0;
/// From this share of rays on that are of the cloth's colour on both sides, a ball has no contrast but its number's.
constexpr double kOwnColour = 0.25;
constexpr double kAgree_px = 0.8;  ///< an edge this near to the outline agrees with it

struct Direction {
  double cosine = 1.0;
  double sine = 0.0;
};

const std::array<Direction, kRays>& directions() {
  static const std::array<Direction, kRays> all = [] {
    std::array<Direction, kRays> made{};
    for (int i = 0; i < kRays; ++i) {
      const double angle = 2.0 * std::numbers::pi * i / kRays;
      made[static_cast<std::size_t>(i)] = {std::cos(angle), std::sin(angle)};
    }
    return made;
  }();
  return all;
}

bool insideAny(ImagePoint point, Neighbours neighbours) {
  for (const Silhouette& other : neighbours) {
    const Eigen::Vector2d offset(point.x - other.centre.x, point.y - other.centre.y);
    if ((other.shape.inverse() * offset).squaredNorm() < 1.0) return true;
  }
  return false;
}

struct Solution {
  Eigen::Vector2d shift = Eigen::Vector2d::Zero();
  double grow_px = 0.0;  ///< common radius offset
  Eigen::Matrix2d covariance = Eigen::Matrix2d::Zero();
  int agreeing = 0;
  double rms_px = 0.0;
  bool solved = false;
};

/// shift and common radius offset
using Unknowns = Eigen::Vector3d;

double miss_px(const Edge& edge, const Unknowns& x) {
  return edge.offset_px - edge.direction.dot(x.head<2>()) - x[2];
}

/// Calls use(edge, weight) for the edge of each ray that fits best, with Tukey's biweight of its miss.
template <class Use>
void bestEdges(const std::vector<Edge>& edges, const Unknowns& x, double reach_px, const Use& use) {
  for (std::size_t i = 0; i < edges.size();) {
    std::size_t end = i;
    double bestWeight = 0.0;
    const Edge* best = nullptr;
    for (; end < edges.size() && edges[end].ray == edges[i].ray; ++end) {
      const double r = miss_px(edges[end], x) / reach_px;
      if (r * r >= 1.0) continue;
      const double weight = edges[end].weight * (1.0 - r * r) * (1.0 - r * r);
      if (weight > bestWeight) {
        bestWeight = weight;
        best = &edges[end];
      }
    }
    if (best) use(*best, bestWeight);
    i = end;
  }
}

/// The shift of a grid that goes as far as reach_px which speaks most for a ball: for each ray the edge that agrees
/// best, and what whole() says of the place as a whole.
template <class Whole>
Unknowns likeliestShift(const std::vector<Edge>& edges, double grow_px, double scale_px, double reach_px,
                        const Whole& whole) {
  constexpr double kTrialStep_px = 1.0;
  constexpr double kFarPrice = 4.0;  // where the place is looked for, it is likelier near than at the end of the reach
  const auto score = [&](const Unknowns& trial) {
    double sum = whole(trial.head<2>()) - kFarPrice * trial.head<2>().squaredNorm() / (reach_px * reach_px);
    bestEdges(edges, trial, scale_px, [&](const Edge&, double weight) { sum += weight; });
    return sum;
  };
  Unknowns best(0.0, 0.0, grow_px);
  double bestScore = score(best);
  const int steps = static_cast<int>(reach_px / kTrialStep_px);
  for (int i = -steps; i <= steps; ++i) {
    for (int j = -steps; j <= steps; ++j) {
      const Unknowns trial(i * kTrialStep_px, j * kTrialStep_px, grow_px);
      if (trial.head<2>().norm() > reach_px + kTrialStep_px) continue;
      const double s = score(trial);
      if (s > bestScore) {
        bestScore = s;
        best = trial;
      }
    }
  }
  return best;
}

/// Iteratively reweighted least squares of offset = direction . shift + grow over one edge a ray, with a prior that
/// grow is small.
Solution solve(const std::vector<Edge>& edges, Unknowns x, double scale_px, double radius_px, int rounds) {
  Solution best;
  if (edges.size() < 6) return best;
  const double growPrior_px = std::max(0.25, 0.015 * radius_px);
  Eigen::Matrix3d normal = Eigen::Matrix3d::Zero();
  for (int round = 0; round < rounds; ++round) {
    normal.setZero();
    Eigen::Vector3d right = Eigen::Vector3d::Zero();
    constexpr double kEdgeSpread_px = 0.5;
    normal(2, 2) += kEdgeSpread_px * kEdgeSpread_px / (growPrior_px * growPrior_px);
    bestEdges(edges, x, 2.0 * scale_px, [&](const Edge& edge, double weight) {
      const Eigen::Vector3d row(edge.direction.x(), edge.direction.y(), 1.0);
      normal += weight * row * row.transpose();
      right += weight * edge.offset_px * row;
    });
    if (normal.determinant() < 1e-6) return best;
    x = normal.ldlt().solve(right);
  }
  double squares = 0.0;
  bestEdges(edges, x, 2.0 * scale_px, [&](const Edge& edge, double) {
    const double r = miss_px(edge, x);
    if (std::abs(r) < kAgree_px * std::max(1.0, scale_px)) {
      ++best.agreeing;
      squares += r * r;
    }
  });
  if (best.agreeing < 6) return best;
  best.rms_px = std::sqrt(squares / best.agreeing);
  best.shift = x.head<2>();
  best.grow_px = x[2];
  const Eigen::Matrix3d inverse = normal.inverse();
  best.covariance = inverse.topLeftCorner<2, 2>();
  best.solved = true;
  return best;
}

Silhouette moved(Silhouette outline, const Eigen::Vector2d& shift) {
  outline.centre.x += shift.x();
  outline.centre.y += shift.y();
  return outline;
}

/// The part of the picture that a fit can look at, smoothed: compression leaves colour noise in blocks of two pixels,
/// and one pixel of smoothing moves a ball's edge by less than a twentieth of one.
struct Surroundings {
  cv::Mat picture;
  ImageVector origin;
};

Surroundings surroundingsOf(const cv::Mat& picture, const Silhouette& start, const OutlineFitOptions& options) {
  constexpr double kMargin_px = 8.0;
  const double half_px = 1.3 * start.radius_px() + 2.5 * options.reach_px + length(options.blur) / 2.0 + kMargin_px;
  const int left = static_cast<int>(std::floor(start.centre.x - half_px));
  const int top = static_cast<int>(std::floor(start.centre.y - half_px));
  const int side = static_cast<int>(std::ceil(2.0 * half_px)) + 1;
  const cv::Rect area = cv::Rect(left, top, side, side) & cv::Rect(0, 0, picture.cols, picture.rows);
  Surroundings surroundings;
  if (area.empty()) return surroundings;
  cv::GaussianBlur(picture(area), surroundings.picture, {5, 5}, 1.0, 1.0, cv::BORDER_REPLICATE | cv::BORDER_ISOLATED);
  surroundings.origin = {static_cast<double>(area.x), static_cast<double>(area.y)};
  return surroundings;
}

OutlineFit fitWithin(const cv::Mat& picture, const Silhouette& start, const std::vector<Silhouette>& others,
                     const OutlineFitOptions& options) {
  const double radius_px = start.radius_px();
  std::optional<ClothDistance> clothDistance;
  if (options.cloth) clothDistance.emplace(*options.cloth);
  const float exposure = clothDistance ? clothDistance->exposure() : 1.0F;
  Eigen::Vector2d shift = Eigen::Vector2d::Zero();
  double grow_px = 0.0;
  Solution solution;
  std::vector<Edge> edges;
  edges.reserve(2 * kRays);
  int withEdge = 0;
  int clothLike = 0;

  const auto collect = [&](const Silhouette& outline, double half_px) {
    edges.clear();
    withEdge = 0;
    clothLike = 0;
    for (int i = 0; i < kRays; ++i) {
      const Direction& direction = directions()[static_cast<std::size_t>(i)];
      const ImagePoint edge = outline.at(direction.cosine, direction.sine, 1.0);
      const ImageVector outward = unit(edge - outline.centre);
      const double ramp_px = std::abs(dot(options.blur, outward)) / 2.0;
      if (insideAny(edge - 1.5 * outward, others)) continue;
      const EdgeRay ray(picture, outline, i, direction.cosine, direction.sine,
                        std::min(half_px + 2.0 * ramp_px, 0.9 * radius_px), exposure);
      if (!ray.valid()) continue;
      const std::size_t before = edges.size();
      if (options.cloth && ray.ballLooksLikeCloth(*options.cloth)) {
        ++clothLike;
        ray.addValleys(*options.cloth, edges);
      } else {
        ray.addChanges(ramp_px, edges);
        if (clothDistance) ray.weighByCloth(ramp_px, *clothDistance, edges, before);
      }
      if (edges.size() > before) ++withEdge;
    }
  };

  if (options.reach_px > 2.0) {
    collect(start, options.reach_px + 1.0);
    constexpr double kScale_px = 1.5;
    const bool ownColour = clothLike >= kOwnColour * kRays;
    std::optional<NotCloth> notCloth;
    if (clothDistance && !ownColour) notCloth.emplace(picture, *clothDistance);
    // A dark rim may seem a pixel and a half too small all round.
    const double small_px = ownColour ? -0.75 : 0.0;
    const Unknowns from =
        likeliestShift(edges, small_px, kScale_px, options.reach_px, [&](const Eigen::Vector2d& trial) {
          return notCloth ? kContrastWorth * notCloth->contrast(moved(start, trial), others) : 0.0;
        });
    solution = solve(edges, from, kScale_px, radius_px, 6);
    if (!solution.solved) return {};
    shift = solution.shift;
    if (ownColour) grow_px = std::clamp(solution.grow_px, -0.1 * radius_px, 0.1 * radius_px);
  }
  const double half_px = std::clamp(0.3 * radius_px, 3.0, 4.5);
  for (int round = 0; round < 3; ++round) {
    Silhouette outline = moved(start, shift);
    outline.shape *= 1.0 + grow_px / radius_px;
    collect(outline, half_px);
    solution = solve(edges, Unknowns::Zero(), round > 0 ? 0.5 : grow_px != 0.0 ? 1.0 : 0.7, radius_px, 5);
    if (!solution.solved) return {};
    shift += solution.shift;
    grow_px = std::clamp(grow_px + solution.grow_px, -0.1 * radius_px, 0.1 * radius_px);
    if (solution.shift.norm() < 0.02) break;
  }

  OutlineFit fit;
  fit.shift = {shift.x(), shift.y()};
  fit.support = static_cast<double>(solution.agreeing) / kRays;
  fit.agreement = withEdge > 0 ? static_cast<double>(solution.agreeing) / withEdge : 0.0;
  fit.rms_px = solution.rms_px;
  fit.radiusScale = 1.0 + grow_px / radius_px;
  // Neighbouring rays share pixels, so a third of them at most are independent.
  const double spread = std::max(solution.rms_px, 0.08);
  constexpr double kUneven_px = 0.5;  // what unlike slopes inside and outside do to a dark rim
  fit.standardUncertainty_px = std::hypot(spread * std::sqrt(3.0 * solution.covariance.trace() / 2.0),
                                          kUneven_px * clothLike / std::max(withEdge, 1));
  fit.usable = solution.agreeing >= kRays / 6 && fit.standardUncertainty_px < 1.5 &&
               length(fit.shift) <= 1.5 * options.reach_px + 1.0;
  return fit;
}

}  // namespace

OutlineFit fitOutline(const cv::Mat& picture, const Silhouette& start, Neighbours neighbours,
                      const OutlineFitOptions& options) {
  const Surroundings surroundings = surroundingsOf(picture, start, options);
  if (surroundings.picture.empty()) return {};
  const auto inside = [&](Silhouette outline) {
    outline.centre = outline.centre - surroundings.origin;
    return outline;
  };
  std::vector<Silhouette> others;
  for (const Silhouette& other : neighbours) {
    if (distance(other.centre, start.centre) < 3.0 * (start.radius_px() + options.reach_px))
      others.push_back(inside(other));
  }
  return fitWithin(surroundings.picture, inside(start), others, options);
}

}  // namespace ferrule
