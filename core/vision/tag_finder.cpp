// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/tag_finder.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/aruco.hpp>
#include <opencv2/imgproc.hpp>
#include <utility>

#include "core/vision/side_fit.h"

namespace ferrule {

namespace {

constexpr double kWindowPerModule = 0.3;
constexpr int kLeastWindow_px = 2;
constexpr int kMostWindow_px = 10;
constexpr int kRefineSteps = 50;
constexpr double kRefined_px = 0.001;

constexpr std::array<std::pair<std::string_view, int>, 21> kDictionaries{{
    {"DICT_4X4_50", cv::aruco::DICT_4X4_50},
    {"DICT_4X4_100", cv::aruco::DICT_4X4_100},
    {"DICT_4X4_250", cv::aruco::DICT_4X4_250},
    {"DICT_4X4_1000", cv::aruco::DICT_4X4_1000},
    {"DICT_5X5_50", cv::aruco::DICT_5X5_50},
    {"DICT_5X5_100", cv::aruco::DICT_5X5_100},
    {"DICT_5X5_250", cv::aruco::DICT_5X5_250},
    {"DICT_5X5_1000", cv::aruco::DICT_5X5_1000},
    {"DICT_6X6_50", cv::aruco::DICT_6X6_50},
    {"DICT_6X6_100", cv::aruco::DICT_6X6_100},
    {"DICT_6X6_250", cv::aruco::DICT_6X6_250},
    {"DICT_6X6_1000", cv::aruco::DICT_6X6_1000},
    {"DICT_7X7_50", cv::aruco::DICT_7X7_50},
    {"DICT_7X7_100", cv::aruco::DICT_7X7_100},
    {"DICT_7X7_250", cv::aruco::DICT_7X7_250},
    {"DICT_7X7_1000", cv::aruco::DICT_7X7_1000},
    {"DICT_ARUCO_ORIGINAL", cv::aruco::DICT_ARUCO_ORIGINAL},
    {"DICT_APRILTAG_16h5", cv::aruco::DICT_APRILTAG_16h5},
    {"DICT_APRILTAG_25h9", cv::aruco::DICT_APRILTAG_25h9},
    {"DICT_APRILTAG_36h10", cv::aruco::DICT_APRILTAG_36h10},
    {"DICT_APRILTAG_36h11", cv::aruco::DICT_APRILTAG_36h11},
}};

double shortestSide(const std::vector<cv::Point2f>& corners) {
  double shortest = INFINITY;
  for (std::size_t i = 0; i < 4; ++i)
    shortest = std::min(shortest, cv::norm(corners[i] - corners[(i + 1) % 4]));
  return shortest;
}

}  // namespace

std::optional<int> markerDictionaryNamed(std::string_view name) {
  for (const auto& [known, number] : kDictionaries) {
    if (known == name) return number;
  }
  return std::nullopt;
}

std::optional<int> modulesAcross(std::string_view name) {
  const auto number = markerDictionaryNamed(name);
  if (!number) return std::nullopt;
  return cv::aruco::getPredefinedDictionary(*number)->markerSize + 2;
}

struct TagFinder::Impl {
  cv::Ptr<cv::aruco::Dictionary> dictionary;
  cv::Ptr<cv::aruco::DetectorParameters> parameters;
};

TagFinder::TagFinder(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
TagFinder::~TagFinder() = default;
TagFinder::TagFinder(TagFinder&&) noexcept = default;
TagFinder& TagFinder::operator=(TagFinder&&) noexcept = default;

std::optional<TagFinder> TagFinder::forDictionary(std::string_view name) {
  const auto number = markerDictionaryNamed(name);
  if (!number) return std::nullopt;
  auto impl = std::make_unique<Impl>();
  impl->dictionary = cv::aruco::getPredefinedDictionary(*number);
  impl->parameters = cv::aruco::DetectorParameters::create();
  // The library's own refinement uses one window for all tags, which pulls the corners of small ones astray.
  impl->parameters->cornerRefinementMethod = cv::aruco::CORNER_REFINE_NONE;
  return TagFinder(std::move(impl));
}

std::vector<TagObservation> TagFinder::find(const cv::Mat& picture) const {
  cv::Mat grey = picture;
  if (picture.channels() == 3) cv::cvtColor(picture, grey, cv::COLOR_BGR2GRAY);
  std::vector<std::vector<cv::Point2f>> quads;
  std::vector<int> ids;
  cv::aruco::detectMarkers(grey, impl_->dictionary, quads, ids, impl_->parameters);

  std::vector<TagObservation> found;
  for (std::size_t i = 0; i < ids.size(); ++i) {
    auto& corners = quads[i];
    const double module_px = shortestSide(corners) / (impl_->dictionary->markerSize + 2);
    const int window =
        std::clamp(static_cast<int>(std::lround(kWindowPerModule * module_px)), kLeastWindow_px, kMostWindow_px);
    cv::cornerSubPix(grey, corners, {window, window}, {-1, -1},
                     {cv::TermCriteria::COUNT | cv::TermCriteria::EPS, kRefineSteps, kRefined_px});
    TagObservation tag;
    tag.id = ids[i];
    for (std::size_t k = 0; k < 4; ++k)
      tag.corners[k] = {corners[k].x, corners[k].y};
    if (const auto better = cornersFromSides(grey, tag.corners, module_px)) tag.corners = *better;
    found.push_back(tag);
  }
  std::ranges::stable_sort(found, {}, &TagObservation::id);
  return found;
}

}  // namespace ferrule
