// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/playhead.h"

#include <QtTest>

#include "app/review/moment.h"
#include "app/review/time_axis.h"
#include "tests/app/review_sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class PlayheadTest : public QObject {
  Q_OBJECT
 private slots:
  void aSeekGoesToTheNearestImage();
  void stepsStopAtBothEnds();
  void playingFollowsTrueTimesOfAFilmWithVariableRate();
  void newTimesKeepTheMoment();
  void ballsStandOnTheirTrackAtEveryImage();
  void aBallThatFellIsGone();
  void ballsRestBeforeAndAfterTheTracks();
  void anEventIsFoundAtItsImageOnly();
  void filmsWithoutAClockFollowEachOther();
};

void PlayheadTest::aSeekGoesToTheNearestImage() {
  Playhead playhead;
  playhead.setTimes({0.0, 0.1, 0.2});
  playhead.seek(0.16);
  QCOMPARE(playhead.index(), 2);
  playhead.seek(0.15);  // two equally near: the earlier
  QCOMPARE(playhead.index(), 1);
  playhead.seek(-5.0);
  QCOMPARE(playhead.index(), 0);
  playhead.seek(5.0);
  QCOMPARE(playhead.index(), 2);
}

void PlayheadTest::stepsStopAtBothEnds() {
  Playhead playhead;
  playhead.setTimes({0.0, 0.1, 0.2});
  playhead.step(-1);
  QCOMPARE(playhead.index(), 0);
  playhead.step(5);
  QCOMPARE(playhead.index(), 2);
}

void PlayheadTest::playingFollowsTrueTimesOfAFilmWithVariableRate() {
  Playhead playhead;
  playhead.setTimes({0.0, 0.1, 0.5, 0.52});
  playhead.advance(0.3);
  QCOMPARE(playhead.index(), 1);  // the image that is on the screen at 0.3 s
  playhead.advance(0.2);
  QCOMPARE(playhead.index(), 2);
  playhead.advance(9.0);
  QCOMPARE(playhead.index(), 3);
}

void PlayheadTest::newTimesKeepTheMoment() {
  Playhead playhead;
  playhead.setTimes({10.0, 10.1, 10.2});
  playhead.seek(10.1);
  playhead.setTimes({0.0, 5.0, 10.0, 10.1, 10.2, 20.0});
  QCOMPARE(playhead.time_s(), 10.1);
  QCOMPARE(playhead.index(), 3);
}

void PlayheadTest::ballsStandOnTheirTrackAtEveryImage() {
  const StoredShot shot = sampleShot(1);
  for (const TrackSample& sample : shot.tracks[0].samples) {
    const auto balls = ballsAt(shot, sample.time_s);
    QCOMPARE(balls[0].ball, kCueBall);
    QVERIFY(distance(balls[0].position, sample.position) < 1e-9);
  }
}

void PlayheadTest::aBallThatFellIsGone() {
  const StoredShot shot = sampleShot(1);
  const auto has = [&](double time_s) {
    const auto balls = ballsAt(shot, time_s);
    return std::any_of(balls.begin(), balls.end(), [](const BallNow& ball) { return ball.ball == BallName{3}; });
  };
  QVERIFY(has(11.9));
  QVERIFY(!has(12.1));
  QVERIFY(!has(60.0));
}

void PlayheadTest::ballsRestBeforeAndAfterTheTracks() {
  const StoredShot shot = sampleShot(1);
  QCOMPARE(ballsAt(shot, 0.0).size(), std::size_t{3});
  QVERIFY(distance(ballsAt(shot, 0.0)[0].position, TablePoint{-0.6, -0.2}) < 1e-9);
  const auto late = ballsAt(shot, 60.0);
  QCOMPARE(late.size(), std::size_t{2});
  QVERIFY(distance(late[0].position, TablePoint{0.5, -0.1}) < 1e-9);
}

void PlayheadTest::anEventIsFoundAtItsImageOnly() {
  const StoredShot shot = sampleShot(1);
  const double spacing_s = 1.0 / 60.0;
  QVERIFY(eventAt(shot, 10.5, spacing_s).has_value());
  QVERIFY(!eventAt(shot, 10.5 + spacing_s, spacing_s).has_value());
}

void PlayheadTest::filmsWithoutAClockFollowEachOther() {
  SessionContent content = sampleContent();
  QCOMPARE(TimeAxis(content).offset_s(1), 0.0);  // both frames in one film
  content.frames[1].frame.film->id = FilmId{2};
  const TimeAxis axis(content);
  QVERIFY(!axis.isClockTime());
  QVERIFY(axis.offset_s(1) >= content.frames[0].frame.film->duration_s);
  content.frames[0].frame.film->firstImage = content.session.started;
  content.frames[1].frame.film->firstImage = content.session.started + 600'000;
  const TimeAxis clock(content);
  QVERIFY(clock.isClockTime());
  QCOMPARE(clock.offset_s(1), 600.0);
}

FERRULE_TEST(PlayheadTest)
#include "playhead_test.moc"
