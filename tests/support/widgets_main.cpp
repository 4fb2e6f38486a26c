// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <algorithm>
#include <clocale>

#include "tests/support/own_home.h"
#include "tests/support/test_registry.h"

int main(int argc, char** argv) {
  const ferrule::OwnHome home;
  QApplication application(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  return std::min(ferrule::runRegisteredTests(argc, argv), 100);
}
