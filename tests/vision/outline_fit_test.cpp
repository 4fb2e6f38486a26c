// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/outline_fit.h"

#include <QtTest>
#include <array>
#include <cmath>

#include "tests/support/ball_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;
const cv::Vec3d kGreenCloth{70.0, 100.0, 33.0};
const cv::Vec3d kRed{40.0, 35.0, 200.0};
const cv::Vec3d kPurple{100.0, 40.0, 75.0};

/// Distance between the fitted and the drawn centre, px, from a start some pixels off.
double miss_px(const DrawnBall& ball, ImageVector startOff, OutlineFitOptions options = {},
               cv::Vec3d cloth = kGreenCloth) {
  const Rig rig = overheadRig();
  const std::array balls{ball};
  const cv::Mat picture = drawBalls(rig, cloth, balls, kRadius_m);
  Silhouette start = *silhouetteOf(rig, ball.position, kRadius_m);
  start.centre = start.centre + startOff;
  const OutlineFit fit = fitOutline(picture, start, {}, options);
  return fit.usable ? length(startOff + fit.shift) : 1e9;
}

}  // namespace

class OutlineFitTest : public QObject {
  Q_OBJECT
 private slots:
  void findsABallFromSomePixelsAway();
  void aShadowBesideTheBallDoesNotPullIt();
  void aNumberNearTheRimDoesNotPullIt();
  void aNumberAndAShadowAcrossFromItDoNotPullABallNearTheClothsColour();
  void aBallOfTheClothsColourIsFoundByItsDarkRim();
  void aStreakIsPlacedAtMidExposure();
  void bareClothHoldsNoBall();
};

// A ball of 14 px: half a pixel is about a millimetre.
void OutlineFitTest::findsABallFromSomePixelsAway() {
  for (const ImageVector off : {ImageVector{0.0, 0.0}, ImageVector{3.0, -2.0}, ImageVector{-2.4, 3.1}}) {
    QVERIFY(miss_px({{0.11, -0.07}, kRed, 0.0, {}, 0.0}, off) < 0.15);
  }
}

void OutlineFitTest::aShadowBesideTheBallDoesNotPullIt() {
  QVERIFY(miss_px({{-0.2, 0.1}, kRed, 0.0, {}, 0.4}, {2.0, 1.0}) < 0.3);
  QVERIFY(miss_px({{-0.2, 0.1}, kPurple, 0.0, {}, 0.4}, {2.0, 1.0}) < 0.4);
}

void OutlineFitTest::aNumberNearTheRimDoesNotPullIt() {
  QVERIFY(miss_px({{0.3, 0.2}, kPurple, 0.75, {}, 0.0}, {-2.0, 1.5}) < 0.2);
}

// Blue on blue: the number's edge is many times as sharp as the rim, and the shadow's as sharp.
void OutlineFitTest::aNumberAndAShadowAcrossFromItDoNotPullABallNearTheClothsColour() {
  const cv::Vec3d blueCloth{120.0, 85.0, 35.0};
  OutlineFitOptions options;
  options.cloth = Eigen::Vector3f(120.0F, 85.0F, 35.0F);
  for (const ImageVector off :
       {ImageVector{0.0, 0.0}, ImageVector{3.0, 1.0}, ImageVector{-3.0, -1.0}, ImageVector{1.0, -3.0}}) {
    const double miss = miss_px({{0.11, -0.07}, {130.0, 50.0, 30.0}, 0.6, {}, 0.35}, off, options, blueCloth);
    QVERIFY2(miss < 0.6, qPrintable(QString::number(miss)));  // 1 mm here
  }
}

// It shows no edge, only a limb that darkens toward the outline and a shadow that lightens away from it.
void OutlineFitTest::aBallOfTheClothsColourIsFoundByItsDarkRim() {
  OutlineFitOptions options;
  options.cloth = Eigen::Vector3f(70.0F, 100.0F, 33.0F);
  for (const ImageVector off : {ImageVector{0.0, 0.0}, ImageVector{2.5, -2.0}, ImageVector{-2.0, -2.5}}) {
    QVERIFY(miss_px({{0.11, -0.07}, kGreenCloth, 0.0, {}, 0.0}, off, options) < 0.3);
    QVERIFY(miss_px({{0.11, -0.07}, kGreenCloth, 0.3, {}, 0.3}, off, options) < 0.7);
  }
}

void OutlineFitTest::aStreakIsPlacedAtMidExposure() {
  OutlineFitOptions options;
  options.blur = {9.6, 0.0};
  QVERIFY(miss_px({{0.0, 0.05}, kRed, 0.0, {0.02, 0.0}, 0.0}, {1.0, 1.0}, options) < 0.4);
}

void OutlineFitTest::bareClothHoldsNoBall() {
  const Rig rig = overheadRig();
  const cv::Mat picture(360, 640, CV_8UC3, cv::Scalar(70, 100, 33));
  QVERIFY(!fitOutline(picture, *silhouetteOf(rig, {0.0, 0.0}, kRadius_m), {}, {}).usable);
}

FERRULE_TEST(OutlineFitTest)
#include "outline_fit_test.moc"
