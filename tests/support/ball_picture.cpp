// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/ball_picture.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

namespace ferrule {

Rig overheadRig() {
  Rig rig;
  rig.lens.size = {640, 360};
  rig.lens.focalX_px = 480.0;
  rig.lens.focalY_px = 480.0;
  rig.lens.centre = {319.5, 179.5};
  // x to the right; the image's y points down, the table's up.
  rig.pose.rotation << 1.0, 0.0, 0.0, 0.0, -1.0, 0.0, 0.0, 0.0, -1.0;
  rig.pose.translation_m = {0.0, 0.0, 1.0};
  return rig;
}

namespace {

cv::Vec3d colourOf(const DrawnBall& ball, const Silhouette& outline, double x, double y, cv::Vec3d behind) {
  const Eigen::Vector2d within = outline.shape.inverse() * Eigen::Vector2d(x - outline.centre.x, y - outline.centre.y);
  const double rho = within.norm();
  if (rho >= 1.0) {
    // Soft and to one side, as a lamp beside the camera throws it.
    const double beside = (within - Eigen::Vector2d(0.25, 0.25)).norm();
    return behind * (1.0 - ball.shadow * std::clamp(1.6 - beside, 0.0, 0.6) / 0.6);
  }
  if (rho < ball.patch) return {235.0, 235.0, 235.0};
  return ball.colour * (0.45 + 0.55 * std::sqrt(1.0 - rho * rho));
}

}  // namespace

cv::Mat drawBalls(const Rig& rig, cv::Vec3d cloth, std::span<const DrawnBall> balls, double radius_m) {
  constexpr int kPoints = 5;
  // One moment is as good as many where nothing moves.
  const bool still = std::ranges::none_of(balls, [](const DrawnBall& ball) { return length(ball.streak) > 0.0; });
  const int moments = still ? 1 : 9;
  cv::Mat sum(rig.lens.size.height, rig.lens.size.width, CV_64FC3, cv::Scalar(0.0, 0.0, 0.0));
  for (int moment = 0; moment < moments; ++moment) {
    const double share = (moment + 0.5) / moments - 0.5;
    std::vector<Silhouette> outlines;
    for (const DrawnBall& ball : balls)
      outlines.push_back(*silhouetteOf(rig, ball.position + share * ball.streak, radius_m));
    for (int y = 0; y < sum.rows; ++y) {
      for (int x = 0; x < sum.cols; ++x) {
        cv::Vec3d pixel = cloth;
        const bool near = std::ranges::any_of(outlines, [&](const Silhouette& outline) {
          return std::hypot(x - outline.centre.x, y - outline.centre.y) < 2.5 * outline.radius_px();
        });
        if (near) {
          pixel = {0.0, 0.0, 0.0};
          for (int i = 0; i < kPoints * kPoints; ++i) {
            const double px = x + (i % kPoints + 0.5) / kPoints - 0.5;
            const double py = y + (i / kPoints + 0.5) / kPoints - 0.5;
            cv::Vec3d point = cloth;
            for (std::size_t b = 0; b < balls.size(); ++b)
              point = colourOf(balls[b], outlines[b], px, py, point);
            pixel += point / static_cast<double>(kPoints * kPoints);
          }
        }
        sum.at<cv::Vec3d>(y, x) += pixel / static_cast<double>(moments);
      }
    }
  }
  cv::Mat picture;
  sum.convertTo(picture, CV_8UC3);
  return picture;
}

}  // namespace ferrule
