// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/guest_bar.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/window/plain_parts.h"
#include "app/window/wrapping_row.h"

namespace ferrule {

GuestBar::GuestBar(std::function<UtcMilliseconds()> clock, QWidget* parent)
    : QWidget(parent), clock_(std::move(clock)) {
  setObjectName(QStringLiteral("guestBar"));
  words_ = wordsLabel("guestWords");
  who_ = new QComboBox;
  who_->setObjectName(QStringLiteral("guestIs"));
  who_->setAccessibleName(tr("Who the guest was"));
  who_->setEditable(true);
  who_->setMinimumContentsLength(16);
  who_->lineEdit()->setPlaceholderText(tr("A player's name, known or new"));
  name_ = namedButton(tr("That is who"), "nameGuest");
  stays_ = namedButton(tr("Stays a guest"), "leaveGuest");
  back_ = namedButton(tr("Take it back"), "takeBackGuest");
  connect(name_, &QPushButton::clicked, this, &GuestBar::name);
  connect(who_->lineEdit(), &QLineEdit::returnPressed, this, &GuestBar::name);
  connect(stays_, &QPushButton::clicked, this, &GuestBar::close);
  connect(back_, &QPushButton::clicked, this, [this] { service_.takeBack(record_, clock_()); });
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(16, 8, 16, 8);
  column->setSpacing(4);
  column->addWidget(words_);
  auto* row = new WrappingRow;
  row->setSpacing(8);
  for (QWidget* widget : std::initializer_list<QWidget*>{who_, name_, stays_, back_})
    row->addWidget(widget);
  column->addLayout(row);
  connect(&service_, &GuestService::found, this, &GuestBar::showGuest);
  connect(&service_, &GuestService::named, this, [this](const QString& guest, const QString& name) {
    words_->setText(tr("What %1 played is now %2's.", "a guest, a player").arg(guest, name));
    for (QWidget* widget : std::initializer_list<QWidget*>{who_, name_, stays_})
      widget->hide();
    back_->show();
    emit peopleChanged();
    // Perhaps there was another one.
    service_.look(record_, session_);
  });
  connect(&service_, &GuestService::refused, this, [this](JoinReport::Ending why, const QString& name) {
    words_->setText(why == JoinReport::Ending::PlayedTogether
                        ? tr("%1 and the guest played together, so they are two.").arg(name)
                        : tr("A session that is not ended knows the guest: end it first."));
  });
  connect(&service_, &GuestService::takenBack, this, [this] {
    emit peopleChanged();
    service_.look(record_, session_);
  });
  connect(&service_, &GuestService::failed, this, &GuestBar::failed);
  close();
}

void GuestBar::ask(const QString& record, SessionId session) {
  close();
  record_ = record;
  session_ = session;
  service_.look(record, session);
}

void GuestBar::close() {
  guest_.reset();
  hide();
}

void GuestBar::showGuest(const GuestOfSession& guest) {
  guest_ = guest;
  words_->setText(tr("Who was %1?", "a guest").arg(guest.name));
  who_->clear();
  who_->addItems(guest.others);
  who_->setCurrentText({});
  for (QWidget* widget : std::initializer_list<QWidget*>{who_, name_, stays_})
    widget->show();
  back_->hide();
  setVisible(true);
}

void GuestBar::name() {
  const QString name = who_->currentText().trimmed();
  if (guest_ && !name.isEmpty()) service_.name(record_, guest_->guest, name);
}

}  // namespace ferrule
