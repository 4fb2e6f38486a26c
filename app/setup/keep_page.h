// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/setup/setup_page.h"

namespace ferrule {

/// Saves the files, makes the rig the one in use, and checks it again later.
class KeepPage : public SetupPage {
  Q_OBJECT
 public:
  explicit KeepPage(SetupDesk& desk, QWidget* parent = nullptr);
  void refresh() override;

 signals:
  void checkAgainWanted();

 private:
  QLabel* saved_;
  QLabel* used_;
};

}  // namespace ferrule
