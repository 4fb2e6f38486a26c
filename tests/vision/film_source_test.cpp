// SPDX-License-Identifier: GPL-3.0-or-later
// The films are in tests/data/films; make.sh there says what each holds.
#include "core/vision/film_source.h"

#include <QtTest>
#include <cmath>
#include <opencv2/core.hpp>
#include <string>
#include <vector>

#include "tests/support/test_registry.h"
#include "tests/vision/film_support.h"

using namespace ferrule;

class FilmSourceTest : public QObject {
  Q_OBJECT
 private slots:
  void sixtyImagesWithBFramesHaveSixtyRisingTimes_data();
  void sixtyImagesWithBFramesHaveSixtyRisingTimes();
  void aVariableRateKeepsEveryImageAtItsTime_data();
  void aVariableRateKeepsEveryImageAtItsTime();
  void theTurnFlagSetsThePictureUpright_data();
  void theTurnFlagSetsThePictureUpright();
  void aFilmCutOffIsReadAsFarAsItGoes_data();
  void aFilmCutOffIsReadAsFarAsItGoes();
  void aWholeFilmDoesNotEndEarly_data();
  void aWholeFilmDoesNotEndEarly();
  void whatIsNoFilmIsRefusedByName_data();
  void whatIsNoFilmIsRefusedByName();
  void theBufferOfTheLastImageIsUsedAgain();
  void theCamerasDateIsKept();
};

namespace {

bool isRed(const cv::Mat& picture, int x, int y) {
  const auto pixel = picture.at<cv::Vec3b>(y, x);
  return pixel[2] > 150 && pixel[0] < 100;
}

}  // namespace

void FilmSourceTest::sixtyImagesWithBFramesHaveSixtyRisingTimes_data() {
  QTest::addColumn<std::string>("path");
  QTest::newRow("mp4") << film("b-frames.mp4");
  QTest::newRow("Matroska") << film("b-frames.mkv");
}

/// The film was made at 60 images a second, so image 59 is shown at 983.333 ms.
void FilmSourceTest::sixtyImagesWithBFramesHaveSixtyRisingTimes() {
  QFETCH(std::string, path);
  auto source = FilmSource::open(path);
  QVERIFY(source.has_value());
  FilmImage image;
  long count = 0;
  while (source->next(image)) {
    QCOMPARE(image.number, count);
    QVERIFY(std::abs(image.time_s - static_cast<double>(count) / 60.0) < 1e-6);
    ++count;
  }
  QCOMPARE(count, 60L);
  QVERIFY(std::abs(image.time_s - 0.983333) < 1e-6);
  QVERIFY(!source->next(image));
}

void FilmSourceTest::aVariableRateKeepsEveryImageAtItsTime_data() {
  QTest::addColumn<std::string>("path");
  QTest::addColumn<double>("tolerance_s");
  QTest::newRow("mp4") << film("variable-rate.mp4") << 1e-6;
  // Two roundings of half a millisecond each in the interval that carries on past the last image with a time.
  QTest::newRow("Matroska, whole milliseconds") << film("variable-rate.mkv") << 0.0011;
}

void FilmSourceTest::aVariableRateKeepsEveryImageAtItsTime() {
  QFETCH(std::string, path);
  QFETCH(double, tolerance_s);
  auto source = FilmSource::open(path);
  QVERIFY(source.has_value());
  FilmImage image;
  long count = 0;
  while (source->next(image)) {
    QCOMPARE(drawnNumber(image.picture), count);
    const double made_s = count < 60 ? static_cast<double>(count) / 30.0 : 2.0 + static_cast<double>(count - 60) / 15.0;
    QVERIFY2(std::abs(image.time_s - made_s) < tolerance_s, std::to_string(image.time_s).c_str());
    ++count;
  }
  QCOMPARE(count, 120L);
}

void FilmSourceTest::theTurnFlagSetsThePictureUpright_data() {
  QTest::addColumn<std::string>("path");
  QTest::addColumn<int>("clockwise_deg");
  QTest::addColumn<int>("width");
  QTest::addColumn<int>("x");
  QTest::addColumn<int>("y");
  // Where the ffmpeg program (5.1.9) puts the red corner when it plays these files.
  QTest::newRow("not turned") << film("turn-0.mp4") << 0 << 64 << 4 << 4;
  QTest::newRow("a quarter counter-clockwise") << film("turn-90.mp4") << 270 << 48 << 4 << 59;
  QTest::newRow("half") << film("turn-180.mp4") << 180 << 64 << 59 << 43;
  QTest::newRow("a quarter clockwise") << film("turn-270.mp4") << 90 << 48 << 43 << 4;
}

void FilmSourceTest::theTurnFlagSetsThePictureUpright() {
  QFETCH(std::string, path);
  QFETCH(int, clockwise_deg);
  QFETCH(int, width);
  QFETCH(int, x);
  QFETCH(int, y);
  auto source = FilmSource::open(path);
  QVERIFY(source.has_value());
  const FilmInfo& info = source->info();
  QCOMPARE(info.rotation_deg, clockwise_deg);
  QCOMPARE(info.size.width, width);
  QCOMPARE(info.size.height, 64 + 48 - width);
  FilmImage image;
  QVERIFY(source->next(image));
  QCOMPARE(image.picture.cols, info.size.width);
  QCOMPARE(image.picture.rows, info.size.height);
  for (const int column : {4, info.size.width - 5}) {
    for (const int row : {4, info.size.height - 5})
      QCOMPARE(isRed(image.picture, column, row), column == x && row == y);
  }
}

void FilmSourceTest::aFilmCutOffIsReadAsFarAsItGoes_data() {
  QTest::addColumn<std::string>("path");
  QTest::newRow("Matroska") << film("cut-off.mkv");
  QTest::newRow("mp4 with its index in front") << film("cut-off-faststart.mp4");
}

/// 60 images at 30 a second were made.
void FilmSourceTest::aFilmCutOffIsReadAsFarAsItGoes() {
  QFETCH(std::string, path);
  auto source = FilmSource::open(path);
  QVERIFY(source.has_value());
  QCOMPARE(source->info().images, 60L);
  FilmImage image;
  long count = 0;
  while (source->next(image)) {
    QVERIFY(std::abs(image.time_s - static_cast<double>(count) / 30.0) < 0.001);
    ++count;
  }
  QVERIFY(count >= 10);
  QVERIFY(count < 60);
  QVERIFY(source->endedEarly());
}

void FilmSourceTest::aWholeFilmDoesNotEndEarly_data() {
  QTest::addColumn<std::string>("path");
  QTest::addColumn<long>("images");
  QTest::newRow("mp4") << film("b-frames.mp4") << 60L;
  // Trimmed at the half second: 30 images at 60 a second are left.
  QTest::newRow("trimmed") << film("trimmed.mp4") << 30L;
  QTest::newRow("longer sound") << film("long-sound.mkv") << 60L;
}

void FilmSourceTest::aWholeFilmDoesNotEndEarly() {
  QFETCH(std::string, path);
  QFETCH(long, images);
  auto source = FilmSource::open(path);
  QVERIFY(source.has_value());
  FilmImage image;
  long count = 0;
  while (source->next(image)) {
    QVERIFY(!source->endedEarly());
    QVERIFY(std::abs(image.time_s - static_cast<double>(count) / 60.0) < 1e-4);
    ++count;
  }
  QCOMPARE(count, images);
  QVERIFY(!source->endedEarly());
}

void FilmSourceTest::whatIsNoFilmIsRefusedByName_data() {
  QTest::addColumn<std::string>("path");
  QTest::addColumn<QByteArray>("content");  // written to the path first, unless null
  QTest::addColumn<ErrorCode>("code");
  QTest::newRow("missing") << std::string("missing.mp4") << QByteArray() << ErrorCode::FileMissing;
  QTest::newRow("empty") << std::string("empty.mp4") << QByteArray("") << ErrorCode::FileEmpty;
  QTest::newRow("text named as film") << std::string("text.mp4") << QByteArray("no film\n") << ErrorCode::NotAFilm;
  QTest::newRow("text") << std::string("text.txt") << QByteArray("no film\n").repeated(200) << ErrorCode::NotAFilm;
  QTest::newRow("zeros") << std::string("zeros.mp4") << QByteArray(5000, '\0') << ErrorCode::NotAFilm;
  QTest::newRow("folder") << std::string(FERRULE_SOURCE_DIR "/tests") << QByteArray() << ErrorCode::FileUnreadable;
  QTest::newRow("sound") << film("sound-only.mp4") << QByteArray() << ErrorCode::FilmWithoutPicture;
  QTest::newRow("cover") << film("sound-with-cover.m4a") << QByteArray() << ErrorCode::FilmWithoutPicture;
  QTest::newRow("no index") << film("cut-off.mp4") << QByteArray() << ErrorCode::FilmTruncated;
}

void FilmSourceTest::whatIsNoFilmIsRefusedByName() {
  QFETCH(std::string, path);
  QFETCH(QByteArray, content);
  QFETCH(ErrorCode, code);
  const QTemporaryDir folder;
  if (!path.starts_with('/')) path = folder.filePath(QString::fromStdString(path)).toStdString();
  if (!content.isNull()) {
    QFile file(QString::fromStdString(path));
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(content);
  }
  const auto source = FilmSource::open(path);
  QVERIFY(!source.has_value());
  QCOMPARE(source.error().code, code);
  QCOMPARE(source.error().subject, path);
}

void FilmSourceTest::theBufferOfTheLastImageIsUsedAgain() {
  auto source = FilmSource::open(film("b-frames.mp4"));
  QVERIFY(source.has_value());
  FilmImage image;
  QVERIFY(source->next(image));
  const auto* buffer = image.picture.data;
  QVERIFY(source->next(image));
  QCOMPARE(image.picture.data, buffer);
}

/// 2026-03-01 18:30:00 UTC is day 20513 since 1970: 1772389800 s by GNU date.
void FilmSourceTest::theCamerasDateIsKept() {
  const auto dated = FilmSource::open(film("dated.mp4"));
  QVERIFY(dated.has_value());
  QCOMPARE(dated->info().created_ms, std::optional<std::int64_t>(1'772'389'800'000));
  const auto undated = FilmSource::open(film("turn-0.mp4"));
  QVERIFY(undated.has_value());
  QVERIFY(!undated->info().created_ms.has_value());
}

FERRULE_TEST(FilmSourceTest)
#include "film_source_test.moc"
