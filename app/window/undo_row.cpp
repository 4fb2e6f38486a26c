// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/undo_row.h"

#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QSpinBox>
#include <QToolButton>

#include "app/window/ink_icon.h"

namespace ferrule {

namespace {

constexpr int kIcon_px = 18;

QToolButton* stepButton(const QString& name, const QString& icon, QAction* action) {
  auto* button = new QToolButton;
  button->setObjectName(name);
  button->setIcon(inkIcon(icon));
  button->setIconSize({kIcon_px, kIcon_px});
  button->setAutoRaise(true);
  button->setFocusPolicy(Qt::TabFocus);
  QObject::connect(button, &QToolButton::clicked, action, &QAction::trigger);
  return button;
}

void tell(QToolButton* button, const QString& words, const QString& nothing) {
  button->setEnabled(!words.isEmpty());
  button->setToolTip(words.isEmpty() ? nothing : words);
  button->setAccessibleName(button->toolTip());
}

}  // namespace

UndoRow::UndoRow(const ActionSet& actions, const QString& place, QWidget* parent) : QWidget(parent) {
  undo_ = stepButton(QStringLiteral("undo") + place, QStringLiteral("undo"), actions.at(ActionId::Undo));
  redo_ = stepButton(QStringLiteral("redo") + place, QStringLiteral("redo"), actions.at(ActionId::Redo));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(4);
  row->addWidget(undo_);
  row->addWidget(redo_);
  setSteps({}, {});
}

void UndoRow::setSteps(const QString& undo, const QString& redo) {
  tell(undo_, undo.isEmpty() ? QString() : tr("Undo: %1 (Ctrl+Z)").arg(undo), tr("Nothing to undo"));
  tell(redo_, redo.isEmpty() ? QString() : tr("Redo: %1 (Ctrl+Y)").arg(redo), tr("Nothing to redo"));
}

bool isBeingTyped(const QWidget& field) {
  const auto* edit = qobject_cast<const QLineEdit*>(&field);
  const QWidget* around = edit != nullptr ? edit->parentWidget() : &field;
  if (const auto* box = qobject_cast<const QDoubleSpinBox*>(around)) {
    return box->text() != box->prefix() + box->textFromValue(box->value()) + box->suffix() &&
           box->text() != box->specialValueText();
  }
  if (const auto* box = qobject_cast<const QSpinBox*>(around)) {
    return box->cleanText().toInt() != box->value() && box->text() != box->specialValueText();
  }
  return edit != nullptr && edit->isModified();
}

}  // namespace ferrule
