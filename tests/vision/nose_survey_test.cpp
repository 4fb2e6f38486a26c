// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/nose_survey.h"

#include <QtTest>
#include <algorithm>
#include <cmath>
#include <functional>

#include "tests/support/ball_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class NoseSurveyTest : public QObject {
  Q_OBJECT
 private slots:
  void straightNosesComeOutStraight();
  void aPlantedBowIsMeasured();
  void aBallAtTheCushionBendsNothing();
  void anotherCamerasLensShows();
  void aPictureWithoutATableShowsNoNoses();
};

namespace {

constexpr double kEndLeftOut_m = 0.06;  // by the survey, at each end of a nose

/// Small enough for the invented camera.
Table smallTable() {
  Table table;
  table.length_m = 1.10;
  table.width_m = 0.58;
  return table;
}

/// How far outward the left-head nose is drawn from where it belongs, by x.
using Bow = std::function<double(double)>;

/// Light cushions round darker cloth, as a camera with that lens sees them, averaged over 3 x 3 points a pixel.
cv::Mat drawTable(
    const Rig& rig, const Bow& bow = [](double) { return 0.0; }) {
  const Table table = smallTable();
  cv::Mat picture(rig.lens.size.height, rig.lens.size.width, CV_8UC3);
  for (int row = 0; row < picture.rows; ++row) {
    for (int column = 0; column < picture.cols; ++column) {
      double light = 0.0;
      for (int i = 0; i < 9; ++i) {
        const ImagePoint point{column + (i % 3 - 1) / 3.0, row + (i / 3 - 1) / 3.0};
        const TablePoint p = tableFromImage(rig, point, table.noseHeight_m).value_or(TablePoint{9.0, 9.0});
        const double left = 0.5 * table.width_m + (p.x < 0.0 ? bow(p.x) : 0.0);
        const bool cloth = std::abs(p.x) < 0.5 * table.length_m && p.y < left && p.y > -0.5 * table.width_m;
        light += (cloth ? 70.0 : 130.0) / 9.0;
      }
      const auto grey = static_cast<unsigned char>(std::lround(light));
      picture.at<cv::Vec3b>(row, column) = {grey, grey, grey};
    }
  }
  return picture;
}

std::vector<NoseStraightness> surveyed(const cv::Mat& picture, const Rig& rig) {
  NoseSurvey survey;
  survey.add(picture);
  return survey.result(rig, smallTable());
}

double worstRms(const std::vector<NoseStraightness>& noses) {
  double worst = 0.0;
  for (const NoseStraightness& nose : noses)
    worst = std::max(worst, nose.rms_m);
  return worst;
}

}  // namespace

/// A pixel is 2 mm here; an edge between two clean levels is found to a few hundredths of one.
void NoseSurveyTest::straightNosesComeOutStraight() {
  const Rig rig = overheadRig();
  const auto noses = surveyed(drawTable(rig), rig);
  QCOMPARE(noses.size(), std::size_t{6});
  QVERIFY2(worstRms(noses) < 0.0001, std::to_string(worstRms(noses)).c_str());
}

/// A parabola of height c over half its length h leaves c * sqrt(4 / 45) rms and 2 c / 3 at most from its best line
/// (least squares over an interval).
void NoseSurveyTest::aPlantedBowIsMeasured() {
  const Rig rig = overheadRig();
  const Cushion cushion = cushions(smallTable())[2];
  QCOMPARE(cushion.name, CushionName::LeftHead);
  const double middle = 0.5 * (cushion.nose.start.x + cushion.nose.end.x);
  const double half_m = 0.5 * distance(cushion.nose.start, cushion.nose.end) - kEndLeftOut_m;
  const double height_m = 0.006;
  const auto noses =
      surveyed(drawTable(rig, [&](double x) { return height_m * std::pow((x - middle) / half_m, 2.0); }), rig);
  const auto bent = std::ranges::find(noses, CushionName::LeftHead, &NoseStraightness::cushion);
  QVERIFY(bent != noses.end());
  QVERIFY2(std::abs(bent->rms_m - height_m * std::sqrt(4.0 / 45.0)) < 0.00012, std::to_string(bent->rms_m).c_str());
  QVERIFY2(std::abs(bent->max_m - height_m * 2.0 / 3.0) < 0.0004, std::to_string(bent->max_m).c_str());
  for (const NoseStraightness& nose : noses)
    QVERIFY(nose.cushion == CushionName::LeftHead || nose.rms_m < 0.0001);
}

void NoseSurveyTest::aBallAtTheCushionBendsNothing() {
  const Rig rig = overheadRig();
  cv::Mat picture = drawTable(rig);
  const ImagePoint ball = imageFromTable(rig, {-0.2, 0.29 - 0.028, 0.028}).value();
  for (int row = 0; row < picture.rows; ++row) {
    for (int column = 0; column < picture.cols; ++column) {
      if (std::hypot(column - ball.x, row - ball.y) < 14.0) picture.at<cv::Vec3b>(row, column) = {230, 230, 230};
    }
  }
  const auto noses = surveyed(picture, rig);
  QCOMPARE(noses.size(), std::size_t{6});
  QVERIFY2(worstRms(noses) < 0.0004, std::to_string(worstRms(noses)).c_str());
}

/// The picture comes through a lens that bends; the rig knows of none.
void NoseSurveyTest::anotherCamerasLensShows() {
  Rig bending = overheadRig();
  // A common wide lens.
  bending.lens.model = LensModel::Brown5;
  bending.lens.coefficients = {-0.28, 0.08, 0.0, 0.0, 0.0};
  const cv::Mat picture = drawTable(bending);
  // A tenth of a pixel: lines that run askew through the pixels are found a little less well.
  const double right = worstRms(surveyed(picture, bending));
  QVERIFY2(right < 0.0002, std::to_string(right).c_str());
  // As tags at the corners would have it: the size right there, the sides not.
  Rig unknowing = overheadRig();
  unknowing.lens.focalX_px *= 0.92;
  unknowing.lens.focalY_px *= 0.92;
  const auto noses = surveyed(picture, unknowing);
  QVERIFY(!noses.empty());
  // On this table of half the usual size half the usual bow.
  QVERIFY2(worstRms(noses) > 0.0007, std::to_string(worstRms(noses)).c_str());
  QVERIFY(worstRms(noses) > 4.0 * right);
}

void NoseSurveyTest::aPictureWithoutATableShowsNoNoses() {
  const Rig rig = overheadRig();
  QVERIFY(surveyed(cv::Mat(360, 640, CV_8UC3, cv::Scalar(90, 90, 90)), rig).empty());
  QVERIFY(NoseSurvey().result(rig, smallTable()).empty());
}

FERRULE_TEST(NoseSurveyTest)
#include "nose_survey_test.moc"
