// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTest>

namespace ferrule {

/// How long a test waits for what must come, ms: a computer that does much else at the same time is no fault. Qt's own
/// five seconds are less than work in the background may take there.
inline constexpr int kPatience_ms = 120'000;

}  // namespace ferrule

#undef QTRY_VERIFY
#undef QTRY_COMPARE
#define QTRY_VERIFY(expression) QTRY_VERIFY_WITH_TIMEOUT(expression, ferrule::kPatience_ms)
#define QTRY_COMPARE(actual, expected) QTRY_COMPARE_WITH_TIMEOUT(actual, expected, ferrule::kPatience_ms)
