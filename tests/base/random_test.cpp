// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/random.h"

#include <QtTest>
#include <cmath>
#include <cstdint>

#include "tests/support/test_registry.h"

using namespace ferrule;

class RandomTest : public QObject {
  Q_OBJECT
 private slots:
  void theTenThousandthNumberIsTheStandards();
  void theSameSeedGivesTheSameNumbers();
  void differentSeedsGiveDifferentNumbers();
  void normalNumbersFollowTheirFormula();
  void uniformNumbersFillTheirInterval();
  void normalNumbersHaveTheirMoments();
};

/// Source: ISO C++ standard, [rand.predef]: "the 10000th consecutive invocation of a default-constructed object of type
/// mt19937_64 produces the value 9981545732273789042"; its default seed is 5489.
void RandomTest::theTenThousandthNumberIsTheStandards() {
  Random random(5489);
  for (int i = 1; i < 10000; ++i)
    random.uniform();
  const double expected = static_cast<double>(std::uint64_t{9981545732273789042U} >> 11U) / 9007199254740992.0;
  QCOMPARE(random.uniform(), expected);
}

void RandomTest::theSameSeedGivesTheSameNumbers() {
  Random first(17);
  Random second(17);
  for (int i = 0; i < 1000; ++i) {
    QCOMPARE(first.normal(), second.normal());
    QCOMPARE(first.uniform(), second.uniform());
  }
}

void RandomTest::differentSeedsGiveDifferentNumbers() {
  Random first(17);
  Random second(18);
  QVERIFY(first.uniform() != second.uniform());
}

/// Box and Muller 1958: two uniform numbers make two normal ones, sqrt(-2 ln u) cos(2 pi v) and the same with sin.
void RandomTest::normalNumbersFollowTheirFormula() {
  Random uniforms(99);
  Random normals(99);
  for (int i = 0; i < 100; ++i) {
    const double u = 1.0 - uniforms.uniform();
    const double v = uniforms.uniform();
    const double radius = std::sqrt(-2.0 * std::log(u));
    const double first = normals.normal();
    const double second = normals.normal();
    QVERIFY(std::abs(first * first + second * second - radius * radius) < 1e-12);
    QVERIFY(std::abs(std::remainder(std::atan2(second, first) - 2.0 * M_PI * v, 2.0 * M_PI)) < 1e-12);
  }
}

/// Of 100 000 numbers the mean lies within 5 standard errors of 1/2, and every tenth of the interval holds its share
/// within 5 standard deviations of the binomial law.
void RandomTest::uniformNumbersFillTheirInterval() {
  constexpr int kCount = 100000;
  Random random(2024);
  int tenths[10] = {};
  double sum = 0.0;
  for (int i = 0; i < kCount; ++i) {
    const double u = random.uniform();
    QVERIFY(u >= 0.0 && u < 1.0);
    ++tenths[static_cast<int>(10.0 * u)];
    sum += u;
  }
  QVERIFY(std::abs(sum / kCount - 0.5) < 5.0 / std::sqrt(12.0 * kCount));
  for (const int share : tenths)
    QVERIFY(std::abs(share - 0.1 * kCount) < 5.0 * std::sqrt(0.09 * kCount));
}

/// The raw moments 0, 1, 0 and 3, each within 5 standard errors, whose squares are 1, 2, 15 and 96 over the count (the
/// moments of order 2k of a normal law are 1, 3, 15, 105).
void RandomTest::normalNumbersHaveTheirMoments() {
  constexpr double kCount = 100000.0;
  Random random(7);
  double moments[4] = {};
  for (int i = 0; i < static_cast<int>(kCount); ++i) {
    const double n = random.normal();
    moments[0] += n / kCount;
    moments[1] += n * n / kCount;
    moments[2] += n * n * n / kCount;
    moments[3] += n * n * n * n / kCount;
  }
  QVERIFY(std::abs(moments[0]) < 5.0 * std::sqrt(1.0 / kCount));
  QVERIFY(std::abs(moments[1] - 1.0) < 5.0 * std::sqrt(2.0 / kCount));
  QVERIFY(std::abs(moments[2]) < 5.0 * std::sqrt(15.0 / kCount));
  QVERIFY(std::abs(moments[3] - 3.0) < 5.0 * std::sqrt(96.0 / kCount));
}

FERRULE_TEST(RandomTest)
#include "random_test.moc"
