// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/squareness.h"

#include <QtTest>
#include <cmath>

#include "tests/support/test_registry.h"

using namespace ferrule;

class SquarenessTest : public QObject {
  Q_OBJECT
 private slots:
  void equalDiagonalsAreSquare();
  void unequalDiagonalsTellTheSkew();
  void diagonalsThatAreBothTooLongAreAMisreading();
  void whatClosesNoTableIsNothing();
};

/// 3, 4, 5.
void SquarenessTest::equalDiagonalsAreSquare() {
  const auto square = squarenessOf({4.0, 3.0, 5.0, 5.0});
  QVERIFY(square.has_value());
  QVERIFY(std::abs(square->skew_m) < 1e-12 && std::abs(square->misread_m) < 1e-12);
}

/// Worked by hand: the length (4, 0), the width (0.6, 2.4 sqrt(1.5)), which is 3 long. Diagonals squared: (4.6)^2
/// + 8.64 = 29.8 and (3.4)^2 + 8.64 = 20.2. The corner misses a right angle by asin(0.2), which over the length of 4 is
/// 0.8.
void SquarenessTest::unequalDiagonalsTellTheSkew() {
  const auto skewed = squarenessOf({4.0, 3.0, std::sqrt(29.8), std::sqrt(20.2)});
  QVERIFY(skewed.has_value());
  QVERIFY(std::abs(skewed->skew_m - 0.8) < 1e-12);
  QVERIFY(std::abs(skewed->angle_rad - std::asin(0.2)) < 1e-12);
  QVERIFY(std::abs(skewed->misread_m) < 1e-12);
  const auto other = squarenessOf({4.0, 3.0, std::sqrt(20.2), std::sqrt(29.8)});
  QVERIFY(std::abs(other->skew_m + 0.8) < 1e-12);
}

void SquarenessTest::diagonalsThatAreBothTooLongAreAMisreading() {
  const auto misread = squarenessOf({4.0, 3.0, 5.01, 5.01});
  QVERIFY(std::abs(misread->misread_m - 0.01) < 1e-12);
  QVERIFY(std::abs(misread->skew_m) < 1e-12);
}

void SquarenessTest::whatClosesNoTableIsNothing() {
  QVERIFY(!squarenessOf({4.0, 3.0, 0.0, 5.0}));
  QVERIFY(!squarenessOf({4.0, 3.0, 9.0, 1.0}));
}

FERRULE_TEST(SquarenessTest)
#include "squareness_test.moc"
