// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/words/numbers.h"
#include "core/record/consent.h"

class QCheckBox;
class QDateEdit;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace ferrule {

/// What a person consented to: how each stands in words, an editor for what is given or withdrawn, and the ledger.
class ConsentSection : public QWidget {
  Q_OBJECT
 public:
  explicit ConsentSection(QWidget* parent = nullptr);

  /// at: for when it is told.
  void show(const Person& person, UtcMilliseconds at, const Numbers& numbers);

 signals:
  /// Given or withdrawn; whose, and by whom it was noted, is for the receiver.
  void noted(const ferrule::ConsentEntry& entry);
  void told(const QString& sentence);

 private:
  QWidget* makeEditor();
  void fill(const Person& person, UtcMilliseconds at, const Numbers& numbers);
  void edit(ConsentScope scope, ConsentEvent event);
  void keep();

  Player player_;
  ConsentScope scope_ = ConsentScope::Measuring;
  ConsentEvent event_ = ConsentEvent::Given;
  UtcMilliseconds at_ = 0;

  QWidget* rows_;
  QGridLayout* grid_;
  QWidget* editor_;
  QLabel* editorTitle_;
  QLineEdit* by_;
  QCheckBox* guardian_;
  QLabel* fromWords_;
  QDateEdit* from_;
  QCheckBox* ends_;
  QDateEdit* until_;
  QLabel* ledger_;
};

}  // namespace ferrule
