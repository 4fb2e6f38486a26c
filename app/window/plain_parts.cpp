// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/plain_parts.h"

#include <QLabel>
#include <QPushButton>

namespace ferrule {

QLabel* wordsLabel(const char* name) {
  auto* label = new QLabel;
  label->setObjectName(QString::fromLatin1(name));
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  return label;
}

QPushButton* namedButton(const QString& text, const char* name) {
  auto* button = new QPushButton(text);
  button->setObjectName(QString::fromLatin1(name));
  return button;
}

}  // namespace ferrule
