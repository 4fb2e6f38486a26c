// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_colour.h"

#include <QtTest>
#include <algorithm>
#include <array>

#include "core/vision/ball_names.h"
#include "tests/support/ball_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;

NameLikelihood likelihoodOf(int number, double patch) {
  const Rig rig = overheadRig();
  const BallColour pattern = poolBalls().colours[static_cast<std::size_t>(number)];
  const std::array balls{DrawnBall{
      {0.1, 0.1},
      {static_cast<double>(pattern.blue), static_cast<double>(pattern.green), static_cast<double>(pattern.red)},
      patch,
      {},
      0.0}};
  const cv::Mat picture = drawBalls(rig, {150.0, 90.0, 30.0}, balls, kRadius_m);
  return likelihoodOfNames(coloursOf(picture, *silhouetteOf(rig, {0.1, 0.1}, kRadius_m), {}), poolBalls());
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
