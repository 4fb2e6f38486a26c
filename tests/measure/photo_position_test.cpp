// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/photo_position.h"

#include <QtTest>
#include <nlohmann/json.hpp>
#include <opencv2/imgcodecs.hpp>

#include "core/base/text_file.h"
#include "core/vision/film_source.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class PhotoPositionTest : public QObject {
  Q_OBJECT
 private slots:
  void ballsOfAPhotoLieWhereTheTruthHasThem_data();
  void ballsOfAPhotoLieWhereTheTruthHasThem();
  void aPhotoOfAnotherSizeIsRefused();
  void anEmptyClothIsSaid();
  void whatIsNoPictureIsNamed();
};

namespace {

const std::string kClip = FERRULE_SOURCE_DIR "/tests/data/clip/";

/// The first image of the clip with known truth as a photo.
std::string photo(const sample::Folder& folder, const std::string& name) {
  auto film = FilmSource::open(kClip + "stop-shot.mp4");
  FilmImage image;
  if (!film || !film->next(image)) return {};
  const std::string path = folder.file(name);
  cv::imwrite(path, image.picture);
  return path;
}

PhotoFiles filesFor(const std::string& photo) {
  return {photo, kClip + "rig.json", kClip + "table.json"};
}

}  // namespace

void PhotoPositionTest::ballsOfAPhotoLieWhereTheTruthHasThem_data() {
  QTest::addColumn<QString>("name");
  QTest::newRow("PNG") << "photo.png";
  QTest::newRow("JPEG") << "photo.jpg";
}

void PhotoPositionTest::ballsOfAPhotoLieWhereTheTruthHasThem() {
  QFETCH(const QString, name);
  const sample::Folder folder;
  const auto found = positionInPhoto(filesFor(photo(folder, name.toStdString())));
  QVERIFY(found.has_value());
  const auto truth = nlohmann::json::parse(*readTextFile(kClip + "truth.json"));
  const auto& balls = truth["frames"][0]["balls"];
  QCOMPARE(found->balls.size(), balls.size());
  for (const auto& ball : balls) {
    const BallAt* seen = ballIn(found->balls, BallName(ball["ball"].get<int>()));
    QVERIFY(seen != nullptr);
    const double off_mm = 1000.0 * distance(seen->position, TablePoint{ball["x"].get<double>() / 1000.0,
                                                                       ball["y"].get<double>() / 1000.0});
    // The design's figure for resting balls: 95 % within 2 mm, none beyond 4.
    QVERIFY2(off_mm < 2.0, qPrintable(QString::number(off_mm)));
  }
}

void PhotoPositionTest::aPhotoOfAnotherSizeIsRefused() {
  const sample::Folder folder;
  const std::string path = folder.file("small.png");
  cv::imwrite(path, cv::Mat(480, 640, CV_8UC3, cv::Scalar(60, 110, 40)));
  const auto found = positionInPhoto(filesFor(path));
  QVERIFY(!found);
  QVERIFY(found.error().code == ErrorCode::ImageSizeMismatch);
  QCOMPARE(found.error().subject, path);
}

void PhotoPositionTest::anEmptyClothIsSaid() {
  const sample::Folder folder;
  const std::string path = folder.file("empty.png");
  const cv::Mat first = cv::imread(photo(folder, "photo.png"));
  cv::imwrite(path, cv::Mat(first.size(), CV_8UC3, cv::Scalar(60, 110, 40)));
  const auto found = positionInPhoto(filesFor(path));
  QVERIFY(!found);
  QVERIFY(found.error().code == ErrorCode::BallsNotFound);
}

void PhotoPositionTest::whatIsNoPictureIsNamed() {
  const sample::Folder folder;
  const std::string path = folder.file("notes.jpg");
  QVERIFY(writeTextFile(path, "no picture").has_value());
  const auto found = positionInPhoto(filesFor(path));
  QVERIFY(!found);
  QCOMPARE(found.error().subject, path);
}

FERRULE_TEST(PhotoPositionTest)
#include "photo_position_test.moc"
