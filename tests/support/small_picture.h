// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/imgproc.hpp>

#include "core/vision/cloth_model.h"

namespace ferrule {

/// The picture as search sees it.
[[nodiscard]] inline cv::Mat shrunk(const cv::Mat& picture, SmallScale scale) {
  cv::Mat small;
  cv::resize(picture, small, {picture.cols / scale.factor, picture.rows / scale.factor}, 0, 0, cv::INTER_AREA);
  return small;
}

}  // namespace ferrule
