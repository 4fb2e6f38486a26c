// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/players/person_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <set>

#include "app/players/people_words.h"
#include "app/window/card.h"
#include "app/words/joining.h"
#include "app/words/name_list.h"

namespace ferrule {

namespace {

constexpr std::array kHands{Handedness::Unknown, Handedness::Right, Handedness::Left, Handedness::Both};
constexpr int kLeastCombo = 10;  // letters

}  // namespace

QString groupsText(const std::vector<std::string>& groups) {
  QStringList words;
  for (const std::string& group : groups)
    words << QString::fromStdString(group);
  return listOf(words);
}

std::vector<std::string> groupsFromText(const QString& text) {
  const std::vector<std::string> typed = namesIn(text);
  const std::set<std::string> groups(typed.begin(), typed.end());
  return {groups.begin(), groups.end()};
}

PersonForm::PersonForm(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("personForm"));
  auto* form = new QFormLayout(this);
  form->setContentsMargins(0, 0, 0, 0);
  form->setHorizontalSpacing(16);
  form->setVerticalSpacing(12);
  form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
  const auto named = [](auto* widget, const char* name, const QString& what) {
    widget->setObjectName(QString::fromLatin1(name));
    widget->setAccessibleName(what);
    return widget;
  };
  name_ = named(new QLineEdit, "personName", tr("Name"));
  form->addRow(tr("&Name"), name_);
  hand_ = named(new QComboBox, "personHand", tr("Playing hand"));
  for (const Handedness hand : kHands)
    hand_->addItem(handednessWords(hand), static_cast<int>(hand));
  form->addRow(tr("Playing &hand"), hand_);
  groups_ = named(new QLineEdit, "personGroups", tr("Groups"));
  groups_->setPlaceholderText(tr("Such as juniors, Tuesday"));
  groups_->setToolTip(tr("With commas between; a person may be in several"));
  form->addRow(tr("G&roups"), groups_);
  minor_ = named(new QCheckBox(tr("&Minor: a parent or guardian gives consent")), "personMinor", tr("Minor"));
  form->addRow(QString(), minor_);
  guest_ = named(new QCheckBox(tr("G&uest: who it is will be known later")), "personGuest", tr("Guest"));
  form->addRow(QString(), guest_);

  auto* row = new QHBoxLayout;
  joinWords_ = new QLabel;
  joinTo_ = named(new QComboBox, "joinTo", tr("Who it is"));
  joinTo_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  joinTo_->setMinimumContentsLength(kLeastCombo);
  joinWords_->setBuddy(joinTo_);
  join_ = named(new QPushButton(tr("Give over")), "join", tr("Give all shots to that player"));
  join_->setToolTip(tr("All shots, sessions, notes and consents go to that player; can be undone"));
  row->addWidget(joinTo_, 1);
  row->addWidget(join_);
  form->addRow(joinWords_, row);

  for (QLineEdit* field : {name_, groups_})
    connect(field, &QLineEdit::editingFinished, this, &PersonForm::tell);
  connect(hand_, &QComboBox::activated, this, &PersonForm::tell);
  for (QCheckBox* box : {minor_, guest_})
    connect(box, &QCheckBox::clicked, this, &PersonForm::tell);
  connect(join_, &QPushButton::clicked, this,
          [this] { emit joinWanted(PlayerId{joinTo_->currentData().toLongLong()}); });
  connect(joinTo_, &QComboBox::currentIndexChanged, this, [this](int at) { join_->setEnabled(at > 0); });
}

void PersonForm::show(const PersonDetails& details, const std::vector<PersonRow>& others) {
  const bool same = details.player.id == details_.player.id;
  const auto set = [&](QLineEdit* field, const QString& text, const QString& before) {
    // What is being typed stays, unless the record's value became another.
    if (same && text == before) return;
    field->setText(text);
    field->setCursorPosition(0);
  };
  set(name_, QString::fromStdString(details.player.name), QString::fromStdString(details_.player.name));
  set(groups_, groupsText(details.groups), groupsText(details_.groups));
  details_ = details;
  hand_->setCurrentIndex(hand_->findData(static_cast<int>(details.player.handedness)));
  minor_->setChecked(details.player.minor);
  guest_->setChecked(details.player.guest);
  joinWords_->setText(details.player.guest ? tr("This &is") : tr("Same person &as"));
  const QVariant before = same ? joinTo_->currentData() : QVariant();
  joinTo_->clear();
  joinTo_->addItem(tr("Choose a player"));
  for (const PersonRow& other : others) {
    const Player& player = other.details.player;
    if (player.id != details.player.id)
      joinTo_->addItem(QString::fromStdString(player.name), QVariant::fromValue<qlonglong>(player.id.value));
  }
  joinTo_->setCurrentIndex(before.isValid() ? std::max(joinTo_->findData(before), 0) : 0);
  join_->setEnabled(joinTo_->currentIndex() > 0);
}

void PersonForm::focusName() {
  name_->setFocus();
  name_->selectAll();
}

void PersonForm::tell() {
  if (!details_.player.id) return;
  PersonDetails details = details_;
  const QString name = name_->text().trimmed();
  if (name.isEmpty()) {
    name_->setText(QString::fromStdString(details_.player.name));
    emit told(tr("A player needs a name; the old one stays."));
    return;
  }
  details.player.name = name.toStdString();
  details.player.handedness = static_cast<Handedness>(hand_->currentData().toInt());
  details.player.minor = minor_->isChecked();
  details.player.guest = guest_->isChecked();
  details.groups = groupsFromText(groups_->text());
  if (details != details_) emit changed(details);
}

}  // namespace ferrule
