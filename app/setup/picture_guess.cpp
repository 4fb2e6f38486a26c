// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/picture_guess.h"

namespace ferrule {

namespace {

/// Most tables leave so much of the picture free around them.
constexpr double kFree = 0.12;

}  // namespace

ImagePoint guessInPicture(TablePoint place, const Table& table, PictureSide head, QSize size) {
  const double along = 0.5 + place.x / table.length_m;  // 0 at the head
  const double across = 0.5 - place.y / table.width_m;  // 0 at the left, seen from the head
  double u = along;
  double v = across;
  switch (head) {
    case PictureSide::Left:
      break;
    case PictureSide::Right:
      u = 1.0 - along;
      v = 1.0 - across;
      break;
    case PictureSide::Top:
      u = 1.0 - across;
      v = along;
      break;
    case PictureSide::Bottom:
      u = across;
      v = 1.0 - along;
      break;
  }
  const double room = 1.0 - 2.0 * kFree;
  return {(kFree + room * u) * size.width(), (kFree + room * v) * size.height()};
}

}  // namespace ferrule
