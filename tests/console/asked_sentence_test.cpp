// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/asked_sentence.h"

#include <QtTest>

#include "core/geometry/units.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class AskedSentenceTest : public QObject {
  Q_OBJECT
 private slots:
  void longShotsThatFallShortAreNamedWithTheirShare();
  void aClippedSideIsNamedWithItsLimit();
  void anOffsetSaysWhichWay_data();
  void anOffsetSaysWhichWay();
  void whatDoesNotStandOutIsNoFault();
  void everyQuantityHasItsRowAndItsSentence();
};

namespace {

const Numbers kNumbers{QLocale::c()};

/// Nothing wrong with it.
AskedFit soundFit() {
  AskedFit fit;
  fit.shots = 10;
  fit.offset = {0.0, 0.005};
  fit.offsetAt = 2.0;
  fit.scale = Measured{1.0, 0.005};
  fit.scatter = {0.03, 0.01};
  return fit;
}

}  // namespace

void AskedSentenceTest::longShotsThatFallShortAreNamedWithTheirShare() {
  AskedFit fit = soundFit();
  fit.scale = Measured{0.92, 0.01};
  fit.offset = {-0.16, 0.005};  // 8 % of the 2 m/s that were asked on average
  const QString sentence = askedSentence(StrikeQuantity::Speed, fit, kNumbers);
  QVERIFY2(sentence.contains(QStringLiteral("long shots fall 8\u00a0% short")), qPrintable(sentence));
  QVERIFY(!sentence.contains("too slow"));  // the same fault, not a second one
  QVERIFY(sentence.contains("scatter by 0.03"));
  fit.scale = Measured{1.06, 0.01};
  fit.offset = {0.12, 0.005};
  QVERIFY(
      askedSentence(StrikeQuantity::Speed, fit, kNumbers).contains(QStringLiteral("long shots go 6\u00a0% too far")));
}

void AskedSentenceTest::aClippedSideIsNamedWithItsLimit() {
  AskedFit fit = soundFit();
  fit.offsetAt = 0.0;
  fit.limit = Measured{0.3, 0.01};
  const QString sentence = askedSentence(StrikeQuantity::Side, fit, kNumbers);
  QVERIFY2(sentence.contains("clipped at 0.30 R"), qPrintable(sentence));
}

/// Signs as core/table/shot.h has them: aim counter-clockwise (left), side to the right, height up, butt up.
void AskedSentenceTest::anOffsetSaysWhichWay_data() {
  QTest::addColumn<int>("quantity");
  QTest::addColumn<double>("offset");
  QTest::addColumn<QString>("words");
  QTest::newRow("left") << 0 << radiansFromDegrees(0.5) << "to the left";
  QTest::newRow("right") << 0 << radiansFromDegrees(-0.5) << "to the right";
  QTest::newRow("fast") << 1 << 0.2 << "too fast";
  QTest::newRow("slow") << 1 << -0.2 << "too slow";
  QTest::newRow("right side") << 2 << 0.1 << "too far right";
  QTest::newRow("left side") << 2 << -0.1 << "too far left";
  QTest::newRow("high") << 3 << 0.1 << "too high";
  QTest::newRow("low") << 3 << -0.1 << "too low";
  QTest::newRow("steep") << 4 << radiansFromDegrees(3.0) << "too steep";
  QTest::newRow("flat") << 4 << radiansFromDegrees(-3.0) << "too flat";
}

void AskedSentenceTest::anOffsetSaysWhichWay() {
  QFETCH(int, quantity);
  QFETCH(double, offset);
  QFETCH(QString, words);
  AskedFit fit = soundFit();
  fit.scale.reset();
  fit.offset = {offset, std::abs(offset) / 10.0};
  const QString sentence = askedSentence(static_cast<StrikeQuantity>(quantity), fit, kNumbers);
  QVERIFY2(sentence.contains(words), qPrintable(sentence));
  QVERIFY(!sentence.contains("comes as asked"));
}

void AskedSentenceTest::whatDoesNotStandOutIsNoFault() {
  AskedFit fit = soundFit();
  fit.scale = Measured{0.92, 0.06};
  fit.offset = {-0.16, 0.1};
  const QString sentence = askedSentence(StrikeQuantity::Speed, fit, kNumbers);
  QVERIFY2(sentence.contains("comes as asked"), qPrintable(sentence));
  QVERIFY(!sentence.contains("short"));
}

void AskedSentenceTest::everyQuantityHasItsRowAndItsSentence() {
  AskedDelivered result;
  QVERIFY(askedLines(result, kNumbers).isEmpty());
  result.speed_mps = soundFit();
  result.aim_rad = soundFit();
  result.aim_rad->offset = {radiansFromDegrees(0.5), radiansFromDegrees(0.1)};
  const QStringList lines = askedLines(result, kNumbers);
  QCOMPARE(lines.size(), 5);
  QVERIFY(lines[1].startsWith("aim_deg"));
  QVERIFY2(lines[1].contains("0.500 ±0.196"), qPrintable(lines[1]));  // 1.96 standard uncertainties
  QVERIFY(lines[2].startsWith("speed_m_s"));
  QVERIFY(lines[3].startsWith("Aim: ") && lines[4].startsWith("Speed: "));
}

FERRULE_TEST(AskedSentenceTest)
#include "asked_sentence_test.moc"
