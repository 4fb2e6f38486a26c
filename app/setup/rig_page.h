// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/setup/setup_page.h"

class QTableWidget;

namespace ferrule {

class LinesPanel;

/// Makes the rig and says how well tags and cushions agree with it. Without tags, the lines and marks that it is made
/// from can be looked at under a loupe and placed by hand.
class RigPage : public SetupPage {
  Q_OBJECT
 public:
  explicit RigPage(SetupDesk& desk, QWidget* parent = nullptr);
  void refresh() override;

 private:
  QLabel* from_;
  LinesPanel* lines_;
  QLabel* result_;
  QTableWidget* tags_;
  QTableWidget* noses_;
  QLabel* gain_;
};

}  // namespace ferrule
