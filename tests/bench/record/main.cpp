// SPDX-License-Identifier: GPL-3.0-or-later
// What keeping a shot costs, and how quickly a large record answers.
#include <CLI/CLI.hpp>
#include <QCoreApplication>
#include <QTemporaryDir>
#include <filesystem>
#include <string>

#include "tests/bench/record/append_cost.h"
#include "tests/bench/record/large_record.h"

int main(int argc, char** argv) {
  const QCoreApplication application(argc, argv);
  CLI::App app{"Measures the record: appending a shot against a bare insert of the same bytes, and a large record."};
  int appended = 500;
  int shots = 100'000;
  std::string folder = std::filesystem::temp_directory_path().string();
  std::string large;
  app.add_option("--append", appended, "Shots to append")->check(CLI::Range(10, 100'000));
  app.add_option("--shots", shots, "Shots of the large record; 0 leaves it out")->check(CLI::Range(0, 5'000'000));
  app.add_option("--folder", folder, "A folder on the disk to measure")->check(CLI::ExistingDirectory);
  app.add_option("--large", large, "Keep the large record here and use it again");
  CLI11_PARSE(app, argc, argv);

  const QTemporaryDir own(QString::fromStdString(folder) + "/bench-record-XXXXXX");
  ferrule::bench::printAppendCost(own.path().toStdString(), appended);
  if (shots > 0) {
    const QTemporaryDir memory(QString::fromLatin1("/dev/shm/bench-record-XXXXXX"));
    const std::string fill = memory.isValid() ? memory.path().toStdString() : own.path().toStdString();
    ferrule::bench::printLargeRecord(large.empty() ? own.filePath("large.sqlite").toStdString() : large, fill, shots);
  }
  return 0;
}
