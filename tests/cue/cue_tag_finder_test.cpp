// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/cue_tag_finder.h"

#include <QtTest>
#include <cmath>
#include <opencv2/aruco.hpp>
#include <opencv2/imgproc.hpp>

#include "core/cue/cue_model.h"
#include "tests/cue/address_film.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class CueTagFinderTest : public QObject {
  Q_OBJECT
 private slots:
  void bothTagsAreReadToASixthOfAPixel();
  void tagsOfThirteenPixelsAreReadEnlarged();
  void tagsAreFollowedOutOfReachOfTheBall();
  void anotherTagIsNotTaken();
  void anEmptyPictureHoldsNone();
  void anUnknownDictionaryIsRefused();
};

namespace {

constexpr int kFine = 6;  // supersampling

/// The cue's tags on a grey floor, drawn too fine and averaged over each pixel's area.
cv::Mat pictureOf(const Rig& rig, const MeasuredCue& cue, const CuePose& pose, const std::vector<int>& ids) {
  const CueModel model(cue);
  cv::Mat picture(rig.lens.size.height, rig.lens.size.width, CV_8UC3, cv::Scalar(90, 90, 90));
  const auto dictionary = cv::aruco::getPredefinedDictionary(cv::aruco::DICT_4X4_50);
  const auto middle = model.imageOf(rig, pose, 0, 0);
  const cv::Point origin(static_cast<int>((*middle)[0].x) - 150, static_cast<int>((*middle)[0].y) - 150);
  const cv::Rect area = cv::Rect(origin, cv::Size(300, 300)) & cv::Rect({}, picture.size());
  cv::Mat fine(area.size() * kFine, CV_8U, cv::Scalar(90));
  for (std::size_t tag = 0; tag < model.tags(); ++tag) {
    const auto corners = model.imageOf(rig, pose, tag, 0);
    constexpr int kModule = 40;
    cv::Mat print;
    cv::aruco::drawMarker(dictionary, ids[tag], 6 * kModule, print);
    cv::copyMakeBorder(print, print, 2 * kModule, 2 * kModule, 2 * kModule, 2 * kModule, cv::BORDER_CONSTANT, 255);
    std::vector<cv::Point2f> from{{2 * kModule - 0.5F, 2 * kModule - 0.5F},
                                  {8 * kModule - 0.5F, 2 * kModule - 0.5F},
                                  {8 * kModule - 0.5F, 8 * kModule - 0.5F},
                                  {2 * kModule - 0.5F, 8 * kModule - 0.5F}};
    std::vector<cv::Point2f> to;
    for (const ImagePoint& p : *corners) {
      to.emplace_back(static_cast<float>((p.x - area.x + 0.5) * kFine - 0.5),
                      static_cast<float>((p.y - area.y + 0.5) * kFine - 0.5));
    }
    const cv::Mat fine_from_print = cv::getPerspectiveTransform(from, to);
    cv::Mat warped;
    cv::Mat mask;
    cv::warpPerspective(print, warped, fine_from_print, fine.size());
    cv::warpPerspective(cv::Mat(print.size(), CV_8U, cv::Scalar(255)), mask, fine_from_print, fine.size(),
                        cv::INTER_NEAREST);
    warped.copyTo(fine, mask);
  }
  // A camera averages light, not grey levels. Source: IEC 61966-2-1 (sRGB).
  cv::Mat light(fine.size(), CV_32F);
  for (int y = 0; y < fine.rows; ++y) {
    for (int x = 0; x < fine.cols; ++x) {
      const double v = fine.at<unsigned char>(y, x) / 255.0;
      light.at<float>(y, x) = static_cast<float>(v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4));
    }
  }
  cv::Mat pixels;
  cv::resize(light, pixels, area.size(), 0, 0, cv::INTER_AREA);
  cv::Mat coarse(pixels.size(), CV_8U);
  for (int y = 0; y < pixels.rows; ++y) {
    for (int x = 0; x < pixels.cols; ++x) {
      const double v = pixels.at<float>(y, x);
      const double grey = v <= 0.0031308 ? 12.92 * v : 1.055 * std::pow(v, 1.0 / 2.4) - 0.055;
      coarse.at<unsigned char>(y, x) = static_cast<unsigned char>(std::lround(255.0 * grey));
    }
  }
  cv::cvtColor(coarse, coarse, cv::COLOR_GRAY2BGR);
  coarse.copyTo(picture(area));
  return picture;
}

CuePose someWhere() {
  CuePose pose;
  pose.heading_rad = 2.7;
  pose.elevation_rad = 0.09;
  pose.middle_m = {0.31, -0.12, 0.07};
  return pose;
}

double worstMiss(const Rig& rig, const MeasuredCue& cue, const CuePose& pose, const CueSighting& sighting) {
  const CueModel model(cue);
  double worst = 0.0;
  for (const TagObservation& tag : sighting.tags) {
    const auto truth = model.imageOf(rig, pose, *model.indexOf(tag.id), 0);
    for (std::size_t i = 0; i < 4; ++i)
      worst = std::max(worst, distance(tag.corners[i], (*truth)[i]));
  }
  return worst;
}

}  // namespace

void CueTagFinderTest::bothTagsAreReadToASixthOfAPixel() {
  const Rig rig = cameraAbove();
  auto finder = CueTagFinder::of(rig, taggedCue());
  const auto seen = finder->look(pictureOf(rig, taggedCue(), someWhere(), {10, 11}), 0, 0.0, TablePoint{-0.1, 0.06});
  QVERIFY(seen.has_value());
  QCOMPARE(seen->tags.size(), std::size_t{2});
  const double worst = worstMiss(rig, taggedCue(), someWhere(), *seen);
  QVERIFY2(worst < 1.0 / 6.0, qPrintable(QString::number(worst)));
}

void CueTagFinderTest::tagsOfThirteenPixelsAreReadEnlarged() {
  const Rig rig = cameraAbove();
  MeasuredCue cue = taggedCue();
  cue.tags.blackSide_m = 0.0205;
  auto finder = CueTagFinder::of(rig, cue);
  const auto seen = finder->look(pictureOf(rig, cue, someWhere(), {10, 11}), 0, 0.0, TablePoint{-0.1, 0.06});
  QVERIFY(seen.has_value());
  QCOMPARE(seen->tags.size(), std::size_t{2});
  const double worst = worstMiss(rig, cue, someWhere(), *seen);
  QVERIFY2(worst < 0.4, qPrintable(QString::number(worst)));
}

/// The cue ball is elsewhere by now; what was seen an image ago is near.
void CueTagFinderTest::tagsAreFollowedOutOfReachOfTheBall() {
  const Rig rig = cameraAbove();
  auto finder = CueTagFinder::of(rig, taggedCue());
  CuePose pose = someWhere();
  const TablePoint near{-0.1, 0.06};
  const TablePoint far{-1.1, 0.5};
  QVERIFY(!finder->look(pictureOf(rig, taggedCue(), pose, {10, 11}), 0, 0.0, far).has_value());
  QVERIFY(finder->look(pictureOf(rig, taggedCue(), pose, {10, 11}), 10, 0.3, near).has_value());
  pose.middle_m.x() += 0.05;
  QVERIFY(finder->look(pictureOf(rig, taggedCue(), pose, {10, 11}), 11, 0.33, far).has_value());
}

void CueTagFinderTest::anotherTagIsNotTaken() {
  const Rig rig = cameraAbove();
  auto finder = CueTagFinder::of(rig, taggedCue());
  const auto seen = finder->look(pictureOf(rig, taggedCue(), someWhere(), {10, 12}), 0, 0.0, std::nullopt);
  QVERIFY(seen.has_value());
  QCOMPARE(seen->tags.size(), std::size_t{1});
  QCOMPARE(seen->tags[0].id, 10);
}

void CueTagFinderTest::anEmptyPictureHoldsNone() {
  const Rig rig = cameraAbove();
  auto finder = CueTagFinder::of(rig, taggedCue());
  QVERIFY(!finder->look(cv::Mat(1080, 1920, CV_8UC3, cv::Scalar(90, 90, 90)), 0, 0.0, std::nullopt).has_value());
}

void CueTagFinderTest::anUnknownDictionaryIsRefused() {
  MeasuredCue cue = taggedCue();
  cue.tags.dictionary = "DICT_3X3";
  QVERIFY(!CueTagFinder::of(cameraAbove(), cue).has_value());
}

FERRULE_TEST(CueTagFinderTest)
#include "cue_tag_finder_test.moc"
