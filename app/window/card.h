// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QWidget>

namespace ferrule {

/// A panel with a hairline and round corners, on which pictures and charts stand.
class Card : public QWidget {
  Q_OBJECT
 public:
  using QWidget::QWidget;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

/// Text that is cut with an ellipsis where it does not fit, unless it wraps.
class ElidedLabel : public QLabel {
  Q_OBJECT
 public:
  using QLabel::QLabel;

 protected:
  void paintEvent(QPaintEvent* event) override;
  [[nodiscard]] virtual QColor ink() const;
};

/// Secondary text in the quiet ink, whatever the palette becomes.
class QuietLabel : public ElidedLabel {
  Q_OBJECT
 public:
  using ElidedLabel::ElidedLabel;

 protected:
  [[nodiscard]] QColor ink() const override;
};

}  // namespace ferrule
