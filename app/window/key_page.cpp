// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/key_page.h"

#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QKeySequence>
#include <QLabel>
#include <QVBoxLayout>
#include <optional>

#include "app/window/actions.h"
#include "app/window/inks.h"

namespace ferrule {

KeyPage::KeyPage(QWidget* parent) : QDialog(parent) {
  setObjectName(QStringLiteral("keyPage"));
  setWindowTitle(tr("Keys"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(24, 16, 24, 16);
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(24);
  grid->setVerticalSpacing(4);
  int row = 0;
  std::optional<MenuId> menu;
  for (const ActionRow& action : actionRows()) {
    if (action.keys[0] == '\0') continue;
    if (menu != action.menu) {
      menu = action.menu;
      auto* title = new QLabel(menuTitle(action.menu).remove(QLatin1Char('&')));
      title->setFont(scaled(font(), 1.0, true));
      title->setContentsMargins(0, row == 0 ? 0 : 8, 0, 0);
      grid->addWidget(title, row++, 0, 1, 2);
    }
    QStringList keys;
    for (const QKeySequence& key : QKeySequence::listFromString(QString::fromLatin1(action.keys))) {
      keys << key.toString(QKeySequence::NativeText);
    }
    grid->addWidget(new QLabel(keys.join(QStringLiteral(", "))), row, 0);
    grid->addWidget(new QLabel(QCoreApplication::translate("Actions", action.help)), row, 1);
    ++row;
  }
  column->addLayout(grid);
  auto* mouse = new QLabel(tr("Wheel: enlarge. Drag: move, or scrub on the time line. Double click: whole table."));
  mouse->setWordWrap(true);
  mouse->setContentsMargins(0, 8, 0, 8);
  column->addWidget(mouse);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  column->addWidget(buttons);
}

}  // namespace ferrule
