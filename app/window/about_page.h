// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

namespace ferrule {

/// What the program is, what to be careful about, and under which licences it and its libraries stand.
class AboutPage : public QDialog {
  Q_OBJECT
 public:
  explicit AboutPage(QWidget* parent = nullptr);
};

}  // namespace ferrule
