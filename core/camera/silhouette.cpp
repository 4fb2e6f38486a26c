// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/silhouette.h"

#include <Eigen/Dense>

namespace ferrule {

std::optional<Silhouette> silhouetteOf(const Rig& rig, TablePoint ball, double radius_m) {
  const TablePoint3 camera = cameraPosition(rig);
  const Eigen::Vector3d eye(camera.x, camera.y, camera.z);

  // The tangent cone touches the sphere on a circle nearer to the eye and smaller than the sphere's equator.
  const auto outlineCentre = [&](TablePoint at, Eigen::Matrix2d* shape) -> std::optional<ImagePoint> {
    const Eigen::Vector3d toBall = Eigen::Vector3d(at.x, at.y, radius_m) - eye;
    const double squared = toBall.squaredNorm();
    const double nearer = 1.0 - radius_m * radius_m / squared;
    const Eigen::Vector3d middle = eye + nearer * toBall;
    const double circle_m = radius_m * std::sqrt(nearer);
    const Eigen::Vector3d axis = toBall / std::sqrt(squared);
    const Eigen::Vector3d across = axis.unitOrthogonal();
    const Eigen::Vector3d along = axis.cross(across);
    const auto project = [&](const Eigen::Vector3d& p) { return imageFromTable(rig, {p.x(), p.y(), p.z()}); };
    const auto acrossPlus = project(middle + circle_m * across);
    const auto acrossMinus = project(middle - circle_m * across);
    const auto alongPlus = project(middle + circle_m * along);
    const auto alongMinus = project(middle - circle_m * along);
    if (!acrossPlus || !acrossMinus || !alongPlus || !alongMinus) return std::nullopt;
    if (shape) {
      const ImageVector u = (*acrossPlus - *acrossMinus) / 2.0;
      const ImageVector v = (*alongPlus - *alongMinus) / 2.0;
      *shape << u.x, v.x, u.y, v.y;
    }
    return ImagePoint{(acrossPlus->x + acrossMinus->x + alongPlus->x + alongMinus->x) / 4.0,
                      (acrossPlus->y + acrossMinus->y + alongPlus->y + alongMinus->y) / 4.0};
  };

  Silhouette outline;
  const auto centre = outlineCentre(ball, &outline.shape);
  if (!centre) return std::nullopt;
  outline.centre = *centre;
  constexpr double kStep_m = 0.002;
  const auto right = outlineCentre(ball + TableVector{kStep_m, 0.0}, nullptr);
  const auto up = outlineCentre(ball + TableVector{0.0, kStep_m}, nullptr);
  if (!right || !up) return std::nullopt;
  Eigen::Matrix2d imageFromTable;
  imageFromTable << right->x - centre->x, up->x - centre->x, right->y - centre->y, up->y - centre->y;
  imageFromTable /= kStep_m;
  outline.tableFromImage = imageFromTable.inverse();
  return outline;
}

}  // namespace ferrule
