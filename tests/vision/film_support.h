// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core.hpp>
#include <string>

namespace ferrule {

/// A film of tests/data/films.
inline std::string film(const char* name) {
  return std::string(FERRULE_SOURCE_DIR "/tests/data/films/") + name;
}

/// The number that is drawn as eight fields along the top of variable-rate.*.
inline long drawnNumber(const cv::Mat& picture) {
  long number = 0;
  for (int field = 0; field < 8; ++field) {
    if (picture.at<cv::Vec3b>(4, field * 8 + 4)[1] > 128) number |= 1L << field;
  }
  return number;
}

}  // namespace ferrule
