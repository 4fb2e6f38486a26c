// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/cushion_hits.h"

#include <QtTest>
#include <algorithm>

#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;

/// A rebound at a place, with a motion that is known well.
Knot reboundAt(TablePoint place, TableVector before, TableVector after) {
  Knot knot;
  knot.time_s = 1.0;
  knot.position = place;
  knot.before = before;
  knot.after = after;
  knot.velocityUncertainty_mps = 0.01;
  knot.pieceBefore.origin_s = knot.pieceAfter.origin_s = 1.0;
  knot.pieceBefore.position = knot.pieceAfter.position = place;
  knot.pieceBefore.covariance(0, 0) = 0.0003 * 0.0003;
  return knot;
}

std::optional<CushionName> read(const Knot& knot) {
  return cushionOf(railFaces(Table{}), knot, knot.jump(), kRadius_m);
}

}  // namespace

class CushionHitsTest : public QObject {
  Q_OBJECT
 private slots:
  void aTableHasSixNosesAndTwelveJaws();
  void everyNoseIsNamedWhereABallReboundsFromIt();
  void aBallThatTurnsAwayFromTheRailsTouchedNone();
  void aBallThatIsThrownAlongTheRailTouchedNone();
  void aBallThatCameFromTheRailTouchedNone();
  void aJawCountsAsItsCushion();
};

void CushionHitsTest::aTableHasSixNosesAndTwelveJaws() {
  const auto faces = railFaces(Table{});
  QCOMPARE(faces.size(), std::size_t{18});
  for (const CushionName name : kCushionNames)
    QCOMPARE(std::ranges::count(faces, name, &RailFace::cushion), std::ptrdiff_t{3});
  for (const RailFace& face : faces)
    QVERIFY(std::abs(length(face.inward) - 1.0) < 1e-12);
}

void CushionHitsTest::everyNoseIsNamedWhereABallReboundsFromIt() {
  for (const Cushion& cushion : cushions(Table{})) {
    const TablePoint middle = cushion.nose.start + 0.5 * (cushion.nose.end - cushion.nose.start);
    const TableVector along = unit(cushion.nose.end - cushion.nose.start);
    const TablePoint touching = middle + kRadius_m * cushion.inward;
    const TableVector before = 0.6 * along - 1.0 * cushion.inward;
    const TableVector after = 0.5 * along + 0.8 * cushion.inward;
    QVERIFY(read(reboundAt(touching, before, after)) == cushion.name);
    // A fast ball sinks into the rubber by up to 15 mm.
    QVERIFY(read(reboundAt(middle + (kRadius_m - 0.012) * cushion.inward, before, after)) == cushion.name);
  }
}

void CushionHitsTest::aBallThatTurnsAwayFromTheRailsTouchedNone() {
  const Table table;
  const TablePoint place{table.length_m / 2.0 - kRadius_m - 0.02, 0.1};
  QVERIFY(!read(reboundAt(place, {1.0, 0.0}, {-0.8, 0.0})).has_value());
}

void CushionHitsTest::aBallThatIsThrownAlongTheRailTouchedNone() {
  const Table table;
  const TablePoint place{table.length_m / 2.0 - kRadius_m, 0.1};
  // Hit by another ball along the rail: the jump has almost no part away from the nose.
  QVERIFY(!read(reboundAt(place, {0.3, 0.0}, {0.2, 1.2})).has_value());
}

void CushionHitsTest::aBallThatCameFromTheRailTouchedNone() {
  const Table table;
  const TablePoint place{table.length_m / 2.0 - kRadius_m, 0.1};
  QVERIFY(!read(reboundAt(place, {-0.3, 0.0}, {-1.0, 0.0})).has_value());
}

void CushionHitsTest::aJawCountsAsItsCushion() {
  const Table table;
  for (const Pocket& pocket : pockets(table)) {
    if (isSidePocket(pocket.name)) continue;
    for (const TableSegment& facing : pocket.facings) {
      const TablePoint middle = facing.start + 0.5 * (facing.end - facing.start);
      TableVector inward = perpendicular(unit(facing.end - facing.start));
      if (dot(inward, pocket.mouth - facing.start) < 0.0) inward = -inward;
      const auto found = read(reboundAt(middle + kRadius_m * inward, -1.0 * inward, 0.6 * inward));
      QVERIFY(found.has_value());
      // The nose that ends where the jaw begins.
      const Cushion cushion = cushions(table)[static_cast<std::size_t>(*found)];
      QVERIFY(std::min(distance(cushion.nose.start, facing.start), distance(cushion.nose.end, facing.start)) < 1e-9);
    }
  }
}

FERRULE_TEST(CushionHitsTest)
#include "cushion_hits_test.moc"
