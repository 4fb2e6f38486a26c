// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>

namespace ferrule {

/// One sentence across the top of a place; hidden while there is nothing to say.
class MessageBar : public QLabel {
  Q_OBJECT
 public:
  explicit MessageBar(QWidget* parent = nullptr);

  /// An empty sentence hides the bar.
  void tell(const QString& sentence);
};

}  // namespace ferrule
