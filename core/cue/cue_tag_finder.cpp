// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/cue_tag_finder.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/cue/tag_need.h"

namespace ferrule {

namespace {

/// A tag is enlarged to this side, and tried a step larger and smaller where that does not read it.
constexpr double kSideWanted_px = 36.0;
constexpr int kMostEnlarged = 4;
/// Tags that were seen so long ago may be anywhere.
constexpr double kFollow_s = 0.4;
constexpr double kBetweenSearches_s = 0.25;
/// Between two images a cue moves no farther than this; strikes of 10 m/s are for a shorter time than one image.
constexpr double kMargin_m = 0.08;
/// How far before or behind the ball the tip may be while tags are looked for.
constexpr double kTipFromBall_m = 0.35;
constexpr double kCueHeight_m = 0.07;
/// A reading of another size is none of these tags.
constexpr double kLeastSize = 0.5;
constexpr double kMostSize = 2.0;

double sideOf(const TagObservation& tag) {
  double sum = 0.0;
  for (std::size_t i = 0; i < 4; ++i)
    sum += distance(tag.corners[i], tag.corners[(i + 1) % 4]) / 4.0;
  return sum;
}

}  // namespace

std::optional<CueTagFinder> CueTagFinder::of(const Rig& rig, const MeasuredCue& cue) {
  auto finder = TagFinder::forDictionary(cue.tags.dictionary);
  if (!finder) return std::nullopt;
  return CueTagFinder(rig, cue, std::move(*finder));
}

cv::Rect CueTagFinder::areaToSearch(cv::Size size, double time_s, const std::optional<TablePoint>& cueBall) {
  const cv::Rect whole({}, size);
  const double perMetre = expectedTagSide_px(rig_, cue_, cueBall.value_or(TablePoint{})) / cue_.tags.blackSide_m;
  const auto around = [&](const std::vector<cv::Point2f>& points, double margin_m) {
    const int margin = static_cast<int>(std::ceil(margin_m * perMetre));
    const cv::Rect box = cv::boundingRect(points);
    return cv::Rect(box.x - margin, box.y - margin, box.width + 2 * margin, box.height + 2 * margin) & whole;
  };
  const auto [nearest, farthest] = std::ranges::minmax(cue_.tags.centreFromTip_m);
  if (last_ && time_s - last_->time_s <= kFollow_s) {
    std::vector<cv::Point2f> corners;
    for (const TagObservation& tag : last_->tags) {
      for (const ImagePoint& corner : tag.corners)
        corners.emplace_back(static_cast<float>(corner.x), static_cast<float>(corner.y));
    }
    // Room for those that were not read.
    const double missing_m = last_->tags.size() < cue_.tags.ids.size() ? farthest - nearest : 0.0;
    return around(corners, kMargin_m + missing_m + cue_.tags.blackSide_m);
  }
  last_.reset();
  if (time_s < next_s_) return {};
  next_s_ = time_s + kBetweenSearches_s;
  const auto ball = cueBall ? imageFromTable(rig_, {cueBall->x, cueBall->y, kCueHeight_m}) : std::nullopt;
  if (!ball) return whole;
  return around({cv::Point2f(static_cast<float>(ball->x), static_cast<float>(ball->y))},
                farthest + cue_.tags.blackSide_m + kTipFromBall_m);
}

std::vector<TagObservation> CueTagFinder::tagsIn(const cv::Mat& picture, cv::Rect area, double side_px) const {
  cv::Mat grey = picture(area);
  if (grey.channels() == 3) cv::cvtColor(grey, grey, cv::COLOR_BGR2GRAY);
  const int wanted = std::clamp(static_cast<int>(std::ceil(kSideWanted_px / std::max(side_px, 1.0))), 1, kMostEnlarged);
  std::vector<TagObservation> tags(cue_.tags.ids.size());
  std::vector<bool> read(tags.size(), false);
  for (const int enlarged : {wanted, wanted + 1, std::max(1, wanted - 1)}) {
    cv::Mat large = grey;
    if (enlarged > 1) cv::resize(grey, large, {}, enlarged, enlarged, cv::INTER_CUBIC);
    const auto found = finder_.find(large);
    for (std::size_t i = 0; i < tags.size(); ++i) {
      // Two of one id: one of them is something else.
      if (read[i] || std::ranges::count(found, cue_.tags.ids[i], &TagObservation::id) != 1) continue;
      TagObservation tag = *std::ranges::find(found, cue_.tags.ids[i], &TagObservation::id);
      // Pixel centres lie at whole numbers in both pictures.
      for (ImagePoint& corner : tag.corners) {
        corner = {(corner.x + 0.5) / enlarged - 0.5 + area.x, (corner.y + 0.5) / enlarged - 0.5 + area.y};
      }
      const double size = sideOf(tag) / side_px;
      if (size < kLeastSize || size > kMostSize) continue;
      tags[i] = tag;
      read[i] = true;
    }
    if (std::ranges::find(read, false) == read.end()) break;
  }
  std::vector<TagObservation> result;
  for (std::size_t i = 0; i < tags.size(); ++i) {
    if (read[i]) result.push_back(tags[i]);
  }
  return result;
}

std::optional<CueSighting> CueTagFinder::look(const cv::Mat& picture, long image, double time_s,
                                              const std::optional<TablePoint>& cueBall) {
  const cv::Rect area = areaToSearch(picture.size(), time_s, cueBall);
  if (area.empty()) return std::nullopt;
  CueSighting sighting{image, time_s,
                       tagsIn(picture, area, expectedTagSide_px(rig_, cue_, cueBall.value_or(TablePoint{})))};
  if (sighting.tags.empty()) return std::nullopt;
  last_ = sighting;
  return sighting;
}

}  // namespace ferrule
