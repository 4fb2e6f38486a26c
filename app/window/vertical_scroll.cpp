// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/vertical_scroll.h"

#include <QEvent>
#include <QScrollBar>

namespace ferrule {

VerticalScroll::VerticalScroll(QWidget* column, QWidget* parent) : QScrollArea(parent) {
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setWidgetResizable(true);
  setFocusPolicy(Qt::NoFocus);
  setWidget(column);
}

QSize VerticalScroll::minimumSizeHint() const {
  return {widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width(),
          QScrollArea::minimumSizeHint().height()};
}

QSize VerticalScroll::sizeHint() const {
  return {std::max(widget()->sizeHint().width(), minimumSizeHint().width()), widget()->sizeHint().height()};
}

bool VerticalScroll::eventFilter(QObject* watched, QEvent* event) {
  if (watched == widget() && event->type() == QEvent::LayoutRequest) updateGeometry();
  return QScrollArea::eventFilter(watched, event);
}

}  // namespace ferrule
