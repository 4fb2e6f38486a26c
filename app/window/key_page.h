// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QTableView;

namespace ferrule {

/// Every action of the window with its keys, made from the table of actions; a field above finds the ones that have a
/// word in their name, keys or help.
class KeyPage : public QDialog {
  Q_OBJECT
 public:
  explicit KeyPage(QWidget* parent = nullptr);

 private:
  QTableView* table_;
};

}  // namespace ferrule
