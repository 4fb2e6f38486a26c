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
  void sizesAreThoseOfTheSpecifications();
  void anUnknownSizeIsNothing();
  void everySizeIsTwiceAsLongAsWide();
  void noseHeightIsTheSpecifiedShareOfTheBall();
  void spotsAndStringsLieAtTheQuarterPoints();
  void thereAreEighteenSights();
  void sightsStandOneEighthOfTheLengthApart();
  void sightsLieBehindTheNoses();
  void cushionsEndAtThePocketsNosePoints();
  void cushionsFaceThePlayingSurface();
  void everyCushionFollowsItsName();
  void theSurfaceEndsAtTheNoses();
};

namespace {

constexpr double kTiny_m = 1e-12;

bool same(TablePoint a, TablePoint b) {
  return distance(a, b) < kTiny_m;
}

}  // namespace

/// Source: world standardized table and equipment specifications, playing surface, for the first two (100 x 50 and
/// 92 x 46 inches); public copies of the older United States specifications for 88 x 44, 78 x 39 and 76 x 38 inches.
void TableTest::sizesAreThoseOfTheSpecifications() {
  constexpr double kInch_m = 0.0254;
  const std::pair<const char*, double> lengths_inch[] = {
      {"9ft", 100.0}, {"8ft-tournament", 92.0}, {"8ft", 88.0}, {"7ft-large", 78.0}, {"7ft", 76.0}};
  QCOMPARE(tableSizes().size(), std::size(lengths_inch));
  for (const auto& [name, length_inch] : lengths_inch) {
    const auto size = tableSizeNamed(name);
    QVERIFY2(size.has_value(), name);
    QVERIFY2(std::abs(size->length_m - length_inch * kInch_m) < kTiny_m, name);
  }
  QCOMPARE(tableSizeNamed("9ft")->tolerance_m, kInch_m / 8.0);
  QVERIFY(tableOfSize(*tableSizeNamed("9ft")) == Table{});
}

void TableTest::anUnknownSizeIsNothing() {
  QVERIFY(!tableSizeNamed("10ft"));
  QVERIFY(!tableSizeNamed(""));
}

void TableTest::everySizeIsTwiceAsLongAsWide() {
  double last_m = 10.0;
  for (const TableSize& size : tableSizes()) {
    QVERIFY(std::abs(size.length_m - 2.0 * size.width_m) < kTiny_m);
    QVERIFY(size.length_m < last_m);
    last_m = size.length_m;
  }
}

/// Source: world equipment specification, cushions: 63.5 % of the ball's diameter, give or take 1 %.
void TableTest::noseHeightIsTheSpecifiedShareOfTheBall() {
  QVERIFY(std::abs(Table{}.noseHeight_m / 0.05715 - 0.635) < 1e-4);
}

/// Source: world rules of play, definitions: strings and spots.
void TableTest::spotsAndStringsLieAtTheQuarterPoints() {
  const Table table;
  QVERIFY(same(headSpot(table), {-0.635, 0.0}));
  QVERIFY(same(centreSpot(table), {0.0, 0.0}));
  QVERIFY(same(footSpot(table), {0.635, 0.0}));
  QCOMPARE(headString_m(table), -0.635);
  QCOMPARE(footString_m(table), 0.635);
}

void TableTest::thereAreEighteenSights() {
  const auto points = sights(Table{});
  QCOMPARE(points.size(), std::size_t{18});
  for (std::size_t i = 0; i < points.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j)
      QVERIFY(distance(points[i], points[j]) > 0.1);
  }
  // Counter-clockwise around the table's centre.
  for (std::size_t i = 1; i < points.size(); ++i) {
    const TableVector before = points[i - 1] - TablePoint{};
    const TableVector now = points[i] - TablePoint{};
    QVERIFY(cross(before, now) > 0.0);
  }
}

/// Source: world equipment specification, sights: 317.5 mm (12.5 inches) on a 9-foot table, 292.1 mm (11.5 inches) on
/// the 8-foot table of 92 inches; the side pocket takes one place on each long rail.
void TableTest::sightsStandOneEighthOfTheLengthApart() {
  for (const auto& [name, spacing_m] : {std::pair{"9ft", 0.3175}, std::pair{"8ft-tournament", 0.2921}}) {
    const auto points = sights(tableOfSize(*tableSizeNamed(name)));
    int gapsAlongRails = 0;
    for (std::size_t i = 1; i < points.size(); ++i) {
      const bool sameRail = points[i].x == points[i - 1].x || points[i].y == points[i - 1].y;
      if (!sameRail) continue;
      ++gapsAlongRails;
      const double gap_m = distance(points[i], points[i - 1]);
      const bool acrossSidePocket = points[i].x * points[i - 1].x < 0.0 && points[i].y == points[i - 1].y;
      QVERIFY(std::abs(gap_m - (acrossSidePocket ? 2.0 : 1.0) * spacing_m) < kTiny_m);
    }
    QCOMPARE(gapsAlongRails, 5 + 2 + 5 + 2);
  }
}

/// Source: world equipment specification, sights: 93.66 mm (3 11/16 inches) from the nose to the sight's centre.
void TableTest::sightsLieBehindTheNoses() {
  const Table table;
  for (const TablePoint& sight : sights(table)) {
    const double behindLong_m = std::abs(sight.y) - table.width_m / 2.0;
    const double behindShort_m = std::abs(sight.x) - table.length_m / 2.0;
    QVERIFY(std::abs(std::max(behindLong_m, behindShort_m) - (3.0 + 11.0 / 16.0) * 0.0254) < 1e-5);
  }
}

void TableTest::cushionsEndAtThePocketsNosePoints() {
  const Table table;
  int met = 0;
  for (const Cushion& cushion : cushions(table)) {
    for (const TablePoint& end : {cushion.nose.start, cushion.nose.end}) {
      for (const Pocket& pocket : pockets(table)) {
        for (const TableSegment& facing : pocket.facings)
          met += same(facing.start, end) ? 1 : 0;
      }
    }
  }
  QCOMPARE(met, 12);
}

void TableTest::cushionsFaceThePlayingSurface() {
  for (const Cushion& cushion : cushions(Table{})) {
    QVERIFY(std::abs(length(cushion.inward) - 1.0) < kTiny_m);
    QVERIFY(std::abs(dot(cushion.inward, cushion.nose.end - cushion.nose.start)) < kTiny_m);
    QVERIFY(dot(cushion.inward, TablePoint{} - cushion.nose.start) > 0.0);
  }
}

/// Left as seen looking from the head (-x) to the foot (+x) is +y.
void TableTest::everyCushionFollowsItsName() {
  const auto all = cushions(Table{});
  for (std::size_t i = 0; i < all.size(); ++i) {
    QCOMPARE(all[i].name, kCushionNames[i]);
    const TablePoint middle = all[i].nose.start + 0.5 * (all[i].nose.end - all[i].nose.start);
    const std::string name(toText(all[i].name));
    QCOMPARE(cushionFromText(name).value(), all[i].name);
    if (name.starts_with("left")) QVERIFY(middle.y > 0.6);
    if (name.starts_with("right")) QVERIFY(middle.y < -0.6);
    if (name.ends_with("head")) QVERIFY(middle.x < 0.0);
    if (name.ends_with("foot")) QVERIFY(middle.x > 0.0);
  }
  QVERIFY(!cushionFromText("Head"));
}

void TableTest::theSurfaceEndsAtTheNoses() {
  const Table table;
  QVERIFY(onPlayingSurface(table, {1.27, 0.635}));
  QVERIFY(!onPlayingSurface(table, {1.2701, 0.0}));
  QVERIFY(!onPlayingSurface(table, {0.0, -0.6351}));
}

FERRULE_TEST(TableTest)
#include "table_test.moc"
