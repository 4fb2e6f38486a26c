// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/console.h"

int main(int argc, char** argv) {
  return ferrule::runConsole(argc, argv);
}
