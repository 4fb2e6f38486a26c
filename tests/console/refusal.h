// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/console/program.h"

namespace ferrule {

/// Why a refused call was not refused as it should be; empty when all is well: exit status 1, nothing on standard
/// output, exactly one sentence, which names the thing and says what to do, and every file as it was before.
[[nodiscard]] QString wrongWithRefusal(const Ended& ended, const QString& names, const QString& whatToDo,
                                       const QStringList& filesBefore, const QStringList& filesAfter);

}  // namespace ferrule

/// Calls the program in a workplace and checks the refusal.
#define FERRULE_VERIFY_REFUSED(workplace, words, names, whatToDo)                                         \
  do {                                                                                                    \
    const QStringList before = (workplace).files();                                                       \
    const ferrule::Ended ended = (workplace).run(words);                                                  \
    const QString wrong = ferrule::wrongWithRefusal(ended, names, whatToDo, before, (workplace).files()); \
    QVERIFY2(wrong.isEmpty(), qPrintable(wrong));                                                         \
  } while (false)
