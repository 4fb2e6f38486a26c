// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <opencv2/core/mat.hpp>

namespace ferrule {

/// A copy for the screen, in the form that paints fastest. picture: 8-bit, BGR or grey.
[[nodiscard]] QImage imageOf(const cv::Mat& picture);

}  // namespace ferrule
