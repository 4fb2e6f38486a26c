// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/track_matching.h"

#include <QtTest>

#include "tests/support/ball_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;

NameLikelihood looksLike(int likely, double at, double others) {
  NameLikelihood names;
  names.fill(others);
  names[static_cast<std::size_t>(likely)] = at;
  return names;
}

/// A ball that has just been hit: it was seen at the middle at time 1 s and not since.
BallTrack hitBall() {
  BallTrack track;
  track.id = 1;
  track.state = TrackState::Moving;
  track.names = looksLike(6, -2.0, -300.0);
  track.outline = *silhouetteOf(overheadRig(), {0.0, 0.0}, kRadius_m);
  track.lastSeen_s = 1.0;
  track.hits = 100;
  track.fixes.push_back({1.0, {0.0, 0.0}});
  return track;
}

BallCandidate shown(TablePoint place, TableVector streak_m = {}) {
  BallCandidate candidate;
  candidate.position = place;
  candidate.outline = *silhouetteOf(overheadRig(), place, kRadius_m);
  const Eigen::Vector2d streak = candidate.outline.tableFromImage.inverse() * Eigen::Vector2d(streak_m.x, streak_m.y);
  candidate.blur = {streak.x(), streak.y()};
  candidate.alone = true;
  candidate.names = looksLike(6, -2.0, -25.0);
  return candidate;
}

MatchLimits limits(double fastest_mps) {
  return {fastest_mps, 0.006};
}

}  // namespace

class TrackMatchingTest : public QObject {
  Q_OBJECT
 private slots:
  void aBallThatWasHitIsFoundWithinReach();
  void noBallOutrunsTheOneThatHitIt();
  void aStreakLongerThanAnyBallsIsNone();
  void aStreakSpeaksForItsColoursAsFarAsTheyAreItsOwn();
};

void TrackMatchingTest::aBallThatWasHitIsFoundWithinReach() {
  QVERIFY(matchCost(hitBall(), shown({0.04, 0.0}), 1.0 + 1.0 / 60.0, limits(2.4)) < 20.0);
}

void TrackMatchingTest::noBallOutrunsTheOneThatHitIt() {
  // A hand of the ball's colour, 0.3 m away two images later: 9 m/s, from a cue ball of 2.4 m/s.
  QCOMPARE(matchCost(hitBall(), shown({0.3, 0.0}), 1.0 + 2.0 / 60.0, limits(2.4)), kNeverCost);
  // As long as nobody knows how fast the cue ball is, it may be.
  QVERIFY(matchCost(hitBall(), shown({0.3, 0.0}), 1.0 + 2.0 / 60.0, limits(kHighestSpeed_mps)) < kNeverCost);
}

void TrackMatchingTest::aStreakLongerThanAnyBallsIsNone() {
  // 2.4 m/s for 6 ms are 14 mm.
  QVERIFY(matchCost(hitBall(), shown({0.04, 0.0}, {0.014, 0.0}), 1.0 + 1.0 / 60.0, limits(2.4)) < 20.0);
  QCOMPARE(matchCost(hitBall(), shown({0.04, 0.0}, {0.06, 0.0}), 1.0 + 1.0 / 60.0, limits(2.4)), kNeverCost);
}

void TrackMatchingTest::aStreakSpeaksForItsColoursAsFarAsTheyAreItsOwn() {
  const auto cost = [](double streak_m) {
    BallCandidate other = shown({0.05, 0.0}, {streak_m, 0.0});
    other.names = looksLike(3, -2.0, -16.0);
    return matchCost(hitBall(), other, 1.0 + 1.0 / 60.0, {12.0, 0.006});
  };
  QVERIFY(cost(0.0) > cost(0.02) + 2.0);
  QVERIFY(cost(0.02) > cost(0.05) + 1.0);
}

FERRULE_TEST(TrackMatchingTest)
#include "track_matching_test.moc"
