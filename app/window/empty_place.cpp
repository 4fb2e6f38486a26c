// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/empty_place.h"

#include <QAction>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ferrule {

QWidget* emptyPlace(QLabel* words, QPushButton* button, QAction* action) {
  auto* empty = new QWidget;
  auto* column = new QVBoxLayout(empty);
  column->setContentsMargins(24, 24, 24, 24);
  column->setSpacing(12);
  column->addStretch(1);
  words->setTextFormat(Qt::PlainText);
  words->setWordWrap(true);
  words->setAlignment(Qt::AlignCenter);
  column->addWidget(words);
  QObject::connect(button, &QPushButton::clicked, action, &QAction::trigger);
  column->addWidget(button, 0, Qt::AlignHCenter);
  column->addStretch(1);
  return empty;
}

}  // namespace ferrule
