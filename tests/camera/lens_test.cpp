// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/lens.h"

#include <QtTest>
#include <cmath>
#include <opencv2/calib3d.hpp>

#include "core/camera/lens_fitting.h"
#include "tests/camera/camera_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class LensTest : public QObject {
  Q_OBJECT
 private slots:
  void everyModelAgreesWithOpenCv_data();
  void everyModelAgreesWithOpenCv();
  void everyPixelComesBackToItself_data();
  void everyPixelComesBackToItself();
  void aStrongLensReturnsNothingBeyondItsFold();
  void aRayBeyondTheFoldIsNotSeen();
  void aPoleIsNotCrossed();
  void aLensScalesWithItsPicture();
  void aLensOfAnotherShapeIsRefused();
  void aTurnedLensSeesTheTurnedPicture();
};

namespace {

cv::Mat cameraMatrix(const Lens& lens) {
  return (cv::Mat_<double>(3, 3) << lens.focalX_px, 0, lens.centre.x, 0, lens.focalY_px, lens.centre.y, 0, 0, 1);
}

cv::Mat coefficientsOf(const Lens& lens) {
  const auto names = coefficientNames(lens.model);
  cv::Mat result(1, static_cast<int>(names.size()), CV_64F);
  for (std::size_t i = 0; i < names.size(); ++i)
    result.at<double>(static_cast<int>(i)) = lens.coefficients[i];
  return result;
}

void addLenses() {
  QTest::addColumn<int>("which");
  QTest::newRow("brown5") << 0;
  QTest::newRow("brown8") << 1;
  QTest::newRow("fisheye") << 2;
}

Lens lensNumber(int which) {
  return which == 0 ? brownLens() : which == 1 ? rationalLens() : fisheyeLens();
}

}  // namespace

void LensTest::everyModelAgreesWithOpenCv_data() {
  addLenses();
}

/// The reference is cv::projectPoints and cv::fisheye::projectPoints.
void LensTest::everyModelAgreesWithOpenCv() {
  QFETCH(int, which);
  const Lens lens = lensNumber(which);
  std::vector<cv::Point3d> points;
  for (double x = -0.6; x <= 0.6; x += 0.1) {
    for (double y = -0.35; y <= 0.35; y += 0.05)
      points.emplace_back(x, y, 1.0);
  }
  std::vector<cv::Point2d> expected;
  const cv::Vec3d zero(0, 0, 0);
  if (lens.model == LensModel::Fisheye) {
    cv::fisheye::projectPoints(points, expected, zero, zero, cameraMatrix(lens), coefficientsOf(lens));
  } else {
    cv::projectPoints(points, zero, zero, cameraMatrix(lens), coefficientsOf(lens), expected);
  }
  for (std::size_t i = 0; i < points.size(); ++i) {
    const auto pixel = imageFromRay(lens, {points[i].x, points[i].y});
    QVERIFY(pixel.has_value());
    QVERIFY(distance(*pixel, ImagePoint{expected[i].x, expected[i].y}) < 1e-9);
  }
}

void LensTest::everyPixelComesBackToItself_data() {
  addLenses();
}

void LensTest::everyPixelComesBackToItself() {
  QFETCH(int, which);
  const Lens lens = lensNumber(which);
  for (int y = 0; y < lens.size.height; y += 15) {
    for (int x = 0; x < lens.size.width; x += 25) {
      const ImagePoint pixel{static_cast<double>(x), static_cast<double>(y)};
      const auto ray = rayFromImage(lens, pixel);
      QVERIFY2(ray.has_value(), qPrintable(QStringLiteral("%1 %2").arg(x).arg(y)));
      QVERIFY(distance(imageFromRay(lens, *ray).value(), pixel) < 1e-6);
    }
  }
}

/// k1 = -0.35, k2 = 0.15, k3 = -0.03: the picture's corners lie beyond the fold and have no ray.
void LensTest::aStrongLensReturnsNothingBeyondItsFold() {
  Lens lens = brownLens();
  lens.focalX_px = lens.focalY_px = 900.0;
  lens.coefficients = {-0.35, 0.15, 0.0, 0.0, -0.03};
  // The largest radius that r (1 - 0.35 r^2 + 0.15 r^4 - 0.03 r^6) reaches before it falls for the first time.
  double fold_px = 0.0;
  for (double r = 0.0; r < 5.0; r += 1e-4) {
    const double s = r * r;
    const double bent_px = 900.0 * r * (1.0 - 0.35 * s + 0.15 * s * s - 0.03 * s * s * s);
    if (bent_px < fold_px) break;
    fold_px = bent_px;
  }
  int folded = 0;
  for (int y = 0; y < lens.size.height; y += 15) {
    for (int x = 0; x < lens.size.width; x += 25) {
      const ImagePoint pixel{static_cast<double>(x), static_cast<double>(y)};
      const double radius_px = distance(pixel, lens.centre);
      if (std::abs(radius_px - fold_px) < 0.1) continue;
      const auto ray = rayFromImage(lens, pixel);
      QCOMPARE(ray.has_value(), radius_px < fold_px);
      if (ray) {
        QVERIFY(distance(imageFromRay(lens, *ray).value(), pixel) < 0.01);
      } else {
        ++folded;
      }
    }
  }
  QVERIFY(folded > 0);
  QVERIFY(!rayFromImage(lens, {0.0, 0.0}).has_value());
}

void LensTest::aRayBeyondTheFoldIsNotSeen() {
  Lens lens = brownLens();
  lens.coefficients = {-0.3, 0.0, 0.0, 0.0, 0.0};
  // 1 - 0.9 r^2 = 0 at r = 1.0541: the radius in the picture is largest there.
  QVERIFY(imageFromRay(lens, {1.05, 0.0}).has_value());
  QVERIFY(!imageFromRay(lens, {1.06, 0.0}).has_value());
}

void LensTest::aPoleIsNotCrossed() {
  Lens lens = brownLens();
  lens.model = LensModel::Brown8;
  lens.coefficients = {0.0, 0.0, 0.0, 0.0, 0.0, -1.0, 0.0, 0.0};  // pole at r = 1
  QVERIFY(imageFromRay(lens, {0.5, 0.0}).has_value());
  QVERIFY(!imageFromRay(lens, {1.2, 0.0}).has_value());
}

void LensTest::aLensScalesWithItsPicture() {
  const Lens lens = brownLens();
  const auto half = scaledLens(lens, {960, 540}, "film.mp4", "lens.json");
  QVERIFY(half.has_value());
  const CameraRay ray{0.31, -0.22};
  const ImagePoint whole = imageFromRay(lens, ray).value();
  const ImagePoint small = imageFromRay(*half, ray).value();
  // Pixel 0 of the small picture covers pixels 0 and 1 of the large one, whose middle is 0.5.
  QVERIFY(distance(small, ImagePoint{0.5 * (whole.x - 0.5), 0.5 * (whole.y - 0.5)}) < 1e-9);
}

void LensTest::aLensOfAnotherShapeIsRefused() {
  const auto cropped = scaledLens(brownLens(), {1440, 1080}, "film.mp4", "lens.json");
  QVERIFY(!cropped.has_value());
  QVERIFY(cropped.error().code == ErrorCode::ImageSizeMismatch);
  QCOMPARE(cropped.error().subject, std::string("film.mp4"));
  QCOMPARE(cropped.error().numbers, (std::vector<double>{1440, 1080, 1920, 1080}));
  // 854 x 480 is 16:9 to the nearest pixel.
  QVERIFY(scaledLens(brownLens(), {854, 480}, "film.mp4", "lens.json").has_value());
}

void LensTest::aTurnedLensSeesTheTurnedPicture() {
  const Lens lens = brownLens();
  const CameraRay ray{0.31, -0.22};
  const ImagePoint upright = imageFromRay(lens, ray).value();
  // A quarter clockwise: right becomes down.
  const Lens quarter = turnedLens(lens, 90);
  QVERIFY(quarter.size == (ImageSize{1080, 1920}));
  const ImagePoint turned = imageFromRay(quarter, {-ray.y, ray.x}).value();
  QVERIFY(distance(turned, ImagePoint{1079.0 - upright.y, upright.x}) < 1e-9);
  const ImagePoint over = imageFromRay(turnedLens(lens, 180), {-ray.x, -ray.y}).value();
  QVERIFY(distance(over, ImagePoint{1919.0 - upright.x, 1079.0 - upright.y}) < 1e-9);
}

FERRULE_TEST(LensTest)
#include "lens_test.moc"
