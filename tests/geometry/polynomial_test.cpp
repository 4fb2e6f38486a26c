// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/polynomial.h"

#include <QtTest>
#include <algorithm>
#include <cmath>
#include <vector>

#include "core/base/random.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class PolynomialTest : public QObject {
  Q_OBJECT
 private slots:
  void theFirstDescentIsFoundAmongKnownRoots();
  void nearlyDoubleRootsAreToldApart();
  void aTouchWithoutCrossingIsNoDescent();
  void vanishingLeadingCoefficientsDoNoHarm();
  void rootsBeyondTheStretchAreNotReported();
  void publishedCollisionCasesAreMet();
  void widelySpreadRootsKeepTheSmallOne();
  void aCurveThatEndsLevelKeepsItsValley();
  void theParabolaFormulaDoesNotCancel();
  void badCoefficientsGiveNothing();
};

namespace {

/// lead * product of (t - root).
Quartic fromRoots(double lead, const std::vector<double>& roots) {
  Quartic q;
  q.c = {lead, 0.0, 0.0, 0.0, 0.0};
  std::size_t degree = 0;
  for (const double root : roots) {
    ++degree;
    for (std::size_t k = degree; k > 0; --k)
      q.c[k] = q.c[k - 1] - root * q.c[k];
    q.c[0] *= -root;
  }
  return q;
}

}  // namespace

void PolynomialTest::theFirstDescentIsFoundAmongKnownRoots() {
  Random random(41);
  int found = 0;
  for (int round = 0; round < 20000; ++round) {
    std::vector<double> roots;
    const int real = round % 5;
    for (int i = 0; i < real; ++i)
      roots.push_back(-0.5 + 2.0 * random.uniform());
    std::ranges::sort(roots);
    bool apart = true;
    for (std::size_t i = 1; i < roots.size(); ++i)
      apart = apart && roots[i] - roots[i - 1] > 1e-3;
    if (!apart) continue;
    const double lead = (random.uniform() < 0.5 ? -1.0 : 1.0) * std::exp(6.0 * random.normal());
    const Quartic q = fromRoots(lead, roots);
    // Signs alternate from root to root; to the far right the sign is that of lead.
    double expected = -1.0;
    for (std::size_t i = 0; i < roots.size(); ++i) {
      const bool negativeAfter = ((roots.size() - 1 - i) % 2 == 0) == (lead < 0.0);
      if (negativeAfter && roots[i] >= 0.0 && roots[i] <= 1.0) {
        expected = roots[i];
        break;
      }
    }
    const auto descent = firstDescent(q, 1.0);
    QCOMPARE(descent.has_value(), expected >= 0.0);
    if (descent) {
      ++found;
      QVERIFY2(std::abs(*descent - expected) < 1e-9, qPrintable(QString::number(*descent - expected)));
    }
  }
  QVERIFY(found > 5000);
}

void PolynomialTest::nearlyDoubleRootsAreToldApart() {
  for (const double gap : {1e-2, 1e-4, 1e-6}) {
    const Quartic q = fromRoots(1.0, {0.4, 0.4 + gap, 2.0, 3.0});
    const auto descent = firstDescent(q, 1.0);
    QVERIFY(descent.has_value());
    // The value near the pair is known to about 1e-16, so the root to 1e-16 / gap.
    QVERIFY(std::abs(*descent - 0.4) < 2e-15 / gap);
  }
}

void PolynomialTest::aTouchWithoutCrossingIsNoDescent() {
  QVERIFY(!firstDescent(fromRoots(1.0, {0.25, 0.25}), 1.0).has_value());
  // 1e-4 above the axis.
  Quartic above = fromRoots(1.0, {0.3, 0.3, -2.0, -3.0});
  above.c[0] += 1e-4;
  QVERIFY(!firstDescent(above, 1.0).has_value());
  // 1e-12 below it: a graze that must not be missed.
  Quartic below = fromRoots(1.0, {0.3, 0.3, -2.0, -3.0});
  below.c[0] -= 1e-12;
  QVERIFY(firstDescent(below, 1.0).has_value());
}

void PolynomialTest::vanishingLeadingCoefficientsDoNoHarm() {
  for (const double tiny : {0.0, 1e-300, 1e-18, -1e-18}) {
    Quartic q = fromRoots(1.0, {0.25, 0.75});
    q.c[4] = tiny;
    q.c[3] = -tiny;
    const auto descent = firstDescent(q, 1.0);
    QVERIFY(descent.has_value());
    QVERIFY(std::abs(*descent - 0.25) < 1e-14);
  }
}

void PolynomialTest::rootsBeyondTheStretchAreNotReported() {
  const Quartic q = fromRoots(1.0, {5.0, 6.0});
  QVERIFY(!firstDescent(q, 4.999).has_value());
  QVERIFY(firstDescent(q, 5.001).has_value());
}

/// Two balls of 57.15 mm: a roll into a resting ball one metre away, and a slide against a roll; coefficients of
/// |Δr(t)|² − 4R² after Leckie and Greenspan (2006, from memory), roots by an eigenvalue solver.
void PolynomialTest::publishedCollisionCasesAreMet() {
  const Quartic roll{{0.9967338775, -2.0, 1.0981, -0.0981, 0.0024059025}};
  const auto hit = firstDescent(roll, 10.19368);
  QVERIFY(hit.has_value());
  QVERIFY(std::abs(*hit - 0.99102334) < 5e-9);
  const Quartic slide{{0.6511338775, -4.232, 8.36998689, -4.984519201, 1.035707742}};
  const auto meeting = firstDescent(slide, 1.0);
  QVERIFY(meeting.has_value());
  QVERIFY(std::abs(*meeting - 0.3261590870) < 5e-10);
}

/// Orellana and De Michele, Algorithm 1010 (2020), from memory: roots over nine decades, and four within 0.003.
void PolynomialTest::widelySpreadRootsKeepTheSmallOne() {
  const auto small = firstDescent(fromRoots(1.0, {1.0, 1e3, 1e6, 1e9}), 100.0);
  QVERIFY(small.has_value());
  QVERIFY(std::abs(*small - 1.0) < 1e-14);
  const auto crowded = firstDescent(fromRoots(1.0, {2.000, 2.001, 2.002, 2.003}), 4.0);
  QVERIFY(crowded.has_value());
  QVERIFY(std::abs(*crowded - 2.0) < 2e-4);
}

/// A ball that rolls past a jaw and then stops: at the stretch's end the slope is 0 but for rounding, of either sign.
void PolynomialTest::aCurveThatEndsLevelKeepsItsValley() {
  const Quartic q{
      {2.7228473463465814, -2.4005052874283548, 0.69083921995804121, -0.071346610902248184, 0.0024059025000000012}};
  for (int i = -200; i <= 200; ++i) {
    const auto hit = firstDescent(q, 7.41370557 + 1e-10 * i);
    QVERIFY(hit.has_value());
    QVERIFY(std::abs(*hit - 2.738140) < 1e-6);
  }
}

/// Distance 0.5 m, 1 m/s, deceleration 0.0981: 0.51290359 s.
void PolynomialTest::theParabolaFormulaDoesNotCancel() {
  const auto hit = descentOfParabola(0.5, -1.0, 0.0981);
  QVERIFY(hit.has_value());
  QVERIFY(std::abs(*hit - 0.51290359) < 5e-9);
  const auto far = descentOfParabola(1e-9, -1.0, 1e-9);
  QVERIFY(far.has_value());
  QVERIFY(std::abs(*far - 1e-9) < 1e-24);
  QVERIFY(!descentOfParabola(0.5, 1.0, 0.0).has_value());
  QVERIFY(!descentOfParabola(0.5, -0.1, 0.0981).has_value());
}

void PolynomialTest::badCoefficientsGiveNothing() {
  const double nan = std::nan("");
  QVERIFY(!firstDescent({{1.0, nan, 0.0, 0.0, 0.0}}, 1.0).has_value());
  QVERIFY(!firstDescent({{1.0, -HUGE_VAL, 0.0, 0.0, 0.0}}, 1.0).has_value());
  QVERIFY(!firstDescent({{1.0, -2.0, 0.0, 0.0, 0.0}}, 0.0).has_value());
  QVERIFY(!firstDescent({{1.0, -2.0, 0.0, 0.0, 0.0}}, HUGE_VAL).has_value());
}

FERRULE_TEST(PolynomialTest)
#include "polynomial_test.moc"
