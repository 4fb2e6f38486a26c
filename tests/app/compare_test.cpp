// SPDX-License-Identifier: GPL-3.0-or-later
#include <QTableWidget>
#include <QtTest>
#include <cmath>
#include <numbers>

#include "app/review/compare_view.h"
#include "app/review/shot_comparison.h"
#include "tests/app/review_sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

Numbers english() {
  return Numbers(QLocale(QLocale::English));
}

ComparedValue lineOf(const StoredShot& first, const StoredShot& second, const QString& name) {
  for (const ComparedValue& line : comparedValues(first, second, english())) {
    if (line.name == name) return line;
  }
  return {};
}

}  // namespace

class CompareTest : public QObject {
  Q_OBJECT
 private slots:
  void aDifferenceCarriesBothUncertainties();
  void aimsDifferTheShortWayRound();
  void whatWasNotSeenHasNoDifference();
  void restPlacesAreApartByTheirDistance();
  void theViewFillsWhenTheOtherShotIsChosen();
};

void CompareTest::aDifferenceCarriesBothUncertainties() {
  StoredShot first = sampleShot(1);
  StoredShot second = sampleShot(2);
  first.reading.delivery.speed_mps = Measured{1.50, 0.03};
  second.reading.delivery.speed_mps = Measured{1.90, 0.04};
  const ComparedValue speed = lineOf(first, second, QStringLiteral("Speed"));
  // 0.05 is the root of 0.03 and 0.04 squared.
  QVERIFY2(speed.difference.contains(QStringLiteral("0.40")) && speed.difference.contains(QStringLiteral("0.05")),
           qPrintable(speed.difference));
}

void CompareTest::aimsDifferTheShortWayRound() {
  StoredShot first = sampleShot(1);
  StoredShot second = sampleShot(2);
  first.reading.delivery.aim_rad = Measured{std::numbers::pi - 0.01, 0.001};
  second.reading.delivery.aim_rad = Measured{-std::numbers::pi + 0.01, 0.001};
  const QString difference = lineOf(first, second, QStringLiteral("Aim")).difference;
  QVERIFY2(difference.startsWith(QStringLiteral("+1.1")), qPrintable(difference));  // 0.02 rad
}

void CompareTest::whatWasNotSeenHasNoDifference() {
  StoredShot first = sampleShot(1);
  const StoredShot second = sampleShot(2);
  first.reading.delivery.speed_mps.reset();
  const ComparedValue speed = lineOf(first, second, QStringLiteral("Speed"));
  QCOMPARE(speed.first, QStringLiteral("\u2013"));
  QCOMPARE(speed.difference, QStringLiteral("\u2013"));
}

void CompareTest::restPlacesAreApartByTheirDistance() {
  StoredShot first = sampleShot(1);
  StoredShot second = sampleShot(2);
  first.reading.after = {{kCueBall, {0.1, 0.2}}};
  second.reading.after = {{kCueBall, {0.4, 0.6}}};
  QVERIFY(lineOf(first, second, QStringLiteral("Cue ball at rest")).difference.contains(QStringLiteral("500")));
}

void CompareTest::theViewFillsWhenTheOtherShotIsChosen() {
  CompareView view;
  view.resize(900, 600);
  view.setNumbers(english());
  const auto first = std::make_shared<const StoredShot>(sampleShot(1));
  const auto second = std::make_shared<const StoredShot>(sampleShot(2));
  const MeasuredTable table = sampleContent().table;
  view.hold(first, table);
  view.setOther(first, table);  // the held one itself is no other
  const auto* values = view.findChild<QTableWidget*>(QStringLiteral("comparedValues"));
  QVERIFY(values != nullptr && values->rowCount() > 5);
  QVERIFY(values->item(1, 3)->text().isEmpty());
  view.setOther(second, table);
  QVERIFY(!values->item(1, 3)->text().isEmpty());
  QCOMPARE(view.other(), second);
  view.hold(nullptr, table);
  QVERIFY(!view.held() && !view.other());
}

FERRULE_TEST(CompareTest)
#include "compare_test.moc"
