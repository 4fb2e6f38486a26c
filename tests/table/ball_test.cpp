// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include <cmath>

#include "core/table/ball.h"
#include "core/table/ball_set.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class BallTest : public QObject {
  Q_OBJECT
 private slots:
  void namesSurviveWritingAndReading();
  void wordsThatAreNoBallAreNothing();
  void theEightIsNeitherSolidNorStripe();
  void ballsAreSizedAsSpecified();
  void solidAndStripeOfOnePairShareTheirColour();
};

void BallTest::namesSurviveWritingAndReading() {
  QCOMPARE(toText(kCueBall), std::string("cue"));
  for (int number = 0; number < BallName::kCount; ++number) {
    const BallName ball(number);
    QCOMPARE(ballFromText(toText(ball)).value(), ball);
  }
}

void BallTest::wordsThatAreNoBallAreNothing() {
  for (const char* text :
       {"", "0", "16", "-1", "+3", " 3", "3 ", "03x", "1e0", "Cue", "eight", "99999999999999999999"}) {
    QVERIFY2(!ballFromText(text), text);
  }
}

/// Source: world rules of play, eight-ball: solids 1 to 7, stripes 9 to 15, and the 8.
void BallTest::theEightIsNeitherSolidNorStripe() {
  int solids = 0;
  int stripes = 0;
  for (int number = 0; number < BallName::kCount; ++number) {
    solids += BallName(number).isSolid() ? 1 : 0;
    stripes += BallName(number).isStripe() ? 1 : 0;
  }
  QCOMPARE(solids, 7);
  QCOMPARE(stripes, 7);
  QVERIFY(!BallName(8).isSolid() && !BallName(8).isStripe() && !BallName(8).isCueBall());
  QVERIFY(kCueBall.isCueBall() && !kCueBall.isSolid());
}

/// Source: world equipment specification, balls: 2.25 inches, give or take 0.005; 5.5 to 6 ounces.
void BallTest::ballsAreSizedAsSpecified() {
  const BallSet balls = poolBalls();
  QVERIFY(std::abs(balls.diameter_m - 2.25 * 0.0254) <= 0.005 * 0.0254);
  QVERIFY(balls.mass_kg >= 5.5 * 0.028349523125 && balls.mass_kg <= 6.0 * 0.028349523125);
  QCOMPARE(balls.radius_m(), balls.diameter_m / 2.0);
}

void BallTest::solidAndStripeOfOnePairShareTheirColour() {
  const BallSet balls = poolBalls();
  for (std::size_t number = 1; number <= 7; ++number) {
    QVERIFY(balls.colours[number] == balls.colours[number + 8]);
    for (std::size_t other = 1; other < number; ++other)
      QVERIFY(balls.colours[number] != balls.colours[other]);
  }
}

FERRULE_TEST(BallTest)
#include "ball_test.moc"
