// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/cloth_model.h"

#include <QtTest>
#include <array>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "tests/support/ball_picture.h"
#include "tests/support/small_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;
const cv::Vec3d kCloth{70.0, 100.0, 33.0};
const cv::Vec3d kRed{40.0, 35.0, 200.0};

SmallScale scale() {
  return smallScaleFor(overheadRig(), kRadius_m);
}

ClothModel model() {
  return {overheadRig(), Table{}, scale()};
}

/// What lies on the cloth, seen small; brighter: the light has changed by so many grey levels.
cv::Mat seen(std::span<const DrawnBall> balls, double brighter = 0.0) {
  const cv::Vec3d cloth = kCloth + cv::Vec3d(brighter, brighter, brighter);
  return shrunk(drawBalls(overheadRig(), cloth, balls, kRadius_m), scale());
}

/// The greatest and the mean difference within a radius of a place.
struct Away {
  double most = 0.0;
  double mean = 0.0;
};

Away awayAt(const cv::Mat& difference, TablePoint place, double radius_px) {
  const ImagePoint at = scale().toSmall(*imageFromTable(overheadRig(), {place.x, place.y, kRadius_m}));
  cv::Mat mask = cv::Mat::zeros(difference.size(), CV_8U);
  cv::circle(mask, {static_cast<int>(std::lround(at.x)), static_cast<int>(std::lround(at.y))},
             static_cast<int>(radius_px), cv::Scalar(255), cv::FILLED);
  Away away;
  cv::minMaxLoc(difference, nullptr, &away.most, nullptr, nullptr, mask);
  away.mean = cv::mean(difference, mask)[0];
  return away;
}

const DrawnBall kBall{{0.2, 0.1}, kRed, 0.0, {}, 0.0};

}  // namespace

class ClothModelTest : public QObject {
  Q_OBJECT
 private slots:
  void aBallIsSixToNinePixelsSmall();
  void bareClothDiffersFromNothing();
  void aBallStandsOutThoughItLayThereFromTheFirst();
  void aBallThatComesLaterStandsOut();
  void lightThatChangesSlowlyIsFollowed();
  void lampsThatFlickerLeaveTheClothCloth();
  void somebodyOverTheTableIsNoChangeOfLight();
  void whatTheFilmWaversByIsNotTakenForABall();
  void aBallThatRestsForMinutesDoesNotBecomeCloth();
  void theFarSideOfTheRailsDoesNotCount();
};

void ClothModelTest::aBallIsSixToNinePixelsSmall() {
  const double radius_px = silhouetteOf(overheadRig(), {0.0, 0.0}, kRadius_m)->radius_px() / scale().factor;
  QVERIFY2(radius_px >= 6.0 && radius_px <= 9.0, qPrintable(QString::number(radius_px)));
  const ImagePoint there = scale().toFull(scale().toSmall({101.0, 57.5}));
  QVERIFY(std::hypot(there.x - 101.0, there.y - 57.5) < 1e-9);
}

void ClothModelTest::bareClothDiffersFromNothing() {
  ClothModel cloth = model();
  cloth.start(seen({}));
  double most = 0.0;
  cv::minMaxLoc(cloth.difference(seen({})), nullptr, &most);
  QVERIFY2(most <= 2.0, qPrintable(QString::number(most)));
  const Eigen::Vector3f colour = cloth.colourAt({100.0, 60.0});
  QVERIFY(std::abs(colour[0] - 70.0F) <= 1.0F && std::abs(colour[1] - 100.0F) <= 1.0F);
}

void ClothModelTest::aBallStandsOutThoughItLayThereFromTheFirst() {
  std::vector<DrawnBall> rack;
  for (int i = 0; i < 6; ++i)
    rack.push_back({{0.2 + 0.058 * (i % 3), 0.1 + 0.058 * (i / 3)}, kRed, 0.0, {}, 0.0});
  ClothModel cloth = model();
  cloth.start(seen(rack));
  const cv::Mat away = cloth.difference(seen(rack));
  for (const DrawnBall& ball : rack)
    QVERIFY(awayAt(away, ball.position, 4.0).mean > 60.0);
  QVERIFY(awayAt(away, {-0.3, -0.1}, 20.0).most <= 3.0);
}

void ClothModelTest::aBallThatComesLaterStandsOut() {
  ClothModel cloth = model();
  cloth.start(seen({}));
  const cv::Mat away = cloth.difference(seen(std::array{kBall}));
  QVERIFY(awayAt(away, kBall.position, 4.0).mean > 60.0);
  QVERIFY(awayAt(away, {-0.2, 0.1}, 20.0).most <= 2.0);
}

void ClothModelTest::lightThatChangesSlowlyIsFollowed() {
  ClothModel cloth = model();
  cloth.start(seen({}));
  const cv::Mat nothing = cv::Mat::zeros(seen({}).size(), CV_8U);
  for (int i = 1; i <= 60; ++i) {
    for (int k = 0; k < 12; ++k)
      cloth.learn(seen({}, 0.5 * i), nothing);
  }
  // 30 grey levels brighter by then.
  QVERIFY(awayAt(cloth.difference(seen({}, 30.0)), {0.1, 0.1}, 30.0).most <= 3.0);
}

void ClothModelTest::lampsThatFlickerLeaveTheClothCloth() {
  // A quarter of the light gone from one picture to the next, and another white point.
  const auto lit = [](std::span<const DrawnBall> balls) {
    cv::Mat picture = drawBalls(overheadRig(), kCloth, balls, kRadius_m);
    cv::multiply(picture, cv::Scalar(0.70, 0.75, 0.85), picture);
    return picture;
  };
  ClothModel cloth = model();
  cloth.start(seen({}));
  const cv::Mat picture = lit(std::array{kBall});
  cloth.meet(picture);
  QVERIFY(std::abs(cloth.gain()[0] - 0.70F) < 0.02F && std::abs(cloth.gain()[2] - 0.85F) < 0.02F);
  const cv::Mat away = cloth.difference(shrunk(picture, scale()));
  QVERIFY(awayAt(away, {-0.2, 0.1}, 20.0).most <= 2.0);
  QVERIFY(awayAt(away, kBall.position, 4.0).mean > 40.0);
  QVERIFY(std::abs(cloth.colourAt({100.0, 60.0})[1] - 75.0F) <= 1.5F);
}

void ClothModelTest::somebodyOverTheTableIsNoChangeOfLight() {
  ClothModel cloth = model();
  cloth.start(seen({}));
  cv::Mat picture = drawBalls(overheadRig(), kCloth, {}, kRadius_m);
  picture(cv::Rect(0, 0, 400, 360)).setTo(cv::Scalar(120.0, 150.0, 205.0));
  cloth.meet(picture);
  QVERIFY((cloth.gain() == 1.0F).all());
}

void ClothModelTest::whatTheFilmWaversByIsNotTakenForABall() {
  ClothModel cloth = model();
  cloth.start(seen({}));
  cloth.meet(drawBalls(overheadRig(), kCloth, {}, kRadius_m));
  QCOMPARE(cloth.faintly(), 6);
  QCOMPARE(cloth.clearly(), 13);
  cv::RNG random(3);
  double most = 0.0;
  for (int i = 0; i < 30; ++i) {
    // Blocks of a strong compression that waver as wholes.
    cv::Mat blocks(45, 80, CV_16SC3);
    random.fill(blocks, cv::RNG::NORMAL, cv::Scalar::all(0.0), cv::Scalar::all(4.0));
    cv::Mat wavering;
    cv::resize(blocks, wavering, {640, 360}, 0, 0, cv::INTER_NEAREST);
    cv::Mat picture;
    cv::add(drawBalls(overheadRig(), kCloth, {}, kRadius_m), wavering, picture, cv::noArray(), CV_8UC3);
    cloth.meet(picture);
    const cv::Mat away = cloth.difference(shrunk(picture, scale()));
    most = static_cast<double>(cv::countNonZero(away > cloth.clearly())) / cv::countNonZero(cloth.surface());
  }
  QVERIFY2(std::abs(cloth.noise() - 4.0) < 0.6, qPrintable(QString::number(cloth.noise())));
  QVERIFY2(most < 0.001, qPrintable(QString::number(most)));
}

void ClothModelTest::aBallThatRestsForMinutesDoesNotBecomeCloth() {
  ClothModel cloth = model();
  cloth.start(seen({}));
  const cv::Mat there = seen(std::array{kBall});
  const cv::Mat unknown = cv::Mat::zeros(there.size(), CV_8U);  // not even marked as occupied
  for (int i = 0; i < 600; ++i)
    cloth.learn(there, unknown);
  QVERIFY(awayAt(cloth.difference(there), kBall.position, 4.0).mean > 60.0);
  QVERIFY(awayAt(cloth.difference(seen({})), kBall.position, 4.0).most <= 3.0);
}

void ClothModelTest::theFarSideOfTheRailsDoesNotCount() {
  Table small;
  small.length_m = 0.9;
  small.width_m = 0.45;
  ClothModel cloth(overheadRig(), small, scale());
  cloth.start(seen({}));
  const DrawnBall outside{{0.55, 0.0}, kRed, 0.0, {}, 0.0};
  QCOMPARE(awayAt(cloth.difference(seen(std::array{outside})), outside.position, 4.0).most, 0.0);
}

FERRULE_TEST(ClothModelTest)
#include "cloth_model_test.moc"
