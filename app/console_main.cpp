// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>

#include "app/console/console.h"

int main(int argc, char** argv) {
  // The record's database driver is found through it.
  const QCoreApplication application(argc, argv);
  return ferrule::runConsole(argc, argv);
}
