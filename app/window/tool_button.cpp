// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/tool_button.h"

#include <QAction>
#include <QRegularExpression>
#include <QToolButton>

namespace ferrule {

namespace {

constexpr int kIcon_px = 18;

}  // namespace

QToolButton* toolButton(QAction* action) {
  auto* button = new QToolButton;
  // Chinese writes the key's letter in brackets behind the words; without its underline it says nothing.
  static const QRegularExpression kLetter(QStringLiteral("\\s*\\(&.\\)"));
  if (action->text().contains(kLetter)) action->setIconText(QString(action->text()).remove(kLetter));
  button->setDefaultAction(action);
  button->setObjectName(action->objectName() + QStringLiteral("Button"));
  button->setIconSize({kIcon_px, kIcon_px});
  button->setAutoRaise(true);
  button->setFocusPolicy(Qt::TabFocus);
  return button;
}

QToolButton* raisedButton(QAction* action) {
  QToolButton* button = toolButton(action);
  button->setAutoRaise(false);
  return button;
}

}  // namespace ferrule
