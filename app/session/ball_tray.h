// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "core/table/ball_set.h"

class QHBoxLayout;

namespace ferrule {

/// The balls that are not on the table, each a button that brings it there.
class BallTray : public QWidget {
  Q_OBJECT
 public:
  explicit BallTray(QWidget* parent = nullptr);

  void setBalls(const BallSet& set, const std::vector<BallName>& off);

 signals:
  void ballWanted(ferrule::BallName ball);

 private:
  QHBoxLayout* row_;
  std::vector<BallName> shown_;
};

}  // namespace ferrule
