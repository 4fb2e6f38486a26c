// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/table.h"

#include <QtTest>
#include <cmath>

#include "core/geometry/units.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class TableTest : public QObject {
  Q_OBJECT
 private slots:
  void aNineFootTableIsTwiceAsLongAsWide();
  void pocketMouthsAreAsWideAsTheirShapes();
};

/// World standardized table and equipment specifications: 100 x 50 inches nose to nose.
void TableTest::aNineFootTableIsTwiceAsLongAsWide() {
  const auto size = tableSizeNamed("9ft");
  QVERIFY(size.has_value());
  QCOMPARE(size->length_m, 100.0 * 0.0254);
  QCOMPARE(size->width_m, 50.0 * 0.0254);
}

void TableTest::pocketMouthsAreAsWideAsTheirShapes() {
  const Table table;
  for (const Pocket& pocket : pockets(table)) {
    const double mouth_m = distance(pocket.facings[0].start, pocket.facings[1].start);
    QVERIFY(std::abs(mouth_m - pocket.mouth_m) < 1e-12);
  }
}

FERRULE_TEST(TableTest)
#include "table_test.moc"
