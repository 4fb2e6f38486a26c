// SPDX-License-Identifier: GPL-3.0-or-later
// The films are in tests/data/films; make.sh there says what each holds.
#include "core/vision/film_reader_ahead.h"

#include <QtTest>
#include <opencv2/core.hpp>
#include <string>
#include <vector>

#include "tests/support/test_registry.h"
#include "tests/vision/film_support.h"

using namespace ferrule;

class FilmReaderAheadTest : public QObject {
  Q_OBJECT
 private slots:
  void givesTheSameImagesAsReadingStepByStep();
  void leavingEarlyStopsTheReading();
  void aPictureThatIsSharedIsNotWrittenOver();
  void tellsThatAFilmEndedEarly();
  void readingOnAfterMovingTheReader();
};

namespace {

FilmReaderAhead openAhead(const char* name) {
  auto source = FilmSource::open(film(name));
  if (!source) throw std::runtime_error(std::string("cannot open ") + name);
  return FilmReaderAhead(std::move(*source));
}

bool same(const cv::Mat& a, const cv::Mat& b) {
  return a.size() == b.size() && cv::norm(a, b, cv::NORM_INF) == 0.0;
}

}  // namespace

void FilmReaderAheadTest::givesTheSameImagesAsReadingStepByStep() {
  auto plain = FilmSource::open(film("variable-rate.mp4"));
  QVERIFY(plain.has_value());
  FilmReaderAhead ahead = openAhead("variable-rate.mp4");
  QCOMPARE(ahead.info().path, plain->info().path);
  FilmImage expected;
  FilmImage image;
  while (plain->next(expected)) {
    QVERIFY(ahead.next(image));
    QCOMPARE(image.number, expected.number);
    QCOMPARE(image.time_s, expected.time_s);
    QVERIFY(same(image.picture, expected.picture));
  }
  QVERIFY(!ahead.next(image));
  QVERIFY(!ahead.next(image));
  QVERIFY(!ahead.endedEarly());
}

void FilmReaderAheadTest::leavingEarlyStopsTheReading() {
  for (int taken = 0; taken < 8; ++taken) {
    FilmReaderAhead ahead = openAhead("b-frames.mp4");
    FilmImage image;
    for (int i = 0; i < taken; ++i)
      QVERIFY(ahead.next(image));
  }
}

void FilmReaderAheadTest::aPictureThatIsSharedIsNotWrittenOver() {
  FilmReaderAhead ahead = openAhead("variable-rate.mp4");
  std::vector<cv::Mat> shared;
  std::vector<cv::Mat> copies;
  FilmImage image;
  while (ahead.next(image)) {
    shared.push_back(image.picture);
    copies.push_back(image.picture.clone());
  }
  QCOMPARE(shared.size(), std::size_t{120});
  for (std::size_t i = 0; i < shared.size(); ++i)
    QVERIFY(same(shared[i], copies[i]));
}

void FilmReaderAheadTest::tellsThatAFilmEndedEarly() {
  FilmReaderAhead ahead = openAhead("cut-off.mkv");
  FilmImage image;
  while (ahead.next(image))
    QVERIFY(!ahead.endedEarly() || image.number > 0);
  QVERIFY(ahead.endedEarly());
}

void FilmReaderAheadTest::readingOnAfterMovingTheReader() {
  FilmReaderAhead first = openAhead("b-frames.mp4");
  FilmImage image;
  QVERIFY(first.next(image));
  FilmReaderAhead second = std::move(first);
  QVERIFY(second.next(image));
  QCOMPARE(image.number, 1L);
}

FERRULE_TEST(FilmReaderAheadTest)
#include "film_reader_ahead_test.moc"
