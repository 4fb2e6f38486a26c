// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/words/numbers.h"
#include "core/record/people_values.h"

class QLineEdit;
class QListWidget;
class QPlainTextEdit;
class QPushButton;

namespace ferrule {

/// Notes about a person, each with its author and date, and room for another.
class NoteSection : public QWidget {
  Q_OBJECT
 public:
  explicit NoteSection(QWidget* parent = nullptr);

  void show(const Person& person, const Numbers& numbers);
  [[nodiscard]] QString author() const;
  void setAuthor(const QString& author);

 signals:
  void added(const QString& text);
  void removed(ferrule::NoteId note);
  void authorChanged(const QString& author);

 private:
  void add();

  PlayerId player_;
  std::vector<Note> notes_;
  QListWidget* list_;
  QPlainTextEdit* text_;
  QLineEdit* author_;
  QPushButton* add_;
  QPushButton* remove_;
};

}  // namespace ferrule
