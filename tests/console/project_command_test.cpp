// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/console/program.h"
#include "tests/console/refusal.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class ProjectCommandTest : public QObject {
  Q_OBJECT
 private slots:
  void aGridIsDrawnWithItsCorners();
  void aPositionIsDrawnForAProjector();
  void badInputIsNamed();
};

namespace {

const QByteArray kPosition = R"({"table": "9ft", "balls": [{"ball": "cue", "x_mm": -300, "y_mm": 0},
  {"ball": "3", "x_mm": 200, "y_mm": 100}], "strike": {"aim_deg": 10, "speed_m_s": 1, "side": 0, "height": 0}})";
const QByteArray kProjector = R"({"format": "ferrule-projector/1", "projector_size": [1280, 800],
  "straight_from_table": [0.4, 0.01, 0.01, -0.01, -0.4, 0.01, 0.02, 0.01, 1], "bending": [0, 0, 0, 0]})";

}  // namespace

void ProjectCommandTest::aGridIsDrawnWithItsCorners() {
  const Workplace place;
  QCOMPARE(place.run({"project", "--grid", "1280x800", "--grid-file", "grid.json", "-o", "grid.png"}).status, 0);
  QVERIFY(place.content("grid.png").startsWith("\x89PNG"));
  QVERIFY(place.content("grid.json").contains("DICT_4X4_250"));
}

void ProjectCommandTest::aPositionIsDrawnForAProjector() {
  const Workplace place;
  place.write("p.json", kPosition);
  place.write("projector.json", kProjector);
  QCOMPARE(place.run({"project", "--projector", "projector.json", "p.json", "-o", "send.png"}).status, 0);
  QVERIFY(place.content("send.png").startsWith("\x89PNG"));
}

void ProjectCommandTest::badInputIsNamed() {
  const Workplace place;
  place.write("p.json", kPosition);
  place.write("projector.json", "{\"format\": \"ferrule-rig/1\"}");
  FERRULE_VERIFY_REFUSED(place, (QStringList{"project", "--projector", "projector.json", "p.json", "-o", "send.png"}),
                         "projector.json", "");
  FERRULE_VERIFY_REFUSED(place, (QStringList{"project", "--projector", "none.json", "p.json", "-o", "send.png"}),
                         "none.json", "");
  QCOMPARE(place.run({"project", "-o", "send.png"}).status, 2);
}

FERRULE_TEST(ProjectCommandTest)
#include "project_command_test.moc"
