// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/record/people_values.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace ferrule {

/// Name, hand, age and groups of a person; each change is told when a field is left.
class PersonForm : public QWidget {
  Q_OBJECT
 public:
  explicit PersonForm(QWidget* parent = nullptr);

  /// others: to whom the person's shots may be given.
  void show(const PersonDetails& details, const std::vector<PersonRow>& others);
  void focusName();

 signals:
  void changed(const ferrule::PersonDetails& details);
  void joinWanted(ferrule::PlayerId player);
  void told(const QString& sentence);

 private:
  void tell();

  PersonDetails details_;
  QLineEdit* name_;
  QComboBox* hand_;
  QLineEdit* groups_;
  QCheckBox* minor_;
  QCheckBox* guest_;
  QLabel* joinWords_;
  QComboBox* joinTo_;
  QPushButton* join_;
};

/// "juniors, Tuesday", and back: trimmed, each once, sorted.
[[nodiscard]] QString groupsText(const std::vector<std::string>& groups);
[[nodiscard]] std::vector<std::string> groupsFromText(const QString& text);

}  // namespace ferrule
