// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/disc_cover.h"

#include <cmath>
#include <opencv2/imgproc.hpp>

namespace ferrule {

double coveredShare(const cv::Mat& away, const cv::Mat& surface, SmallScale scale, const Silhouette& outline,
                    int least) {
  constexpr double kInner = 0.8;  // of the radius; the limb's pixels are half cloth
  int counted = 0;
  int covered = 0;
  const double reach = kInner * outline.radius_px() / scale.factor;
  const ImagePoint centre = scale.toSmall(outline.centre);
  for (int y = static_cast<int>(centre.y - reach); y <= centre.y + reach; ++y) {
    for (int x = static_cast<int>(centre.x - reach); x <= centre.x + reach; ++x) {
      if (x < 0 || y < 0 || x >= away.cols || y >= away.rows) continue;
      if (std::hypot(x - centre.x, y - centre.y) > reach || !surface.at<uchar>(y, x)) continue;
      ++counted;
      if (away.at<uchar>(y, x) > least) ++covered;
    }
  }
  return counted > 0 ? static_cast<double>(covered) / counted : 0.0;
}

void fillDisc(cv::Mat& small, SmallScale scale, const Silhouette& outline, double widen, int value) {
  const double reach = widen * outline.radius_px() / scale.factor;
  const ImagePoint centre = scale.toSmall(outline.centre);
  cv::circle(small, {static_cast<int>(std::lround(centre.x)), static_cast<int>(std::lround(centre.y))},
             static_cast<int>(std::ceil(reach)), cv::Scalar(value), cv::FILLED);
}

}  // namespace ferrule
