// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/chain_pictures.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace ferrule {

namespace {

QRgb colourAt(const QImage& picture, const Lens& lens, const std::optional<ImagePoint>& place) {
  if (!place) return qRgb(0, 0, 0);
  // The picture may be a smaller copy of the film's own.
  const int x = static_cast<int>(std::lround((place->x + 0.5) * picture.width() / lens.size.width - 0.5));
  const int y = static_cast<int>(std::lround((place->y + 0.5) * picture.height() / lens.size.height - 0.5));
  return picture.valid(x, y) ? picture.pixel(x, y) : qRgb(0, 0, 0);
}

}  // namespace

QImage straightenedPicture(const Rig& rig, const QImage& picture, QSize size) {
  QImage result(size, QImage::Format_RGB32);
  const Lens& lens = rig.lens;
  for (int row = 0; row < size.height(); ++row) {
    for (int column = 0; column < size.width(); ++column) {
      const double x = (column + 0.5) * lens.size.width / size.width() - 0.5;
      const double y = (row + 0.5) * lens.size.height / size.height() - 0.5;
      const CameraRay ray{(x - lens.centre.x) / lens.focalX_px, (y - lens.centre.y) / lens.focalY_px};
      result.setPixel(column, row, colourAt(picture, lens, imageFromRay(lens, ray)));
    }
  }
  return result;
}

QImage tablePicture(const Rig& rig, const MeasuredTable& measured, const QImage& picture, QSize size) {
  QImage result(size, QImage::Format_RGB32);
  const Table& table = measured.table;
  const double length_m = table.length_m + 2.0 * table.cushionWidth_m;
  const double width_m = table.width_m + 2.0 * table.cushionWidth_m;
  const double scale_m = std::max(length_m / size.width(), width_m / size.height());
  for (int row = 0; row < size.height(); ++row) {
    for (int column = 0; column < size.width(); ++column) {
      const TablePoint3 place{(column + 0.5 - 0.5 * size.width()) * scale_m,
                              (0.5 * size.height() - row - 0.5) * scale_m, measured.balls.radius_m()};
      result.setPixel(column, row, colourAt(picture, rig.lens, imageFromTable(rig, place)));
    }
  }
  return result;
}

}  // namespace ferrule
