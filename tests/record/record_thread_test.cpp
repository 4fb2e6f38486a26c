// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <atomic>
#include <thread>

#include "core/record/record.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

std::atomic<int> warnings{0};

void countWarnings(QtMsgType type, const QMessageLogContext&, const QString&) {
  if (type != QtDebugMsg && type != QtInfoMsg) ++warnings;
}

}  // namespace

class RecordThreadTest : public QObject {
  Q_OBJECT
 private slots:
  void twoThreadsReadWhileOneWrites();
  void twoWritersTakeTurns();
  void twoProgramsMayMakeTheRecordAtOnce();
};

void RecordThreadTest::twoThreadsReadWhileOneWrites() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  constexpr int kShots = 60;
  sample::Game game;
  {
    Record record = sample::openOrDie(path);
    game = sample::addGame(record);
  }
  warnings = 0;
  const QtMessageHandler before = qInstallMessageHandler(countWarnings);
  std::atomic<bool> written{false};
  std::atomic<int> faults{0};
  std::thread writer([&] {
    Record record = sample::openOrDie(path);
    for (int number = 1; number <= kShots; ++number) {
      if (!record.appendShot(game.frame, sample::shot(number), sample::tracks(number))) ++faults;
    }
    written = true;
  });
  const auto read = [&] {
    Record record = sample::openOrDie(path);
    std::size_t known = 0;
    bool last = false;
    while (!last) {
      last = written;
      const auto shots = record.shots(game.frame);
      // A reader sees whole shots only, and never fewer than before.
      if (!shots || shots->size() < known) {
        ++faults;
        return;
      }
      known = shots->size();
      if (known == 0) continue;
      const auto newest = record.shot(shots->back().id);
      if (!newest || newest->reading != sample::shot(static_cast<int>(known))) ++faults;
    }
    if (known != kShots) ++faults;
  };
  std::thread reader(read);
  std::thread otherReader(read);
  writer.join();
  reader.join();
  otherReader.join();
  qInstallMessageHandler(before);
  QCOMPARE(faults.load(), 0);
  QCOMPARE(warnings.load(), 0);
}

/// Read, then write, in two connections: a transaction that only takes its lock when it writes fails here at once.
void RecordThreadTest::twoWritersTakeTurns() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  sample::Game game;
  {
    Record record = sample::openOrDie(path);
    game = sample::addGame(record);
  }
  std::atomic<int> faults{0};
  const auto write = [&](int first) {
    Record record = sample::openOrDie(path, {RecordMode::ReadWrite, 60'000, 0});
    for (int i = 0; i < 50; ++i) {
      if (!record.shots(game.frame)) ++faults;
      if (!record.appendShot(game.frame, sample::shot(first + 2 * i), {})) ++faults;
    }
  };
  std::thread odd(write, 1);
  std::thread even(write, 2);
  odd.join();
  even.join();
  QCOMPARE(faults.load(), 0);
  Record record = sample::openOrDie(path);
  QCOMPARE(record.shots(game.frame)->size(), std::size_t{100});
}

void RecordThreadTest::twoProgramsMayMakeTheRecordAtOnce() {
  for (int run = 0; run < 5; ++run) {
    const sample::Folder folder;
    const std::string path = folder.file("a.sqlite");
    std::atomic<int> faults{0};
    const auto make = [&](const char* name) {
      auto record = Record::open(path, {RecordMode::ReadWrite, 60'000, 0});
      if (!record || !record->addPlayer(sample::player(name))) ++faults;
    };
    std::thread one(make, "Ada");
    std::thread two(make, "Ben");
    one.join();
    two.join();
    QCOMPARE(faults.load(), 0);
    Record record = sample::openOrDie(path);
    QCOMPARE(record.players()->size(), std::size_t{2});
  }
}

FERRULE_TEST(RecordThreadTest)
#include "record_thread_test.moc"
