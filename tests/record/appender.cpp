// SPDX-License-Identifier: GPL-3.0-or-later
// Appends shots to a record until it is killed, and says on standard output which ones are committed.
//
//   record_appender RECORD

#include <QCoreApplication>
#include <cstdio>

#include "core/record/record.h"
#include "tests/record/sample.h"

int main(int argc, char** argv) {
  using namespace ferrule;
  QCoreApplication application(argc, argv);
  if (argc != 2) return 2;
  Record record = sample::openOrDie(argv[1]);
  const auto game = sample::addGame(record);
  for (int number = 1;; ++number) {
    const auto shot = record.appendShot(game.frame, sample::shot(number), sample::tracks(number), game.ada);
    if (!shot) return 1;
    std::printf("%d\n", number);
    std::fflush(stdout);
  }
}
