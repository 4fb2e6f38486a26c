// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/asked_command.h"

#include <QtTest>

#include "core/base/random.h"
#include "core/base/text_file.h"
#include "core/measure/measured_file.h"
#include "tests/console/call.h"
#include "tests/console/program.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class AskedCommandTest : public QObject {
  Q_OBJECT
 private slots:
  void aDeviceThatFallsShortIsFoundFromTenShots();
  void wrongCallsAndFilesAreRefused();
};

namespace {

/// Ten shots of a device that gives 92 % of the speed and no more than 0.3 of side, and the commands.
std::vector<ShotReading> deviceShots(std::string& commands) {
  Random random(3);
  std::vector<ShotReading> shots;
  commands = "shot,speed_m_s,side\r\n";
  for (int i = 1; i <= 10; ++i) {
    const double speed_mps = 0.8 + 0.35 * i;
    const double side = 0.05 * i;
    commands += std::to_string(i) + ',' + std::to_string(speed_mps) + ',' + std::to_string(side) + "\r\n";
    ShotReading shot = sample::shot(i);
    shot.delivery.speed_mps = Measured{0.92 * speed_mps + 0.01 * random.normal(), 0.01};
    shot.delivery.side = Measured{std::min(side, 0.3) + 0.01 * random.normal(), 0.01};
    shots.push_back(shot);
  }
  return shots;
}

}  // namespace

void AskedCommandTest::aDeviceThatFallsShortIsFoundFromTenShots() {
  const sample::Folder folder;
  std::string commands;
  const auto shots = deviceShots(commands);
  QVERIFY(writeTextFile(folder.file("asked.csv"), commands).has_value());
  auto file = MeasuredFile::make(folder.file("measured.json"));
  QVERIFY(file.has_value());
  {
    Record record = sample::openOrDie(folder.file("a.sqlite"));
    const auto game = sample::addGame(record);
    for (const ShotReading& shot : shots) {
      file->add(shot, "");
      QVERIFY(record.appendShot(game.frame, shot, {}).has_value());
    }
  }
  QVERIFY(file->keep({"film.mp4", 10, 1.0, {1280, 720}}, sample::rig()).has_value());
  const auto path = [&](const char* name) { return QString::fromStdString(folder.file(name)); };
  const Workplace workplace;
  const Ended fromRecord =
      workplace.run({"asked", "--commands", path("asked.csv"), "--record", path("a.sqlite"), "--session", "Evening"});
  QCOMPARE(fromRecord.status, 0);
  QVERIFY2(fromRecord.out.contains(QStringLiteral("long shots fall 8\u00a0% short")), qPrintable(fromRecord.out));
  QVERIFY2(fromRecord.out.contains("clipped at 0.3"), qPrintable(fromRecord.out));
  const Ended fromFile = workplace.run({"asked", "--commands", path("asked.csv"), path("measured.json")});
  QCOMPARE(fromFile.out, fromRecord.out);
}

void AskedCommandTest::wrongCallsAndFilesAreRefused() {
  const sample::Folder folder;
  const std::string csv = folder.file("asked.csv");
  QVERIFY(writeTextFile(csv, "speed_m_s\n2\n").has_value());
  QCOMPARE(call({"asked", "--commands", csv}), 2);
  QCOMPARE(call({"asked", "--commands", csv, "--record", folder.file("a.sqlite")}), 2);
  QCOMPARE(call({"asked", "--commands", csv, folder.file("nowhere.json")}), 1);
  QCOMPARE(call({"asked", "--commands", csv, "--record", folder.file("a.sqlite"), "--session", "Evening"}), 1);
  QVERIFY(!QFile::exists(QString::fromStdString(folder.file("a.sqlite"))));
  QVERIFY(writeTextFile(csv, "grip\nfirm\n").has_value());
  QVERIFY(writeTextFile(folder.file("measured.json"), R"({"shots": []})").has_value());
  QCOMPARE(call({"asked", "--commands", csv, folder.file("measured.json")}), 1);
  // Commands whose shots are not in the film.
  QVERIFY(writeTextFile(csv, "speed_m_s\n2\n").has_value());
  QCOMPARE(call({"asked", "--commands", csv, folder.file("measured.json")}), 1);
}

FERRULE_TEST(AskedCommandTest)
#include "asked_command_test.moc"
