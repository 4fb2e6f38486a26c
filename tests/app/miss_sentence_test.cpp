// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/miss_sentence.h"

#include <QtTest>

#include "core/geometry/units.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

const Numbers kNumbers{QLocale(QLocale::English)};

Measured degreesWith(double value, double uncertainty = 0.1) {
  return {radiansFromDegrees(value), radiansFromDegrees(uncertainty)};
}

/// A cut to the left (counter-clockwise) that went so far off; 18 mm to a degree at the mouth.
Target missedBy(double error_deg) {
  Target target;
  target.ball = BallName(4);
  target.pocket = PocketName::FootLeft;
  target.lineError_rad = radiansFromDegrees(error_deg);
  target.missSide = error_deg > 0.0 ? MissSide::Over : MissSide::Under;
  target.missAtMouth_m = 0.018 * error_deg;
  return target;
}

/// An account in which one part alone stands out.
MissAccount causedBy(Measured MissAccount::*part, double degrees) {
  MissAccount account;
  account.total_rad = degreesWith(degrees);
  account.*part = degreesWith(degrees);
  return account;
}

QString told(const Target& target, const std::optional<MissAccount>& account) {
  return missSentence(target, account, kNumbers);
}

}  // namespace

class MissSentenceTest : public QObject {
  Q_OBJECT
 private slots:
  void everyCauseIsNamed_data();
  void everyCauseIsNamed();
  void sidesFollowTheCut();
  void theLargestPartsComeFirstAndAtMostThree();
  void whatDoesNotStandOutFromItsUncertaintyIsNotSaid();
  void aRattleIsSaid();
  void withoutALineThereIsNothingToSay();
  void withoutASideTheAngleAloneIsTold();
};

void MissSentenceTest::everyCauseIsNamed_data() {
  QTest::addColumn<int>("part");
  QTest::addColumn<QString>("words");
  QTest::newRow("aim") << 0 << QStringLiteral("The aim was 1.2° thin of the ghost ball.");
  QTest::newRow("squirt") << 1 << QStringLiteral("Squirt made it 1.2° thin.");
  QTest::newRow("swerve") << 2 << QStringLiteral("Swerve made it 1.2° thin.");
  QTest::newRow("collision throw") << 3 << QStringLiteral("Throw of the cut made it 1.2° thin.");
  QTest::newRow("spin throw") << 4 << QStringLiteral("Throw of the side spin made it 1.2° thin.");
  QTest::newRow("speed") << 5 << QStringLiteral("The speed made it 1.2° thin.");
  QTest::newRow("remainder") << 6 << QStringLiteral("1.2° thin stays unexplained.");
}

void MissSentenceTest::everyCauseIsNamed() {
  QFETCH(int, part);
  QFETCH(QString, words);
  static constexpr std::array kParts{&MissAccount::aim_rad,       &MissAccount::squirt_rad,
                                     &MissAccount::swerve_rad,    &MissAccount::collisionThrow_rad,
                                     &MissAccount::spinThrow_rad, &MissAccount::speed_rad,
                                     &MissAccount::remainder_rad};
  const QString sentence = told(missedBy(1.2), causedBy(kParts[static_cast<std::size_t>(part)], 1.2));
  QCOMPARE(sentence, QStringLiteral("Missed thin by 1.2° (22 mm at the pocket). ") + words);
}

/// Thin is a turn of the object ball's line in the sense of the cut, whichever way that is.
void MissSentenceTest::sidesFollowTheCut() {
  Target toTheRight = missedBy(-1.2);
  toTheRight.missSide = MissSide::Over;
  QVERIFY(told(toTheRight, causedBy(&MissAccount::aim_rad, -1.2)).contains("aim was 1.2° thin"));
  QVERIFY(told(missedBy(-1.2), causedBy(&MissAccount::aim_rad, -1.2)).contains("aim was 1.2° thick"));
  QVERIFY(told(missedBy(1.2), causedBy(&MissAccount::aim_rad, -0.8)).contains("aim was 0.8° thick"));
  QVERIFY(told(missedBy(-1.2), {}).startsWith("Missed thick by 1.2°"));
}

void MissSentenceTest::theLargestPartsComeFirstAndAtMostThree() {
  MissAccount account;
  account.aim_rad = degreesWith(0.5);
  account.squirt_rad = degreesWith(-2.0);
  account.swerve_rad = degreesWith(1.0);
  account.collisionThrow_rad = degreesWith(3.0);
  const QString sentence = told(missedBy(2.5), account);
  const auto throwAt = sentence.indexOf("Throw of the cut made it 3.0° thin");
  const auto squirtAt = sentence.indexOf("squirt made it 2.0° thick");
  const auto swerveAt = sentence.indexOf("swerve made it 1.0° thin");
  QVERIFY2(throwAt > 0 && throwAt < squirtAt && squirtAt < swerveAt, qPrintable(sentence));
  QVERIFY(!sentence.contains("aim"));
}

void MissSentenceTest::whatDoesNotStandOutFromItsUncertaintyIsNotSaid() {
  MissAccount account;
  account.aim_rad = degreesWith(1.0, 0.6);
  account.squirt_rad = degreesWith(0.05, 0.001);
  QVERIFY(told(missedBy(1.0), account).endsWith("The film does not tell what brought it there."));
}

void MissSentenceTest::aRattleIsSaid() {
  Target target = missedBy(0.8);
  target.rattled = true;
  QVERIFY(told(target, {}).contains("It rattled in the jaws."));
}

void MissSentenceTest::withoutALineThereIsNothingToSay() {
  QVERIFY(told(Target{}, causedBy(&MissAccount::aim_rad, 1.0)).isEmpty());
}

void MissSentenceTest::withoutASideTheAngleAloneIsTold() {
  Target target = missedBy(1.2);
  target.missSide.reset();
  QCOMPARE(told(target, causedBy(&MissAccount::aim_rad, 1.0)),
           QStringLiteral("The line was 1.2° off the middle of the pocket."));
}

FERRULE_TEST(MissSentenceTest)
#include "miss_sentence_test.moc"
