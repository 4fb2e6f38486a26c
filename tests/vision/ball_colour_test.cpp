// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_colour.h"

#include <QtTest>
#include <algorithm>
#include <array>
#include <opencv2/core.hpp>

#include "core/vision/ball_names.h"
#include "tests/support/ball_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;

/// What a ball shows under a lamp that gives these shares of B, G and R.
BallColours lookOf(int number, double patch, cv::Vec3d lamp, const WhiteReference& white = {}) {
  const Rig rig = overheadRig();
  const BallColour pattern = poolBalls().colours[static_cast<std::size_t>(number)];
  const std::array balls{DrawnBall{
      {0.1, 0.1},
      {static_cast<double>(pattern.blue), static_cast<double>(pattern.green), static_cast<double>(pattern.red)},
      patch,
      {},
      0.0}};
  cv::Mat picture = drawBalls(rig, {150.0, 90.0, 30.0}, balls, kRadius_m);
  cv::multiply(picture, cv::Scalar(lamp[0], lamp[1], lamp[2]), picture);
  return coloursOf(picture, *silhouetteOf(rig, {0.1, 0.1}, kRadius_m), white);
}

NameLikelihood likelihoodOf(int number, double patch) {
  return likelihoodOfNames(lookOf(number, patch, {1.0, 1.0, 1.0}), poolBalls());
}

int likeliest(const NameLikelihood& names) {
  return static_cast<int>(std::ranges::max_element(names) - names.begin());
}

}  // namespace

class BallColourTest : public QObject {
  Q_OBJECT
 private slots:
  void eachSolidIsItsOwnLikeliestName();
  void muchWhiteMakesAStripe();
  void theCueBallIsWhite();
  void aDarkRoomAndAWarmLampLeaveWhiteWhite();
  void noPaintIsTakenForWhite();
  void greyInTheDarkIsBlack();
  void namesAreGivenOnce();
};

void BallColourTest::eachSolidIsItsOwnLikeliestName() {
  for (int number = 1; number <= 8; ++number)
    QCOMPARE(likeliest(likelihoodOf(number, 0.25)), number);
}

void BallColourTest::muchWhiteMakesAStripe() {
  for (int number = 9; number <= 15; ++number)
    QCOMPARE(likeliest(likelihoodOf(number, 0.65)), number);
}

void BallColourTest::theCueBallIsWhite() {
  QCOMPARE(likeliest(likelihoodOf(0, 0.0)), 0);
}

void BallColourTest::aDarkRoomAndAWarmLampLeaveWhiteWhite() {
  // 40 % of the light; and a lamp that has hardly any blue.
  for (const cv::Vec3d& lamp : {cv::Vec3d(0.4, 0.4, 0.4), cv::Vec3d(0.55, 0.85, 1.0)}) {
    const std::array looks{lookOf(0, 0.0, lamp), lookOf(3, 0.25, lamp), lookOf(1, 0.25, lamp)};
    WhiteReference white;
    QVERIFY(likeliest(likelihoodOfNames(lookOf(0, 0.0, lamp, white), poolBalls())) != 0);
    white.guess(looks);
    for (const int number : {0, 1, 2, 3, 5, 6}) {
      const double patch = number == 0 ? 0.0 : 0.25;
      QCOMPARE(likeliest(likelihoodOfNames(lookOf(number, patch, lamp, white), poolBalls())), number);
    }
  }
}

void BallColourTest::noPaintIsTakenForWhite() {
  const cv::Vec3d lamp(1.0, 1.0, 1.0);
  const WhiteReference untold;
  WhiteReference white;
  white.guess(std::array{lookOf(1, 0.0, lamp), lookOf(3, 0.0, lamp), lookOf(5, 0.0, lamp)});
  QVERIFY(white == untold);
  // One ball alone is compared with nothing.
  white.guess(std::array{lookOf(0, 0.0, lamp)});
  QVERIFY(white == untold);
  // A white ball that was seen is better than any guess.
  white.seen = true;
  white.guess(std::array{lookOf(0, 0.0, {0.5, 0.5, 0.5}), lookOf(3, 0.0, {0.5, 0.5, 0.5})});
  QVERIFY(white == untold);
}

void BallColourTest::greyInTheDarkIsBlack() {
  // A camera that lifts the shadows shows black paint as a dark grey.
  const std::array balls{DrawnBall{{0.1, 0.1}, {75.0, 72.0, 70.0}, 0.25, {}, 0.0}};
  const cv::Mat picture = drawBalls(overheadRig(), {150.0, 90.0, 30.0}, balls, kRadius_m);
  const BallColours look = coloursOf(picture, *silhouetteOf(overheadRig(), {0.1, 0.1}, kRadius_m), {});
  QCOMPARE(likeliest(likelihoodOfNames(look, poolBalls())), 8);
}

void BallColourTest::namesAreGivenOnce() {
  // Two balls that look red: the redder one is the 3, the other the likeliest of what is left.
  NameLikelihood redder{};
  redder.fill(-25.0);
  redder[3] = -0.5;
  redder[7] = -6.0;
  NameLikelihood duller = redder;
  duller[3] = -1.0;
  duller[7] = -1.5;
  const std::array evidence{duller, redder};
  const auto names = nameBalls(evidence);
  QCOMPARE(names[0]->number(), 7);
  QCOMPARE(names[1]->number(), 3);
}

FERRULE_TEST(BallColourTest)
#include "ball_colour_test.moc"
