// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/picture_splitter.h"

namespace ferrule {

namespace {

/// Height over width of a usual film: below it two pictures are larger beside each other, above it one over the other.
constexpr double kFilmShape = 9.0 / 16.0;

}  // namespace

void PictureSplitter::resizeEvent(QResizeEvent* event) {
  const auto wanted = height() > kFilmShape * width() ? Qt::Vertical : Qt::Horizontal;
  if (orientation() != wanted) setOrientation(wanted);
  QSplitter::resizeEvent(event);
}

}  // namespace ferrule
