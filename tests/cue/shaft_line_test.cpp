// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/shaft_line.h"

#include <QtTest>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/base/random.h"
#include "core/cue/cue_model.h"
#include "core/cue/read_shaft.h"
#include "core/geometry/units.h"
#include "core/table/table_size.h"
#include "tests/cue/address_film.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class ShaftLineTest : public QObject {
  Q_OBJECT
 private slots:
  void aShaftOverTheClothIsFoundWithinItsUncertainty();
  void aRaisedButtIsWithinTheUncertainty();
  void aShadowIsNoShaft();
  void aShaftOfTheClothsColourIsNotSeen();
  void aBarThatDoesNotPointAtTheBallIsNone();
  void ballsInARowAreNoShaft();
  void aBareClothShowsNone();
  void linesBeforeAStrikeBecomeAReading();
  void fewLinesAreNoReading();
  void linesThatPointElsewhereThanTheBallWentAreNoReading();
};

namespace {

constexpr double kRadius_m = 0.028575;
const cv::Scalar kCloth(60, 120, 40);
const cv::Scalar kWood(120, 170, 205);
const TablePoint kBall{0.55, 0.1};

Table nineFoot() {
  return tableOfSize(*tableSizeNamed("9ft"));
}

cv::Mat bareCloth() {
  return cv::Mat(1080, 1920, CV_8UC3, kCloth);
}

/// A shaft from 0.1 m before the ball back to half a metre, drawn four times too fine.
void drawShaft(cv::Mat& picture, const Rig& rig, const InventedStroke& stroke, const cv::Scalar& colour) {
  constexpr int kFine = 4;
  const CueModel model(taggedCue());
  const CuePose pose = poseAt(stroke, model, stroke.strike_s, 0.0);
  const CueAxes axes = axesOf(pose);
  const Eigen::Vector3d tip = model.tipOf(pose);
  std::vector<cv::Point> outline;
  const auto add = [&](double back_m, double left) {
    const double radius_m = 0.0062 + 0.0056 * back_m;
    const Eigen::Vector3d place = tip - (back_m + 0.05) * axes.forward + left * radius_m * axes.left;
    const auto pixel = imageFromTable(rig, {place.x(), place.y(), place.z()});
    outline.emplace_back(static_cast<int>(std::lround((pixel->x + 0.5) * kFine)),
                         static_cast<int>(std::lround((pixel->y + 0.5) * kFine)));
  };
  add(0.0, 1.0);
  add(0.5, 1.0);
  add(0.5, -1.0);
  add(0.0, -1.0);
  const cv::Rect box = (cv::boundingRect(outline) + cv::Size(8 * kFine, 8 * kFine)) - cv::Point(4 * kFine, 4 * kFine);
  const cv::Rect area = cv::Rect(box.x / kFine, box.y / kFine, box.width / kFine + 1, box.height / kFine + 1) &
                        cv::Rect({}, picture.size());
  cv::Mat fine;
  cv::resize(picture(area), fine, area.size() * kFine, 0, 0, cv::INTER_NEAREST);
  for (cv::Point& point : outline)
    point -= area.tl() * kFine;
  cv::fillPoly(fine, std::vector{outline}, colour);
  cv::Mat coarse;
  cv::resize(fine, coarse, area.size(), 0, 0, cv::INTER_AREA);
  cv::GaussianBlur(coarse, coarse, {3, 3}, 0.7);
  coarse.copyTo(picture(area));
}

void addNoise(cv::Mat& picture, std::uint64_t seed) {
  Random random(seed);
  for (int y = 0; y < picture.rows; ++y) {
    auto* row = picture.ptr<unsigned char>(y);
    for (int x = 0; x < 3 * picture.cols; ++x)
      row[x] = cv::saturate_cast<unsigned char>(row[x] + 2.0 * random.normal());
  }
}

void drawBall(cv::Mat& picture, const Rig& rig, TablePoint place, const cv::Scalar& colour) {
  const auto pixel = imageFromTable(rig, {place.x, place.y, kRadius_m});
  cv::circle(picture, cv::Point(static_cast<int>(pixel->x), static_cast<int>(pixel->y)), 18, colour, cv::FILLED,
             cv::LINE_AA);
}

InventedStroke strokeAt(double aim_rad) {
  InventedStroke stroke;
  stroke.ball = kBall;
  stroke.aim_rad = aim_rad;
  stroke.side_m = 0.004;
  return stroke;
}

std::vector<ShaftLine> linesOf(double aim_rad, int count) {
  std::vector<ShaftLine> lines;
  for (int i = 0; i < count; ++i)
    lines.push_back({9.0 + 0.1 * i, {aim_rad + 0.001 * (i % 3 - 1), 0.003}, {0.002, 0.001}, 0.002, 0.1});
  return lines;
}

StruckBall ballStruck(double aim_rad) {
  StruckBall ball;
  ball.strike_s = 10.02;
  ball.radius_m = kRadius_m;
  ball.aim_rad = Measured{aim_rad, 0.001};
  return ball;
}

}  // namespace

void ShaftLineTest::aShaftOverTheClothIsFoundWithinItsUncertainty() {
  double squares = 0.0;
  int count = 0;
  for (double aim_rad = -3.0; aim_rad < 3.1; aim_rad += 0.61) {
    const Rig rig = cameraAbove();
    cv::Mat picture = bareCloth();
    drawBall(picture, rig, kBall, {230, 230, 230});
    drawShaft(picture, rig, strokeAt(aim_rad), kWood);
    addNoise(picture, 3);
    const auto line = shaftLine(rig, nineFoot(), picture, kBall, kRadius_m);
    QVERIFY2(line.has_value(), qPrintable(QString::number(aim_rad)));
    const double off_rad = wrapAngle(line->aim_rad.value - aim_rad);
    QVERIFY2(std::abs(off_rad) < radiansFromDegrees(0.8), qPrintable(QString::number(degreesFromRadians(off_rad))));
    QVERIFY(line->aim_rad.standardUncertainty < radiansFromDegrees(2.5));
    QVERIFY(std::abs(line->side_m.value - 0.004) < 4.0 * line->side_m.standardUncertainty);
    squares += std::pow(off_rad / line->aim_rad.standardUncertainty, 2);
    ++count;
  }
  QVERIFY2(squares / count < 2.0, qPrintable(QString::number(squares / count)));
}

/// Seen from the side a butt that is raised more turns the line; that is what the uncertainty says.
void ShaftLineTest::aRaisedButtIsWithinTheUncertainty() {
  const Rig rig = cameraAbove();
  InventedStroke stroke = strokeAt(0.5 * 3.14159265);
  stroke.elevation_rad = 0.16;
  stroke.bridgeHeight_m = 0.06;
  cv::Mat picture = bareCloth();
  drawShaft(picture, rig, stroke, kWood);
  addNoise(picture, 4);
  const auto line = shaftLine(rig, nineFoot(), picture, kBall, kRadius_m);
  QVERIFY(line.has_value());
  const double off_rad = wrapAngle(line->aim_rad.value - stroke.aim_rad);
  QVERIFY(std::abs(off_rad) > 0.3 * line->aim_rad.standardUncertainty);
  QVERIFY(std::abs(off_rad) < 2.5 * line->aim_rad.standardUncertainty);
}

void ShaftLineTest::aShadowIsNoShaft() {
  const Rig rig = cameraAbove();
  cv::Mat picture = bareCloth();
  drawShaft(picture, rig, strokeAt(1.0), kCloth * 0.5);
  addNoise(picture, 5);
  QVERIFY(!shaftLine(rig, nineFoot(), picture, kBall, kRadius_m).has_value());
}

void ShaftLineTest::aShaftOfTheClothsColourIsNotSeen() {
  const Rig rig = cameraAbove();
  cv::Mat picture = bareCloth();
  drawShaft(picture, rig, strokeAt(1.0), cv::Scalar(66, 124, 44));
  addNoise(picture, 6);
  QVERIFY(!shaftLine(rig, nineFoot(), picture, kBall, kRadius_m).has_value());
}

void ShaftLineTest::aBarThatDoesNotPointAtTheBallIsNone() {
  const Rig rig = cameraAbove();
  cv::Mat picture = bareCloth();
  InventedStroke stroke = strokeAt(1.0);
  stroke.side_m = 0.045;
  drawShaft(picture, rig, stroke, kWood);
  QVERIFY(!shaftLine(rig, nineFoot(), picture, kBall, kRadius_m).has_value());
}

void ShaftLineTest::ballsInARowAreNoShaft() {
  const Rig rig = cameraAbove();
  cv::Mat picture = bareCloth();
  drawBall(picture, rig, kBall, {230, 230, 230});
  for (int i = 1; i < 5; ++i)
    drawBall(picture, rig, {kBall.x - 0.0575 * i, kBall.y}, {30, 40, 200});
  QVERIFY(!shaftLine(rig, nineFoot(), picture, kBall, kRadius_m).has_value());
}

void ShaftLineTest::aBareClothShowsNone() {
  cv::Mat picture = bareCloth();
  addNoise(picture, 7);
  QVERIFY(!shaftLine(cameraAbove(), nineFoot(), picture, kBall, kRadius_m).has_value());
}

void ShaftLineTest::linesBeforeAStrikeBecomeAReading() {
  const auto reading = readShaft(linesOf(0.5, 14), ballStruck(0.49));
  QVERIFY(reading.has_value());
  QCOMPARE(reading->source, CueSource::Shaft);
  QVERIFY(std::abs(reading->aim_rad->value - 0.5) < 0.0015);
  QVERIFY(reading->aim_rad->standardUncertainty >= 0.003);
  QVERIFY(std::abs(reading->aimBeforeMinusAfter_rad->value - 0.01) < 0.002);
  QVERIFY(std::abs(reading->tipSide_m->value - 0.002) < 1e-9);
  QVERIFY(!reading->elevation_rad.has_value());
  QVERIFY(!reading->tipHeight_m.has_value());
  QVERIFY(reading->steadiness_rad.has_value());
  // What came after the strike is another cue's.
  QCOMPARE(reading->course.size(), std::size_t{11});
}

void ShaftLineTest::fewLinesAreNoReading() {
  QVERIFY(!readShaft(linesOf(0.5, 2), ballStruck(0.5)).has_value());
  StruckBall later = ballStruck(0.5);
  later.strike_s += 30.0;
  QVERIFY(!readShaft(linesOf(0.5, 14), later).has_value());
}

void ShaftLineTest::linesThatPointElsewhereThanTheBallWentAreNoReading() {
  QVERIFY(!readShaft(linesOf(0.5, 14), ballStruck(0.8)).has_value());
}

FERRULE_TEST(ShaftLineTest)
#include "shaft_line_test.moc"
