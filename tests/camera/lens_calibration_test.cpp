// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/lens_calibration.h"

#include <QtTest>
#include <algorithm>
#include <cmath>

#include "core/camera/lens_file.h"
#include "tests/camera/camera_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class LensCalibrationTest : public QObject {
  Q_OBJECT
 private slots:
  void aPlantedLensIsFound_data();
  void aPlantedLensIsFound();
  void statedUncertaintiesHoldThePlantedValues();
  void twoMisreadCornersAreDropped();
  void aBadStillIsNamedAndLeftOut();
  void tooFewViewsAreRefused();
  void aBoardNearTheCentreOnlyIsRefused();
  void aBoardOnOneSideOnlyIsRefused();
  void mixedSizesAreRefused();
  void theFileHoldsTheReport();
};

namespace {

Board board() {
  return parseBoard("chessboard:9x6:25").value();
}

/// Largest difference of two lenses over the picture, px, for the same ray.
double worstDifference(const Lens& lens, const Lens& truth) {
  double worst = 0.0;
  for (int i = 0; i <= 16; ++i) {
    for (int j = 0; j <= 9; ++j) {
      const ImagePoint pixel{(truth.size.width - 1) * i / 16.0, (truth.size.height - 1) * j / 9.0};
      const auto ray = rayFromImage(truth, pixel);
      const auto again = ray ? imageFromRay(lens, *ray) : std::nullopt;
      worst = std::max(worst, again ? distance(*again, pixel) : 1e9);
    }
  }
  return worst;
}

}  // namespace

void LensCalibrationTest::aPlantedLensIsFound_data() {
  QTest::addColumn<int>("which");
  QTest::addColumn<int>("model");
  QTest::newRow("brown5") << 0 << static_cast<int>(LensModel::Brown5);
  QTest::newRow("fisheye") << 1 << static_cast<int>(LensModel::Fisheye);
  QTest::newRow("brown8") << 2 << static_cast<int>(LensModel::Brown8);
}

/// 0.1 px of noise on whole-picture views: every pixel, the corners too, within 3 px; the middle model is the planted
/// one, or for the rational lens at least one as good over the picture.
void LensCalibrationTest::aPlantedLensIsFound() {
  QFETCH(int, which);
  QFETCH(int, model);
  const Lens truth = which == 0 ? brownLens() : which == 1 ? fisheyeLens() : rationalLens();
  const auto result = calibrateLens(board(), inventedViews(truth, board(), 20, 0.1));
  QVERIFY(result.has_value());
  if (which != 2) QCOMPARE(static_cast<int>(result->lens.model), model);
  QVERIFY2(worstDifference(result->lens, truth) < 3.0,
           qPrintable(QString::number(worstDifference(result->lens, truth))));
  QVERIFY(std::abs(result->lens.rms_px - 0.1 * std::sqrt(2.0)) < 0.02);
  QCOMPARE(result->shapes.size(), std::size_t{4});
}

/// Five standard uncertainties hold a normal error with near certainty; a tenth of one would be luck for all of them.
void LensCalibrationTest::statedUncertaintiesHoldThePlantedValues() {
  const Lens truth = brownLens();
  const auto result = calibrateLens(board(), inventedViews(truth, board(), 20, 0.1));
  QVERIFY(result.has_value());
  const double planted[4] = {truth.focalX_px, truth.focalY_px, truth.centre.x, truth.centre.y};
  double sum = 0.0;
  for (std::size_t i = 0; i < 4; ++i) {
    const LensParameter& p = result->parameters.at(i);
    QVERIFY(p.u > 0.0 && p.u < 3.0);
    const double score = (p.value - planted[i]) / p.u;
    QVERIFY2(std::abs(score) < 5.0, p.name.c_str());
    sum += score * score;
  }
  QVERIFY(sum > 0.04);
}

void LensCalibrationTest::twoMisreadCornersAreDropped() {
  const auto views = inventedViews(brownLens(), board(), 20, 0.1);
  const auto sound = calibrateLens(board(), views);
  auto bad = views;
  bad[7].corners[3].pixel.x += 6.0;
  bad[7].corners[20].pixel.y -= 6.0;
  const auto result = calibrateLens(board(), bad);
  QVERIFY(result.has_value());
  QCOMPARE(result->views[7].dropped, 2);
  QVERIFY(result->views[7].used);
  QVERIFY(std::abs(result->views[7].rms_px - sound->views[7].rms_px) < 0.01);
  for (std::size_t v = 0; v < views.size(); ++v) {
    if (v != 7) QCOMPARE(result->views[v].dropped, 0);
  }
}

void LensCalibrationTest::aBadStillIsNamedAndLeftOut() {
  auto views = inventedViews(brownLens(), board(), 20, 0.1);
  Random random(3);
  for (BoardCorner& corner : views[4].corners) {
    const double angle = 6.283185307179586 * random.uniform();
    corner.pixel = {corner.pixel.x + 3.0 * std::cos(angle), corner.pixel.y + 3.0 * std::sin(angle)};
  }
  const auto result = calibrateLens(board(), views);
  QVERIFY(result.has_value());
  for (const ViewReport& view : result->views)
    QCOMPARE(view.used, view.still != "still-5.jpg");
  QCOMPARE(result->usedViews.size(), views.size() - 1);
  QVERIFY(worstDifference(result->lens, brownLens()) < 3.0);
}

void LensCalibrationTest::tooFewViewsAreRefused() {
  auto views = inventedViews(brownLens(), board(), 20, 0.1);
  views.resize(4);
  const auto result = calibrateLens(board(), views);
  QVERIFY(!result.has_value());
  QVERIFY(result.error().code == ErrorCode::ViewsTooFew);
  QCOMPARE(result.error().numbers, (std::vector<double>{4, 8}));
}

void LensCalibrationTest::aBoardNearTheCentreOnlyIsRefused() {
  const auto result = calibrateLens(board(), inventedViews(brownLens(), board(), 20, 0.1, 0.05));
  QVERIFY(!result.has_value());
  QVERIFY(result.error().code == ErrorCode::CoverageOneSided);
  QVERIFY(result.error().numbers.at(0) < result.error().numbers.at(1));
}

void LensCalibrationTest::aBoardOnOneSideOnlyIsRefused() {
  auto views = inventedViews(brownLens(), board(), 40, 0.1);
  for (BoardView& view : views) {
    std::erase_if(view.corners, [](const BoardCorner& corner) { return corner.pixel.x < 760.0; });
  }
  const auto result = calibrateLens(board(), views);
  QVERIFY(!result.has_value());
  QVERIFY(result.error().code == ErrorCode::CoverageOneSided);
  QCOMPARE(result.error().detail, std::string("left"));
}

void LensCalibrationTest::mixedSizesAreRefused() {
  auto views = inventedViews(brownLens(), board(), 20, 0.1);
  views[6].size = {1280, 720};
  const auto result = calibrateLens(board(), views);
  QVERIFY(!result.has_value());
  QVERIFY(result.error().code == ErrorCode::ImageSizesMixed);
  QCOMPARE(result.error().subject, std::string("still-7.jpg"));
}

void LensCalibrationTest::theFileHoldsTheReport() {
  const auto result = calibrateLens(board(), inventedViews(brownLens(), board(), 20, 0.1));
  QVERIFY(result.has_value());
  const std::string text = lensText(*result);
  QVERIFY(parseLens(text, "lens.json").value() == result->lens);
  QVERIFY(text.find("standard_uncertainty") != std::string::npos);
  QVERIFY(text.find("corners_per_cell") != std::string::npos);
}

FERRULE_TEST(LensCalibrationTest)
#include "lens_calibration_test.moc"
