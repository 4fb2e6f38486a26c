// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/setup/setup_page.h"

class QListWidget;

namespace ferrule {

class ChainRow;

/// The chain, the verdict of the self-check, and what it rests on.
class CheckPage : public SetupPage {
  Q_OBJECT
 public:
  explicit CheckPage(SetupDesk& desk, QWidget* parent = nullptr);
  void refresh() override;

 private:
  void showChain();
  void showCheck();

  ChainRow* chain_;
  std::optional<Rig> rig_;
  qint64 picture_ = 0;
  QLabel* verdict_;
  QLabel* sentence_;
  QLabel* cost_;
  QLabel* evidenceHead_;
  QListWidget* evidence_;
  QLabel* ruledOutHead_;
  QListWidget* ruledOut_;
};

}  // namespace ferrule
