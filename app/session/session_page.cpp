// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/session_page.h"

#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

#include "app/window/card.h"
#include "app/window/inks.h"

namespace ferrule {

namespace {

constexpr int kMiddleWidth_px = 900;
constexpr int kPanelWidth_px = 344;

}  // namespace

QLabel* sessionTitle(const char* name) {
  auto* title = new ElidedLabel;
  title->setObjectName(QString::fromLatin1(name));
  title->setTextFormat(Qt::PlainText);
  title->setFont(scaled(title->font(), 1.3, true));
  return title;
}

QWidget* titledMiddle(QLabel* title, QWidget* content) {
  auto* middle = new QWidget;
  auto* column = new QVBoxLayout(middle);
  column->setContentsMargins(12, 8, 12, 12);
  column->setSpacing(8);
  column->addWidget(title);
  column->addWidget(content, 1);
  return middle;
}

QSplitter* sessionColumns(QWidget* middle, QWidget* panel) {
  auto* columns = new QSplitter;
  columns->setHandleWidth(1);
  columns->setChildrenCollapsible(false);
  columns->addWidget(middle);
  columns->addWidget(panel);
  columns->setStretchFactor(0, 1);
  columns->setStretchFactor(1, 0);
  columns->setSizes({kMiddleWidth_px, kPanelWidth_px});
  return columns;
}

}  // namespace ferrule
