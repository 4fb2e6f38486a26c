// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/tag_survey.h"

#include <algorithm>
#include <cmath>
#include <opencv2/core.hpp>

#include "core/vision/outliers.h"

namespace ferrule {

namespace {

constexpr std::size_t kImagesPerTag = 20;
constexpr std::size_t kTagsNeeded = 3;
/// A tag that shows in fewer images than this share was a chance reading.
constexpr double kLeastShare = 0.2;

AveragedTag averaged(const std::vector<TagObservation>& sightings) {
  AveragedTag result;
  result.tag.id = sightings.front().id;
  result.images = static_cast<int>(sightings.size());
  double spread = 0.0;
  for (std::size_t corner = 0; corner < 4; ++corner) {
    const auto middleOf = [&](double ImagePoint::*axis) {
      std::vector<double> values;
      for (const TagObservation& seen : sightings)
        values.push_back(seen.corners[corner].*axis);
      const double middle = median(values);
      for (double& value : values)
        value = std::abs(value - middle);
      spread += kDeviationFromMedian * median(values);
      return middle;
    };
    result.tag.corners[corner] = {middleOf(&ImagePoint::x), middleOf(&ImagePoint::y)};
  }
  result.scatter_px = spread / 8.0;
  return result;
}

}  // namespace

Result<TagSurvey> TagSurvey::of(const MeasuredTable& measured, const std::string& tableName) {
  if (measured.tags.size() < kTagsNeeded) {
    return failure(ErrorCode::TagsTooFew, tableName, "table",
                   {static_cast<double>(measured.tags.size()), static_cast<double>(kTagsNeeded)});
  }
  return ofAny(measured, tableName);
}

Result<TagSurvey> TagSurvey::ofAny(const MeasuredTable& measured, const std::string& tableName) {
  auto finder = TagFinder::forDictionary(measured.tagDictionary);
  if (!finder) return failure(ErrorCode::FieldInvalid, tableName, "tag_dictionary");
  TagSurvey survey(std::move(*finder));
  for (const RailTag& tag : measured.tags)
    survey.seen_[tag.id];
  return survey;
}

void TagSurvey::add(const cv::Mat& picture) {
  ++images_;
  const auto found = finder_.find(picture);
  std::size_t known = 0;
  for (auto& [id, sightings] : seen_) {
    const auto count = std::ranges::count(found, id, &TagObservation::id);
    if (count == 0) continue;
    ++known;
    if (count > 1) {
      ++twice_[id];
    } else {
      sightings.push_back(*std::ranges::find(found, id, &TagObservation::id));
    }
  }
  if (known >= kTagsNeeded) return;
  cv::Mat flipped;
  cv::flip(picture, flipped, 1);
  const auto mirrored = finder_.find(flipped);
  const auto knownThere = std::ranges::count_if(seen_, [&](const auto& entry) {
    return std::ranges::find(mirrored, entry.first, &TagObservation::id) != mirrored.end();
  });
  if (static_cast<std::size_t>(knownThere) >= kTagsNeeded) ++mirroredImages_;
}

bool TagSurvey::enough() const {
  return std::ranges::all_of(seen_, [](const auto& entry) { return entry.second.size() >= kImagesPerTag; });
}

Result<std::vector<AveragedTag>> TagSurvey::seen(const std::string& film) const {
  for (const auto& [id, images] : twice_) {
    if (2 * images > images_) {
      return failure(ErrorCode::TagsInconsistent, film, "twice", {static_cast<double>(id)});
    }
  }
  if (2 * mirroredImages_ > images_) return failure(ErrorCode::ImageMirrored, film);
  std::vector<AveragedTag> tags;
  for (const auto& [id, sightings] : seen_) {
    if (!sightings.empty() && static_cast<double>(sightings.size()) >= kLeastShare * images_) {
      tags.push_back(averaged(sightings));
    }
  }
  return tags;
}

Result<std::vector<AveragedTag>> TagSurvey::result(const std::string& film) const {
  auto tags = seen(film);
  if (tags && tags->size() < kTagsNeeded) {
    return failure(ErrorCode::TagsTooFew, film, {},
                   {static_cast<double>(tags->size()), static_cast<double>(kTagsNeeded)});
  }
  return tags;
}

}  // namespace ferrule
