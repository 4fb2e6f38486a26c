// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <list>
#include <opencv2/core/mat.hpp>

namespace ferrule {

/// The pictures of a film that were used last, as many as fit into a number of bytes (one always does).
class PictureCache {
 public:
  explicit PictureCache(std::size_t most_bytes) : most_bytes_(most_bytes) {}

  /// An empty picture when it is not kept.
  [[nodiscard]] cv::Mat find(long number);
  void keep(long number, cv::Mat picture);
  [[nodiscard]] bool holds(long number) const;

 private:
  struct Entry {
    long number = 0;
    cv::Mat picture;
  };

  std::size_t most_bytes_;
  std::size_t held_bytes_ = 0;
  std::list<Entry> entries_;  ///< the one used last is in front
};

}  // namespace ferrule
