// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace ferrule {

/// What the lines over a picture mean, by dash and by hue.
class Legend : public QWidget {
  Q_OBJECT
 public:
  explicit Legend(QWidget* parent = nullptr);

  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] QString taken() const;
  [[nodiscard]] QString suggested() const;
};

}  // namespace ferrule
