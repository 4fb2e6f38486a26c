// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/message_bar.h"

namespace ferrule {

MessageBar::MessageBar(QWidget* parent) : QLabel(parent) {
  setWordWrap(true);
  setTextFormat(Qt::PlainText);
  setContentsMargins(16, 8, 16, 8);
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::ToolTipBase);
  setForegroundRole(QPalette::ToolTipText);
  setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  hide();
}

void MessageBar::tell(const QString& sentence) {
  setText(sentence);
  setVisible(!sentence.isEmpty());
}

}  // namespace ferrule
