// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/track_identity.h"

#include <QtTest>

#include "tests/support/test_registry.h"

using namespace ferrule;

class TrackIdentityTest : public QObject {
  Q_OBJECT
 private slots:
  void whatWasSeenShortlyIsNoBall();
  void whatLooksLikeNoBallIsNone();
  void aBallThatTurnsUpIsTheOneThatLeftItsPlaceUnseen();
  void aBallInSightIsNoOther();
  void aBallThatIsDownIsAsGoodAnExplanation();
};

namespace {

NameLikelihood looksLike(int likely, double at, double others) {
  NameLikelihood names;
  names.fill(others);
  names[static_cast<std::size_t>(likely)] = at;
  return names;
}

/// A new track that was seen for so long, standing still, with ten looks.
BallTrack fresh(double from_s, double until_s, const NameLikelihood& names) {
  BallTrack track;
  track.id = 9;
  track.firstSeen_s = from_s;
  track.lastSeen_s = until_s;
  for (double t = from_s; t <= until_s + 1e-9; t += 0.02)
    track.fixes.push_back({t, {0.2, 0.1}});
  track.hits = static_cast<int>(track.fixes.size());
  track.aloneHits = track.hits;
  track.beliefSum = 0.9 * track.hits;
  track.looks = 10;
  track.names = names;
  return track;
}

BallTrack known(int name, TrackState state, double until_s, int missed) {
  BallTrack track;
  track.id = name;
  track.state = state;
  track.told = BallName(name);
  track.names = looksLike(name, -1.0, -1000.0);
  track.lastSeen_s = until_s;
  track.missed = missed;
  return track;
}

}  // namespace

void TrackIdentityTest::whatWasSeenShortlyIsNoBall() {
  const NameLikelihood red = looksLike(3, -5.0, -150.0);
  QVERIFY(passesForBall(fresh(5.0, 5.4, red), {}, 5.4, false));
  QVERIFY(!passesForBall(fresh(5.0, 5.1, red), {}, 5.1, false));
}

void TrackIdentityTest::whatLooksLikeNoBallIsNone() {
  // A hand: no colour of the set fits better than ten a look.
  QVERIFY(!passesForBall(fresh(5.0, 5.4, looksLike(3, -100.0, -150.0)), {}, 5.4, false));
  // The only name that fits is held by a ball in sight.
  const std::vector<BallTrack> tracks{known(3, TrackState::Resting, 5.4, 0)};
  QVERIFY(!passesForBall(fresh(5.0, 5.4, looksLike(3, -5.0, -150.0)), tracks, 5.4, false));
}

void TrackIdentityTest::aBallThatTurnsUpIsTheOneThatLeftItsPlaceUnseen() {
  std::vector<BallTrack> tracks{known(3, TrackState::Resting, 4.0, 30), known(8, TrackState::Resting, 5.4, 0)};
  QCOMPARE(sameBallAs(fresh(5.0, 5.4, looksLike(3, -5.0, -150.0)), tracks), &tracks[0]);
  // Another colour is another ball.
  QVERIFY(sameBallAs(fresh(5.0, 5.4, looksLike(5, -5.0, -150.0)), tracks) == nullptr);
}

void TrackIdentityTest::aBallInSightIsNoOther() {
  std::vector<BallTrack> tracks{known(3, TrackState::Resting, 5.4, 0)};
  QVERIFY(sameBallAs(fresh(5.0, 5.4, looksLike(3, -5.0, -150.0)), tracks) == nullptr);
}

void TrackIdentityTest::aBallThatIsDownIsAsGoodAnExplanation() {
  std::vector<BallTrack> tracks{known(7, TrackState::Hidden, 4.0, 30), known(3, TrackState::Gone, 3.0, 0)};
  tracks[1].pocketed = true;
  NameLikelihood names = looksLike(3, -5.0, -150.0);
  names[7] = -20.0;  // a dark red, but a red rather
  QVERIFY(sameBallAs(fresh(5.0, 5.4, names), tracks) == nullptr);
  names[3] = -60.0;
  names[7] = -2.0;
  QCOMPARE(sameBallAs(fresh(5.0, 5.4, names), tracks), &tracks[0]);
}

FERRULE_TEST(TrackIdentityTest)
#include "track_identity_test.moc"
