// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/rig.h"

#include <Eigen/Dense>

namespace ferrule {

std::optional<ImagePoint> imageFromTable(const Rig& rig, TablePoint3 point) {
  const Eigen::Vector3d seen = rig.pose.rotation * Eigen::Vector3d(point.x, point.y, point.z) + rig.pose.translation_m;
  if (!(seen.z() > 0.0)) return std::nullopt;
  return imageFromRay(rig.lens, {seen.x() / seen.z(), seen.y() / seen.z()});
}

std::optional<TablePoint> tableFromImage(const Rig& rig, ImagePoint point, double height_m) {
  const auto ray = rayFromImage(rig.lens, point);
  if (!ray) return std::nullopt;
  const Eigen::Vector3d eye = -(rig.pose.rotation.transpose() * rig.pose.translation_m);
  const Eigen::Vector3d direction = rig.pose.rotation.transpose() * Eigen::Vector3d(ray->x, ray->y, 1.0);
  const double along = (height_m - eye.z()) / direction.z();
  if (!(along > 0.0) || !std::isfinite(along)) return std::nullopt;
  return TablePoint{eye.x() + along * direction.x(), eye.y() + along * direction.y()};
}

TablePoint3 cameraPosition(const Rig& rig) {
  const Eigen::Vector3d eye = -(rig.pose.rotation.transpose() * rig.pose.translation_m);
  return {eye.x(), eye.y(), eye.z()};
}

}  // namespace ferrule
