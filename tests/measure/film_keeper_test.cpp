// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/film_keeper.h"

#include <QtTest>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <limits>
#include <map>
#include <opencv2/core.hpp>

#include "core/vision/film_source.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class FilmKeeperTest : public QObject {
  Q_OBJECT
 private slots:
  void everyImageStandsAtItsTime();
  void onlyItsOwnerReadsTheFile();
  void aFullQueueDropsAndCounts();
  void aFilmThatWasBrokenOffCanBePlayed();
  void withoutFreeSpaceTheFilmEndsAndSaysSo();
  void withoutAnImageNoFileIsLeft();
  void aFolderThatCannotBeMadeIsAnError();
};

namespace {

constexpr int kBits = 8;
constexpr int kBlock_px = 40;

/// A picture that shows its number as black and white blocks, which any coding leaves readable.
cv::Mat numbered(int number) {
  cv::Mat picture(kBlock_px * 4, kBlock_px * kBits, CV_8UC3, cv::Scalar::all(60));
  for (int bit = 0; bit < kBits; ++bit) {
    const bool set = ((number >> bit) & 1) != 0;
    picture(cv::Rect(bit * kBlock_px, 0, kBlock_px, kBlock_px * 4)).setTo(cv::Scalar::all(set ? 230 : 20));
  }
  return picture;
}

int numberIn(const cv::Mat& picture) {
  int number = 0;
  for (int bit = 0; bit < kBits; ++bit) {
    const cv::Rect middle(bit * kBlock_px + kBlock_px / 4, kBlock_px, kBlock_px / 2, kBlock_px);
    if (cv::mean(picture(middle))[0] > 125.0) number |= 1 << bit;
  }
  return number;
}

std::vector<FilmImage> imagesOf(const std::string& path) {
  auto film = FilmSource::open(path);
  if (!film) return {};
  std::vector<FilmImage> images;
  for (FilmImage image; film->next(image); image = {})
    images.push_back(image);
  return images;
}

/// Noise does not pack, so that the file grows quickly.
cv::Mat noise(int width, int height) {
  cv::Mat picture(height, width, CV_8UC3);
  cv::RNG random(4);
  random.fill(picture, cv::RNG::UNIFORM, 0, 256);
  return picture;
}

/// As a source that can wait: how fast this computer writes does not matter.
void offerWhenThereIsRoom(FilmKeeper& keeper, const cv::Mat& picture, double time_s) {
  while (!keeper.hasRoom())
    QTest::qSleep(1);
  keeper.offer(picture, time_s);
}

}  // namespace

/// Cameras are not quite even, and images are lost.
void FilmKeeperTest::everyImageStandsAtItsTime() {
  const sample::Folder folder;
  const std::string path = folder.file("films/a.mkv");
  auto keeper = FilmKeeper::make(path);
  QVERIFY(keeper.has_value());
  constexpr double kSpacing_s = 1.0 / 50.0;
  std::map<int, double> offered;
  for (int i = 0; i < 150; ++i) {
    if (i % 37 == 20 || (i > 90 && i < 96)) continue;
    const double time_s = i == 0 ? 0.0 : kSpacing_s * (i + 0.2 * std::sin(i));
    offered[i] = time_s;
    offerWhenThereIsRoom(**keeper, numbered(i), time_s);
  }
  QVERIFY((*keeper)->finish());
  QCOMPARE((*keeper)->counts().dropped, 0L);
  const auto images = imagesOf(path);
  QVERIFY(images.size() >= offered.size());
  std::map<int, double> first;
  for (const FilmImage& image : images)
    first.try_emplace(numberIn(image.picture), image.time_s);
  double worst_s = 0.0;
  for (const auto& [number, time_s] : offered) {
    QVERIFY2(first.contains(number), qPrintable(QString::number(number)));
    worst_s = std::max(worst_s, std::abs(first[number] - time_s));
  }
  // This camera is never more than a fifth of the spacing late; times in the file are whole milliseconds.
  QVERIFY2(worst_s <= 0.2 * kSpacing_s + 0.001, qPrintable(QString::number(worst_s)));
}

void FilmKeeperTest::onlyItsOwnerReadsTheFile() {
  const sample::Folder folder;
  const std::string path = folder.file("films/a.mkv");
  auto keeper = FilmKeeper::make(path);
  for (int i = 0; i < 30; ++i)
    offerWhenThereIsRoom(**keeper, numbered(i), i / 30.0);
  QVERIFY((*keeper)->finish());
  namespace fs = std::filesystem;
  QCOMPARE(fs::status(path).permissions(), fs::perms::owner_read | fs::perms::owner_write);
  QCOMPARE(fs::status(folder.file("films")).permissions(), fs::perms::owner_all);
}

void FilmKeeperTest::aFullQueueDropsAndCounts() {
  const sample::Folder folder;
  auto keeper = FilmKeeper::make(folder.file("a.mkv"));
  const cv::Mat picture = noise(1280, 720);
  constexpr long kImages = 400;
  for (long i = 0; i < kImages; ++i)
    (*keeper)->offer(picture, static_cast<double>(i) / 60.0);
  const auto counts = (*keeper)->counts();
  QCOMPARE(counts.came, kImages);
  QVERIFY(counts.dropped > 0);
  QVERIFY(!counts.outOfSpace);
  QVERIFY((*keeper)->finish());
  // Nobody waits for a film that has ended.
  QVERIFY((*keeper)->hasRoom());
  // The end of the film is still the last image that was taken, at its time.
  QVERIFY(imagesOf(folder.file("a.mkv")).size() >= static_cast<std::size_t>(kImages - counts.dropped));
}

/// The file as it stands while the film is still being kept: what a crash would leave.
void FilmKeeperTest::aFilmThatWasBrokenOffCanBePlayed() {
  const sample::Folder folder;
  const std::string path = folder.file("a.mkv");
  auto keeper = FilmKeeper::make(path);
  const cv::Mat picture = noise(640, 360);
  const std::string copy = folder.file("copy.mkv");
  std::size_t readable = 0;
  for (int i = 0; i < 2000 && readable < 20; ++i) {
    offerWhenThereIsRoom(**keeper, picture, i / 30.0);
    if (i % 100 != 99) continue;
    std::filesystem::copy_file(path, copy, std::filesystem::copy_options::overwrite_existing);
    readable = imagesOf(copy).size();
  }
  QVERIFY2(readable >= 20, qPrintable(QString::number(readable)));
}

void FilmKeeperTest::withoutFreeSpaceTheFilmEndsAndSaysSo() {
  const sample::Folder folder;
  const std::string path = folder.file("a.mkv");
  auto keeper = FilmKeeper::make(path, std::numeric_limits<std::uintmax_t>::max());
  (*keeper)->offer(numbered(1), 0.0);
  QTRY_VERIFY((*keeper)->counts().outOfSpace);
  (*keeper)->offer(numbered(2), 0.1);
  QCOMPARE((*keeper)->counts().dropped, 2L);
  QVERIFY(!(*keeper)->finish());
  QVERIFY(!std::filesystem::exists(path));
}

void FilmKeeperTest::withoutAnImageNoFileIsLeft() {
  const sample::Folder folder;
  const std::string path = folder.file("a.mkv");
  {
    auto keeper = FilmKeeper::make(path);
    QVERIFY(std::filesystem::exists(path));
  }
  QVERIFY(!std::filesystem::exists(path));
}

void FilmKeeperTest::aFolderThatCannotBeMadeIsAnError() {
  const sample::Folder folder;
  { std::ofstream(folder.file("films")) << "a file"; }
  const auto keeper = FilmKeeper::make(folder.file("films/a.mkv"));
  QVERIFY(!keeper.has_value());
  QCOMPARE(keeper.error().code, ErrorCode::FileNotWritable);
}

FERRULE_TEST(FilmKeeperTest)
#include "film_keeper_test.moc"
