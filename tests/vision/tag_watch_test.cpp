// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/tag_watch.h"

#include <QtTest>
#include <cmath>
#include <functional>
#include <opencv2/imgproc.hpp>

#include "core/camera/rig_file.h"
#include "core/vision/film_source.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class TagWatchTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase();
  void aCameraThatStandsStillIsNeverMoved();
  void aMoveIsToldOnceWithItsTimeAndItsRig();
  void aSwingThatComesBackIsNoMove();
  void onePushedTagIsNoMove();
  void aMoveBehindAnArmIsToldWhenTheTagsShowAgain();
  void aSecondMoveIsToldToo();
  void aTableWithoutTagsIsNotWatched();

 private:
  struct Shift {
    double x_px = 0.0;
    double y_px = 0.0;
  };
  /// Runs a watch over ten seconds of pictures, 30 a second.
  [[nodiscard]] std::vector<CameraMove> watched(const std::function<cv::Mat(double time_s)>& pictureAt) const;
  [[nodiscard]] cv::Mat shifted(Shift shift) const;
  [[nodiscard]] cv::Mat withoutTags() const;

  Rig rig_;
  MeasuredTable measured_;
  cv::Mat picture_;
};

namespace {

const std::string kFolder = FERRULE_SOURCE_DIR "/tests/data/clip/";

}  // namespace

void TagWatchTest::initTestCase() {
  rig_ = readRigFile(kFolder + "rig.json").value();
  measured_ = readMeasuredTable(kFolder + "table.json").value();
  auto film = FilmSource::open(kFolder + "stop-shot.mp4");
  FilmImage image;
  QVERIFY(film && film->next(image));
  picture_ = image.picture.clone();
}

std::vector<CameraMove> TagWatchTest::watched(const std::function<cv::Mat(double time_s)>& pictureAt) const {
  std::vector<CameraMove> moves;
  auto watch = TagWatch::of(rig_, measured_);
  for (long image = 0; image < 300; ++image) {
    const double time_s = static_cast<double>(image) / 30.0;
    if (auto move = watch->look(pictureAt(time_s), image, time_s)) moves.push_back(std::move(*move));
  }
  return moves;
}

cv::Mat TagWatchTest::shifted(Shift shift) const {
  const cv::Mat by = (cv::Mat_<double>(2, 3) << 1, 0, shift.x_px, 0, 1, shift.y_px);
  cv::Mat result;
  cv::warpAffine(picture_, result, by, picture_.size(), cv::INTER_CUBIC, cv::BORDER_REPLICATE);
  return result;
}

cv::Mat TagWatchTest::withoutTags() const {
  return cv::Mat(picture_.size(), picture_.type(), cv::Scalar(90, 90, 90));
}

void TagWatchTest::aCameraThatStandsStillIsNeverMoved() {
  cv::RNG noise(3);
  QVERIFY(watched([&](double) {
            cv::Mat grain(picture_.size(), CV_16SC3), result;
            noise.fill(grain, cv::RNG::NORMAL, 0.0, 3.0);
            picture_.convertTo(result, CV_16SC3);
            result += grain;
            result.convertTo(result, CV_8UC3);
            return result;
          }).empty());
}

void TagWatchTest::aMoveIsToldOnceWithItsTimeAndItsRig() {
  const cv::Mat after = shifted({1.5, -1.0});
  const auto moves = watched([&](double time_s) { return time_s < 4.5 ? picture_ : after; });
  QCOMPARE(moves.size(), std::size_t{1});
  const CameraMove& move = moves.front();
  QVERIFY(move.since_s < 4.5 && move.since_s > 3.0);
  QVERIFY(move.time_s >= 4.5 && move.time_s < 5.6);
  QVERIFY(move.settled_s > move.time_s && move.settled_s < 7.0);
  // 1.8 px of about 2 mm.
  QVERIFY2(std::abs(move.moved_m - 0.0036) < 0.0006, qPrintable(QString::number(move.moved_m)));
  // What lies at a place is seen shifted by as much under the new rig.
  const ImagePoint before = imageFromTable(rig_, {0.5, -0.3, 0.0286}).value();
  const ImagePoint now = imageFromTable(move.rig, {0.5, -0.3, 0.0286}).value();
  QVERIFY(std::abs(now.x - before.x - 1.5) < 0.15 && std::abs(now.y - before.y + 1.0) < 0.15);
  QCOMPARE(move.rig.chain.corrections().size(), rig_.chain.corrections().size());
}

void TagWatchTest::aSwingThatComesBackIsNoMove() {
  const cv::Mat away = shifted({2.0, 0.0});
  const cv::Mat further = shifted({4.0, 1.0});
  QVERIFY(watched([&](double time_s) {
            if (time_s < 4.0 || time_s > 6.0) return picture_;
            return static_cast<int>(time_s / 0.12) % 2 == 0 ? away : further;
          }).empty());
}

void TagWatchTest::onePushedTagIsNoMove() {
  const ImagePoint corner = imageFromTable(rig_, measured_.tags[2].corners[0]).value();
  const cv::Rect area = cv::Rect(static_cast<int>(corner.x) - 30, static_cast<int>(corner.y) - 30, 100, 100) &
                        cv::Rect(6, 6, picture_.cols - 12, picture_.rows - 12);
  cv::Mat pushed = picture_.clone();
  picture_(area).copyTo(pushed(area + cv::Point(-4, 2)));
  QVERIFY(watched([&](double time_s) { return time_s < 4.0 ? picture_ : pushed; }).empty());
}

void TagWatchTest::aMoveBehindAnArmIsToldWhenTheTagsShowAgain() {
  const cv::Mat after = shifted({0.0, 2.5});
  const cv::Mat hidden = withoutTags();
  const auto moves = watched([&](double time_s) {
    if (time_s < 3.0) return picture_;
    return time_s < 6.0 ? hidden : after;
  });
  QCOMPARE(moves.size(), std::size_t{1});
  QVERIFY(moves.front().since_s < 3.0 && moves.front().time_s >= 6.0);
}

void TagWatchTest::aSecondMoveIsToldToo() {
  const cv::Mat first = shifted({2.0, 0.0});
  const cv::Mat second = shifted({2.0, 3.0});
  const auto moves = watched([&](double time_s) {
    if (time_s < 3.0) return picture_;
    return time_s < 6.5 ? first : second;
  });
  QCOMPARE(moves.size(), std::size_t{2});
}

void TagWatchTest::aTableWithoutTagsIsNotWatched() {
  MeasuredTable bare = measured_;
  bare.tags.clear();
  QVERIFY(!TagWatch::of(rig_, bare));
}

FERRULE_TEST(TagWatchTest)
#include "tag_watch_test.moc"
