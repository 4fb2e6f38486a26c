// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/reading_queue.h"

#include <QtTest>

#include "tests/support/test_registry.h"

using namespace ferrule;

/// Which name a ball gets when others have fallen, by what its looks say.
class ReadingQueueTest : public QObject {
  Q_OBJECT
 private slots:
  void aBallThatWasThereAllAlongDoesNotInheritANameThatFell();
  void aBallThatIsPutBackGetsItsNameBack();
  void aNewBallThatLooksLikeAnotherKeepsTheOthersNameDown();
  void aFallenBallKeepsItsNameInImagesThatWait();
  void everyBallOfANewRackGetsItsNameBack();
  void theNewestImageIsNamedWithoutSettlingAnything();
};

namespace {

/// Looks that say one name, and less plainly another.
NameLikelihood looksLike(int likely, int nearly, double behind) {
  NameLikelihood names;
  names.fill(-200.0);
  names[static_cast<std::size_t>(likely)] = -1.0;
  names[static_cast<std::size_t>(nearly)] = -1.0 - behind;
  return names;
}

BallTrack ball(int id, const NameLikelihood& names, double from_s, double until_s) {
  BallTrack track;
  track.id = id;
  track.state = TrackState::Resting;
  track.names = names;
  track.looks = 12;
  track.firstSeen_s = from_s;
  track.lastSeen_s = until_s;
  return track;
}

BallTrack fallen(int id, int name, double from_s, double until_s) {
  BallTrack track = ball(id, looksLike(name, 12, 100.0), from_s, until_s);
  track.state = TrackState::Gone;
  track.pocketed = true;
  track.told = BallName(name);
  return track;
}

/// The names that an image at 20 s shows of these tracks, by track; -1 for none.
std::vector<int> namesOf(std::vector<BallTrack>& tracks) {
  ReadingQueue queue;
  queue.begin(1, 20.0);
  for (const BallTrack& track : tracks)
    queue.add(track.id, {0.1 * track.id, 0.0}, 1e-3, true);
  std::vector<ImageReading> ready;
  queue.release(tracks, 20.0, -1.0, ready);
  std::vector<int> names(tracks.size(), -1);
  for (const BallSample& sample : ready.front().balls) {
    for (std::size_t i = 0; i < tracks.size(); ++i) {
      if (std::abs(sample.position.x - 0.1 * tracks[i].id) < 1e-9) names[i] = sample.ball.number();
    }
  }
  return names;
}

}  // namespace

void ReadingQueueTest::aBallThatWasThereAllAlongDoesNotInheritANameThatFell() {
  // It looks a little more like the 3 than like the 5, but the 3 fell while it lay there.
  std::vector<BallTrack> tracks{fallen(1, 3, 0.0, 8.0), ball(2, looksLike(3, 5, 6.0), 0.0, 20.0)};
  QCOMPARE(namesOf(tracks)[1], 5);
  QVERIFY(!tracks[0].replaced);
}

void ReadingQueueTest::aBallThatIsPutBackGetsItsNameBack() {
  std::vector<BallTrack> tracks{fallen(1, 3, 0.0, 8.0), ball(2, looksLike(3, 5, 8.0), 12.0, 20.0)};
  QCOMPARE(namesOf(tracks)[1], 3);
  QVERIFY(tracks[0].replaced);
  // And holds it from then on.
  QCOMPARE(namesOf(tracks)[1], 3);
}

void ReadingQueueTest::aNewBallThatLooksLikeAnotherKeepsTheOthersNameDown() {
  std::vector<BallTrack> tracks{fallen(1, 3, 0.0, 8.0), ball(2, looksLike(5, 3, 2.0), 12.0, 20.0)};
  QCOMPARE(namesOf(tracks)[1], 5);
  QVERIFY(!tracks[0].replaced);
}

void ReadingQueueTest::aFallenBallKeepsItsNameInImagesThatWait() {
  std::vector<BallTrack> tracks{fallen(1, 3, 0.0, 8.0), ball(2, looksLike(7, 5, 50.0), 0.0, 20.0)};
  QCOMPARE(namesOf(tracks), (std::vector<int>{3, 7}));
}

void ReadingQueueTest::everyBallOfANewRackGetsItsNameBack() {
  // All fifteen fell; the new ones look nearly like their neighbours in colour.
  std::vector<BallTrack> tracks;
  for (int name = 1; name <= 15; ++name)
    tracks.push_back(fallen(name, name, 0.0, 8.0));
  for (int name = 1; name <= 15; ++name)
    tracks.push_back(ball(20 + name, looksLike(name, name % 15 + 1, 5.0), 12.0, 20.0));
  const auto names = namesOf(tracks);
  for (int name = 1; name <= 15; ++name)
    QCOMPARE(names[static_cast<std::size_t>(14 + name)], name);
}

void ReadingQueueTest::theNewestImageIsNamedWithoutSettlingAnything() {
  std::vector<BallTrack> tracks{ball(1, looksLike(3, 5, 6.0), 0.0, 20.0), ball(2, looksLike(7, 5, 6.0), 0.0, 20.0)};
  ReadingQueue queue;
  QVERIFY(!queue.newest(tracks));
  queue.begin(1, 20.0);
  queue.add(1, {0.1, 0.0}, 1e-3, true);
  queue.begin(2, 20.1);
  queue.add(1, {0.2, 0.0}, 1e-3, true);
  queue.add(2, {0.3, 0.0}, 1e-3, false);
  const auto newest = queue.newest(tracks);
  QCOMPARE(newest->image, 2L);
  const std::vector<BallSample> balls{{BallName(3), {0.2, 0.0}, 1e-3, true, false},
                                      {BallName(7), {0.3, 0.0}, 1e-3, false, false}};
  QVERIFY(newest->balls == balls);
  QVERIFY(!tracks[0].told);
  // What is learnt later changes what is told in the end.
  tracks[0].names = looksLike(5, 3, 6.0);
  std::vector<ImageReading> ready;
  queue.release(tracks, 20.1, -1.0, ready);
  QCOMPARE(ready.size(), std::size_t{2});
  QCOMPARE(ready.back().balls.front().ball, BallName(5));
}

FERRULE_TEST(ReadingQueueTest)
#include "reading_queue_test.moc"
