// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/record/erase_player.h"

class QCheckBox;
class QPlainTextEdit;
class QPushButton;

namespace ferrule {

/// What erasing the chosen player means, and the button that does it: shown first, done only when asked again.
class ErasePanel : public QWidget {
  Q_OBJECT
 public:
  explicit ErasePanel(QWidget* parent = nullptr);

  /// Back to the one button, for another player.
  void close();
  void show(const ErasePreview& preview);
  [[nodiscard]] bool isOpen() const { return opened_; }

 signals:
  void previewWanted();
  void eraseWanted(const ferrule::EraseOptions& options);

 private:
  bool opened_ = false;
  QPushButton* look_;
  QWidget* inside_;
  QPlainTextEdit* list_;
  QCheckBox* mentions_;
  QCheckBox* films_;
  QCheckBox* backups_;
  QPushButton* erase_;
};

}  // namespace ferrule
