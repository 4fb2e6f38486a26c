// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/position_command.h"

#include <QtTest>

#include "core/physics/position_file.h"
#include "tests/console/call.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class PositionCommandTest : public QObject {
  Q_OBJECT
 private slots:
  void aFilmsFirstImageGivesAPositionThatSimulateReads();
  void aMissingPhotoLeavesNothing();
};

namespace {

const std::string kClip = FERRULE_SOURCE_DIR "/tests/data/clip/";

}  // namespace

void PositionCommandTest::aFilmsFirstImageGivesAPositionThatSimulateReads() {
  const sample::Folder folder;
  const std::string path = folder.file("position.json");
  QCOMPARE(call({"position", kClip + "stop-shot.mp4", "--rig", kClip + "rig.json", "--table", kClip + "table.json",
                 "-o", path}),
           0);
  const auto position = readPositionFile(path);
  QVERIFY(position.has_value());
  QCOMPARE(position->balls.size(), std::size_t{2});
  QVERIFY(position->balls.front().ball.isCueBall());
  QCOMPARE(position->measured, *readMeasuredTable(kClip + "table.json"));
}

void PositionCommandTest::aMissingPhotoLeavesNothing() {
  const sample::Folder folder;
  const std::string path = folder.file("position.json");
  QCOMPARE(call({"position", folder.file("none.jpg"), "--rig", kClip + "rig.json", "--table", kClip + "table.json",
                 "-o", path}),
           1);
  QVERIFY(!QFile::exists(QString::fromStdString(path)));
}

FERRULE_TEST(PositionCommandTest)
#include "position_command_test.moc"
