// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <memory>

#include "app/words/numbers.h"
#include "core/record/record_values.h"

class QHBoxLayout;
class QLineEdit;
class QListWidget;
class QPushButton;
class QStringListModel;

namespace ferrule {

class WrappingRow;

/// Tags and notes of the shot that is shown: both can be added and taken away. What is being typed stays while the shot
/// is read again.
class RemarksSection : public QWidget {
  Q_OBJECT
 public:
  explicit RemarksSection(QWidget* parent = nullptr);

  /// Null for no shot: then nothing can be written. tags: all of the record, to be completed.
  void setShot(std::shared_ptr<const StoredShot> shot, const std::vector<std::string>& tags);
  void setNumbers(const Numbers& numbers);
  /// The person who writes and corrects.
  void setWho(const QString& who);
  /// Puts the keys into the line for a note, or for a tag.
  void focusNote();
  void focusTag();

 signals:
  void noteWritten(const QString& text);
  void noteTaken(const ferrule::Note& note);
  void tagGiven(const QString& tag);
  void tagTaken(const QString& tag);
  void whoChanged(const QString& who);

 protected:
  bool eventFilter(QObject* object, QEvent* event) override;

 private:
  void showTags();
  void showNotes();
  void takeChosenNote();

  std::shared_ptr<const StoredShot> shot_;
  Numbers numbers_;
  QWidget* given_;  ///< the shot's tags
  WrappingRow* row_;
  QLineEdit* tag_;
  QStringListModel* known_;
  QListWidget* notes_;
  QPushButton* take_;
  QLineEdit* note_;
  QLineEdit* who_;
};

}  // namespace ferrule
