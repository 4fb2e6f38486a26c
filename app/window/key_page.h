// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

namespace ferrule {

/// Every key of the window, made from the table of actions.
class KeyPage : public QDialog {
  Q_OBJECT
 public:
  explicit KeyPage(QWidget* parent = nullptr);
};

}  // namespace ferrule
