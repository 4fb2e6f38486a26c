// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/record/append_cost.h"

#include <QByteArray>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <numeric>
#include <random>

#include "tests/bench/median.h"
#include "tests/bench/record/played_shots.h"
#include "tests/record/sample.h"

namespace ferrule::bench {

namespace {

using Clock = std::chrono::steady_clock;

double millisecondsSince(Clock::time_point start) {
  return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

/// A table of one column.
class BareDatabase {
 public:
  explicit BareDatabase(const std::string& path) : database_(QSqlDatabase::addDatabase("QSQLITE", "bare")) {
    database_.setDatabaseName(QString::fromStdString(path));
    if (!database_.open()) fail(database_.lastError());
    run("PRAGMA journal_mode = WAL");
    run("PRAGMA synchronous = FULL");
    run("CREATE TABLE bare(id INTEGER PRIMARY KEY, bytes BLOB NOT NULL) STRICT");
    insert_ = QSqlQuery(database_);
    insert_.prepare("INSERT INTO bare(bytes) VALUES(?)");
  }
  ~BareDatabase() {
    insert_ = QSqlQuery();
    database_.close();
    database_ = QSqlDatabase();
    QSqlDatabase::removeDatabase("bare");
  }
  void insert(const QByteArray& bytes) {
    run("BEGIN IMMEDIATE");
    insert_.bindValue(0, bytes);
    if (!insert_.exec()) fail(insert_.lastError());
    insert_.finish();
    run("COMMIT");
  }

 private:
  void run(const char* sql) {
    QSqlQuery query(database_);
    if (!query.exec(QString::fromLatin1(sql))) fail(query.lastError());
  }
  [[noreturn]] static void fail(const QSqlError& error) {
    std::fprintf(stderr, "bench_record: %s\n", qPrintable(error.text()));
    std::_Exit(1);
  }

  QSqlDatabase database_;
  QSqlQuery insert_;
};

/// Bytes that a record grows by for a shot, with its indexes.
double bytesOfOneShot(const std::string& folder, int shots) {
  const std::string path = folder + "/measured.sqlite";
  std::uintmax_t before = 0;
  {
    Record record = sample::openOrDie(path);
    sample::addGame(record);
  }
  before = std::filesystem::file_size(path);
  {
    Record record = sample::openOrDie(path);
    const FrameId frame = must(record.addFrame({must(record.sessions()).front().id, "eight-ball", {}, {}}));
    for (int i = 1; i <= shots; ++i)
      must(record.appendShot(frame, sample::shot(i), playedTracks(i)));
  }
  // The last one to close moves the log into the file.
  return static_cast<double>(std::filesystem::file_size(path) - before) / shots;
}

void print(const char* what, std::vector<double> times_ms) {
  std::ranges::sort(times_ms);
  const double mean = std::accumulate(times_ms.begin(), times_ms.end(), 0.0) / static_cast<double>(times_ms.size());
  std::printf("%-28s median %7.3f ms  mean %7.3f ms  95 %% %7.3f ms\n", what, times_ms[times_ms.size() / 2], mean,
              times_ms[times_ms.size() * 95 / 100]);
}

}  // namespace

void printAppendCost(const std::string& folder, int shots) {
  const double bytes = bytesOfOneShot(folder, std::min(shots, 200));
  Record record = sample::openOrDie(folder + "/record.sqlite");
  const sample::Game game = sample::addGame(record);
  BareDatabase bare(folder + "/bare.sqlite");
  std::mt19937 random(7);
  std::vector<double> record_ms, bare_ms;
  for (int i = 1; i <= shots; ++i) {
    const ShotReading reading = sample::shot(i);
    const std::vector<Track> tracks = playedTracks(i);
    // Bytes that no file system can shrink.
    QByteArray blob(static_cast<qsizetype>(bytes), '\0');
    std::ranges::generate(blob, [&] { return static_cast<char>(random()); });
    auto start = Clock::now();
    must(record.appendShot(game.frame, reading, tracks, game.ada));
    record_ms.push_back(millisecondsSince(start));
    start = Clock::now();
    bare.insert(blob);
    bare_ms.push_back(millisecondsSince(start));
  }
  std::printf("appending %d shots of %.0f bytes (eight tracks of 240 samples)\n", shots, bytes);
  print("  to the record", record_ms);
  print("  bare insert of as much", bare_ms);
  std::printf("  ratio of the medians         %.2f\n", median(record_ms) / median(bare_ms));
}

}  // namespace ferrule::bench
