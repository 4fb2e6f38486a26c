// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/told_values.h"

#include <QtTest>

#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

const BallName kFive{5};
const BallName kEight{8};

std::vector<Track> twoTracks() {
  Track five{kFive, {}};
  Track eight{kEight, {}};
  for (int image = 0; image < 6; ++image) {
    five.samples.push_back({0.1 * image, {0.5, 0.01 * image}, 0.001, true});
    eight.samples.push_back({0.1 * image, {0.8, 0.01 * image}, 0.001, image != 2});
  }
  return {five, eight};
}

}  // namespace

class ToldValuesTest : public QObject {
  Q_OBJECT
 private slots:
  void wordsAreReadBack();
  void otherWordsAreNothing();
  void namesAreSwappedFromATimeOn();
  void theSameSwapPutsThemBack();
  void aBallWithoutATrackTakesTheOthers();
};

void ToldValuesTest::wordsAreReadBack() {
  for (const SwappedNames& names : {SwappedNames{kFive, kEight, std::nullopt}, SwappedNames{kCueBall, kFive, 12.345}})
    QCOMPARE(swappedNamesFromText(toText(names)), std::optional(names));
  QCOMPARE(toText(SwappedNames{kCueBall, kFive, 12.345}), std::string("cue 5 12.345"));
  const BallAt at{kEight, {-0.1234, 0.5}};
  QCOMPARE(ballPlaceText(at), std::string("8 -0.1234 0.5"));
  QCOMPARE(ballPlaceFromText(ballPlaceText(at)), std::optional(at));
  const ShotTimes times{1.25, 3.5};
  QCOMPARE(shotTimesFromText(toText(times)), std::optional(times));
}

void ToldValuesTest::otherWordsAreNothing() {
  for (const char* text : {"", "5", "5 5", "5 16", "5 8 soon", "5 8 1 2", "5  8"})
    QVERIFY2(!swappedNamesFromText(text), text);
  for (const char* text : {"", "5 1", "5 1 nan", "5 1 2 3", "ball 1 2"})
    QVERIFY2(!ballPlaceFromText(text), text);
  for (const char* text : {"", "1", "2 1", "1 2 3", "1 x"})
    QVERIFY2(!shotTimesFromText(text), text);
}

void ToldValuesTest::namesAreSwappedFromATimeOn() {
  auto tracks = twoTracks();
  swapNames(tracks, {kFive, kEight, 0.25});
  QCOMPARE(tracks[0].samples[2].position.x, 0.5);
  QCOMPARE(tracks[0].samples[3].position.x, 0.8);
  QCOMPARE(tracks[1].samples[2].position.x, 0.8);
  QCOMPARE(tracks[1].samples[3].position.x, 0.5);
  QCOMPARE(tracks[0].samples.size(), std::size_t{6});
}

void ToldValuesTest::theSameSwapPutsThemBack() {
  for (const std::optional<double> from_s : {std::optional<double>(), std::optional(0.25), std::optional(9.0)}) {
    auto tracks = twoTracks();
    swapNames(tracks, {kFive, kEight, from_s});
    swapNames(tracks, {kEight, kFive, from_s});
    QVERIFY(tracks == twoTracks());
  }
}

void ToldValuesTest::aBallWithoutATrackTakesTheOthers() {
  auto tracks = twoTracks();
  swapNames(tracks, {kEight, BallName(3), std::nullopt});
  QCOMPARE(tracks.size(), std::size_t{2});
  QCOMPARE(tracks[0].ball, BallName(3));
  QVERIFY(tracks[0].samples == twoTracks()[1].samples);
  swapNames(tracks, {kEight, BallName(3), std::nullopt});
  QVERIFY(tracks == twoTracks());
}

FERRULE_TEST(ToldValuesTest)
#include "told_values_test.moc"
