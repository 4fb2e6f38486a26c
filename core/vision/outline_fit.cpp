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

namespace ferrule {

namespace {

constexpr int kRays = 48;
constexpr double kStep_px = 0.5;
constexpr double kAgree_px = 0.8;  ///< an edge this near to the outline agrees with it

using Colour = Eigen::Vector3f;

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

/// Bilinear colour; the caller keeps the point inside the picture.
Colour colourAt(const cv::Mat& picture, double x, double y) {
  const int left = static_cast<int>(x);
  const int top = static_cast<int>(y);
  const auto fx = static_cast<float>(x - left);
  const auto fy = static_cast<float>(y - top);
  const uchar* a = picture.ptr<uchar>(top) + 3 * left;
  const uchar* b = picture.ptr<uchar>(top + 1) + 3 * left;
  Colour colour;
  for (int c = 0; c < 3; ++c) {
    const float upper = static_cast<float>(a[c]) + fx * static_cast<float>(a[c + 3] - a[c]);
    const float lower = static_cast<float>(b[c]) + fx * static_cast<float>(b[c + 3] - b[c]);
    colour[c] = upper + fy * (lower - upper);
  }
  return colour;
}

/// One edge that a ray met; a ray may meet several.
struct Edge {
  int ray = 0;
  Eigen::Vector2d direction;  ///< unit, outward, px
  double offset_px = 0.0;     ///< edge minus outline along the ray
  double weight = 0.0;        ///< from the contrast
};

/// Colours along one ray from -half to +half around the outline.
class Ray {
 public:
  Ray(const cv::Mat& picture, const Silhouette& outline, Direction direction, double half_px) {
    const ImagePoint edge = outline.at(direction.cosine, direction.sine, 1.0);
    const ImageVector radial = edge - outline.centre;
    radius_px_ = length(radial);
    const ImageVector outward = radial / radius_px_;
    outward_ = {outward.x, outward.y};
    count_ = 2 * static_cast<int>(std::lround(half_px / kStep_px)) + 1;
    half_px_ = kStep_px * (count_ - 1) / 2.0;
    const ImagePoint from = edge - half_px_ * outward;
    const ImagePoint to = edge + half_px_ * outward;
    const auto inside = [&](ImagePoint p) {
      return p.x >= 0.0 && p.y >= 0.0 && p.x < picture.cols - 1 && p.y < picture.rows - 1;
    };
    valid_ = half_px_ < radius_px_ && inside(from) && inside(to) && count_ <= kMost;
    if (!valid_) return;
    for (int i = 0; i < count_; ++i) {
      colours_[static_cast<std::size_t>(i)] =
          colourAt(picture, from.x + i * kStep_px * outward.x, from.y + i * kStep_px * outward.y);
    }
  }

  [[nodiscard]] bool valid() const { return valid_; }
  [[nodiscard]] const Eigen::Vector2d& outward() const { return outward_; }

  /// Whether both ends have the cloth's colour, the one being ball: then no edge shows, only the dark rim.
  [[nodiscard]] bool ballLooksLikeCloth(const Colour& cloth) const {
    constexpr float kShade = 0.3F;  // of the cloth's brightness: limbs and shadows darken, lamps lighten
    constexpr float kHue = 0.08F;   // of the cloth's brightness, off its own colour
    constexpr float kNoise = 3.0F;
    const float bright = cloth.norm();
    const auto like = [&](const Colour& seen) {
      const float shade = seen.dot(cloth) / bright;
      return std::abs(shade - bright) < kShade * bright + kNoise &&
             (seen - (shade / bright) * cloth).norm() < kHue * bright + kNoise;
    };
    return bright > 0.0F && like((colour(0) + colour(1) + colour(2)) / 3.0F) &&
           like((colour(count_ - 1) + colour(count_ - 2) + colour(count_ - 3)) / 3.0F);
  }

  /// Adds every darkest place along the ray, outermost first: a ball's limb darkens toward its outline, and its shadow
  /// on the cloth lightens away from it, so a ball of the cloth's colour is darkest on its outline. Where one side is
  /// much steeper than the other, the picture's blur moves the darkest place toward the other by up to half a pixel.
  void addValleys(int ray, const Colour& cloth, std::vector<Edge>& edges) const {
    constexpr int kSide = 7;  // samples within which both sides must rise
    constexpr float kLeastDepth = 3.0F;
    constexpr float kFullDepth = 10.0F;
    const Colour cloth1 = cloth.normalized();
    std::array<float, kMost> light{};
    for (int i = 0; i < count_; ++i)
      light[static_cast<std::size_t>(i)] = colour(i).dot(cloth1);
    const auto at = [&](int i) { return light[static_cast<std::size_t>(i)]; };
    for (int i = count_ - 3; i >= 2; --i) {
      if (at(i) > at(i - 1) || at(i) >= at(i + 1)) continue;
      float inner = at(i);
      float outer = at(i);
      for (int k = 1; k <= kSide; ++k) {
        inner = std::max(inner, at(std::max(0, i - k)));
        outer = std::max(outer, at(std::min(count_ - 1, i + k)));
      }
      const float depth = std::min(inner, outer) - at(i);
      if (depth < kLeastDepth) continue;
      const float bend = at(i - 2) - 2.0F * at(i) + at(i + 2);
      const double within =
          bend > 0.0F ? std::clamp(static_cast<double>((at(i - 2) - at(i + 2)) / bend), -1.0, 1.0) : 0.0;
      edges.push_back({ray, outward_, (i + within) * kStep_px - half_px_, std::min(1.0F, depth / kFullDepth)});
    }
  }

  /// Adds every place where the colour changes fast, outermost first. One of them is the ball's edge; the others are
  /// its number, its stripe, a highlight or a shadow's border, and only the outline as a whole tells which.
  void addEdges(int ray, std::vector<Edge>& edges) const {
    constexpr float kLeastContrast = 9.0F;  // grey levels between inside and outside for a ray to count
    constexpr int kReach = 2;               // one pixel each way
    constexpr float kOfStrongest = 0.12F;   // what counts as fast, of the ray's fastest change
    constexpr float kFullContrast = 25.0F;
    constexpr int kMostEdges = 4;
    std::array<float, kMost> change{};
    float strongest = 0.0F;
    const int first = kReach;
    const int last = count_ - 1 - kReach;
    for (int i = first; i <= last; ++i) {
      change[static_cast<std::size_t>(i)] = (colour(i + kReach) - colour(i - kReach)).norm();
      strongest = std::max(strongest, change[static_cast<std::size_t>(i)]);
    }
    const float enough = std::max(kLeastContrast, kOfStrongest * strongest);
    int found = 0;
    for (int i = last - 1; i > first && found < kMostEdges; --i) {
      const float before = change[static_cast<std::size_t>(i - 1)];
      const float here = change[static_cast<std::size_t>(i)];
      const float after = change[static_cast<std::size_t>(i + 1)];
      if (here < enough || here < before || here <= after) continue;
      const float bend = before - 2.0F * here + after;
      const double within =
          bend < 0.0F ? std::clamp(0.5 * static_cast<double>((before - after) / bend), -1.0, 1.0) : 0.0;
      const double weight = std::min(1.0F, here / kFullContrast) * (found == 0 ? 1.0 : 0.8) * shadowFactor(i);
      edges.push_back({ray, outward_, (i + within) * kStep_px - half_px_, weight});
      ++found;
    }
  }

 private:
  /// Below 1 where the inner side is only a darker shade of the outer one: a shadow rather than a ball.
  [[nodiscard]] double shadowFactor(int i) const {
    constexpr int kAside = 3;
    constexpr float kOwnColour = 14.0F;  // grey levels off the line from black to the outer colour
    constexpr float kLeast = 0.2F;
    const Colour& inner = colour(std::max(0, i - kAside));
    const Colour& outer = colour(std::min(count_ - 1, i + kAside));
    const float squared = outer.squaredNorm();
    if (squared <= 0.0F) return 1.0;
    const float shade = inner.dot(outer) / squared;
    if (shade > 1.0F) return 1.0;
    return std::clamp((inner - shade * outer).norm() / kOwnColour, kLeast, 1.0F);
  }

  static constexpr int kMost = 129;
  [[nodiscard]] const Colour& colour(int i) const { return colours_[static_cast<std::size_t>(i)]; }

  std::array<Colour, kMost> colours_;
  Eigen::Vector2d outward_ = Eigen::Vector2d::Zero();
  double radius_px_ = 0.0;
  double half_px_ = 0.0;
  int count_ = 0;
  bool valid_ = false;
};

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

/// Iteratively reweighted least squares of offset = direction . shift + grow over one edge a ray, with a prior that
/// grow is small. Starts from the shift that most edges agree with, tried on pairs.
Solution solve(const std::vector<Edge>& edges, double scale_px, double radius_px, int rounds) {
  Solution best;
  const std::size_t n = edges.size();
  if (n < 6) return best;
  Unknowns x = Unknowns::Zero();
  const auto score = [&](const Unknowns& trial) {
    double sum = 0.0;
    bestEdges(edges, trial, scale_px, [&](const Edge&, double weight) { sum += weight; });
    return sum;
  };
  double bestScore = score(x);
  const std::size_t stride = std::max<std::size_t>(1, n / 12);
  for (std::size_t i = 0; i < n; i += stride) {
    for (const std::size_t gap : {n / 4, n / 3}) {
      const Edge& a = edges[i];
      const Edge& b = edges[(i + gap) % n];
      Eigen::Matrix2d m;
      m << a.direction.x(), a.direction.y(), b.direction.x(), b.direction.y();
      if (std::abs(m.determinant()) < 0.3) continue;
      Unknowns trial;
      trial << m.inverse() * Eigen::Vector2d(a.offset_px, b.offset_px), 0.0;
      const double s = score(trial);
      if (s > bestScore) {
        bestScore = s;
        x = trial;
      }
    }
  }
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

OutlineFit fitWithin(const cv::Mat& picture, const Silhouette& start, Neighbours neighbours,
                     const OutlineFitOptions& options) {
  const double radius_px = start.radius_px();
  Eigen::Vector2d shift = Eigen::Vector2d::Zero();
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
      if (insideAny(edge - 1.5 * outward, neighbours)) continue;
      const Ray ray(picture, outline, direction, std::min(half_px + ramp_px, 0.9 * radius_px));
      if (!ray.valid()) continue;
      const std::size_t before = edges.size();
      if (options.cloth && ray.ballLooksLikeCloth(*options.cloth)) {
        ++clothLike;
        ray.addValleys(i, *options.cloth, edges);
      } else {
        ray.addEdges(i, edges);
      }
      if (edges.size() > before) ++withEdge;
    }
  };

  if (options.reach_px > 2.0) {
    collect(start, options.reach_px + 1.0);
    solution = solve(edges, 1.5, radius_px, 6);
    if (!solution.solved) return {};
    shift = solution.shift;
  }
  const double half_px = std::clamp(0.3 * radius_px, 3.0, 4.5);
  double grow_px = 0.0;
  for (int round = 0; round < 3; ++round) {
    Silhouette outline = moved(start, shift);
    outline.shape *= 1.0 + grow_px / radius_px;
    collect(outline, half_px);
    solution = solve(edges, round == 0 ? 0.7 : 0.5, radius_px, 5);
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
