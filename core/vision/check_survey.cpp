// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/check_survey.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/vision/ball_candidates.h"
#include "core/vision/cloth_model.h"
#include "core/vision/edge_strip.h"
#include "core/vision/line_survey.h"

namespace ferrule {

namespace {

/// People move on between so many pictures, kept at even distances.
constexpr int kPictures = 7;
constexpr int kPictureStride = 4;

/// The way round that puts the table's corners and tags nearest to where they are seen.
TableWay wayOf(const ClothOutline& outline, const MeasuredTable& measured, const Rig& rig,
               const std::vector<AveragedTag>& tags) {
  std::array<double, 2> apart{};
  const auto vote = [&](TablePoint place, ImagePoint seen) {
    for (const TableWay way : {TableWay::HeadAtStart, TableWay::HeadAtEnd}) {
      apart[way == TableWay::HeadAtStart ? 0 : 1] +=
          distance(roughImageFromTable(outline, way, measured.table, place), seen);
    }
  };
  for (const AveragedTag& seen : tags) {
    const auto tag = std::ranges::find(measured.tags, seen.tag.id, &RailTag::id);
    if (tag == measured.tags.end()) continue;
    for (std::size_t i = 0; i < 4; ++i)
      vote({tag->corners[i].x, tag->corners[i].y}, seen.tag.corners[i]);
  }
  for (const double x : {-0.5, 0.5}) {
    for (const double y : {-0.5, 0.5}) {
      const TablePoint corner{x * measured.table.length_m, y * measured.table.width_m};
      const auto seen = imageFromTable(rig, {corner.x, corner.y, measured.table.noseHeight_m});
      if (seen) vote(corner, *seen);
    }
  }
  return apart[0] <= apart[1] ? TableWay::HeadAtStart : TableWay::HeadAtEnd;
}

/// Whether two sightings are of one ball.
constexpr double kSameBall_px = 3.0;
/// In how many of the kept pictures a resting ball must be found.
constexpr int kLeastSightings = 3;
/// Share of an outline's rays that must agree for its size to be believed.
constexpr double kLeastSupport = 0.7;

}  // namespace

Result<CheckSurvey> CheckSurvey::of(const MeasuredTable& measured, const std::string& tableName) {
  CheckSurvey survey(measured);
  if (!measured.tags.empty()) {
    auto tags = TagSurvey::ofAny(measured, tableName);
    if (!tags) return tl::make_unexpected(tags.error());
    survey.tags_.emplace(std::move(*tags));
  }
  return survey;
}

void CheckSurvey::add(const cv::Mat& picture) {
  if (tags_) tags_->add(picture);
  if (images_++ % kPictureStride == 0 && pictures_.size() < kPictures) pictures_.push_back(picture.clone());
}

Result<CheckEvidence> CheckSurvey::result(const Rig& rig, const std::string& film) const {
  CheckEvidence evidence;
  if (pictures_.empty()) return evidence;
  evidence.filmSize = {pictures_.front().cols, pictures_.front().rows};
  if (tags_) {
    auto tags = tags_->seen(film);
    if (!tags) return tl::make_unexpected(tags.error());
    evidence.tags = std::move(*tags);
  }
  const cv::Mat median = medianPicture(pictures_);
  if (const auto outline = ClothOutline::find(median)) {
    evidence.lines = traceLines(median, *outline, wayOf(*outline, measured_, rig, evidence.tags), measured_.table);
  }
  return evidence;
}

std::vector<BallSighting> CheckSurvey::restingBalls(const Rig& near) const {
  struct Group {
    BallSighting sum;
    double radiusSquares = 0.0;
  };
  std::vector<Group> groups;
  const SmallScale scale = smallScaleFor(near, measured_.balls.radius_m());
  ClothModel cloth(near, measured_.table, scale);
  const CandidateFinder finder(near, measured_, scale, cloth);
  for (const cv::Mat& picture : pictures_) {
    cv::Mat small;
    cv::resize(picture, small, {picture.cols / scale.factor, picture.rows / scale.factor}, 0, 0, cv::INTER_AREA);
    cloth.start(small);
    for (const BallCandidate& ball : finder.find(picture, small, cloth.difference(small),
                                                 {0, 0, small.cols, small.rows}, {}, WhiteReference{}, false)) {
      if (!ball.alone || !ball.fit.usable || ball.fit.support < kLeastSupport) continue;
      const double radius_px = ball.outline.radius_px() * ball.fit.radiusScale;
      const auto same = std::ranges::find_if(groups, [&](const Group& group) {
        const double n = group.sum.images;
        return distance(ball.outline.centre, {group.sum.centre.x / n, group.sum.centre.y / n}) < kSameBall_px;
      });
      Group& group = same != groups.end() ? *same : groups.emplace_back();
      group.sum.centre = {group.sum.centre.x + ball.outline.centre.x, group.sum.centre.y + ball.outline.centre.y};
      group.sum.radius_px += radius_px;
      group.radiusSquares += radius_px * radius_px;
      ++group.sum.images;
    }
  }
  std::vector<BallSighting> balls;
  for (const Group& group : groups) {
    if (group.sum.images < kLeastSightings) continue;
    const double n = group.sum.images;
    BallSighting ball{{group.sum.centre.x / n, group.sum.centre.y / n}, group.sum.radius_px / n, 0.0, group.sum.images};
    const double variance = std::max(0.0, group.radiusSquares / n - ball.radius_px * ball.radius_px);
    ball.u_px = std::sqrt(variance / n);
    balls.push_back(ball);
  }
  return balls;
}

}  // namespace ferrule
