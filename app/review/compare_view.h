// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <memory>

#include "app/words/numbers.h"
#include "core/record/record_values.h"
#include "core/table/measured_table.h"

class QLabel;
class QTableWidget;

namespace ferrule {

class PlanView;

/// Two shots side by side: their plans, each as it came to rest, and under them what differed.
class CompareView : public QWidget {
  Q_OBJECT
 public:
  explicit CompareView(QWidget* parent = nullptr);

  /// The shot that others are compared with; nothing ends it.
  void hold(std::shared_ptr<const StoredShot> shot, const MeasuredTable& table);
  /// The other one; the held shot itself counts as none.
  void setOther(std::shared_ptr<const StoredShot> shot, const MeasuredTable& table);
  void setNumbers(const Numbers& numbers);
  [[nodiscard]] const std::shared_ptr<const StoredShot>& held() const { return held_; }
  [[nodiscard]] const std::shared_ptr<const StoredShot>& other() const { return other_; }

 private:
  void showValues();

  Numbers numbers_;
  std::shared_ptr<const StoredShot> held_;
  std::shared_ptr<const StoredShot> other_;
  PlanView* heldPlan_;
  PlanView* otherPlan_;
  QLabel* heldWords_;
  QLabel* otherWords_;
  QTableWidget* values_;
};

}  // namespace ferrule
