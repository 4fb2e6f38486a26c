// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/nose_survey.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/vision/edge_strip.h"

namespace ferrule {

namespace {

/// Rounded ends of a cushion, left out.
constexpr double kEndLeftOut_m = 0.06;
/// How far off a nose may be seen: less than a cushion's width, so that the rail's edge is never taken for it.
constexpr double kReach_m = 0.045;
constexpr double kAlong_px = 2.0;
constexpr double kAcross_px = 0.5;
/// Share of a nose that must be seen.
constexpr double kLeastShare = 0.5;

/// The plane of the nose's height along one nose, from outside to inside.
struct Strip {
  cv::Mat light;
  double across_m = 0.0;  ///< from column to column
};

std::optional<Strip> noseStrip(const cv::Mat& light, const Rig& rig, const Table& table, const Cushion& cushion) {
  const TableVector whole = cushion.nose.end - cushion.nose.start;
  const TableVector along = unit(whole);
  const double length_m = length(whole) - 2.0 * kEndLeftOut_m;
  const TablePoint middle = cushion.nose.start + 0.5 * whole;
  const auto seen = imageFromTable(rig, {middle.x, middle.y, table.noseHeight_m});
  const TablePoint inside = middle + 0.01 * cushion.inward;
  const auto seenInside = imageFromTable(rig, {inside.x, inside.y, table.noseHeight_m});
  if (!seen || !seenInside || !(length_m > 0.0)) return std::nullopt;
  const double scale_pxpm = distance(*seen, *seenInside) / 0.01;
  const double along_m = kAlong_px / scale_pxpm;
  const double across_m = kAcross_px / scale_pxpm;
  const int rows = static_cast<int>(length_m / along_m);
  const int half = static_cast<int>(kReach_m / across_m);
  if (rows < kLeastStripRows || half < kLeastHalfStrip) return std::nullopt;
  const auto place = [&](double row, double column) {
    const TablePoint p =
        cushion.nose.start + (kEndLeftOut_m + row * along_m) * along + ((column - half) * across_m) * cushion.inward;
    return imageFromTable(rig, {p.x, p.y, table.noseHeight_m});
  };
  return Strip{stripOf(light, rows, 2 * half + 1, place), across_m};
}

}  // namespace

std::optional<NoseStraightness> straightnessOf(const cv::Mat& light, const Rig& rig, const Table& table,
                                               const Cushion& cushion) {
  const auto strip = noseStrip(light, rig, table, cushion);
  if (!strip) return std::nullopt;
  // The nose is lighter or darker than the cloth below it, by the lamps; the clearer of the two is taken.
  const FollowedEdge lighter = followEdge(strip->light, EdgeKind::Lighter);
  const FollowedEdge darker = followEdge(strip->light, EdgeKind::Darker);
  const auto& edges = (lighter.contrast > darker.contrast ? lighter : darker).places;
  if (static_cast<double>(edges.size()) < kLeastShare * strip->light.rows) return std::nullopt;

  NoseStraightness result;
  result.cushion = cushion.name;
  result.places = static_cast<int>(edges.size());
  double sum = 0.0;
  for (const double miss : missesOfPolynomial(edges, 1)) {
    sum += miss * miss;
    result.max_m = std::max(result.max_m, std::abs(miss) * strip->across_m);
  }
  result.rms_m = std::sqrt(sum / static_cast<double>(edges.size())) * strip->across_m;
  return result;
}

void NoseSurvey::add(const cv::Mat& picture) {
  pictures_.push_back(picture.clone());
}

std::vector<NoseStraightness> NoseSurvey::result(const Rig& rig, const Table& table) const {
  std::vector<NoseStraightness> noses;
  if (pictures_.empty()) return noses;
  cv::Mat grey, light;
  cv::cvtColor(medianPicture(pictures_), grey, cv::COLOR_BGR2GRAY);
  grey.convertTo(light, CV_32F);
  for (const Cushion& cushion : cushions(table)) {
    if (const auto nose = straightnessOf(light, rig, table, cushion)) noses.push_back(*nose);
  }
  return noses;
}

}  // namespace ferrule
