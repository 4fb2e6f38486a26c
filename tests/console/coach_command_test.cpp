// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/console/program.h"
#include "tests/console/refusal.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class CoachCommandTest : public QObject {
  Q_OBJECT
 private slots:
  void everyLevelGetsItsAnswer();
  void fromSomewhereOnTheStudentShouldPlaySafe();
  void aPlaceOfOneNumberIsAWrongCall();
};

namespace {

/// An invented position: the 1 hangs near a pocket; the cue ball may be moved behind the wall of balls.
const QByteArray kPosition = R"({"table": "9ft", "game": "eight-ball", "group": "solids",
 "balls": [{"ball": "cue", "x_mm": 500, "y_mm": 300}, {"ball": "1", "x_mm": 1180, "y_mm": 560},
           {"ball": "9", "x_mm": -560, "y_mm": -420}, {"ball": "10", "x_mm": -560, "y_mm": -350},
           {"ball": "11", "x_mm": -560, "y_mm": -280}, {"ball": "12", "x_mm": -560, "y_mm": -210},
           {"ball": "8", "x_mm": 0, "y_mm": 400}]})";

}  // namespace

void CoachCommandTest::everyLevelGetsItsAnswer() {
  const Workplace place;
  place.write("p.json", kPosition);
  const Ended ended = place.run({"coach", "p.json"});
  QCOMPARE(ended.status, 0);
  const QStringList lines = ended.out.split('\n', Qt::SkipEmptyParts);
  QCOMPARE(lines.size(), 3);
  QVERIFY(lines[0].startsWith("beginner") && lines[2].startsWith("expert"));
  for (const QString& line : lines)
    QVERIFY2(line.contains("1 to foot-left"), qPrintable(line));
}

void CoachCommandTest::fromSomewhereOnTheStudentShouldPlaySafe() {
  const Workplace place;
  place.write("p.json", kPosition);
  const Ended ended = place.run({"coach", "p.json", "--level", "beginner", "--walk-to", "-900,-450"});
  QCOMPARE(ended.status, 0);
  QVERIFY2(ended.out.contains("a safety is worth more"), qPrintable(ended.out));
}

void CoachCommandTest::aPlaceOfOneNumberIsAWrongCall() {
  const Workplace place;
  place.write("p.json", kPosition);
  QCOMPARE(place.run({"coach", "p.json", "--walk-to", "900"}).status, 2);
}

FERRULE_TEST(CoachCommandTest)
#include "coach_command_test.moc"
