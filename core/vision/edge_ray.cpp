// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/edge_ray.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

constexpr double kStep_px = 0.5;

/// Bilinear colour; the caller keeps the point inside the picture.
Eigen::Vector3f colourAt(const cv::Mat& picture, double x, double y) {
  const int left = static_cast<int>(x);
  const int top = static_cast<int>(y);
  const auto fx = static_cast<float>(x - left);
  const auto fy = static_cast<float>(y - top);
  const uchar* a = picture.ptr<uchar>(top) + 3 * left;
  const uchar* b = picture.ptr<uchar>(top + 1) + 3 * left;
  Eigen::Vector3f colour;
  for (int c = 0; c < 3; ++c) {
    const float upper = static_cast<float>(a[c]) + fx * static_cast<float>(a[c + 3] - a[c]);
    const float lower = static_cast<float>(b[c]) + fx * static_cast<float>(b[c + 3] - b[c]);
    colour[c] = upper + fy * (lower - upper);
  }
  return colour;
}

}  // namespace

EdgeRay::EdgeRay(const cv::Mat& picture, const Silhouette& outline, int ray, double cosine, double sine, double half_px,
                 float exposure)
    : ray_(ray), exposure_(exposure) {
  const ImagePoint edge = outline.at(cosine, sine, 1.0);
  const ImageVector radial = edge - outline.centre;
  const double radius_px = length(radial);
  const ImageVector outward = radial / radius_px;
  outward_ = {outward.x, outward.y};
  count_ = 2 * static_cast<int>(std::lround(half_px / kStep_px)) + 1;
  half_px_ = kStep_px * (count_ - 1) / 2.0;
  const ImagePoint from = edge - half_px_ * outward;
  const ImagePoint to = edge + half_px_ * outward;
  const auto inside = [&](ImagePoint p) {
    return p.x >= 0.0 && p.y >= 0.0 && p.x < picture.cols - 1 && p.y < picture.rows - 1;
  };
  valid_ = half_px_ < radius_px && inside(from) && inside(to) && count_ <= kMost;
  if (!valid_) return;
  for (int i = 0; i < count_; ++i) {
    colours_[static_cast<std::size_t>(i)] =
        colourAt(picture, from.x + i * kStep_px * outward.x, from.y + i * kStep_px * outward.y);
  }
}

Edge EdgeRay::edgeAt(double sample, double weight) const {
  return {ray_, outward_, sample * kStep_px - half_px_, weight};
}

bool EdgeRay::ballLooksLikeCloth(const Colour& cloth) const {
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

void EdgeRay::addValleys(const Colour& cloth, std::vector<Edge>& edges) const {
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
    if (depth < kLeastDepth * exposure_) continue;
    const float bend = at(i - 2) - 2.0F * at(i) + at(i + 2);
    const double within =
        bend > 0.0F ? std::clamp(static_cast<double>((at(i - 2) - at(i + 2)) / bend), -1.0, 1.0) : 0.0;
    edges.push_back(edgeAt(i + within, std::min(1.0F, depth / (kFullDepth * exposure_))));
  }
}

void EdgeRay::addChanges(double ramp_px, std::vector<Edge>& edges) const {
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
  const float enough = std::max(kLeastContrast * exposure_, kOfStrongest * strongest);
  int found = 0;
  for (int i = last - 1; i > first && found < kMostEdges; --i) {
    const float before = change[static_cast<std::size_t>(i - 1)];
    const float here = change[static_cast<std::size_t>(i)];
    const float after = change[static_cast<std::size_t>(i + 1)];
    if (here < enough || here < before || here <= after) continue;
    const float bend = before - 2.0F * here + after;
    const double within = bend < 0.0F ? std::clamp(0.5 * static_cast<double>((before - after) / bend), -1.0, 1.0) : 0.0;
    const double weight =
        std::min(1.0F, here / (kFullContrast * exposure_)) * (found == 0 ? 1.0 : 0.8) * shadowFactor(i);
    edges.push_back(edgeAt(i + within, weight));
    ++found;
  }
}

void EdgeRay::weighByCloth(double ramp_px, const ClothDistance& distance, std::vector<Edge>& edges,
                           std::size_t first) const {
  const auto end = endOfCloth(ramp_px, distance);
  if (!end) return;
  constexpr double kSame_px = 1.25;
  constexpr double kElsewhere = 0.35;
  bool told = false;
  for (std::size_t i = first; i < edges.size(); ++i) {
    if (std::abs(edges[i].offset_px - end->offset_px) < kSame_px + 0.5 * ramp_px) {
      told = true;
    } else {
      edges[i].weight *= kElsewhere;
    }
  }
  if (!told) edges.push_back(*end);
}

std::optional<Edge> EdgeRay::endOfCloth(double ramp_px, const ClothDistance& distance) const {
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
  while (rise > 0 && at(rise) < outside + kLeastRise * exposure_)
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
  return edgeAt(i + within, std::min(1.0F, (inside - outside) / (kFullRise * exposure_)));
}

double EdgeRay::shadowFactor(int i) const {
  constexpr int kAside = 3;            // samples from a change to what lies inside and outside of it
  constexpr float kOwnColour = 14.0F;  // grey levels off the line from black to another colour
  constexpr float kLeast = 0.2F;
  const Colour& inner = colour(std::max(0, i - kAside));
  const Colour& outer = colour(std::min(count_ - 1, i + kAside));
  const float squared = outer.squaredNorm();
  if (squared <= 0.0F) return 1.0;
  const float shade = inner.dot(outer) / squared;
  if (shade > 1.0F) return 1.0;
  return std::clamp((inner - shade * outer).norm() / (kOwnColour * exposure_), kLeast, 1.0F);
}

}  // namespace ferrule
