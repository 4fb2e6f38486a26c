// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <algorithm>
#include <cmath>

#include "core/base/random.h"
#include "core/progress/chance.h"
#include "core/progress/difficulty.h"
#include "core/progress/interval.h"
#include "core/progress/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// The statistics against published values and exact counts.
class StatisticsTest : public QObject {
  Q_OBJECT
 private slots:
  void wilsonAgreesWithThePublishedTable_data();
  void wilsonAgreesWithThePublishedTable();
  void quantilesAgreeWithPrintedTables();
  void intervalsOfNormalSamplesAgreeWithPrintedTables();
  void theBetaIntervalAgreesWithItsClosedForm();
  void trialsToTellAgreeWithThePowerCalculation();
  void tenOfTenConvinceAtAHalf();
  void theLineIsThatOfAnscombe();
  void theChanceOfASlopeIsThatOfAllOrders();
  void theChanceOfAMeanIsThatOfFisher();
  void theChanceOfAGapIsThatOfAllDivisions();
  void holmStandsAsAdjustedByHand();
  void theLogisticFitIsThatOfTheSealRings();
  void aLogisticFitOfOneOutcomeIsRefused();
  void sessionsThatAgreeWhollyCountAsOneShotEach();
  void theSessionIntervalHoldsTheTruthAsOftenAsItSays();
  void drawingAgainIsTheSameForTheSameSeed();
  void tooFewAreSaidSo();
};

void StatisticsTest::wilsonAgreesWithThePublishedTable_data() {
  QTest::addColumn<double>("made");
  QTest::addColumn<double>("tried");
  QTest::addColumn<double>("least");
  QTest::addColumn<double>("most");
  // Newcombe 1998, Statistics in Medicine 17, 857, table I, method 3 (score), from memory.
  QTest::newRow("81 of 263") << 81.0 << 263.0 << 0.2553 << 0.3662;
  QTest::newRow("15 of 148") << 15.0 << 148.0 << 0.0624 << 0.1605;
  QTest::newRow("0 of 20") << 0.0 << 20.0 << 0.0 << 0.1611;
  QTest::newRow("1 of 29") << 1.0 << 29.0 << 0.0061 << 0.1718;
}

void StatisticsTest::wilsonAgreesWithThePublishedTable() {
  QFETCH(double, made);
  QFETCH(double, tried);
  QFETCH(double, least);
  QFETCH(double, most);
  const Interval interval = wilsonInterval(made, tried);
  QVERIFY(std::abs(interval.least - least) < 0.00006);
  QVERIFY(std::abs(interval.most - most) < 0.00006);
}

void StatisticsTest::quantilesAgreeWithPrintedTables() {
  // Printed tables of the normal and Student's distribution.
  QVERIFY(std::abs(normalQuantile(0.975) - 1.959964) < 1e-6);
  QVERIFY(std::abs(studentQuantile(0.975, 10.0) - 2.228) < 0.0005);
  QVERIFY(std::abs(studentQuantile(0.975, 4.0) - 2.776) < 0.0005);
  QVERIFY(std::abs(studentQuantile(0.95, 20.0) - 1.725) < 0.0005);
}

void StatisticsTest::intervalsOfNormalSamplesAgreeWithPrintedTables() {
  // chi square with 19 degrees of freedom: 8.907 and 32.852 (printed tables).
  const Interval spread = spreadInterval(2.0, 20);
  QVERIFY(std::abs(spread.least - 2.0 * std::sqrt(19.0 / 32.852)) < 1e-4);
  QVERIFY(std::abs(spread.most - 2.0 * std::sqrt(19.0 / 8.907)) < 1e-4);
  const Interval mean = meanInterval(5.0, 2.0, 5);
  QVERIFY(std::abs(mean.most - (5.0 + 2.776 * 2.0 / std::sqrt(5.0))) < 0.001);
  QVERIFY(std::abs(mean.least + mean.most - 10.0) < 1e-12);
}

void StatisticsTest::theBetaIntervalAgreesWithItsClosedForm() {
  // Beta(1, n): 1 - (1 - q)^(1/n).
  const Interval interval = betaInterval(1.0, 8.0);
  QVERIFY(std::abs(interval.least - (1.0 - std::pow(0.975, 1.0 / 8.0))) < 1e-12);
  QVERIFY(std::abs(interval.most - (1.0 - std::pow(0.025, 1.0 / 8.0))) < 1e-12);
}

void StatisticsTest::trialsToTellAgreeWithThePowerCalculation() {
  // R, help page of power.prop.test: power.prop.test(p1 = .50, p2 = .75, power = .90) gives n = 76.7.
  QVERIFY(std::abs(trialsToTell(0.50, 0.75, 0.90) - 76.7) < 0.05);
  QCOMPARE(std::ceil(trialsToTell(0.6, 0.7)), 356.0);
  QCOMPARE(std::ceil(trialsToTell(0.5, 0.7)), 93.0);
  QCOMPARE(std::ceil(trialsToTell(0.8, 0.9)), 199.0);
}

void StatisticsTest::tenOfTenConvinceAtAHalf() {
  QCOMPARE(fewestConvincing(10, 0.5), 9);
  QCOMPARE(fewestConvincing(10, 0.9), 11);
}

void StatisticsTest::theLineIsThatOfAnscombe() {
  // Anscombe 1973, Am. Statistician 27, 17: the first of the four sets; y = 3.00 + 0.500 x.
  const std::vector<double> x{10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5};
  const std::vector<double> y{8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68};
  std::vector<SeriesPoint> points;
  for (std::size_t i = 0; i < x.size(); ++i)
    points.push_back({x[i], y[i], 1.0});
  const Line line = lineThrough(points);
  QVERIFY(std::abs(line.slope - 0.5001) < 0.00005);
  QVERIFY(std::abs(line.at(0.0) - 3.0001) < 0.0001);
  // A point of weight 2 is that point twice.
  std::vector<SeriesPoint> twice = points;
  twice.push_back(points[3]);
  points[3].weight = 2.0;
  QVERIFY(std::abs(lineThrough(points).slope - lineThrough(twice).slope) < 1e-12);
}

void StatisticsTest::theChanceOfASlopeIsThatOfAllOrders() {
  std::vector<SeriesPoint> points{{0, 3.0, 1.0}, {1, 3.4, 1.0}, {2, 2.9, 1.0},
                                  {4, 4.1, 1.0}, {5, 3.9, 1.0}, {6, 4.4, 1.0}};
  std::vector<double> values;
  for (const SeriesPoint& point : points)
    values.push_back(point.value);
  std::ranges::sort(values);
  const double observed = std::abs(lineThrough(points).slope);
  int all = 0;
  int asFar = 0;
  std::vector<SeriesPoint> other = points;
  do {
    for (std::size_t i = 0; i < values.size(); ++i)
      other[i].value = values[i];
    ++all;
    if (std::abs(lineThrough(other).slope) >= observed - 1e-12) ++asFar;
  } while (std::next_permutation(values.begin(), values.end()));
  QCOMPARE(all, 720);
  const double exact = static_cast<double>(asFar) / all;
  const double found = chanceOfSlope(points, {7, 20000});
  QVERIFY2(std::abs(found - exact) < 4.0 * std::sqrt(exact / 20000.0), qPrintable(QString::number(found)));
}

void StatisticsTest::theChanceOfAMeanIsThatOfFisher() {
  // Fisher 1935, The design of experiments, chapter III: Darwin's 15 pairs of maize; 863 of 32768 on either side.
  std::vector<Difference> pairs;
  for (const double eighths : {49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48})
    pairs.push_back({eighths, 1.0});
  const double exact = 2.0 * 863.0 / 32768.0;
  const double found = chanceOfMean(pairs, {3, 40000});
  QVERIFY2(std::abs(found - exact) < 4.0 * std::sqrt(exact / 40000.0), qPrintable(QString::number(found)));
}

void StatisticsTest::theChanceOfAGapIsThatOfAllDivisions() {
  // Three of six: 20 divisions, of which only the observed one and its mirror are as far apart.
  const std::vector<Difference> some{{1.0, 1.0}, {2.0, 1.0}, {3.0, 1.0}};
  const std::vector<Difference> others{{7.0, 1.0}, {8.0, 1.0}, {9.0, 1.0}};
  const double found = chanceOfGap(some, others, {5, 20000});
  QVERIFY2(std::abs(found - 0.1) < 0.009, qPrintable(QString::number(found)));
}

void StatisticsTest::holmStandsAsAdjustedByHand() {
  // R: p.adjust(c(0.02, 0.001, 0.06, 0.012), "holm") gives 0.040 0.004 0.060 0.036.
  QCOMPARE(standing(std::vector<double>{0.02, 0.001, 0.06, 0.012}), (std::vector<bool>{true, true, false, true}));
  // 0.05 0.08 0.09 0.09 0.09: the first failure stops all later ones.
  QCOMPARE(standing(std::vector<double>{0.01, 0.02, 0.03, 0.04, 0.05}),
           (std::vector<bool>{true, false, false, false, false}));
  QVERIFY(standing(std::vector<double>{}).empty());
}

void StatisticsTest::theLogisticFitIsThatOfTheSealRings() {
  // Dalal, Fowlkes and Hoadley 1989, J. Am. Stat. Assoc. 84, 945: 23 flights, temperature and distress.
  // R: glm(distress ~ temperature, binomial) gives 15.0429 and -0.2322.
  const std::vector<double> temperature{66, 70, 69, 68, 67, 72, 73, 70, 57, 63, 70, 78,
                                        67, 53, 67, 75, 70, 81, 76, 79, 75, 76, 58};
  const std::vector<double> distress{0, 1, 0, 0, 0, 0, 0, 0, 1, 1, 1, 0, 0, 1, 0, 0, 0, 0, 0, 0, 1, 0, 1};
  Eigen::MatrixXd rows(23, 1);
  Eigen::VectorXd made(23);
  for (Eigen::Index i = 0; i < 23; ++i) {
    rows(i, 0) = temperature[static_cast<std::size_t>(i)];
    made[i] = distress[static_cast<std::size_t>(i)];
  }
  const auto fit = fitLogistic(rows, made, 0.0);
  QVERIFY(fit.has_value());
  QVERIFY(std::abs(fit->intercept - 15.0429) < 0.0001);
  QVERIFY(std::abs(fit->coefficients[0] + 0.2322) < 0.0001);
  // A penalty draws the slope in.
  const auto drawn = fitLogistic(rows, made, 100.0);
  QVERIFY(drawn.has_value());
  QVERIFY(std::abs(drawn->coefficients[0]) < 0.2322);
}

void StatisticsTest::aLogisticFitOfOneOutcomeIsRefused() {
  QVERIFY(!fitLogistic(Eigen::MatrixXd::Random(10, 2), Eigen::VectorXd::Ones(10), 1.0));
  QVERIFY(!fitLogistic(Eigen::MatrixXd(0, 2), Eigen::VectorXd(0), 1.0));
}

void StatisticsTest::sessionsThatAgreeWhollyCountAsOneShotEach() {
  std::vector<Observation> shots;
  for (std::size_t session = 0; session < 10; ++session) {
    for (int i = 0; i < 10; ++i)
      shots.push_back({session, session % 2 == 0 ? 1.0 : 0.0, {}});
  }
  const auto share = shareOf(bySession(shots));
  QVERIFY(share.has_value());
  QCOMPARE(share->value, 0.5);
  QCOMPARE(share->shots, 100);
  QVERIFY(share->clustered);
  // The design effect by hand: 10/9 * 10 * 25 / 25 = 100/9, so 100 shots tell as much as 9.
  const Interval nine = wilsonInterval(4.5, 9.0);
  QVERIFY(std::abs(share->interval.least - nine.least) < 1e-12);
}

void StatisticsTest::theSessionIntervalHoldsTheTruthAsOftenAsItSays() {
  Random random(11);
  constexpr int kRecords = 300;
  int held = 0;
  int heldWithoutSessions = 0;
  for (int record = 0; record < kRecords; ++record) {
    std::vector<Observation> shots;
    for (std::size_t session = 0; session < 12; ++session) {
      const double day = 0.5 * random.normal();
      for (int i = 0; i < 30; ++i)
        shots.push_back({session, day + random.normal(), {}});
    }
    const auto sums = bySession(shots);
    const auto mean = meanOf(sums, {static_cast<std::uint64_t>(record), 399});
    QVERIFY(mean.has_value());
    if (mean->interval.holds(0.0)) ++held;
    const SessionSum all = total(sums);
    if (meanInterval(all.mean(), all.spread(), static_cast<int>(all.count)).holds(0.0)) ++heldWithoutSessions;
  }
  // 95 % of 300 is 285; five standard deviations of such a count are 19.
  QVERIFY2(held >= 266 && held <= 299, qPrintable(QString::number(held)));
  QVERIFY2(heldWithoutSessions < 200, qPrintable(QString::number(heldWithoutSessions)));
}

void StatisticsTest::drawingAgainIsTheSameForTheSameSeed() {
  std::vector<Observation> shots;
  for (int i = 0; i < 100; ++i)
    shots.push_back({static_cast<std::size_t>(i / 10), std::sin(i), {}});
  const auto sums = bySession(shots);
  QCOMPARE(*spreadOf(sums, {4, 200}), *spreadOf(sums, {4, 200}));
  QVERIFY(spreadOf(sums, {4, 200})->interval != spreadOf(sums, {5, 200})->interval);
}

void StatisticsTest::tooFewAreSaidSo() {
  const std::vector<Observation> nine(9, Observation{0, 1.0, {}});
  const auto sums = bySession(nine);
  const auto share = shareOf(sums);
  QVERIFY(!share.has_value());
  QCOMPARE(share.error(), (Shortage{ShortageKind::Shots, 9, 10}));
  QCOMPARE(spreadOf(sums, {}).error(), (Shortage{ShortageKind::Shots, 9, 20}));
  QVERIFY(!meanOf({}, {}).has_value());
}

FERRULE_TEST(StatisticsTest)
#include "statistics_test.moc"
