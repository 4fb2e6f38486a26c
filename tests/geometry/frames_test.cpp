// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/frames.h"

#include <QtTest>
#include <concepts>
#include <limits>
#include <numbers>

#include "core/geometry/units.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class FramesTest : public QObject {
  Q_OBJECT
 private slots:
  void pointsOfDifferentFramesDoNotMix();
  void aQuarterTurnIsCounterClockwise();
  void directionsRunFromMinusPiExcludedToPi();
  void wrappedAnglesKeepTheirDirection();
  void theZeroVectorHasNoUnit();
  void degreesAndRadiansConvertBack();
  void millimetresConvertBack();
};

namespace {

template <class A, class B>
concept Addable = requires(A a, B b) {
  a + b;
};
template <class A, class B>
concept Subtractable = requires(A a, B b) {
  a - b;
};

}  // namespace

void FramesTest::pointsOfDifferentFramesDoNotMix() {
  QVERIFY((Subtractable<TablePoint, TablePoint>));
  QVERIFY((Addable<TablePoint, TableVector>));
  QVERIFY((!Addable<TablePoint, TablePoint>));
  QVERIFY((!Subtractable<TablePoint, ImagePoint>));
  QVERIFY((!Addable<TablePoint, ImageVector>));
  QVERIFY((!std::convertible_to<TablePoint, TableVector>));
}

void FramesTest::aQuarterTurnIsCounterClockwise() {
  const TableVector east{1.0, 0.0};
  QVERIFY((perpendicular(east) == TableVector{0.0, 1.0}));
  QVERIFY(cross(east, perpendicular(east)) > 0.0);
  QCOMPARE(direction(perpendicular(east)), std::numbers::pi / 2.0);
}

void FramesTest::directionsRunFromMinusPiExcludedToPi() {
  QCOMPARE(direction(TableVector{-1.0, 0.0}), std::numbers::pi);
  QCOMPARE(direction(TableVector{-1.0, -0.0}), std::numbers::pi);
  QCOMPARE(direction(perpendicular(TableVector{0.0, 1.0})), std::numbers::pi);
  QVERIFY(direction(TableVector{-1.0, -1e-9}) < 0.0);
}

void FramesTest::wrappedAnglesKeepTheirDirection() {
  constexpr double kPi = std::numbers::pi;
  QCOMPARE(wrapAngle(kPi), kPi);
  QCOMPARE(wrapAngle(-kPi), kPi);
  QCOMPARE(wrapAngle(0.0), 0.0);
  for (double angle = -40.0; angle < 40.0; angle += 0.37) {
    const double wrapped = wrapAngle(angle);
    QVERIFY(wrapped > -kPi && wrapped <= kPi);
    QVERIFY(std::abs(std::cos(wrapped) - std::cos(angle)) < 1e-13);
    QVERIFY(std::abs(std::sin(wrapped) - std::sin(angle)) < 1e-13);
  }
  QVERIFY(std::isnan(wrapAngle(std::numeric_limits<double>::infinity())));
}

void FramesTest::theZeroVectorHasNoUnit() {
  QVERIFY((unit(TableVector{}) == TableVector{}));
  QVERIFY(std::abs(length(unit(TableVector{3e-300, 4e-300})) - 1.0) < 1e-12);
  QVERIFY(std::abs(length(unit(TableVector{3e300, -4e300})) - 1.0) < 1e-12);
}

void FramesTest::degreesAndRadiansConvertBack() {
  QCOMPARE(radiansFromDegrees(180.0), std::numbers::pi);
  QCOMPARE(degreesFromRadians(std::numbers::pi / 2.0), 90.0);
  QVERIFY(std::abs(degreesFromRadians(radiansFromDegrees(33.3)) - 33.3) < 1e-12);
}

void FramesTest::millimetresConvertBack() {
  QCOMPARE(metresFromMillimetres(57.15), 0.05715);
  QCOMPARE(millimetresFromMetres(2.54), 2540.0);
}

FERRULE_TEST(FramesTest)
#include "frames_test.moc"
