// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/zone.h"

#include <QtTest>

#include "tests/drills/drill_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using drillshots::at;

class ZoneTest : public QObject {
  Q_OBJECT
 private slots:
  void aCircleIsOneCornerWithAReach();
  void aStripHasRoundEnds();
  void aShapeIsFullInsideWhicheverWayItIsListed();
  void aZoneIsTheSameShareOfEveryTable();
};

void ZoneTest::aCircleIsOneCornerWithAReach() {
  const Zone circle{{{1.0, 0.5}}, 0.1};
  const Table table;
  QCOMPARE(distanceFrom_m(circle, table, at(1.0, 0.5)), 0.0);
  QCOMPARE(distanceFrom_m(circle, table, at(1.09, 0.5)), 0.0);
  // 3-4-5: 0.5 widths away, 0.1 of them inside.
  QVERIFY(std::abs(distanceFrom_m(circle, table, at(1.3, 0.9)) - 0.4 * table.width_m) < 1e-12);
}

void ZoneTest::aStripHasRoundEnds() {
  const Zone strip{{{0.5, 0.5}, {1.5, 0.5}}, 0.1};
  const Table table;
  QCOMPARE(distanceFrom_m(strip, table, at(1.0, 0.595)), 0.0);
  QVERIFY(std::abs(distanceFrom_m(strip, table, at(1.0, 0.8)) - 0.2 * table.width_m) < 1e-12);
  QVERIFY(std::abs(distanceFrom_m(strip, table, at(1.8, 0.9)) - 0.4 * table.width_m) < 1e-12);
}

void ZoneTest::aShapeIsFullInsideWhicheverWayItIsListed() {
  const Table table;
  Zone zone = rectangleZone({0.0, 0.0}, {0.25, 1.0});
  for (int turn = 0; turn < 2; ++turn) {
    QCOMPARE(distanceFrom_m(zone, table, at(0.1, 0.5)), 0.0);
    QCOMPARE(distanceFrom_m(zone, table, at(0.25, 1.0)), 0.0);
    QVERIFY(std::abs(distanceFrom_m(zone, table, at(0.75, 0.5)) - 0.5 * table.width_m) < 1e-12);
    std::ranges::reverse(zone.corners);
  }
  QVERIFY(distance(middleOf(zone, table), at(0.125, 0.5)) < 1e-12);
}

void ZoneTest::aZoneIsTheSameShareOfEveryTable() {
  Table small;
  small.length_m = 1.98;
  small.width_m = 0.99;
  const Zone circle{{{1.0, 0.5}}, 0.1};
  QVERIFY(std::abs(distanceFrom_m(circle, small, tableFromSurface(small, {1.3, 0.9})) - 0.4 * 0.99) < 1e-12);
}

FERRULE_TEST(ZoneTest)
#include "zone_test.moc"
