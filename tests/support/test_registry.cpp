// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/test_registry.h"

#include <QtTest>
#include <algorithm>
#include <functional>
#include <string_view>
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

// The first word may name one class; other words go to Qt Test.
int runRegisteredTests(int argc, char** argv) {
  std::vector<std::unique_ptr<QObject>> all;
  for (const TestMaker& make : makers())
    all.push_back(make());
  std::vector<char*> words(argv, argv + argc);
  const auto isNamed = [&](const auto& test) {
    return words.size() > 1 && std::string_view(test->metaObject()->className()) == words[1];
  };
  if (std::ranges::any_of(all, isNamed)) {
    std::erase_if(all, std::not_fn(isNamed));
    words.erase(words.begin() + 1);
  }
  int failures = 0;
  for (std::unique_ptr<QObject>& test : all) {
    failures += QTest::qExec(test.get(), static_cast<int>(words.size()), words.data());
    test.reset();
  }
  return failures;
}

}  // namespace ferrule
