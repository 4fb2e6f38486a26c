// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/players/erase_panel.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTextOption>
#include <algorithm>

#include "app/window/card.h"
#include "app/words/erase_sentence.h"

namespace ferrule {

namespace {

constexpr int kListHeight_px = 280;

}  // namespace

ErasePanel::ErasePanel(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("erasePanel"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(12);
  auto* words = new QuietLabel(
      tr("Erasing takes a player out of the record for good, with everything that is kept of the player. Export the "
         "player first if anything may be needed again."));
  words->setWordWrap(true);
  column->addWidget(words);
  look_ = new QPushButton(tr("Show what would go…"));
  look_->setObjectName(QStringLiteral("showErase"));
  connect(look_, &QPushButton::clicked, this, &ErasePanel::previewWanted);
  column->addWidget(look_, 0, Qt::AlignLeft);

  inside_ = new QWidget;
  auto* inside = new QVBoxLayout(inside_);
  inside->setContentsMargins(0, 0, 0, 0);
  inside->setSpacing(8);
  list_ = new QPlainTextEdit;
  list_->setObjectName(QStringLiteral("eraseList"));
  list_->setAccessibleName(tr("What goes and what stays"));
  list_->setReadOnly(true);
  list_->setTabChangesFocus(true);
  // Paths have no spaces.
  list_->setWordWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
  list_->setMinimumHeight(kListHeight_px);
  inside->addWidget(list_);
  const auto box = [&](const char* name, const QString& text) {
    auto* check = new QCheckBox(text);
    check->setObjectName(QString::fromLatin1(name));
    inside->addWidget(check);
    return check;
  };
  mentions_ = box("blankMentions", tr("Take the name out of others' texts"));
  films_ = box("deleteFilms", tr("Delete the films of this player alone"));
  backups_ = box("deleteBackups", tr("Delete the older copies"));
  auto* row = new QHBoxLayout;
  erase_ = new QPushButton;
  erase_->setObjectName(QStringLiteral("erase"));
  connect(erase_, &QPushButton::clicked, this, [this] {
    emit eraseWanted({mentions_->isChecked(), films_->isChecked(), backups_->isChecked()});
  });
  auto* cancel = new QPushButton(tr("Cancel"));
  cancel->setObjectName(QStringLiteral("cancelErase"));
  connect(cancel, &QPushButton::clicked, this, &ErasePanel::close);
  row->addWidget(erase_);
  row->addWidget(cancel);
  row->addStretch(1);
  inside->addLayout(row);
  column->addWidget(inside_);
  close();
}

void ErasePanel::close() {
  opened_ = false;
  inside_->hide();
  look_->show();
}

void ErasePanel::show(const ErasePreview& preview) {
  QStringList lines;
  for (const EraseSection& section : erasePreviewWords(preview)) {
    lines << section.heading + QLatin1Char(':');
    for (const QString& line : section.lines)
      lines << QStringLiteral("    ") + line;
  }
  list_->setPlainText(lines.join(QLatin1Char('\n')));
  mentions_->setVisible(!preview.mentions.empty());
  mentions_->setChecked(true);
  films_->setVisible(std::ranges::any_of(preview.films, [](const ErasedFilm& film) { return !film.shared; }));
  films_->setChecked(false);
  backups_->setVisible(!preview.backups.empty());
  backups_->setChecked(false);
  // A long name has its own line above; the button stays a button.
  erase_->setText(tr("Erase for good"));
  erase_->setAccessibleName(tr("Erase %1 for good").arg(QString::fromStdString(preview.player.name)));
  opened_ = true;
  inside_->show();
  look_->hide();
  erase_->setFocus();
}

}  // namespace ferrule
