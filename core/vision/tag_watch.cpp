// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/tag_watch.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/camera/pose_fit.h"
#include "core/camera/rig_calibration.h"
#include "core/vision/outliers.h"

namespace ferrule {

namespace {

constexpr double kBetweenLooks_s = 1.0;
/// While the reference is gathered and while a move is made sure of.
constexpr double kQuick_s = 0.15;
constexpr std::size_t kLooksTogether = 5;
/// A camera that has come to rest shifts the tags by no more than this from look to look.
constexpr double kStill_m = 0.0005;
constexpr std::size_t kTagsNeeded = 3;
/// Around a tag's expected place, in its own sides.
constexpr double kMargin = 1.0;

using Tags = std::map<int, TagObservation>;

/// Each tag's corners averaged over the looks that have it in more than half.
Tags averaged(const std::vector<Tags>& looks) {
  std::map<int, std::vector<TagObservation>> all;
  for (const Tags& look : looks) {
    for (const auto& [id, tag] : look)
      all[id].push_back(tag);
  }
  Tags result;
  for (const auto& [id, seen] : all) {
    if (2 * seen.size() <= looks.size()) continue;
    TagObservation mean;
    mean.id = id;
    const auto n = static_cast<double>(seen.size());
    for (const TagObservation& tag : seen) {
      for (std::size_t i = 0; i < 4; ++i)
        mean.corners[i] = {mean.corners[i].x + tag.corners[i].x / n, mean.corners[i].y + tag.corners[i].y / n};
    }
    result[id] = mean;
  }
  return result;
}

}  // namespace

std::optional<TagWatch> TagWatch::of(const Rig& rig, const MeasuredTable& measured) {
  if (measured.tags.size() < kTagsNeeded) return std::nullopt;
  auto finder = TagFinder::forDictionary(measured.tagDictionary);
  if (!finder) return std::nullopt;
  return TagWatch(rig, measured, std::move(*finder));
}

Tags TagWatch::tagsNear(const cv::Mat& picture) const {
  Tags result;
  const cv::Rect whole(0, 0, picture.cols, picture.rows);
  for (const RailTag& tag : measured_.tags) {
    std::vector<cv::Point2f> corners;
    for (const TablePoint3& corner : tag.corners) {
      const auto pixel = imageFromTable(rig_, corner);
      if (pixel) corners.emplace_back(static_cast<float>(pixel->x), static_cast<float>(pixel->y));
    }
    if (corners.size() < 4) continue;
    cv::Rect area = cv::boundingRect(corners);
    const int margin = static_cast<int>(kMargin * std::max(area.width, area.height));
    area = cv::Rect(area.x - margin, area.y - margin, area.width + 2 * margin, area.height + 2 * margin) & whole;
    if (area.empty()) continue;
    const auto found = finder_.find(picture(area));
    const auto seen = std::ranges::find(found, tag.id, &TagObservation::id);
    if (seen == found.end()) continue;
    TagObservation shifted = *seen;
    for (ImagePoint& corner : shifted.corners)
      corner = {corner.x + area.x, corner.y + area.y};
    result[tag.id] = shifted;
  }
  if (result.size() >= kTagsNeeded) return result;
  // Hidden, or moved out of these places altogether.
  for (const TagObservation& found : finder_.find(picture)) {
    if (std::ranges::find(measured_.tags, found.id, &RailTag::id) != measured_.tags.end()) result[found.id] = found;
  }
  return result;
}

std::optional<double> TagWatch::shift_m(const Tags& from, const Tags& to) const {
  std::vector<double> shifts;
  for (const RailTag& tag : measured_.tags) {
    const auto before = from.find(tag.id);
    const auto now = to.find(tag.id);
    if (before == from.end() || now == to.end()) continue;
    TableVector mean;
    bool reached = true;
    for (std::size_t i = 0; i < 4; ++i) {
      const auto a = tableFromImage(rig_, before->second.corners[i], tag.corners[i].z);
      const auto b = tableFromImage(rig_, now->second.corners[i], tag.corners[i].z);
      reached = reached && a && b;
      if (a && b) mean = mean + (*b - *a) / 4.0;
    }
    if (reached) shifts.push_back(length(mean));
  }
  if (shifts.size() < kTagsNeeded) return std::nullopt;
  // The lower middle: one pushed tag, or two of four, is no camera.
  std::ranges::sort(shifts);
  return shifts[(shifts.size() - 1) / 2];
}

std::optional<Rig> TagWatch::solved(const std::vector<Tags>& looks, long image) const {
  const Tags seen = averaged(looks);
  std::vector<Sighting> sightings;
  for (const RailTag& tag : measured_.tags) {
    const auto found = seen.find(tag.id);
    if (found == seen.end()) continue;
    const double u_px = cornerUncertainty_px({found->second, 0.0, static_cast<int>(looks.size())}, tag.corners);
    for (std::size_t i = 0; i < 4; ++i)
      sightings.push_back({tag.corners[i], found->second.corners[i], u_px});
  }
  if (sightings.size() < 4 * kTagsNeeded) return std::nullopt;
  const auto fit = fitPose(rig_.lens, sightings);
  if (!fit) return std::nullopt;
  Rig rig = rig_;
  rig.pose = fit->pose;
  rig.poseCovariance = fit->covariance;
  rig.poseRms_px = fit->rms_px;
  rig.chain = {};
  for (Correction correction : rig_.chain.corrections()) {
    if (correction.kind == CorrectionKind::Pose) {
      correction.purpose = "where the camera is from image " + std::to_string(image) + " on, from the table's tags";
    }
    if (!rig.chain.add(std::move(correction))) return std::nullopt;
  }
  return rig;
}

std::optional<CameraMove> TagWatch::look(const cv::Mat& picture, long image, double time_s) {
  if (time_s < next_s_) return std::nullopt;
  const Tags seen = tagsNear(picture);
  if (reference_.empty()) {
    next_s_ = time_s + kQuick_s;
    still_s_ = time_s;
    if (seen.size() < kTagsNeeded) return std::nullopt;
    first_.push_back(seen);
    if (first_.size() >= kLooksTogether) {
      reference_ = averaged(first_);
      first_.clear();
    }
    return std::nullopt;
  }
  const auto shift = shift_m(reference_, seen);
  if (!shift) {
    // Nothing can be said: somebody stands before the tags.
    next_s_ = time_s + (moving_ ? kQuick_s : kBetweenLooks_s);
    return std::nullopt;
  }
  if (*shift <= kLeastMove_m) {
    moved_.clear();
    moving_ = false;
    still_s_ = time_s;
    next_s_ = time_s + kBetweenLooks_s;
    return std::nullopt;
  }
  next_s_ = time_s + kQuick_s;
  if (!moving_) {
    moving_ = true;
    movedImage_ = image;
    moved_s_ = time_s;
  }
  // Still on the way: what was seen before is not where it comes to rest.
  if (!moved_.empty() && shift_m(moved_.back(), seen).value_or(0.0) > kStill_m) moved_.clear();
  moved_.push_back(seen);
  if (moved_.size() < kLooksTogether) return std::nullopt;
  auto rig = solved(moved_, movedImage_);
  if (!rig) {
    moved_.erase(moved_.begin());
    return std::nullopt;
  }
  CameraMove move{movedImage_, moved_s_, still_s_, time_s, *shift, std::move(*rig)};
  reference_ = averaged(moved_);
  moved_.clear();
  moving_ = false;
  still_s_ = time_s;
  next_s_ = time_s + kBetweenLooks_s;
  rig_ = move.rig;
  return move;
}

}  // namespace ferrule
