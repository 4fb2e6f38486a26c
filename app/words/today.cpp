// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/today.h"

#include <QDate>

namespace ferrule {

std::string today() {
  return QDate::currentDate().toString(Qt::ISODate).toStdString();
}

}  // namespace ferrule
