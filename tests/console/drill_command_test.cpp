// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/drill_command.h"

#include <QtTest>

#include "core/drills/drill_file.h"
#include "core/measure/drill_keeping.h"
#include "tests/console/call.h"
#include "tests/drills/drill_shots.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class DrillCommandTest : public QObject {
  Q_OBJECT
 private slots:
  void theDrillsAreListed();
  void triesOfASessionAreKeptAsARun();
  void aMissingRecordIsNotMade();
  void anUnknownDrillOrSessionIsRefused();
  void halfACallIsAWrongCall();
};

namespace {

std::string recordWithCuts(const sample::Folder& folder) {
  const std::string path = folder.file("club.sqlite");
  Record record = sample::openOrDie(path);
  const MeasuredTable table = *measuredTableFrom("9ft");
  const auto session = record.addSession({"Evening", 1'772'389'800'000, "9ft", table, {}, SessionKind::Practice});
  const auto frame = record.addFrame({*session, "", std::nullopt, std::nullopt});
  for (int number = 1; number <= 3; ++number) {
    ShotReading shot = drillshots::shot(setUpOf(builtInDrill("cut-fan")->stations[1], table), drillshots::at(1.0, 0.4));
    if (number < 3) drillshots::pot(shot, 1, PocketName::FootLeft);
    shot.number = number;
    if (!record.appendShot(*frame, shot, {})) qFatal("the shot was not recorded");
  }
  return path;
}

}  // namespace

void DrillCommandTest::theDrillsAreListed() {
  QCOMPARE(call({"drill", "--list"}), 0);
}

void DrillCommandTest::triesOfASessionAreKeptAsARun() {
  const sample::Folder folder;
  const std::string path = recordWithCuts(folder);
  QCOMPARE(call({"drill", "--record", path, "--session", "Evening", "--drill", "cut-fan"}), 0);
  Record record = sample::openOrDie(path);
  const auto runs = keptRuns(record);
  QCOMPARE(runs->size(), std::size_t{1});
  QCOMPARE(runs->front().trials.size(), std::size_t{3});
  QVERIFY(runs->front().trials[0].succeeded() == true);
  QVERIFY(runs->front().trials[2].succeeded() == false);
}

void DrillCommandTest::aMissingRecordIsNotMade() {
  const sample::Folder folder;
  const std::string path = folder.file("nowhere.sqlite");
  QCOMPARE(call({"drill", "--record", path, "--session", "Evening", "--drill", "lag"}), 1);
  QVERIFY(!QFile::exists(QString::fromStdString(path)));
}

void DrillCommandTest::anUnknownDrillOrSessionIsRefused() {
  const sample::Folder folder;
  const std::string path = recordWithCuts(folder);
  QCOMPARE(call({"drill", "--record", path, "--session", "Evening", "--drill", "no-such"}), 1);
  QCOMPARE(call({"drill", "--record", path, "--session", "Morning", "--drill", "lag"}), 1);
}

void DrillCommandTest::halfACallIsAWrongCall() {
  QCOMPARE(call({"drill"}), 2);
  QCOMPARE(call({"drill", "--drill", "lag"}), 2);
}

FERRULE_TEST(DrillCommandTest)
#include "drill_command_test.moc"
