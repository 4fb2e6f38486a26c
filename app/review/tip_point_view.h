// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "app/window/inks.h"
#include "core/table/shot.h"

namespace ferrule {

/// The cue ball's face seen along the cue: where the tip struck, with its 95 % ellipse, and the miscue limit as a ring.
class TipPointView : public QWidget {
  Q_OBJECT
 public:
  explicit TipPointView(QWidget* parent = nullptr);

  void setPoint(const std::optional<Measured>& side, const std::optional<Measured>& height);
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  std::optional<Measured> side_;
  std::optional<Measured> height_;
  Inks inks_;
};

}  // namespace ferrule
