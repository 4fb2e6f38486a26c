// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/window/actions.h"

class QLabel;
class QProgressBar;

namespace ferrule {

class BackgroundJob;

/// What long work is going on, how far it has come, and the button that stops it; hidden while there is none.
class WorkStrip : public QWidget {
  Q_OBJECT
 public:
  explicit WorkStrip(const ActionSet& actions, QWidget* parent = nullptr);

  /// Shows a job under these words whenever it runs. The job must live as long as the strip.
  void watch(BackgroundJob& job, const QString& words);

 private:
  QProgressBar* progress_;
  QLabel* words_;
};

}  // namespace ferrule
