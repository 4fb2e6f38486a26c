// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/console/refusal.h"

namespace ferrule {

QString wrongWithRefusal(const Ended& ended, const QString& names, const QString& whatToDo,
                         const QStringList& filesBefore, const QStringList& filesAfter) {
  const QString words = ended.words.join('\n');
  if (ended.status != 1) return QStringLiteral("exit status %1: %2").arg(ended.status).arg(words);
  if (!ended.out.isEmpty()) return "on standard output: " + ended.out;
  if (ended.words.size() != 1 || !words.endsWith('.')) return "not one sentence: " + words;
  if (!words.contains(names)) return QStringLiteral("does not name %1: %2").arg(names, words);
  if (!words.contains(whatToDo)) return QStringLiteral("does not say '%1': %2").arg(whatToDo, words);
  if (filesAfter != filesBefore) {
    return QStringLiteral("files were [%1], are [%2]").arg(filesBefore.join(", "), filesAfter.join(", "));
  }
  return {};
}

}  // namespace ferrule
