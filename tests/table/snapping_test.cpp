// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/snapping.h"

#include <QtTest>

#include "core/base/random.h"
#include "core/table/ball_set.h"
#include "core/table/rack.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class SnappingTest : public QObject {
  Q_OBJECT
 private slots:
  void aFreePointIsKept();
  void aBallNearASpotLiesOnIt();
  void aBallNearACushionIsFrozenToIt();
  void aBallNearACornerIsFrozenToBothCushions();
  void aBallNearAnotherIsFrozenToIt();
  void aPointOffTheTableIsBroughtOntoIt();
  void noBallIsPutOverAnother();
  void withoutReachNothingDraws();
};

namespace {

constexpr double kReach_m = 0.012;
const Table kTable;
const double kRadius_m = BallSet{}.radius_m();

}  // namespace

void SnappingTest::aFreePointIsKept() {
  const TablePoint wanted{0.2, -0.3};
  QCOMPARE(snapped(kTable, kRadius_m, {}, wanted, kReach_m), std::optional(Snapped{wanted, SnapKind::None}));
}

void SnappingTest::aBallNearASpotLiesOnIt() {
  const TablePoint foot = footSpot(kTable);
  const auto near = snapped(kTable, kRadius_m, {}, {foot.x + 0.008, foot.y - 0.005}, kReach_m);
  QCOMPARE(near, std::optional(Snapped{foot, SnapKind::Spot}));
  // Taken by another ball, it draws no more; the ball is frozen to the one that lies there.
  const auto beside = snapped(kTable, kRadius_m, {{BallName{8}, foot}}, {foot.x + 0.05, foot.y}, kReach_m);
  QVERIFY(beside.has_value());
  QVERIFY(beside->kind == SnapKind::Ball);
  QCOMPARE(length(beside->place - foot), 2.0 * kRadius_m);
}

void SnappingTest::aBallNearACushionIsFrozenToIt() {
  const auto near = snapped(kTable, kRadius_m, {}, {0.3, kTable.width_m / 2.0 - kRadius_m - 0.009}, kReach_m);
  QCOMPARE(near, std::optional(Snapped{{0.3, kTable.width_m / 2.0 - kRadius_m}, SnapKind::Cushion}));
}

void SnappingTest::aBallNearACornerIsFrozenToBothCushions() {
  const double x = kTable.length_m / 2.0 - kRadius_m;
  const double y = kTable.width_m / 2.0 - kRadius_m;
  const auto near = snapped(kTable, kRadius_m, {}, {-x + 0.004, y - 0.007}, kReach_m);
  QCOMPARE(near, std::optional(Snapped{{-x, y}, SnapKind::Cushion}));
}

void SnappingTest::aBallNearAnotherIsFrozenToIt() {
  const Position others{{BallName{3}, {0.1, 0.1}}};
  const auto near = snapped(kTable, kRadius_m, others, {0.1, 0.1 + 2.0 * kRadius_m + 0.01}, kReach_m);
  QVERIFY(near.has_value());
  QVERIFY(near->kind == SnapKind::Ball);
  QVERIFY(length(near->place - TablePoint{0.1, 0.1 + 2.0 * kRadius_m}) < 1e-12);
}

void SnappingTest::aPointOffTheTableIsBroughtOntoIt() {
  const auto near = snapped(kTable, kRadius_m, {}, {5.0, -5.0}, 0.0);
  QVERIFY(near.has_value());
  QVERIFY(onPlayingSurface(kTable, near->place));
  QCOMPARE(near->place.x, kTable.length_m / 2.0 - kRadius_m);
}

void SnappingTest::noBallIsPutOverAnother() {
  Random random(7);
  const Position rack = racked(RackKind::EightBall, kTable, BallSet{}, random);
  for (int i = 0; i < 2000; ++i) {
    const TablePoint wanted{footSpot(kTable).x + 0.25 * (random.uniform() - 0.3), 0.3 * (random.uniform() - 0.5)};
    const auto near = snapped(kTable, kRadius_m, rack, wanted, i % 2 == 0 ? kReach_m : 0.0);
    QVERIFY(near.has_value());
    for (const BallAt& ball : rack)
      QVERIFY(length(ball.position - near->place) > 2.0 * kRadius_m - 1e-8);
  }
}

void SnappingTest::withoutReachNothingDraws() {
  const TablePoint wanted{footSpot(kTable).x + 0.001, 0.0};
  QCOMPARE(snapped(kTable, kRadius_m, {}, wanted, 0.0), std::optional(Snapped{wanted, SnapKind::None}));
}

FERRULE_TEST(SnappingTest)
#include "snapping_test.moc"
