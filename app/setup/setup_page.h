// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/setup/setup_desk.h"
#include "app/words/numbers.h"

class QDoubleSpinBox;
class QFormLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ferrule {

/// One step of the path: a title, a sentence on what to do, and what the step needs. Shows the desk's state and turns
/// gestures into calls; holds no truth.
class SetupPage : public QWidget {
  Q_OBJECT
 public:
  SetupPage(SetupDesk& desk, SetupStep step, QWidget* parent = nullptr);

  [[nodiscard]] SetupStep step() const { return step_; }
  /// The desk's state changed.
  virtual void refresh() = 0;
  void setNumbers(const Numbers& numbers);

 protected:
  [[nodiscard]] SetupDesk& desk() const { return desk_; }
  [[nodiscard]] const Numbers& numbers() const { return numbers_; }
  [[nodiscard]] QVBoxLayout* column() const { return column_; }
  /// A card in the column with a form on it.
  [[nodiscard]] QFormLayout* addForm();
  QLabel* addQuiet(const QString& words);
  /// A caution: framed, with its word in front.
  void addCaution(const QString& words);
  /// A row of buttons to the left.
  void addButtons(const std::vector<QPushButton*>& buttons);
  [[nodiscard]] QPushButton* button(const char* name, const QString& words) const;
  [[nodiscard]] QDoubleSpinBox* millimetres(const char* name, const QString& accessible, double least, double most,
                                            int decimals = 1) const;

 private:
  SetupDesk& desk_;
  SetupStep step_;
  Numbers numbers_;
  QVBoxLayout* column_;
};

/// The step's name, and what it asks for in one sentence.
[[nodiscard]] QString stepWords(SetupStep step);
[[nodiscard]] QString stepTask(SetupStep step);

}  // namespace ferrule
