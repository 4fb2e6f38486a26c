// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/setup/setup_page.h"

class QTableWidget;

namespace ferrule {

/// Makes the rig and says how well tags and cushions agree with it.
class RigPage : public SetupPage {
  Q_OBJECT
 public:
  explicit RigPage(SetupDesk& desk, QWidget* parent = nullptr);
  void refresh() override;

 private:
  QLabel* from_;
  QLabel* result_;
  QTableWidget* tags_;
  QTableWidget* noses_;
  QLabel* gain_;
};

}  // namespace ferrule
