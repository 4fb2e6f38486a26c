// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/projector/projector_row.h"

#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/projector/projector_desk.h"
#include "app/window/inks.h"
#include "app/window/wrapping_row.h"

namespace ferrule {

ProjectorRow::ProjectorRow(ProjectorDesk& projector, const std::vector<Choice>& choices, QWidget* parent)
    : QWidget(parent), projector_(projector) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  auto* row = new WrappingRow;
  row->setSpacing(4);
  for (const Choice& choice : choices) {
    auto* button = new QPushButton(choice.text);
    button->setObjectName(QString::fromLatin1(choice.name));
    button->setToolTip(choice.help);
    button->setCheckable(true);
    row->addWidget(button);
    buttons_.push_back(button);
    connect(button, &QPushButton::clicked, this, [this, button](bool down) {
      for (QPushButton* other : buttons_) {
        if (other != button) other->setChecked(false);
      }
      if (!down) projector_.dark();
      emit chosenChanged();
      refresh();
    });
  }
  column->addLayout(row);
  caution_ = new QLabel(beamCaution());
  caution_->setObjectName(QStringLiteral("beamCaution"));
  caution_->setWordWrap(true);
  caution_->setFont(scaled(font(), 1.0, true));
  column->addWidget(caution_);
  connect(&projector_, &ProjectorDesk::changed, this, &ProjectorRow::refresh);
  refresh();
}

std::optional<int> ProjectorRow::chosen() const {
  for (std::size_t i = 0; i < buttons_.size(); ++i) {
    if (buttons_[i]->isChecked()) return static_cast<int>(i);
  }
  return std::nullopt;
}

QString ProjectorRow::lightName(int choice) const {
  return buttons_[static_cast<std::size_t>(choice)]->objectName();
}

void ProjectorRow::refresh() {
  // Another place's light, the key for black or a closed screen leaves none of these down.
  if (const auto down = chosen(); down && !projector_.isBusy() && projector_.shown() != lightName(*down)) {
    buttons_[static_cast<std::size_t>(*down)]->setChecked(false);
  }
  caution_->setVisible(chosen().has_value());
}

}  // namespace ferrule
