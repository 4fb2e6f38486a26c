// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/mark_sighting.h"

#include <QtTest>
#include <algorithm>
#include <cmath>

#include "core/camera/evidence_fit.h"
#include "tests/camera/camera_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class MarkSightingTest : public QObject {
  Q_OBJECT
 private slots:
  void sightsLieAtEighthsAndQuarters();
  void aPocketIsSureSquareToItsAxis();
  void aMissIsToldAlongWhatIsSure();
};

/// World rules, definitions, strings and sights: every eighth of the length, every quarter of the width, 18 in all.
void MarkSightingTest::sightsLieAtEighthsAndQuarters() {
  const Table table;
  int count = 0;
  for (const TableMark& mark : tableMarks()) {
    if (mark.kind != MarkKind::Sight) continue;
    ++count;
    const MarkPlace at = markPlace(table, mark);
    const bool alongRail = at.sure.x != 0.0;
    QVERIFY(std::abs(length(at.sure) - 1.0) < 1e-12);
    const double share = alongRail ? at.place.x / (table.length_m / 8.0) : at.place.y / (table.width_m / 4.0);
    QVERIFY2(std::abs(share - std::round(share)) < 1e-9, qPrintable(QString::number(share)));
    QVERIFY(alongRail ? std::abs(at.place.y) > 0.5 * table.width_m : std::abs(at.place.x) > 0.5 * table.length_m);
  }
  QCOMPARE(count, 18);
  QCOMPARE(tableMarks().size(), std::size_t{18 + 6});
}

void MarkSightingTest::aPocketIsSureSquareToItsAxis() {
  const Table table;
  for (int i = 0; i < 6; ++i) {
    const Pocket pocket = pockets(table)[static_cast<std::size_t>(i)];
    const MarkPlace at = markPlace(table, {MarkKind::Pocket, i});
    QVERIFY(at.place == pocket.hole);
    QVERIFY(std::abs(dot(at.sure, pocket.inward)) < 1e-12);
  }
}

/// 3 mm toward the foot and 2 mm to the left: along a long rail, and on a short one.
void MarkSightingTest::aMissIsToldAlongWhatIsSure() {
  const Rig rig = invented9ftRig();
  const Table table;
  for (const TableMark& mark : tableMarks()) {
    const MarkPlace at = markPlace(table, mark);
    const TablePoint seen = at.place + TableVector{0.003, 0.002};
    const ImagePoint pixel = imageFromTable(rig, {seen.x, seen.y, table.noseHeight_m}).value();
    const TableVector miss = missOfMark({mark, pixel, 0.1}, rig, table, table.noseHeight_m).value();
    QVERIFY(std::abs(miss.x - dot(TableVector{0.003, 0.002}, at.sure)) < 1e-6);
    QVERIFY(std::abs(std::hypot(miss.x, miss.y) - std::hypot(0.003, 0.002)) < 1e-6);
  }
}

FERRULE_TEST(MarkSightingTest)
#include "mark_sighting_test.moc"
