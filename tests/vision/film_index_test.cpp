// SPDX-License-Identifier: GPL-3.0-or-later
// The films are in tests/data/films; make.sh there says what each holds.
#include "core/vision/film_index.h"

#include <QtTest>
#include <cmath>
#include <opencv2/core.hpp>
#include <string>
#include <vector>

#include "core/base/random.h"
#include "core/vision/picture_cache.h"
#include "tests/support/test_registry.h"
#include "tests/vision/film_support.h"

using namespace ferrule;

class FilmIndexTest : public QObject {
  Q_OBJECT
 private slots:
  void timesAreThoseOfReadingThrough_data();
  void timesAreThoseOfReadingThrough();
  void aVariableRateIsExactToTheLastImage();
  void anyImageInAnyOrderIsTheRightOne_data();
  void anyImageInAnyOrderIsTheRightOne();
  void steppingBackThroughTheWholeFilmShowsEveryImage();
  void theImageOfATimeIsTheOneShownThen();
  void picturesAreUpright();
  void aDamagedTailGivesNoPicture();
  void soundAloneIsRefused();
  void theCacheForgetsWhatWasUsedLongestAgo();
};

void FilmIndexTest::timesAreThoseOfReadingThrough_data() {
  QTest::addColumn<std::string>("path");
  QTest::addColumn<double>("tail_s");
  QTest::newRow("constant mp4") << film("b-frames.mp4") << 1e-9;
  QTest::newRow("constant Matroska") << film("b-frames.mkv") << 1e-9;
  QTest::newRow("variable mp4") << film("variable-rate.mp4") << 1e-6;
  QTest::newRow("variable Matroska") << film("variable-rate.mkv") << 0.0011;
}

void FilmIndexTest::timesAreThoseOfReadingThrough() {
  QFETCH(std::string, path);
  QFETCH(double, tail_s);
  auto index = FilmIndex::open(path);
  auto source = FilmSource::open(path);
  QVERIFY(index.has_value());
  QVERIFY(source.has_value());
  FilmImage image;
  long count = 0;
  while (source->next(image)) {
    QVERIFY(count < index->size());
    QVERIFY(std::abs(index->times_s()[static_cast<std::size_t>(count)] - image.time_s) < tail_s);
    ++count;
  }
  QCOMPARE(index->size(), count);
}

/// Made as image n at n/30 s up to 60, then at 2 + (n - 60)/15 s.
void FilmIndexTest::aVariableRateIsExactToTheLastImage() {
  auto index = FilmIndex::open(film("variable-rate.mp4"));
  QVERIFY(index.has_value());
  QCOMPARE(index->size(), 120L);
  QVERIFY(std::abs(index->times_s()[59] - 59.0 / 30.0) < 1e-9);
  QVERIFY(std::abs(index->times_s()[119] - (2.0 + 59.0 / 15.0)) < 1e-9);
}

void FilmIndexTest::anyImageInAnyOrderIsTheRightOne_data() {
  QTest::addColumn<std::string>("path");
  QTest::newRow("mp4") << film("variable-rate.mp4");
  QTest::newRow("Matroska") << film("variable-rate.mkv");
}

void FilmIndexTest::anyImageInAnyOrderIsTheRightOne() {
  QFETCH(std::string, path);
  auto index = FilmIndex::open(path);
  QVERIFY(index.has_value());
  std::vector<long> order{119, 0, 118, 117, 1, 60, 59, 61, 119, 25, 24, 26};
  Random random(1);
  while (order.size() < 500)
    order.push_back(static_cast<long>(random.uniform() * 120.0));
  FilmImage image;
  for (const long number : order) {
    // A new index now and then, so that the cache does not hide a wrong landing.
    if (number % 10 == 0) index = FilmIndex::open(path);
    QVERIFY(index->imageAt(number, image));
    QCOMPARE(image.number, number);
    QCOMPARE(drawnNumber(image.picture), number);
  }
}

void FilmIndexTest::steppingBackThroughTheWholeFilmShowsEveryImage() {
  auto index = FilmIndex::open(film("variable-rate.mp4"));
  QVERIFY(index.has_value());
  FilmImage image;
  for (long number = index->size() - 1; number >= 0; --number) {
    QVERIFY(index->imageAt(number, image));
    QCOMPARE(drawnNumber(image.picture), number);
  }
}

void FilmIndexTest::theImageOfATimeIsTheOneShownThen() {
  auto index = FilmIndex::open(film("variable-rate.mp4"));
  QVERIFY(index.has_value());
  QCOMPARE(index->numberAt(-1.0), 0L);
  QCOMPARE(index->numberAt(1.0), 30L);
  QCOMPARE(index->numberAt(1.02), 30L);
  QCOMPARE(index->numberAt(3.0), 75L);
  QCOMPARE(index->numberAt(100.0), 119L);
  for (std::size_t i = 0; i < index->times_s().size(); ++i) {
    QCOMPARE(index->numberAt(index->times_s()[i]), static_cast<long>(i));
  }
}

void FilmIndexTest::picturesAreUpright() {
  auto index = FilmIndex::open(film("turn-90.mp4"));
  QVERIFY(index.has_value());
  FilmImage image;
  QVERIFY(index->imageAt(2, image));
  QCOMPARE(image.picture.size(), cv::Size(48, 64));
  QVERIFY(image.picture.at<cv::Vec3b>(59, 4)[2] > 150);
}

void FilmIndexTest::aDamagedTailGivesNoPicture() {
  auto index = FilmIndex::open(film("cut-off-faststart.mp4"));
  QVERIFY(index.has_value());
  FilmImage image;
  QVERIFY(index->imageAt(10, image));
  QVERIFY(!index->imageAt(index->size() - 1, image));
  QVERIFY(index->imageAt(5, image));
}

void FilmIndexTest::soundAloneIsRefused() {
  const auto index = FilmIndex::open(film("sound-only.mp4"));
  QVERIFY(!index.has_value());
  QCOMPARE(index.error().code, ErrorCode::FilmWithoutPicture);
}

void FilmIndexTest::theCacheForgetsWhatWasUsedLongestAgo() {
  PictureCache cache(3 * 100);
  for (long number = 0; number < 3; ++number)
    cache.keep(number, cv::Mat(10, 10, CV_8U, cv::Scalar(static_cast<double>(number))));
  QVERIFY(!cache.find(0).empty());
  cache.keep(3, cv::Mat(10, 10, CV_8U));
  QVERIFY(cache.holds(0));
  QVERIFY(!cache.holds(1));
  QVERIFY(cache.holds(2));
  cache.keep(4, cv::Mat(50, 50, CV_8U));
  QVERIFY(cache.holds(4));
  QVERIFY(!cache.holds(3));
}

FERRULE_TEST(FilmIndexTest)
#include "film_index_test.moc"
