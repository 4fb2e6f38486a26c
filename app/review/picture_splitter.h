// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSplitter>

namespace ferrule {

/// Two wide pictures beside each other, or one over the other where that shows them larger.
class PictureSplitter : public QSplitter {
  Q_OBJECT
 public:
  using QSplitter::QSplitter;

 protected:
  void resizeEvent(QResizeEvent* event) override;
};

}  // namespace ferrule
