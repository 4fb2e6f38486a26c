// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/setup_page.h"

#include <QCoreApplication>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/window/card.h"
#include "app/window/inks.h"

namespace ferrule {

namespace {

/// Lines longer than this are tiring to read and to follow to their field.
constexpr int kWidestForm_px = 860;

struct SetupSteps {
  Q_DECLARE_TR_FUNCTIONS(SetupSteps)
};

}  // namespace

QString stepWords(SetupStep step) {
  switch (step) {
    case SetupStep::Table:
      return SetupSteps::tr("Table");
    case SetupStep::Balls:
      return SetupSteps::tr("Balls");
    case SetupStep::Camera:
      return SetupSteps::tr("Camera");
    case SetupStep::Lens:
      return SetupSteps::tr("Lens");
    case SetupStep::Tags:
      return SetupSteps::tr("Tags");
    case SetupStep::Rig:
      return SetupSteps::tr("Rig");
    case SetupStep::Check:
      return SetupSteps::tr("Check");
    case SetupStep::Map:
      return SetupSteps::tr("Trust");
    case SetupStep::Projector:
      return SetupSteps::tr("Projector");
    case SetupStep::Done:
      return SetupSteps::tr("Keep");
  }
  return {};
}

QString stepTask(SetupStep step) {
  switch (step) {
    case SetupStep::Table:
      return SetupSteps::tr("Choose the table's size, or measure it from cushion nose to cushion nose.");
    case SetupStep::Balls:
      return SetupSteps::tr(
          "A ball's size tells how high its middle lies above the cloth, and where a pocket takes it.");
    case SetupStep::Camera:
      return SetupSteps::tr("Film the whole table as you will film play, and choose that film or a still of it.");
    case SetupStep::Lens:
      return SetupSteps::tr("Every lens bends the picture. Stills of a printed board show how much, and where.");
    case SetupStep::Tags:
      return SetupSteps::tr("Four printed tags on the rails tell where the camera sits.");
    case SetupStep::Rig:
      return SetupSteps::tr("Lens, tags and film together give the camera's place over this table.");
    case SetupStep::Check:
      return SetupSteps::tr("Does everything belong together? The film itself is asked.");
    case SetupStep::Map:
      return SetupSteps::tr("How far a ball may be off, where that comes from, and what it is worth in a shot.");
    case SetupStep::Projector:
      return SetupSteps::tr("If a projector hangs over the table: let the camera see where its light falls.");
    case SetupStep::Done:
      return SetupSteps::tr("Save the files; films of this table are measured with them from now on.");
  }
  return {};
}

SetupPage::SetupPage(SetupDesk& desk, SetupStep step, QWidget* parent) : QWidget(parent), desk_(desk), step_(step) {
  setAccessibleName(stepWords(step));
  column_ = new QVBoxLayout(this);
  column_->setContentsMargins(16, 12, 16, 16);
  column_->setSpacing(12);
  auto* task = new QLabel(stepTask(step));
  task->setWordWrap(true);
  task->setFont(scaled(font(), 1.15));
  column_->addWidget(task);
}

void SetupPage::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  refresh();
}

QFormLayout* SetupPage::addForm() {
  auto* card = new Card;
  auto* form = new QFormLayout(card);
  form->setContentsMargins(16, 16, 16, 16);
  form->setVerticalSpacing(8);
  form->setHorizontalSpacing(16);
  card->setMaximumWidth(kWidestForm_px);
  column_->addWidget(card);
  return form;
}

QLabel* SetupPage::addQuiet(const QString& words) {
  auto* label = new QuietLabel(words);
  label->setWordWrap(true);
  column_->addWidget(label);
  return label;
}

void SetupPage::addCaution(const QString& words) {
  auto* card = new Card;
  auto* row = new QVBoxLayout(card);
  row->setContentsMargins(16, 12, 16, 12);
  auto* head = new QLabel(SetupSteps::tr("Take care"));
  head->setFont(scaled(font(), 1.0, true));
  auto* label = new QLabel(words);
  label->setWordWrap(true);
  row->addWidget(head);
  row->addWidget(label);
  column_->addWidget(card);
}

void SetupPage::addButtons(const std::vector<QPushButton*>& buttons) {
  auto* row = new QHBoxLayout;
  row->setSpacing(8);
  for (QPushButton* each : buttons)
    row->addWidget(each);
  row->addStretch(1);
  column_->addLayout(row);
}

QPushButton* SetupPage::button(const char* name, const QString& words) const {
  auto* made = new QPushButton(words);
  made->setObjectName(QLatin1String(name));
  return made;
}

QDoubleSpinBox* SetupPage::millimetres(const char* name, const QString& accessible, double least, double most,
                                       int decimals) const {
  auto* box = new QDoubleSpinBox;
  box->setObjectName(QLatin1String(name));
  box->setAccessibleName(accessible);
  box->setRange(least, most);
  box->setDecimals(decimals);
  box->setSuffix(SetupSteps::tr(" mm"));
  box->setKeyboardTracking(false);
  return box;
}

}  // namespace ferrule
