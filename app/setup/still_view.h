// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QWidget>
#include <vector>

#include "core/camera/board.h"

namespace ferrule {

/// A camera's image as it comes, with the board's corners where they are found, and those of all stills that count, so
/// that the empty parts show.
class StillView : public QWidget {
  Q_OBJECT
 public:
  explicit StillView(QWidget* parent = nullptr);

  /// size: of the camera's image, px; picture may be smaller. good: whether this one would count.
  void setImage(const QImage& picture, ImageSize size, std::vector<BoardCorner> corners, bool good);
  void setTaken(std::vector<BoardView> views);
  void clear();
  QSize sizeHint() const override { return {480, 270}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QImage picture_;
  ImageSize size_;
  std::vector<BoardCorner> corners_;
  bool good_ = false;
  std::vector<BoardView> taken_;
};

}  // namespace ferrule
