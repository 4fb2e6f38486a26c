// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <algorithm>

#include "tests/support/test_registry.h"

int main(int argc, char** argv) {
  QCoreApplication application(argc, argv);
  return std::min(ferrule::runRegisteredTests(argc, argv), 100);
}
