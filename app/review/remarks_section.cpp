// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/remarks_section.h"

#include <QCompleter>
#include <QDateTime>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QStringListModel>
#include <QVBoxLayout>
#include <utility>

#include "app/window/wrapping_row.h"

namespace ferrule {

namespace {

constexpr int kNotesHeight_px = 72;

}  // namespace

RemarksSection::RemarksSection(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("remarks"));
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  given_ = new QWidget;
  row_ = new WrappingRow(given_);
  row_->setContentsMargins(0, 0, 0, 0);
  row_->setSpacing(4);
  const auto line = [](const char* name, const QString& what) {
    auto* edit = new QLineEdit;
    edit->setObjectName(QString::fromLatin1(name));
    edit->setAccessibleName(what);
    edit->setPlaceholderText(what);
    return edit;
  };
  tag_ = line("newTag", tr("Add a tag"));
  known_ = new QStringListModel(this);
  auto* completer = new QCompleter(known_, this);
  completer->setCaseSensitivity(Qt::CaseInsensitive);
  tag_->setCompleter(completer);
  notes_ = new QListWidget;
  notes_->setObjectName(QStringLiteral("notes"));
  notes_->setAccessibleName(tr("Notes on the shot; Delete takes one away"));
  notes_->setFrameShape(QFrame::NoFrame);
  notes_->setWordWrap(true);
  notes_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  notes_->setMaximumHeight(kNotesHeight_px);
  notes_->installEventFilter(this);
  take_ = new QPushButton(tr("Take the note away"));
  take_->setObjectName(QStringLiteral("takeNote"));
  note_ = line("newNote", tr("Write a note"));
  who_ = line("remarkWho", tr("Who writes and corrects"));

  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(16, 8, 16, 8);
  column->setSpacing(4);
  column->addWidget(given_);
  column->addWidget(tag_);
  column->addWidget(notes_);
  column->addWidget(take_, 0, Qt::AlignRight);
  column->addWidget(note_);
  auto* names = new QHBoxLayout;
  auto* writes = new QLabel(tr("By"));
  writes->setBuddy(who_);
  names->addWidget(writes);
  names->addWidget(who_, 1);
  column->addLayout(names);

  const auto entered = [this](QLineEdit* edit, auto signal) {
    connect(edit, &QLineEdit::returnPressed, this, [this, edit, signal] {
      const QString text = edit->text().simplified();
      if (text.isEmpty() || !shot_) return;
      edit->clear();
      emit(this->*signal)(text);
    });
  };
  entered(tag_, &RemarksSection::tagGiven);
  entered(note_, &RemarksSection::noteWritten);
  connect(who_, &QLineEdit::editingFinished, this, [this] { emit whoChanged(who_->text().simplified()); });
  connect(take_, &QPushButton::clicked, this, &RemarksSection::takeChosenNote);
  connect(notes_, &QListWidget::currentRowChanged, this, [this](int row) { take_->setVisible(row >= 0); });
  setShot(nullptr, {});
}

void RemarksSection::setShot(std::shared_ptr<const StoredShot> shot, const std::vector<std::string>& tags) {
  const bool another = !shot || !shot_ || shot->id != shot_->id;
  shot_ = std::move(shot);
  if (another) {
    tag_->clear();
    note_->clear();
  }
  QStringList known;
  for (const std::string& tag : tags)
    known << QString::fromStdString(tag);
  known_->setStringList(known);
  for (QLineEdit* edit : {tag_, note_})
    edit->setEnabled(shot_ != nullptr);
  showTags();
  showNotes();
}

void RemarksSection::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  showNotes();
}

void RemarksSection::setWho(const QString& who) {
  who_->setText(who);
}

void RemarksSection::focusNote() {
  note_->setFocus();
}

void RemarksSection::focusTag() {
  tag_->setFocus();
}

void RemarksSection::showTags() {
  while (QLayoutItem* item = row_->takeAt(0)) {
    item->widget()->deleteLater();
    delete item;
  }
  const std::vector<std::string> tags = shot_ ? shot_->tags : std::vector<std::string>();
  for (const std::string& tag : tags) {
    const QString words = QString::fromStdString(tag);
    auto* button =
        new QPushButton(QString(words).replace(QLatin1Char('&'), QStringLiteral("&&")) + QStringLiteral(" \u00d7"));
    button->setObjectName(QStringLiteral("tag-") + words);
    button->setAccessibleName(tr("Take the tag away: %1").arg(words));
    button->setToolTip(button->accessibleName());
    connect(button, &QPushButton::clicked, this, [this, words] { emit tagTaken(words); });
    row_->addWidget(button);
  }
  given_->setVisible(!tags.empty());
}

void RemarksSection::showNotes() {
  notes_->clear();
  const std::vector<Note> notes = shot_ ? shot_->notes : std::vector<Note>();
  for (const Note& note : notes) {
    const QString when = numbers_.locale().toString(QDateTime::fromMSecsSinceEpoch(note.when), QLocale::ShortFormat);
    const QString by = note.who.empty() ? when : tr("%1, %2", "who, when").arg(QString::fromStdString(note.who), when);
    notes_->addItem(QStringLiteral("%1 \u2014 %2").arg(QString::fromStdString(note.text), by));
  }
  notes_->setVisible(!notes.empty());
  take_->setVisible(notes_->currentRow() >= 0);
}

void RemarksSection::takeChosenNote() {
  const int row = notes_->currentRow();
  if (!shot_ || row < 0) return;
  emit noteTaken(shot_->notes[static_cast<std::size_t>(row)]);
}

bool RemarksSection::eventFilter(QObject* object, QEvent* event) {
  if (object == notes_ && event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
    takeChosenNote();
    return true;
  }
  return QWidget::eventFilter(object, event);
}

}  // namespace ferrule
