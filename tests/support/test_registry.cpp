// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/test_registry.h"

#include <QtTest>
#include <vector>

namespace ferrule {

namespace {

std::vector<TestMaker>& makers() {
  static std::vector<TestMaker> all;
  return all;
}

}  // namespace

bool registerTest(TestMaker maker) {
  makers().push_back(std::move(maker));
  return true;
}

int runRegisteredTests(int argc, char** argv) {
  int failures = 0;
  for (const TestMaker& make : makers()) {
    const auto test = make();
    failures += QTest::qExec(test.get(), argc, argv);
  }
  return failures;
}

}  // namespace ferrule
