// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QVideoFrame>
#include <opencv2/core/mat.hpp>

namespace ferrule {

/// A camera's image as 8-bit BGR, a picture of its own; empty where it cannot be read. May take some milliseconds: not
/// for the window's thread.
[[nodiscard]] cv::Mat pictureOf(QVideoFrame image);

}  // namespace ferrule
