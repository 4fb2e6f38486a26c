// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <functional>
#include <memory>

#include "tests/support/patience.h"

namespace ferrule {

using TestMaker = std::function<std::unique_ptr<QObject>()>;

/// Adds a test class to this executable.
bool registerTest(TestMaker maker);
/// Runs every registered class; the number of failures.
int runRegisteredTests(int argc, char** argv);

}  // namespace ferrule

/// At the end of a test's source, before its .moc.
#define FERRULE_TEST(Class) \
  static const bool registered##Class = ferrule::registerTest([] { return std::make_unique<Class>(); });
