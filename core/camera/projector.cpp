// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/projector.h"

#include <Eigen/LU>
#include <cmath>

#include "core/camera/projector_model.h"

namespace ferrule {

namespace {

constexpr int kSteps = 30;
constexpr double kClose = 1e-10;  // picture widths

ImagePoint middleOf(ImageSize size) {
  return {0.5 * (size.width - 1), 0.5 * (size.height - 1)};
}

}  // namespace

std::optional<ImagePoint> projectorFromTable(const Projector& projector, TablePoint place) {
  const Eigen::Vector3d h = projector.straightFromTable * Eigen::Vector3d(place.x, place.y, 1.0);
  if (h.z() <= 0.0) return std::nullopt;
  const Eigen::Vector2d bent = bend(projector.bending.data(), Eigen::Vector2d(h.x() / h.z(), h.y() / h.z()));
  const ImagePoint middle = middleOf(projector.size);
  return ImagePoint{middle.x + projector.size.width * bent.x(), middle.y + projector.size.width * bent.y()};
}

std::optional<TablePoint> tableFromProjector(const Projector& projector, ImagePoint pixel) {
  const ImagePoint middle = middleOf(projector.size);
  const Eigen::Vector2d wanted((pixel.x - middle.x) / projector.size.width,
                               (pixel.y - middle.y) / projector.size.width);
  // The bending is small: what it adds is taken away again until nothing changes.
  Eigen::Vector2d straight = wanted;
  double off = 1.0;
  for (int i = 0; i < kSteps && off > kClose; ++i) {
    const Eigen::Vector2d error = bend(projector.bending.data(), straight) - wanted;
    straight -= error;
    off = error.norm();
  }
  if (!(off <= kClose)) return std::nullopt;
  const Eigen::Vector3d h = projector.straightFromTable.inverse() * Eigen::Vector3d(straight.x(), straight.y(), 1.0);
  if (!(std::abs(h.z()) > 1e-12)) return std::nullopt;
  return TablePoint{h.x() / h.z(), h.y() / h.z()};
}

}  // namespace ferrule
