// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_candidates.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <opencv2/imgproc.hpp>

namespace ferrule {

namespace {

/// How far outside the nose lines a ball's centre may still be looked for: into the pocket mouths.
constexpr double kBeyondNose_m = 0.03;

struct BlobShape {
  ImagePoint centre;      ///< small picture
  double major_px = 0.0;  ///< extents of an even ellipse with the same moments (full length)
  double minor_px = 0.0;
  ImageVector axis;
};

BlobShape shapeOf(const cv::Mat& labels, int label, const cv::Rect& area) {
  double n = 0.0;
  double sx = 0.0;
  double sy = 0.0;
  double sxx = 0.0;
  double sxy = 0.0;
  double syy = 0.0;
  for (int y = area.y; y < area.y + area.height; ++y) {
    const int* row = labels.ptr<int>(y);
    for (int x = area.x; x < area.x + area.width; ++x) {
      if (row[x] != label) continue;
      n += 1.0;
      sx += x;
      sy += y;
      sxx += static_cast<double>(x) * x;
      sxy += static_cast<double>(x) * y;
      syy += static_cast<double>(y) * y;
    }
  }
  BlobShape shape;
  if (n == 0.0) return shape;
  shape.centre = {sx / n, sy / n};
  const double cxx = sxx / n - shape.centre.x * shape.centre.x + 1.0 / 12.0;
  const double cyy = syy / n - shape.centre.y * shape.centre.y + 1.0 / 12.0;
  const double cxy = sxy / n - shape.centre.x * shape.centre.y;
  const double mean = (cxx + cyy) / 2.0;
  const double spread = std::hypot((cxx - cyy) / 2.0, cxy);
  shape.major_px = 4.0 * std::sqrt(mean + spread);
  shape.minor_px = 4.0 * std::sqrt(std::max(mean - spread, 0.0));
  const double angle = 0.5 * std::atan2(2.0 * cxy, cxx - cyy);
  shape.axis = {std::cos(angle), std::sin(angle)};
  return shape;
}

/// The strongest of the three channels' gradients at a pixel.
ImageVector strongestGradient(const cv::Mat& small, int x, int y) {
  const uchar* above = small.ptr<uchar>(y - 1);
  const uchar* here = small.ptr<uchar>(y);
  const uchar* below = small.ptr<uchar>(y + 1);
  ImageVector best;
  double strongest = -1.0;
  for (int c = 0; c < 3; ++c) {
    const int l = 3 * (x - 1) + c;
    const int m = 3 * x + c;
    const int r = 3 * (x + 1) + c;
    const double gx = (above[r] + 2 * here[r] + below[r] - above[l] - 2 * here[l] - below[l]) / 8.0;
    const double gy = (below[l] + 2 * below[m] + below[r] - above[l] - 2 * above[m] - above[r]) / 8.0;
    const double strength = gx * gx + gy * gy;
    if (strength > strongest) {
      strongest = strength;
      best = {gx, gy};
    }
  }
  return best;
}

/// Opening with it takes out cue shafts, chalk and dust that hangs on a ball.
const cv::Mat& searchDisc() {
  static const cv::Mat disc = cv::getStructuringElement(cv::MORPH_ELLIPSE, {5, 5});
  return disc;
}

/// The blobs of what differs faintly, with their inside.
cv::Mat faintMask(const cv::Mat& away, int faintly) {
  cv::Mat mask = away > faintly;
  cv::morphologyEx(mask, mask, cv::MORPH_CLOSE, searchDisc());
  std::vector<std::vector<cv::Point>> outlines;
  cv::findContours(mask, outlines, cv::RETR_EXTERNAL, cv::CHAIN_APPROX_NONE);
  cv::drawContours(mask, outlines, -1, cv::Scalar(255), cv::FILLED);
  cv::morphologyEx(mask, mask, cv::MORPH_OPEN, searchDisc());
  return mask;
}

}  // namespace

CandidateFinder::CandidateFinder(const Rig& rig, const MeasuredTable& measured, SmallScale scale,
                                 const ClothModel& cloth)
    : rig_(rig), table_(measured.table), set_(measured.balls), scale_(scale), cloth_(cloth) {}

std::optional<BallCandidate> CandidateFinder::fitNear(const cv::Mat& picture, TablePoint start, Neighbours neighbours,
                                                      OutlineFitOptions options, const WhiteReference& white) const {
  const auto outline = silhouetteOf(rig_, start, set_.radius_m());
  if (!outline) return std::nullopt;
  options.cloth = cloth_.colourAt(scale_.toSmall(outline->centre));
  const OutlineFit fit = fitOutline(picture, *outline, neighbours, options);
  if (!fit.usable) return std::nullopt;
  BallCandidate candidate;
  candidate.position = start + outline->tableVector(fit.shift);
  if (std::abs(candidate.position.x) > table_.length_m / 2.0 + kBeyondNose_m ||
      std::abs(candidate.position.y) > table_.width_m / 2.0 + kBeyondNose_m) {
    return std::nullopt;
  }
  const auto refined = silhouetteOf(rig_, candidate.position, set_.radius_m());
  if (!refined) return std::nullopt;
  // The lens bends a little over a long shift; what is left over follows the refined outline.
  const ImagePoint found = outline->centre + fit.shift;
  candidate.position = candidate.position + refined->tableVector(found - refined->centre);
  candidate.outline = *refined;
  candidate.outline.centre = found;
  candidate.fit = fit;
  candidate.standardUncertainty_m =
      fit.standardUncertainty_px * std::sqrt(std::abs(refined->tableFromImage.determinant()));
  candidate.blur = options.blur;
  lookAtColours(picture, white, candidate);
  return candidate;
}

void CandidateFinder::lookAtColours(const cv::Mat& picture, const WhiteReference& white,
                                    BallCandidate& candidate) const {
  const Eigen::Array3f light = cloth_.lightAt(scale_.toSmall(candidate.outline.centre));
  WhiteReference here = white;
  here.level *= light;
  candidate.colours = coloursOf(picture, candidate.outline, here);
  candidate.colours.brightWhite /= light;
  candidate.colours.brightest /= light;
  candidate.names = likelihoodOfNames(candidate.colours, set_);
}

std::optional<BallCandidate> CandidateFinder::streakAt(const cv::Mat& picture, TablePoint middle, ImageVector blur,
                                                       const WhiteReference& white) const {
  constexpr double kLong = 1.2;     // of the radius: from here on the outline's ends fade out
  constexpr double kSupport = 0.6;  // what a lone streak of the right width is worth as a rim
  constexpr double kUncertaintyOfStreak = 0.04;
  const auto outline = silhouetteOf(rig_, middle, set_.radius_m());
  if (!outline || length(blur) < kLong * outline->radius_px()) return std::nullopt;
  BallCandidate candidate;
  candidate.position = middle;
  candidate.outline = *outline;
  candidate.blur = blur;
  candidate.fromStreak = true;
  candidate.fit.support = kSupport;
  candidate.fit.agreement = 1.0;
  candidate.fit.standardUncertainty_px = 1.0 + kUncertaintyOfStreak * length(blur);
  candidate.fit.usable = true;
  candidate.standardUncertainty_m =
      candidate.fit.standardUncertainty_px * std::sqrt(std::abs(outline->tableFromImage.determinant()));
  lookAtColours(picture, white, candidate);
  return candidate;
}

void CandidateFinder::voteWithin(const cv::Mat& small, const cv::Mat& mask, const cv::Rect& region,
                                 const cv::Rect& area, double radius_px, std::vector<Seed>& seeds) const {
  constexpr double kLeastGradient = 4.0;
  const int margin = static_cast<int>(radius_px) + 2;
  const cv::Rect wide = cv::Rect(area.x - margin, area.y - margin, area.width + 2 * margin, area.height + 2 * margin) &
                        cv::Rect(1, 1, small.cols - 2, small.rows - 2) & region;
  if (wide.empty()) return;
  cv::Mat votes = cv::Mat::zeros(wide.height, wide.width, CV_32F);
  for (int y = wide.y; y < wide.y + wide.height; ++y) {
    for (int x = wide.x; x < wide.x + wide.width; ++x) {
      const ImageVector gradient = strongestGradient(small, x, y);
      const double strength = length(gradient);
      if (strength < kLeastGradient) continue;
      const ImageVector step = (radius_px / strength) * gradient;
      const auto weight = static_cast<float>(std::min(strength, 20.0));
      for (const double sign : {-1.0, 1.0}) {
        const int vx = static_cast<int>(std::lround(x + sign * step.x)) - wide.x;
        const int vy = static_cast<int>(std::lround(y + sign * step.y)) - wide.y;
        if (vx < 0 || vy < 0 || vx >= wide.width || vy >= wide.height) continue;
        if (!mask.at<uchar>(vy + wide.y - region.y, vx + wide.x - region.x)) continue;
        votes.at<float>(vy, vx) += weight;
      }
    }
  }
  cv::GaussianBlur(votes, votes, {0, 0}, 1.0);
  const float least = 0.9F * static_cast<float>(radius_px);
  const int window = std::max(1, static_cast<int>(0.5 * radius_px));
  for (int y = 0; y < votes.rows; ++y) {
    for (int x = 0; x < votes.cols; ++x) {
      const float vote = votes.at<float>(y, x);
      if (vote < least) continue;
      bool peak = true;
      for (int dy = -window; dy <= window && peak; ++dy) {
        for (int dx = -window; dx <= window && peak; ++dx) {
          const int ny = y + dy;
          const int nx = x + dx;
          if (nx < 0 || ny < 0 || nx >= votes.cols || ny >= votes.rows || (dx == 0 && dy == 0)) continue;
          const float other = votes.at<float>(ny, nx);
          peak = vote > other || (vote == other && (dy > 0 || (dy == 0 && dx > 0)));
        }
      }
      if (!peak) continue;
      const ImagePoint at{static_cast<double>(x + wide.x), static_cast<double>(y + wide.y)};
      seeds.push_back({scale_.toFull(at), {}, false});
    }
  }
}

std::vector<CandidateFinder::Seed> CandidateFinder::seedsWithin(const cv::Mat& small, const cv::Mat& away,
                                                                const cv::Mat& mask, const cv::Rect& region, Look look,
                                                                bool clusters) const {
  constexpr double kGloss =
      40.0;  // grey levels; a polished ball shows a lamp or its number even on cloth of its colour
  std::vector<Seed> seeds;
  cv::Mat labels;
  cv::Mat statistics;
  cv::Mat centres;
  const int count = cv::connectedComponentsWithStats(mask, labels, statistics, centres, 8, CV_32S);
  const ImageVector corner{static_cast<double>(region.x), static_cast<double>(region.y)};
  for (int label = 1; label < count; ++label) {
    const cv::Rect area(statistics.at<int>(label, cv::CC_STAT_LEFT), statistics.at<int>(label, cv::CC_STAT_TOP),
                        statistics.at<int>(label, cv::CC_STAT_WIDTH), statistics.at<int>(label, cv::CC_STAT_HEIGHT));
    const double pixels = statistics.at<int>(label, cv::CC_STAT_AREA);
    const ImagePoint middle{area.x + area.width / 2.0 + corner.x, area.y + area.height / 2.0 + corner.y};
    const auto onTable = tableFromImage(rig_, scale_.toFull(middle), set_.radius_m());
    if (!onTable) continue;
    const auto outline = silhouetteOf(rig_, *onTable, set_.radius_m());
    if (!outline) continue;
    const double radius_px = outline->radius_px() / scale_.factor;
    const double disc_px = std::numbers::pi * radius_px * radius_px;
    if (pixels < 0.3 * disc_px) continue;
    const BlobShape shape = shapeOf(labels, label, area);
    const double leastWidth = look == Look::Leftover ? 0.45 : 0.6;
    const bool slim = shape.minor_px < 2.0 * radius_px * 1.35 && shape.minor_px > 2.0 * radius_px * leastWidth;
    // A shadow widens a blob both ways, a streak only along its way.
    const double streak_px = shape.major_px - std::max(shape.minor_px, 2.0 * radius_px);
    const bool filled = pixels > 0.85 * 0.25 * std::numbers::pi * shape.major_px * shape.minor_px;
    bool whole = slim && filled && streak_px < 3.5 * radius_px;
    if (whole && look == Look::Faint) {
      double most = 0.0;
      cv::minMaxLoc(away(cv::Rect(area.x + region.x, area.y + region.y, area.width, area.height)), nullptr, &most);
      whole = most > kGloss && shape.major_px < 1.4 * shape.minor_px;
    }
    if (whole) {
      Seed seed;
      seed.at = scale_.toFull(shape.centre + corner);
      seed.alone = true;
      seed.faint = look == Look::Faint;
      // An even streak of length s drawn by a disc adds about s to the longer extent.
      if (streak_px > (look == Look::Faint ? 1.0 : 0.3) * radius_px)
        seed.blur = (scale_.factor * streak_px) * shape.axis;
      seeds.push_back(seed);
      if (streak_px < 0.3 * radius_px) continue;
    }
    if (look == Look::Clear && clusters) {
      voteWithin(small, mask, region, area + cv::Point(region.x, region.y), radius_px, seeds);
    }
  }
  return seeds;
}

void CandidateFinder::fitSeeds(const cv::Mat& picture, const std::vector<Seed>& seeds, Neighbours known,
                               const WhiteReference& white, std::vector<BallCandidate>& kept) const {
  constexpr double kLeastAgreement = 0.45;
  constexpr double kLeastFaintAgreement = 0.22;
  std::vector<BallCandidate> found;
  for (const Seed& seed : seeds) {
    const auto start = tableFromImage(rig_, seed.at, set_.radius_m());
    if (!start) continue;
    OutlineFitOptions options;
    options.reach_px = 1.6 * scale_.factor + 1.5;
    options.blur = seed.blur;
    auto candidate = fitNear(picture, *start, known, options, white);
    const double leastAgreement = seed.faint ? kLeastFaintAgreement : kLeastAgreement;
    if (candidate && candidate->fit.agreement < leastAgreement) candidate.reset();
    if (!candidate && seed.alone) candidate = streakAt(picture, *start, seed.blur, white);
    if (!candidate) continue;
    candidate->alone = seed.alone;
    found.push_back(*candidate);
  }
  // Two outlines cannot overlap by much: the better one stays. Two balls that touch look like a streak, so that a fair
  // rim counts more than that.
  constexpr double kFairRim = 0.3;
  const auto worth = [](const BallCandidate& c) { return c.fromStreak ? kFairRim : c.quality(); };
  std::ranges::stable_sort(found, [&](const BallCandidate& a, const BallCandidate& b) { return worth(a) > worth(b); });
  for (const BallCandidate& candidate : found) {
    const bool overlaps = std::ranges::any_of(kept, [&](const BallCandidate& other) {
      return distance(candidate.position, other.position) < 1.6 * set_.radius_m();
    });
    if (!overlaps) kept.push_back(candidate);
  }
}

std::vector<BallCandidate> CandidateFinder::find(const cv::Mat& picture, const cv::Mat& small, const cv::Mat& away,
                                                 const cv::Rect& region, std::span<const Silhouette> known,
                                                 const WhiteReference& white, bool clusters) const {
  std::vector<BallCandidate> kept;
  if (region.empty()) return kept;
  const cv::Mat within = away(region);
  cv::Mat mask = within > cloth_.clearly();
  cv::morphologyEx(mask, mask, cv::MORPH_OPEN, searchDisc());
  std::vector<Seed> seeds = seedsWithin(small, away, mask, region, Look::Clear, clusters);
  // A ball of the cloth's own colour shows as a faint ring; whatever ring no clear ball explains is looked at too.
  for (const Seed& faint : seedsWithin(small, away, faintMask(within, cloth_.faintly()), region, Look::Faint, false)) {
    const bool near =
        std::ranges::any_of(seeds, [&](const Seed& seed) { return distance(seed.at, faint.at) < 8.0 * scale_.factor; });
    if (!near) seeds.push_back(faint);
  }
  fitSeeds(picture, seeds, known, white, kept);
  if (clusters) {
    // What is left of a cluster once its clear balls are taken out may be a ball among them.
    std::vector<Silhouette> outlines(known.begin(), known.end());
    for (const BallCandidate& candidate : kept) {
      outlines.push_back(candidate.outline);
      const ImagePoint centre = scale_.toSmall(candidate.outline.centre);
      cv::circle(
          mask,
          {static_cast<int>(std::lround(centre.x)) - region.x, static_cast<int>(std::lround(centre.y)) - region.y},
          static_cast<int>(std::lround(candidate.outline.radius_px() / scale_.factor)), cv::Scalar(0), cv::FILLED);
    }
    cv::morphologyEx(mask, mask, cv::MORPH_OPEN, searchDisc());
    fitSeeds(picture, seedsWithin(small, away, mask, region, Look::Leftover, false), outlines, white, kept);
  }
  // Now that the neighbours are known, their outlines bound each other's rays.
  for (std::size_t i = 0; i < kept.size(); ++i) {
    std::vector<Silhouette> neighbours(known.begin(), known.end());
    bool touching = false;
    for (std::size_t j = 0; j < kept.size(); ++j) {
      if (j == i || distance(kept[i].position, kept[j].position) > 3.0 * set_.radius_m()) continue;
      neighbours.push_back(kept[j].outline);
      touching = true;
    }
    if (!touching) continue;
    OutlineFitOptions options;
    options.reach_px = 2.0;
    options.blur = kept[i].blur;
    auto again = fitNear(picture, kept[i].position, neighbours, options, white);
    if (!again) continue;
    again->alone = kept[i].alone;
    kept[i] = *again;
  }
  return kept;
}

}  // namespace ferrule
