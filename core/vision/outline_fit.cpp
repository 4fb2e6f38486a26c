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

#include "core/vision/not_cloth.h"

namespace ferrule {

namespace {

constexpr int kRays = 48;
constexpr double kStep_px = 0.5;
/// What a whole disc on bare cloth is worth beside rays whose edges agree.
constexpr double kContrastWorth = 30.0;
/// From this share of rays on that are of the cloth's colour on both sides, a ball has no contrast but its number's.
constexpr double kOwnColour = 0.25;
/// Where it is known where the cloth ends, other edges count this much less.
constexpr double kBesideParting = 0.35;
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

  /// Adds the outermost place where cloth, lit or in shadow, ends and something else begins: half way between the
  /// distance from the cloth's colour outside and that just inside, however soft a film's coarse colours make it.
  /// Changes of colour that were found near that place tell it more sharply and stand for it; others count less.
  void sortByParting(int ray, double ramp_px, const ClothDistance& distance, std::vector<Edge>& edges,
                     std::size_t first) const {
    const auto parting = partingEdge(ray, ramp_px, distance);
    if (!parting) return;
    constexpr double kSame_px = 1.25;
    bool told = false;
    for (std::size_t i = first; i < edges.size(); ++i) {
      if (std::abs(edges[i].offset_px - parting->offset_px) < kSame_px + 0.5 * ramp_px) {
        told = true;
      } else {
        edges[i].weight *= kBesideParting;
      }
    }
    if (!told) edges.push_back(*parting);
  }

  [[nodiscard]] std::optional<Edge> partingEdge(int ray, double ramp_px, const ClothDistance& distance) const {
    constexpr float kLeastRise = 10.0F;  // grey levels
    constexpr float kFullRise = 25.0F;
    constexpr double kPlateau_px = 3.0;  // inside of the edge the ball's own colour is reached
    constexpr float kRipple = 0.5F;
    constexpr float kDark = 0.55F;  // of the cloth's brightness: a dark ball differs from its shadow by that alone
    constexpr int kOutside = 3;     // samples
    std::array<float, kMost> away{};
    for (int i = 0; i < count_; ++i)
      away[static_cast<std::size_t>(i)] = distance(colour(i));
    const auto at = [&](int i) { return away[static_cast<std::size_t>(i)]; };
    float outside = 0.0F;
    for (int i = count_ - kOutside; i < count_; ++i)
      outside += at(i) / kOutside;
    const int plateau = static_cast<int>(std::lround((kPlateau_px + 2.0 * ramp_px) / kStep_px));
    int rise = count_ - 1;
    while (rise > 0 && at(rise) < outside + kLeastRise)
      --rise;
    if (rise == 0) return std::nullopt;
    // Up to the first crest: further in, a number or a stripe may be more foreign still.
    int crest = rise;
    while (crest > 0 && rise - crest < plateau && at(crest - 1) > at(crest) - kRipple)
      --crest;
    if (colour(crest).norm() < kDark * distance.brightness()) return std::nullopt;
    const float inside = std::max(at(crest), at(std::min(crest + 1, rise)));
    const float half = 0.5F * (inside + outside);
    int i = count_ - 2;
    while (i > 0 && at(i) < half)
      --i;
    if (i == 0 || at(i) <= at(i + 1)) return std::nullopt;
    const double within = std::clamp(static_cast<double>((at(i) - half) / (at(i) - at(i + 1))), 0.0, 1.0);
    return Edge{ray, outward_, (i + within) * kStep_px - half_px_, std::min(1.0F, (inside - outside) / kFullRise)};
  }

  /// Adds every place where the colour changes fast, outermost first. One of them is the ball's edge; the others are
  /// its number, its stripe, a highlight or a shadow's border, and only the outline as a whole tells which.
  /// ramp_px: half the way over which a streak blurs the edge here; changes are looked for over as much, so that the
  /// ramp's middle is found and not where it sets in.
  void addEdges(int ray, double ramp_px, std::vector<Edge>& edges) const {
    constexpr float kLeastContrast = 9.0F;  // grey levels between inside and outside for a ray to count
    constexpr int kLeastReach = 2;          // one pixel each way
    constexpr float kOfStrongest = 0.12F;   // what counts as fast, of the ray's fastest change
    constexpr float kFullContrast = 25.0F;
    constexpr int kMostEdges = 4;
    std::array<float, kMost> change{};
    float strongest = 0.0F;
    const int reach =
        std::clamp(static_cast<int>(std::lround(ramp_px / kStep_px)), kLeastReach, std::max(kLeastReach, count_ / 4));
    const int first = reach;
    const int last = count_ - 1 - reach;
    for (int i = first; i <= last; ++i) {
      change[static_cast<std::size_t>(i)] = (colour(i + reach) - colour(i - reach)).norm();
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
  static constexpr int kAside = 3;            ///< samples from a change to what lies inside and outside of it
  static constexpr float kOwnColour = 14.0F;  ///< grey levels off the line from black to another colour

  /// Below 1 where the inner side is only a darker shade of the outer one: a shadow rather than a ball.
  [[nodiscard]] double shadowFactor(int i) const {
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
  std::optional<NotCloth> notCloth;
  if (options.cloth) {
    clothDistance.emplace(*options.cloth);
    if (options.reach_px > 2.0) notCloth.emplace(picture, *clothDistance);
  }
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
      const Ray ray(picture, outline, direction, std::min(half_px + 2.0 * ramp_px, 0.9 * radius_px));
      if (!ray.valid()) continue;
      const std::size_t before = edges.size();
      if (options.cloth && ray.ballLooksLikeCloth(*options.cloth)) {
        ++clothLike;
        ray.addValleys(i, *options.cloth, edges);
      } else {
        ray.addEdges(i, ramp_px, edges);
        if (clothDistance) ray.sortByParting(i, ramp_px, *clothDistance, edges, before);
      }
      if (edges.size() > before) ++withEdge;
    }
  };

  if (options.reach_px > 2.0) {
    collect(start, options.reach_px + 1.0);
    constexpr double kScale_px = 1.5;
    const bool ownColour = clothLike >= kOwnColour * kRays;
    // A dark rim may seem a pixel and a half too small all round.
    const double small_px = ownColour ? -0.75 : 0.0;
    const Unknowns from =
        likeliestShift(edges, small_px, kScale_px, options.reach_px, [&](const Eigen::Vector2d& trial) {
          if (!notCloth || ownColour) return 0.0;
          return kContrastWorth * notCloth->contrast(moved(start, trial), others);
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
