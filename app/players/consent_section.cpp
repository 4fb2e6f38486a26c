// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/players/consent_section.h"

#include <QCheckBox>
#include <QDateEdit>
#include <QDateTime>
#include <QFormLayout>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/players/people_words.h"
#include "app/window/card.h"
#include "app/window/inks.h"
#include "app/words/joining.h"

namespace ferrule {

namespace {

UtcMilliseconds startOf(QDate day) {
  return day.startOfDay().toMSecsSinceEpoch();
}

QDate dayOf(UtcMilliseconds time) {
  return QDateTime::fromMSecsSinceEpoch(time).toLocalTime().date();
}

QLabel* plainLabel(const QString& text = {}) {
  auto* label = new QLabel(text);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

}  // namespace

ConsentSection::ConsentSection(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("consents"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(12);
  rows_ = new QWidget;
  grid_ = new QGridLayout(rows_);
  column->addWidget(rows_);
  editor_ = makeEditor();
  editor_->hide();
  column->addWidget(editor_);
  auto* caution = new QuietLabel(
      tr("Filming people, minors above all: ask first, and in writing. For a minor a parent or guardian gives consent "
         "before the camera runs; the law where you play may ask for more."));
  caution->setObjectName(QStringLiteral("consentCaution"));
  caution->setWordWrap(true);
  column->addWidget(caution);
  ledger_ = plainLabel();
  ledger_->setObjectName(QStringLiteral("consentLedger"));
  ledger_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  column->addWidget(ledger_);
}

QWidget* ConsentSection::makeEditor() {
  auto* editor = new QWidget;
  editor->setObjectName(QStringLiteral("consentEditor"));
  auto* form = new QFormLayout(editor);
  form->setContentsMargins(12, 0, 0, 0);
  form->setHorizontalSpacing(16);
  form->setVerticalSpacing(8);
  editorTitle_ = plainLabel();
  editorTitle_->setFont(scaled(font(), 1.0, true));
  form->addRow(editorTitle_);
  by_ = new QLineEdit;
  by_->setObjectName(QStringLiteral("consentBy"));
  by_->setAccessibleName(tr("Who gave or withdrew it"));
  form->addRow(tr("&By"), by_);
  guardian_ = new QCheckBox(tr("a &parent or guardian"));
  guardian_->setObjectName(QStringLiteral("consentGuardian"));
  form->addRow(QString(), guardian_);
  from_ = new QDateEdit;
  from_->setObjectName(QStringLiteral("consentFrom"));
  from_->setCalendarPopup(true);
  from_->setAccessibleName(tr("From this day on"));
  fromWords_ = new QLabel(tr("&On"));
  fromWords_->setBuddy(from_);
  form->addRow(fromWords_, from_);
  ends_ = new QCheckBox(tr("Unti&l"));
  ends_->setObjectName(QStringLiteral("consentEnds"));
  ends_->setAccessibleName(tr("It ends on a day"));
  until_ = new QDateEdit;
  until_->setObjectName(QStringLiteral("consentUntil"));
  until_->setCalendarPopup(true);
  until_->setAccessibleName(tr("Last day"));
  form->addRow(ends_, until_);
  connect(ends_, &QCheckBox::toggled, until_, &QWidget::setEnabled);
  auto* row = new QHBoxLayout;
  auto* keep = new QPushButton(tr("Note it"));
  keep->setObjectName(QStringLiteral("keepConsent"));
  connect(keep, &QPushButton::clicked, this, &ConsentSection::keep);
  auto* cancel = new QPushButton(tr("Cancel"));
  cancel->setObjectName(QStringLiteral("cancelConsent"));
  connect(cancel, &QPushButton::clicked, editor, &QWidget::hide);
  row->addWidget(keep);
  row->addWidget(cancel);
  row->addStretch(1);
  form->addRow(row);
  return editor;
}

void ConsentSection::show(const Person& person, UtcMilliseconds at, const Numbers& numbers) {
  if (person.details.player.id != player_.id) editor_->hide();
  player_ = person.details.player;
  at_ = at;
  fill(person, at, numbers);
  const std::vector<ConsentEntry> counting = countingConsents(person.consents);
  QStringList lines;
  for (const ConsentEntry& entry : person.consents) {
    if (entry.event == ConsentEvent::Struck) continue;
    const bool struck = std::ranges::find(counting, entry.uid, &ConsentEntry::uid) == counting.end();
    lines.prepend(ledgerLine(entry, struck, numbers));
  }
  ledger_->setText(lines.join(QLatin1Char('\n')));
  ledger_->setVisible(!lines.isEmpty());
}

void ConsentSection::fill(const Person& person, UtcMilliseconds at, const Numbers& numbers) {
  // A fresh row of widgets each time: they are few, and which there are depends on the person.
  delete grid_;
  qDeleteAll(rows_->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly));
  grid_ = new QGridLayout(rows_);
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(12);
  grid_->setVerticalSpacing(8);
  grid_->setColumnStretch(1, 1);
  int line = 0;
  for (const ConsentScope scope : scopesFor(player_)) {
    const QString key = QString::fromUtf8(toText(scope).data(), static_cast<qsizetype>(toText(scope).size()));
    const ConsentState state = consentState(person.consents, player_.minor, scope, at);
    auto* title = plainLabel(scopeWords(scope));
    title->setFont(scaled(font(), 1.0, true));
    auto* words = plainLabel(consentSentence(state, scope, numbers));
    words->setObjectName(QStringLiteral("consent-") + key);
    words->setAccessibleName(toldOf(title->text(), words->text()));
    auto* give = new QPushButton(state.entry ? tr("Renew…") : tr("Note…"));
    give->setObjectName(QStringLiteral("give-") + key);
    give->setAccessibleName(tr("Note consent: %1").arg(title->text()));
    connect(give, &QPushButton::clicked, this, [this, scope] { edit(scope, ConsentEvent::Given); });
    grid_->addWidget(title, line, 0, Qt::AlignTop);
    grid_->addWidget(words, line, 1, Qt::AlignTop);
    grid_->addWidget(give, line, 2, Qt::AlignTop);
    if (state.holds()) {
      auto* withdraw = new QPushButton(tr("Withdraw…"));
      withdraw->setObjectName(QStringLiteral("withdraw-") + key);
      withdraw->setAccessibleName(tr("Withdraw consent: %1").arg(title->text()));
      connect(withdraw, &QPushButton::clicked, this, [this, scope] { edit(scope, ConsentEvent::Withdrawn); });
      grid_->addWidget(withdraw, line, 3, Qt::AlignTop);
    }
    ++line;
  }
}

void ConsentSection::edit(ConsentScope scope, ConsentEvent event) {
  scope_ = scope;
  event_ = event;
  const bool gives = event == ConsentEvent::Given;
  editorTitle_->setText(gives ? tr("Consent given: %1").arg(scopeWords(scope))
                              : tr("Consent withdrawn: %1").arg(scopeWords(scope)));
  by_->setText(player_.minor ? QString() : QString::fromStdString(player_.name));
  by_->setPlaceholderText(player_.minor ? tr("Name of the parent or guardian") : QString());
  guardian_->setChecked(player_.minor);
  from_->setDate(dayOf(at_));
  ends_->setVisible(gives);
  until_->setVisible(gives);
  ends_->setChecked(false);
  until_->setEnabled(false);
  until_->setDate(dayOf(at_).addYears(1));
  editor_->show();
  by_->setFocus();
}

void ConsentSection::keep() {
  ConsentEntry entry;
  entry.event = event_;
  entry.scope = scope_;
  entry.by = by_->text().trimmed().toStdString();
  entry.byGuardian = guardian_->isChecked();
  entry.from = startOf(from_->date());
  if (entry.by.empty()) {
    emit told(tr("Say who gave or withdrew consent."));
    by_->setFocus();
    return;
  }
  if (event_ == ConsentEvent::Given && ends_->isChecked()) {
    if (until_->date() < from_->date()) {
      emit told(tr("The consent would end before it begins; choose a later last day."));
      until_->setFocus();
      return;
    }
    entry.until = startOf(until_->date().addDays(1));
  }
  editor_->hide();
  emit noted(entry);
}

}  // namespace ferrule
