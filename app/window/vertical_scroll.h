// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>

namespace ferrule {

/// Scrolls a column that may be higher than the window; never narrower than what stands in it.
class VerticalScroll : public QScrollArea {
  Q_OBJECT
 public:
  explicit VerticalScroll(QWidget* column, QWidget* parent = nullptr);

  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace ferrule
