// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <algorithm>
#include <clocale>

#include "tests/support/test_registry.h"

int main(int argc, char** argv) {
  QApplication application(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  return std::min(ferrule::runRegisteredTests(argc, argv), 100);
}
