// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/start_form.h"

#include <QComboBox>
#include <QDate>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/window/card.h"
#include "app/window/inks.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

constexpr int kWidth_px = 520;

}  // namespace

StartForm::StartForm(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("startForm"));
  auto* card = new Card;
  card->setMaximumWidth(kWidth_px);
  auto* form = new QFormLayout(card);
  form->setContentsMargins(24, 24, 24, 24);
  form->setVerticalSpacing(12);
  form->setHorizontalSpacing(16);
  auto* title = new QLabel(tr("A session without a camera"));
  title->setFont(scaled(font(), 1.3, true));
  form->addRow(title);
  auto* words = new QuietLabel(
      tr("Put the balls down, say what was played and what happened; the referee keeps turn and score."));
  words->setWordWrap(true);
  form->addRow(words);

  name_ = new QLineEdit;
  name_->setObjectName(QStringLiteral("sessionName"));
  name_->setPlaceholderText(locale().toString(QDate::currentDate(), QLocale::LongFormat));
  form->addRow(tr("&Name"), name_);
  game_ = new QComboBox;
  game_->setObjectName(QStringLiteral("sessionGame"));
  for (const Game game : kGames) {
    const QString text = QString::fromUtf8(toText(game));
    game_->addItem(atStart(gameWords(text.toStdString())), text);
  }
  game_->addItem(tr("No game: practice without a referee"), QString());
  form->addRow(tr("&Game"), game_);
  players_ = new QLineEdit;
  players_->setObjectName(QStringLiteral("sessionPlayers"));
  players_->setPlaceholderText(tr("One or two names with a comma; who breaks comes first"));
  form->addRow(tr("&Players"), players_);
  table_ = new QComboBox;
  table_->setObjectName(QStringLiteral("sessionTable"));
  table_->setEditable(true);
  for (const TableSize& size : tableSizes())
    table_->addItem(QString::fromUtf8(size.name));
  table_->setToolTip(tr("A usual size, or the path of a table file"));
  form->addRow(tr("&Table"), table_);
  kind_ = new QComboBox;
  kind_->setObjectName(QStringLiteral("sessionKind"));
  kind_->addItem(tr("Practice"), static_cast<int>(SessionKind::Practice));
  kind_->addItem(tr("Match"), static_cast<int>(SessionKind::Match));
  kind_->addItem(tr("Lesson"), static_cast<int>(SessionKind::Lesson));
  form->addRow(tr("&For"), kind_);
  // A label's size is rounded down from its text's, which cuts the last letter.
  for (QWidget* field : std::initializer_list<QWidget*>{name_, game_, players_, table_, kind_}) {
    QWidget* label = form->labelForField(field);
    label->setMinimumWidth(label->sizeHint().width() + 2);
  }
  recordWords_ = new QuietLabel;
  recordWords_->setObjectName(QStringLiteral("sessionRecord"));
  recordWords_->setWordWrap(true);
  recordWords_->setTextFormat(Qt::PlainText);
  form->addRow(recordWords_);
  auto* begin = new QPushButton(tr("Begin"));
  begin->setObjectName(QStringLiteral("beginSession"));
  begin->setDefault(true);
  connect(begin, &QPushButton::clicked, this, &StartForm::begin);
  connect(name_, &QLineEdit::returnPressed, this, &StartForm::begin);
  connect(players_, &QLineEdit::returnPressed, this, &StartForm::begin);
  form->addRow(begin);
  brokenWords_ = new QLabel;
  brokenWords_->setWordWrap(true);
  brokenWords_->setTextFormat(Qt::PlainText);
  resume_ = new QPushButton(tr("Go on with it"));
  resume_->setObjectName(QStringLiteral("resumeSession"));
  connect(resume_, &QPushButton::clicked, this, &StartForm::resumeWanted);
  form->addRow(brokenWords_);
  form->addRow(resume_);

  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(24, 24, 24, 24);
  column->addStretch(1);
  auto* row = new QHBoxLayout;
  row->addStretch(1);
  row->addWidget(card, 4);
  row->addStretch(1);
  column->addLayout(row);
  column->addStretch(1);
  setRecord({}, {});
}

void StartForm::setRecord(const QString& path, const QString& broken) {
  recordWords_->setText(path.isEmpty() ? QString() : tr("Kept in %1.").arg(path));
  recordWords_->setVisible(!path.isEmpty());
  brokenWords_->setText(tr("The session \"%1\" was not ended.").arg(broken));
  brokenWords_->setVisible(!broken.isEmpty());
  resume_->setVisible(!broken.isEmpty());
}

void StartForm::begin() {
  HandTerms terms;
  const QString table = table_->currentText().trimmed();
  auto measured = measuredTableFrom(table.toStdString());
  if (!measured) {
    emit failed(measured.error());
    return;
  }
  terms.table = std::move(*measured);
  terms.tableName = QFileInfo(table).completeBaseName().toStdString();
  const QString name = name_->text().trimmed();
  terms.name = (name.isEmpty() ? name_->placeholderText() : name).toStdString();
  terms.game = gameFromText(game_->currentData().toString().toStdString());
  for (const QString& player : players_->text().split(',')) {
    if (!player.trimmed().isEmpty()) terms.players.push_back(player.trimmed().toStdString());
  }
  emit beginWanted(terms, static_cast<SessionKind>(kind_->currentData().toInt()));
}

}  // namespace ferrule
