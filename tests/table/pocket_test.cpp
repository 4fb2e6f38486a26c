// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/pocket.h"

#include <QtTest>
#include <cmath>

#include "core/geometry/units.h"
#include "core/table/table.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class PocketTest : public QObject {
  Q_OBJECT
 private slots:
  void mouthsAreWithinTheSpecification();
  void shelvesAreWithinTheSpecification();
  void mouthsAreAsWideAsTheirShapes();
  void cutAnglesReadBackFromTheGeometryAreThoseOfTheSpecification();
  void everyPocketIsWiderAtItsMouthThanAtItsThroat();
  void facingsLeaveTheClothBehindThem();
  void theRightFacingComesFirst();
  void theHoleLiesBehindTheShelf();
  void everyPocketFollowsItsName();
  void oppositePocketsMirrorEachOther();
};

namespace {

constexpr double kTiny = 1e-12;

/// The cushion's nose line that ends at a point, as a unit vector from that point along the cushion.
TableVector alongCushionFrom(const Table& table, TablePoint nosePoint) {
  for (const Cushion& cushion : cushions(table)) {
    if (distance(cushion.nose.start, nosePoint) < kTiny) return unit(cushion.nose.end - cushion.nose.start);
    if (distance(cushion.nose.end, nosePoint) < kTiny) return unit(cushion.nose.start - cushion.nose.end);
  }
  return {};
}

double angleBetween_deg(TableVector a, TableVector b) {
  return degreesFromRadians(std::atan2(std::abs(cross(a, b)), dot(a, b)));
}

}  // namespace

/// Source: world equipment specification, pockets: corner 4.5 to 4.625 inches, side 5 to 5.125 inches.
void PocketTest::mouthsAreWithinTheSpecification() {
  QVERIFY(cornerPocketShape().mouth_m >= 0.1143 && cornerPocketShape().mouth_m <= 0.1175);
  QVERIFY(sidePocketShape().mouth_m >= 0.1270 && sidePocketShape().mouth_m <= 0.1302);
}

/// Corner 1 to 2.25 inches, side 0 to 3/8 inch. Source: world equipment specification, pockets, from memory.
void PocketTest::shelvesAreWithinTheSpecification() {
  QVERIFY(cornerPocketShape().shelf_m >= 0.0254 && cornerPocketShape().shelf_m <= 0.05715);
  QVERIFY(sidePocketShape().shelf_m >= 0.0 && sidePocketShape().shelf_m <= 0.009525);
}

void PocketTest::mouthsAreAsWideAsTheirShapes() {
  const Table table;
  for (const Pocket& pocket : pockets(table)) {
    const double mouth_m = distance(pocket.facings[0].start, pocket.facings[1].start);
    const double expected_m = isSidePocket(pocket.name) ? table.side.mouth_m : table.corner.mouth_m;
    QVERIFY(std::abs(mouth_m - expected_m) < kTiny);
    QCOMPARE(pocket.mouth_m, expected_m);
    const TablePoint middle = pocket.facings[0].start + 0.5 * (pocket.facings[1].start - pocket.facings[0].start);
    QVERIFY(distance(middle, pocket.mouth) < kTiny);
  }
}

/// The inside angle at the nose point between the nose line and the facing. Source: world equipment specification,
/// pockets: corner 142 degrees, side 104 degrees.
void PocketTest::cutAnglesReadBackFromTheGeometryAreThoseOfTheSpecification() {
  const Table table;
  for (const Pocket& pocket : pockets(table)) {
    for (const TableSegment& facing : pocket.facings) {
      const TableVector cushion = alongCushionFrom(table, facing.start);
      QVERIFY(length(cushion) > 0.5);
      const double cut_deg = angleBetween_deg(cushion, facing.end - facing.start);
      QVERIFY(std::abs(cut_deg - (isSidePocket(pocket.name) ? 104.0 : 142.0)) < 1e-9);
    }
  }
}

/// Cut angles above a right angle's share (135 and 90 degrees) open the pocket toward the player.
void PocketTest::everyPocketIsWiderAtItsMouthThanAtItsThroat() {
  for (const Pocket& pocket : pockets(Table{})) {
    const double throat_m = distance(pocket.facings[0].end, pocket.facings[1].end);
    QVERIFY(throat_m < pocket.mouth_m);
    QVERIFY(throat_m > 0.05715);
  }
}

void PocketTest::facingsLeaveTheClothBehindThem() {
  const Table table;
  for (const Pocket& pocket : pockets(table)) {
    QVERIFY(std::abs(length(pocket.inward) - 1.0) < kTiny);
    for (const TableSegment& facing : pocket.facings) {
      QVERIFY(dot(facing.end - facing.start, pocket.inward) > 0.0);
      QVERIFY(!onPlayingSurface(table, facing.end));
      // It ends where the cushion ends, at the rail.
      const double behind_m =
          std::max(std::abs(facing.end.x) - table.length_m / 2.0, std::abs(facing.end.y) - table.width_m / 2.0);
      QVERIFY(std::abs(behind_m - table.cushionWidth_m) < kTiny);
    }
  }
}

void PocketTest::theRightFacingComesFirst() {
  for (const Pocket& pocket : pockets(Table{})) {
    QVERIFY(cross(pocket.inward, pocket.facings[0].start - pocket.mouth) < 0.0);
    QVERIFY(cross(pocket.inward, pocket.facings[1].start - pocket.mouth) > 0.0);
  }
}

void PocketTest::theHoleLiesBehindTheShelf() {
  const Table table;
  for (const Pocket& pocket : pockets(table)) {
    const PocketShape& shape = isSidePocket(pocket.name) ? table.side : table.corner;
    const TableVector toHole = pocket.hole - pocket.mouth;
    QVERIFY(std::abs(cross(toHole, pocket.inward)) < kTiny);
    QVERIFY(std::abs(dot(toHole, pocket.inward) - shape.shelf_m - pocket.holeRadius_m) < kTiny);
  }
}

/// Left as seen looking from the head (-x) to the foot (+x) is +y.
void PocketTest::everyPocketFollowsItsName() {
  const auto all = pockets(Table{});
  for (std::size_t i = 0; i < all.size(); ++i) {
    QCOMPARE(all[i].name, kPocketNames[i]);
    const std::string name(toText(all[i].name));
    QCOMPARE(pocketFromText(name).value(), all[i].name);
    QCOMPARE(all[i].mouth.y > 0.0, name.ends_with("left"));
    QCOMPARE(all[i].mouth.x < -0.1, name.starts_with("head"));
    QCOMPARE(all[i].mouth.x > 0.1, name.starts_with("foot"));
    QCOMPARE(isSidePocket(all[i].name), name.starts_with("side"));
  }
  QVERIFY(!pocketFromText("top-left"));
}

void PocketTest::oppositePocketsMirrorEachOther() {
  const auto all = pockets(Table{});
  for (const Pocket& pocket : all) {
    bool mirrored = false;
    for (const Pocket& other : all) {
      mirrored |= distance(other.hole, {-pocket.hole.x, -pocket.hole.y}) < kTiny &&
                  distance(other.facings[0].end, {-pocket.facings[0].end.x, -pocket.facings[0].end.y}) < kTiny;
    }
    QVERIFY(mirrored);
  }
}

FERRULE_TEST(PocketTest)
#include "pocket_test.moc"
