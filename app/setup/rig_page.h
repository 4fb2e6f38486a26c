// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/setup/setup_page.h"

class QTableWidget;

namespace ferrule {

class LinesView;

/// Makes the rig and says how well tags and cushions agree with it. Without tags, the lines that it is made from can be
/// looked at under a loupe and placed by hand.
class RigPage : public SetupPage {
  Q_OBJECT
 public:
  explicit RigPage(SetupDesk& desk, QWidget* parent = nullptr);
  void refresh() override;

 private:
  void makeLines();
  void showLines();
  void place(const LineTrace& nose);

  QLabel* from_;
  QPushButton* adjust_;
  QPushButton* asFound_;
  QLabel* linesWords_;
  LinesView* lines_;
  QImage picture_;                ///< that the lines were found in
  std::vector<LineTrace> found_;  ///< before a person placed any
  QString foundIn_;               ///< the film, the head's side and the table that they belong to
  QLabel* result_;
  QTableWidget* tags_;
  QTableWidget* noses_;
  QLabel* gain_;
};

}  // namespace ferrule
