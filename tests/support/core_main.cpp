// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <algorithm>

#include "tests/support/own_home.h"
#include "tests/support/test_registry.h"

int main(int argc, char** argv) {
  const ferrule::OwnHome home;
  QCoreApplication application(argc, argv);
  return std::min(ferrule::runRegisteredTests(argc, argv), 100);
}
