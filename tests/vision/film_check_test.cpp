// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/film_check.h"

#include <QTemporaryDir>
#include <QtTest>
#include <cmath>
#include <functional>
#include <opencv2/calib3d.hpp>
#include <opencv2/imgproc.hpp>
#include <opencv2/videoio.hpp>

#include "core/camera/rig_file.h"
#include "core/vision/film_rig.h"
#include "core/vision/film_source.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// The self-check from pixels on: a film that ships with the tests, as it is and with faults planted in its pictures.
class FilmCheckTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase();
  void theFilmFitsItsRig();
  void everyCushionIsSeenOnBothEdgesAndInPlace();
  void theBallsAreFoundAtTheirSize();
  void aFilmThatWasStraightenedBeforeIsNamed();
  void aShiftedPictureIsAMovedCamera();
  void aRigFromTheCushionsFitsAFilmThatShowsTags();
  void aCroppedPictureIsNamed();
  void aForgottenTagHeightIsNamed();
  void aCoveredTagIsNoFault();
  void aDarkBlurredFilmIsNoFault();
  void aMirroredFilmIsRefused();
  void aFilmWithoutATableIsRefused();

 private:
  using Change = std::function<cv::Mat(const cv::Mat&)>;
  [[nodiscard]] Result<FilmCheck> checked(const Change& change) const { return checked(change, measured_); }
  [[nodiscard]] Result<FilmCheck> checked(const Change& change, const MeasuredTable& measured) const;

  Rig rig_;
  MeasuredTable measured_;
  std::vector<cv::Mat> pictures_;
};

namespace {

const std::string kFolder = FERRULE_SOURCE_DIR "/tests/data/clip/";

QString said(const Result<FilmCheck>& film) {
  if (!film) return QStringLiteral("code %1").arg(static_cast<int>(film.error().code));
  QString text = QString::fromUtf8(toText(film->check.verdict).data());
  for (const Explanation& each : film->check.explanations) {
    text += QStringLiteral("; %1 misfit %2 p %3")
                .arg(QString::fromUtf8(toText(each.fault).data()))
                .arg(each.misfit)
                .arg(each.probability);
  }
  return text;
}

#define COMPARE_VERDICT(film, fault) QVERIFY2((film) && (film)->check.verdict == (fault), qPrintable(said(film)))

cv::Mat shifted(const cv::Mat& picture, double x, double y) {
  const cv::Mat by = (cv::Mat_<double>(2, 3) << 1, 0, x, 0, 1, y);
  cv::Mat result;
  cv::warpAffine(picture, result, by, picture.size(), cv::INTER_CUBIC, cv::BORDER_REPLICATE);
  return result;
}

}  // namespace

void FilmCheckTest::initTestCase() {
  rig_ = readRigFile(kFolder + "rig.json").value();
  measured_ = readMeasuredTable(kFolder + "table.json").value();
  auto film = FilmSource::open(kFolder + "stop-shot.mp4");
  QVERIFY(film.has_value());
  FilmImage image;
  while (image.time_s < 3.0 && film->next(image)) {
    if (image.number % 6 == 0) pictures_.push_back(image.picture.clone());
  }
}

Result<FilmCheck> FilmCheckTest::checked(const Change& change, const MeasuredTable& measured) const {
  auto survey = CheckSurvey::of(measured, "table.json");
  for (const cv::Mat& picture : pictures_)
    survey->add(change ? change(picture) : picture);
  return checkPictures(*survey, "film.mp4", rig_, measured);
}

void FilmCheckTest::theFilmFitsItsRig() {
  const auto film = checkFilm(kFolder + "stop-shot.mp4", rig_, measured_, "table.json");
  COMPARE_VERDICT(film, RigFault::None);
  QVERIFY(film->check.confidence > 0.95);
  QVERIFY(film->looked_s > 1.0);
}

void FilmCheckTest::everyCushionIsSeenOnBothEdgesAndInPlace() {
  const auto film = checked({});
  QVERIFY(film.has_value());
  QCOMPARE(film->evidence.lines.size(), std::size_t{12});
  QCOMPARE(film->evidence.tags.size(), std::size_t{4});
  for (const CheckFinding& finding : film->check.findings) {
    QVERIFY2(finding.found_m && std::abs(*finding.found_m) <= finding.expected_m,
             qPrintable(QString::fromUtf8(toText(finding.kind).data()) + ' ' + QString::fromStdString(finding.what)));
  }
}

/// truth.json: the cue ball and the 3 lie 47 mm and more from everything else; both are 57.15 mm.
void FilmCheckTest::theBallsAreFoundAtTheirSize() {
  const auto film = checked({});
  QVERIFY(film.has_value());
  QCOMPARE(film->evidence.balls.size(), std::size_t{2});
  for (const BallSighting& ball : film->evidence.balls)
    QVERIFY2(std::abs(ball.radius_px - 14.3) < 0.8, qPrintable(QString::number(ball.radius_px)));
}

void FilmCheckTest::aFilmThatWasStraightenedBeforeIsNamed() {
  const Lens& lens = rig_.lens;
  const cv::Mat camera =
      (cv::Mat_<double>(3, 3) << lens.focalX_px, 0, lens.centre.x, 0, lens.focalY_px, lens.centre.y, 0, 0, 1);
  const cv::Mat bend = (cv::Mat_<double>(1, 5) << lens.coefficients[0], lens.coefficients[1], lens.coefficients[2],
                        lens.coefficients[3], lens.coefficients[4]);
  const auto film = checked([&](const cv::Mat& picture) {
    cv::Mat result;
    cv::undistort(picture, result, camera, bend);
    return result;
  });
  COMPARE_VERDICT(film, RigFault::CorrectedTwice);
}

/// Made without tags and without a board: what the tags show more exactly than the cushions is no fault. A camera that
/// moved by far more is one all the same.
void FilmCheckTest::aRigFromTheCushionsFitsAFilmThatShowsTags() {
  RigWanted wanted;
  wanted.measured = measured_;
  wanted.film = kFolder + "stop-shot.mp4";
  wanted.withoutTags = true;
  const auto rig = rigFromFilm(wanted);
  QVERIFY(rig.has_value());
  const auto checkOf = [&](double right_px) {
    auto survey = CheckSurvey::of(measured_, "table.json");
    for (const cv::Mat& picture : pictures_)
      survey->add(right_px == 0.0 ? picture : shifted(picture, right_px, 0.0));
    return checkPictures(*survey, wanted.film, *rig, measured_);
  };
  const auto still = checkOf(0.0);
  COMPARE_VERDICT(still, RigFault::None);
  const auto moved = checkOf(12.0);
  COMPARE_VERDICT(moved, RigFault::CameraMoved);
}

void FilmCheckTest::aShiftedPictureIsAMovedCamera() {
  const auto film = checked([](const cv::Mat& picture) { return shifted(picture, 4.0, -3.0); });
  COMPARE_VERDICT(film, RigFault::CameraMoved);
  // Five pixels of about 2 mm.
  QVERIFY2(std::abs(film->check.costRms_m - 0.010) < 0.002, qPrintable(QString::number(film->check.costRms_m)));
}

void FilmCheckTest::aCroppedPictureIsNamed() {
  const auto film = checked([](const cv::Mat& picture) {
    const cv::Point2f middle(0.5F * static_cast<float>(picture.cols - 1), 0.5F * static_cast<float>(picture.rows - 1));
    cv::Mat result;
    cv::warpAffine(picture, result, cv::getRotationMatrix2D(middle, 0.0, 1.0 / 1.08), picture.size(), cv::INTER_AREA,
                   cv::BORDER_REPLICATE);
    return result;
  });
  COMPARE_VERDICT(film, RigFault::WrongImageSize);
  QVERIFY2(std::abs(film->check.amounts[0] - 1.0 / 1.08) < 0.02, qPrintable(QString::number(film->check.amounts[0])));
}

void FilmCheckTest::aForgottenTagHeightIsNamed() {
  MeasuredTable wrong = measured_;
  for (RailTag& tag : wrong.tags) {
    for (TablePoint3& corner : tag.corners)
      corner.z = 0.0;
  }
  const auto film = checked({}, wrong);
  COMPARE_VERDICT(film, RigFault::TagHeight);
  QVERIFY(std::abs(film->check.amounts[0] - 0.0384) < 0.003);
}

void FilmCheckTest::aCoveredTagIsNoFault() {
  const ImagePoint corner = imageFromTable(rig_, measured_.tags[1].corners[0]).value();
  const auto film = checked([&](const cv::Mat& picture) {
    cv::Mat result = picture.clone();
    cv::circle(result, {static_cast<int>(corner.x), static_cast<int>(corner.y)}, 30, cv::Scalar(70, 80, 90),
               cv::FILLED);
    return result;
  });
  COMPARE_VERDICT(film, RigFault::None);
  QCOMPARE(film->evidence.tags.size(), std::size_t{3});
}

void FilmCheckTest::aDarkBlurredFilmIsNoFault() {
  const auto film = checked([](const cv::Mat& picture) {
    cv::Mat result;
    cv::GaussianBlur(picture, result, {0, 0}, 1.0);
    return cv::Mat(0.6 * result);
  });
  COMPARE_VERDICT(film, RigFault::None);
}

void FilmCheckTest::aMirroredFilmIsRefused() {
  const auto film = checked([](const cv::Mat& picture) {
    cv::Mat result;
    cv::flip(picture, result, 1);
    return result;
  });
  QVERIFY(!film && film.error().code == ErrorCode::ImageMirrored);
}

void FilmCheckTest::aFilmWithoutATableIsRefused() {
  const auto film =
      checked([](const cv::Mat& picture) { return cv::Mat(picture.size(), picture.type(), cv::Scalar(60, 60, 60)); });
  QVERIFY(!film && film.error().code == ErrorCode::TagsTooFew);
}

FERRULE_TEST(FilmCheckTest)
#include "film_check_test.moc"
