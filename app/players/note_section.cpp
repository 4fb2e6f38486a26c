// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/players/note_section.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>

#include "app/players/people_words.h"

namespace ferrule {

namespace {

constexpr int kTextHeight_px = 64;
constexpr int kListHeight_px = 140;

}  // namespace

NoteSection::NoteSection(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("playerNotes"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  list_ = new QListWidget;
  list_->setObjectName(QStringLiteral("noteList"));
  list_->setAccessibleName(tr("Notes about this player"));
  list_->setWordWrap(true);
  list_->setFrameShape(QFrame::NoFrame);
  list_->setMaximumHeight(kListHeight_px);
  column->addWidget(list_);
  text_ = new QPlainTextEdit;
  text_->setObjectName(QStringLiteral("noteText"));
  text_->setAccessibleName(tr("A new note"));
  text_->setPlaceholderText(tr("A new note"));
  text_->setTabChangesFocus(true);
  text_->setMaximumHeight(kTextHeight_px);
  column->addWidget(text_);
  auto* row = new QHBoxLayout;
  row->setSpacing(8);
  author_ = new QLineEdit;
  author_->setObjectName(QStringLiteral("author"));
  author_->setAccessibleName(tr("Who writes"));
  author_->setPlaceholderText(tr("Your name"));
  author_->setToolTip(tr("Stands beside notes and consents that you write down"));
  auto* label = new QLabel(tr("&Written by"));
  label->setBuddy(author_);
  add_ = new QPushButton(tr("Add the note"));
  add_->setObjectName(QStringLiteral("addNote"));
  remove_ = new QPushButton(tr("Remove"));
  remove_->setObjectName(QStringLiteral("removeNote"));
  remove_->setAccessibleName(tr("Remove the chosen note"));
  row->addWidget(label);
  row->addWidget(author_, 1);
  row->addWidget(add_);
  row->addWidget(remove_);
  column->addLayout(row);
  add_->setEnabled(false);
  remove_->setEnabled(false);
  connect(text_, &QPlainTextEdit::textChanged, this,
          [this] { add_->setEnabled(!text_->toPlainText().trimmed().isEmpty()); });
  connect(author_, &QLineEdit::textChanged, this, &NoteSection::authorChanged);
  connect(add_, &QPushButton::clicked, this, &NoteSection::add);
  connect(list_, &QListWidget::currentRowChanged, this, [this](int chosen) { remove_->setEnabled(chosen >= 0); });
  connect(remove_, &QPushButton::clicked, this, [this] {
    const int chosen = list_->currentRow();
    if (chosen >= 0) emit removed(notes_[static_cast<std::size_t>(chosen)].id);
  });
}

void NoteSection::show(const Person& person, const Numbers& numbers) {
  if (person.details.player.id != player_) text_->clear();
  player_ = person.details.player.id;
  if (person.notes == notes_ && list_->count() == static_cast<int>(notes_.size())) return;
  notes_ = person.notes;
  list_->clear();
  for (const Note& note : notes_) {
    const QString words = authorWords(note, numbers);
    const QString text = QString::fromStdString(note.text);
    list_->addItem(words.isEmpty() ? text : QStringLiteral("%1\n%2").arg(text, words));
  }
  list_->setVisible(!notes_.empty());
  remove_->setVisible(!notes_.empty());
}

QString NoteSection::author() const {
  return author_->text().trimmed();
}

void NoteSection::setAuthor(const QString& author) {
  author_->setText(author);
}

void NoteSection::add() {
  const QString text = text_->toPlainText().trimmed();
  if (text.isEmpty()) return;
  text_->clear();
  emit added(text);
}

}  // namespace ferrule
