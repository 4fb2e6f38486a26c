// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/plain_parts.h"

#include <QComboBox>
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

QComboBox* narrowBox() {
  auto* box = new QComboBox;
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(10);
  box->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  return box;
}

}  // namespace ferrule
