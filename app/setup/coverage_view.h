// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "core/camera/board.h"

namespace ferrule {

/// The camera's picture with every corner of the board that a still showed; parts where none was are hatched.
class CoverageView : public QWidget {
  Q_OBJECT
 public:
  explicit CoverageView(QWidget* parent = nullptr);

  /// lit: the still whose corners stand out; -1: none.
  void setViews(std::vector<BoardView> views, ImageSize size, int lit = -1);
  QSize sizeHint() const override { return {420, 260}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  std::vector<BoardView> views_;
  ImageSize size_;
  int lit_ = -1;
};

}  // namespace ferrule
