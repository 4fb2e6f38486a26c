// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <opencv2/core/mat.hpp>
#include <optional>
#include <string_view>
#include <vector>

#include "core/camera/tag_observation.h"

namespace ferrule {

/// OpenCV's number of a marker dictionary from its name ("DICT_4X4_50"); nothing for an unknown name.
[[nodiscard]] std::optional<int> markerDictionaryNamed(std::string_view name);

/// Modules along a side of a dictionary's tags, with their dark border; nothing for an unknown name.
[[nodiscard]] std::optional<int> modulesAcross(std::string_view name);

/// Finds printed tags of one dictionary, with corners refined to a fraction of a pixel.
class TagFinder {
 public:
  /// Nothing for an unknown dictionary.
  [[nodiscard]] static std::optional<TagFinder> forDictionary(std::string_view name);
  ~TagFinder();
  TagFinder(TagFinder&&) noexcept;
  TagFinder& operator=(TagFinder&&) noexcept;

  /// Every tag in an 8-bit grey or BGR picture, sorted by id; an id may come twice. Corners are refined within a window
  /// that fits each tag's own modules; those of one tag never reach the next module's edge.
  [[nodiscard]] std::vector<TagObservation> find(const cv::Mat& picture) const;

 private:
  struct Impl;
  explicit TagFinder(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace ferrule
