// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QButtonGroup>
#include <QWidget>

#include "app/window/inks.h"

class QToolButton;

namespace ferrule {

/// The narrow list on the left: an icon and a word for each place, or icons alone.
class PlaceList : public QWidget {
  Q_OBJECT
 public:
  explicit PlaceList(QWidget* parent = nullptr);

  void setNarrow(bool narrow);
  [[nodiscard]] bool isNarrow() const { return narrow_; }
  void setCurrent(int row);
  [[nodiscard]] int current() const { return group_.checkedId(); }

 signals:
  void chosen(int row);
  void narrowChanged(bool narrow);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void restyle();

  QButtonGroup group_;
  QToolButton* fold_ = nullptr;
  bool narrow_ = false;
};

}  // namespace ferrule
