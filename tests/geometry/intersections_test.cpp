// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/intersections.h"

#include <QtTest>
#include <cmath>

#include "core/base/random.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class IntersectionsTest : public QObject {
  Q_OBJECT
 private slots:
  void aPointBesideASegmentIsAsFarAsItsFoot();
  void aPointBeyondASegmentIsAsFarAsItsEnd();
  void aSegmentWithoutLengthIsAPoint();
  void crossingLinesMeetAtOnePoint();
  void parallelLinesDoNotMeet();
  void bothMeasuresOfACrossingNameTheSamePoint();
};

/// The 3-4-5 triangle.
void IntersectionsTest::aPointBesideASegmentIsAsFarAsItsFoot() {
  QCOMPARE(distanceToSegment({0.0, 5.0}, {{-10.0, 0.0}, {10.0, 0.0}}), 5.0);
  QVERIFY(std::abs(distanceToSegment({0.0, 0.0}, {{0.0, 5.0}, {20.0 / 3.0, 0.0}}) - 4.0) < 1e-12);
}

void IntersectionsTest::aPointBeyondASegmentIsAsFarAsItsEnd() {
  QCOMPARE(distanceToSegment({4.0, 4.0}, {{0.0, 0.0}, {1.0, 0.0}}), 5.0);
  QCOMPARE(distanceToSegment({-3.0, -4.0}, {{0.0, 0.0}, {1.0, 0.0}}), 5.0);
}

void IntersectionsTest::aSegmentWithoutLengthIsAPoint() {
  QCOMPARE(distanceToSegment({3.0, 4.0}, {{0.0, 0.0}, {0.0, 0.0}}), 5.0);
}

void IntersectionsTest::crossingLinesMeetAtOnePoint() {
  const auto met = crossing({0.0, 0.0}, {2.0, 0.0}, {{4.0, -1.0}, {4.0, 3.0}});
  QVERIFY(met.has_value());
  QCOMPARE(met->along, 2.0);
  QCOMPARE(met->share, 0.25);
  const auto behind = crossing({0.0, 0.0}, {2.0, 0.0}, {{-4.0, 1.0}, {-4.0, -1.0}});
  QCOMPARE(behind->along, -2.0);
  QCOMPARE(behind->share, 0.5);
}

void IntersectionsTest::parallelLinesDoNotMeet() {
  QVERIFY(!crossing({0.0, 0.0}, {1.0, 0.0}, {{0.0, 1.0}, {5.0, 1.0}}));
  QVERIFY(!crossing({0.0, 0.0}, {1.0, 0.0}, {{2.0, 0.0}, {5.0, 0.0}}));
  QVERIFY(!crossing({0.0, 0.0}, {0.0, 0.0}, {{2.0, 0.0}, {5.0, 1.0}}));
}

void IntersectionsTest::bothMeasuresOfACrossingNameTheSamePoint() {
  Random random(11);
  const auto coordinate = [&random] { return 4.0 * random.uniform() - 2.0; };
  for (int i = 0; i < 1000; ++i) {
    const TablePoint origin{coordinate(), coordinate()};
    const TableVector direction{coordinate(), coordinate()};
    const TableSegment segment{{coordinate(), coordinate()}, {coordinate(), coordinate()}};
    const auto met = crossing(origin, direction, segment);
    if (!met || std::abs(met->along) > 1e3) continue;
    const TablePoint a = origin + met->along * direction;
    const TablePoint b = segment.start + met->share * (segment.end - segment.start);
    QVERIFY(distance(a, b) < 1e-9);
  }
}

FERRULE_TEST(IntersectionsTest)
#include "intersections_test.moc"
