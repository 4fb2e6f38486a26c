// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/name_list.h"

#include <QRegularExpression>
#include <QStringList>

namespace ferrule {

std::vector<std::string> namesIn(const QString& list) {
  // The comma and semicolon of European, Chinese and Arabic keyboards, and the Chinese comma between items.
  static const QRegularExpression separators(QStringLiteral("[,;\\x{FF0C}\\x{FF1B}\\x{3001}\\x{060C}]"));
  std::vector<std::string> names;
  for (const QString& name : list.split(separators)) {
    if (!name.trimmed().isEmpty()) names.push_back(name.trimmed().toStdString());
  }
  return names;
}

}  // namespace ferrule
