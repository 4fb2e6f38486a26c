// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/projected_grid.h"

#include <algorithm>
#include <opencv2/imgproc.hpp>

#include "core/camera/image_size_mismatch.h"
#include "core/vision/tag_finder.h"

namespace ferrule {

namespace {

/// Light this near a nose may fall on the cushion's edge.
constexpr double kFromNose_m = 0.010;

cv::Mat greyOf(const cv::Mat& picture) {
  if (picture.channels() == 1) return picture;
  cv::Mat grey;
  cv::cvtColor(picture, grey, cv::COLOR_BGR2GRAY);
  return grey;
}

/// What the projector adds to the room's light, over the whole range of grey.
cv::Mat lightOf(const cv::Mat& picture, const cv::Mat& dark) {
  cv::Mat light = greyOf(picture);
  if (dark.size() != picture.size()) return light;
  cv::subtract(light, greyOf(dark), light);
  cv::normalize(light, light, 0, 255, cv::NORM_MINMAX);
  return light;
}

std::vector<TagObservation> tagsOf(const TagFinder& finder, const cv::Mat& light, const ProjectorGrid& grid) {
  auto tags = finder.find(light);
  std::erase_if(tags, [&](const TagObservation& tag) {
    return std::ranges::find(grid.tags, tag.id, &TagObservation::id) == grid.tags.end();
  });
  return tags;
}

bool fallsOnCloth(TablePoint place, const Table& table) {
  if (std::abs(place.x) > table.length_m / 2.0 - kFromNose_m || std::abs(place.y) > table.width_m / 2.0 - kFromNose_m)
    return false;
  return std::ranges::none_of(
      pockets(table), [&](const Pocket& pocket) { return distance(place, pocket.mouth) < pocket.mouth_m / 2.0; });
}

}  // namespace

Result<std::vector<ProjectedCorner>> findProjectedGrid(const cv::Mat& picture, const cv::Mat& dark,
                                                       const ProjectorGrid& grid, const Rig& rig, const Table& table,
                                                       const std::string& name, const std::string& gridName) {
  const ImageSize size{picture.cols, picture.rows};
  if (size != rig.lens.size) return tl::make_unexpected(imageSizeMismatch(name, size, "the rig", rig.lens.size));
  const auto finder = TagFinder::forDictionary(grid.dictionary);
  if (!finder) return failure(ErrorCode::FieldInvalid, gridName, "dictionary");
  // Taking the room's light out adds the noise of a second picture: only where it shows more.
  cv::Mat light = greyOf(picture);
  auto tags = tagsOf(*finder, light, grid);
  if (!dark.empty()) {
    const cv::Mat alone = lightOf(picture, dark);
    auto more = tagsOf(*finder, alone, grid);
    if (more.size() > tags.size()) {
      light = alone;
      tags = std::move(more);
    }
  }
  // A mirrored tag may pass for another one: what counts is which way round shows more of them.
  if (tags.size() < grid.tags.size() / 2) {
    cv::Mat mirrored;
    cv::flip(light, mirrored, 1);
    if (tagsOf(*finder, mirrored, grid).size() > tags.size())
      return failure(ErrorCode::ImageMirrored, name, "projected");
  }
  for (std::size_t i = 1; i < tags.size(); ++i) {
    if (tags[i].id == tags[i - 1].id) {
      return failure(ErrorCode::TagsInconsistent, name, "projected-twice", {static_cast<double>(tags[i].id)});
    }
  }
  std::vector<ProjectedCorner> corners;
  for (const TagObservation& seen : tags) {
    const TagObservation& sent = *std::ranges::find(grid.tags, seen.id, &TagObservation::id);
    for (std::size_t i = 0; i < 4; ++i) {
      const auto place = tableFromImage(rig, seen.corners[i], 0.0);
      if (place && fallsOnCloth(*place, table)) corners.push_back({seen.id, sent.corners[i], *place});
    }
  }
  if (corners.empty())
    return failure(ErrorCode::TagsTooFew, name, "projected", {0.0, static_cast<double>(kLeastProjectedTags)});
  return corners;
}

}  // namespace ferrule
