// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>

#include "core/camera/silhouette.h"
#include "core/vision/cloth_model.h"

namespace ferrule {

/// Share of a ball's disc whose small pixels differ from the cloth by more than least. away: ClothModel::difference.
[[nodiscard]] double coveredShare(const cv::Mat& away, const cv::Mat& surface, SmallScale scale,
                                  const Silhouette& outline, int least);
/// Sets the small pixels of a disc of the outline's size times widen.
void fillDisc(cv::Mat& small, SmallScale scale, const Silhouette& outline, double widen, int value);

}  // namespace ferrule
