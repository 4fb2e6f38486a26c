// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/trend_band.h"

#include <QtTest>
#include <cmath>
#include <random>

#include "tests/support/test_registry.h"

using namespace ferrule;

/// The band about a trend's line.
class TrendBandTest : public QObject {
  Q_OBJECT
 private slots:
  void aLineWithoutScatterHasABandWithoutWidth();
  void theBandIsAboutAsWideAsLeastSquaresSays();
  void tooFewSessionsHaveNoBand();
};

void TrendBandTest::aLineWithoutScatterHasABandWithoutWidth() {
  std::vector<SeriesPoint> points;
  for (int i = 0; i < 12; ++i)
    points.push_back({static_cast<double>(i), 3.0 - 0.1 * i, 1.0});
  const auto band = trendBand(points, 5, {});
  QCOMPARE(band.size(), std::size_t{5});
  for (const BandPoint& point : band) {
    QVERIFY(std::abs(point.value.least - (3.0 - 0.1 * point.when)) < 1e-9);
    QVERIFY(std::abs(point.value.most - (3.0 - 0.1 * point.when)) < 1e-9);
  }
}

void TrendBandTest::theBandIsAboutAsWideAsLeastSquaresSays() {
  // Half width at t: t(0.975, n - 2) s sqrt(1/n + (t - mean)^2 / sum (t_i - mean)^2). Source: any text on linear
  // regression; t(0.975, 58) = 2.0017 from printed tables. Drawing again follows it to a quarter here.
  std::mt19937 random(7);
  std::normal_distribution<double> normal(0.0, 1.0);
  std::vector<SeriesPoint> points;
  for (int i = 0; i < 60; ++i)
    points.push_back({static_cast<double>(i), normal(random), 1.0});
  const Line line = lineThrough(points);
  double squares = 0.0;
  double around = 0.0;
  for (const SeriesPoint& point : points) {
    squares += std::pow(point.value - line.at(point.when), 2);
    around += std::pow(point.when - line.middle, 2);
  }
  const double spread = std::sqrt(squares / 58.0);
  for (const BandPoint& point : trendBand(points, 3, {1, 1999})) {
    const double expected = 2.0017 * spread * std::sqrt(1.0 / 60.0 + std::pow(point.when - line.middle, 2) / around);
    const double half = (point.value.most - point.value.least) / 2.0;
    QVERIFY2(half > 0.75 * expected && half < 1.25 * expected,
             qPrintable(QStringLiteral("%1 against %2").arg(half).arg(expected)));
    QVERIFY(point.value.least < line.at(point.when) && line.at(point.when) < point.value.most);
  }
}

void TrendBandTest::tooFewSessionsHaveNoBand() {
  std::vector<SeriesPoint> points;
  for (int i = 0; i < kFewestForTrend - 1; ++i)
    points.push_back({static_cast<double>(i), 1.0, 1.0});
  QVERIFY(trendBand(points, 3, {}).empty());
  points.assign(8, {2.0, 1.0, 1.0});
  QVERIFY(trendBand(points, 3, {}).empty());
}

FERRULE_TEST(TrendBandTest)
#include "trend_band_test.moc"
