// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/film_referee.h"

#include <QtTest>

#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class FilmRefereeTest : public QObject {
  Q_OBJECT
 private slots:
  void aFrameIsFollowedFromItsBreak();
  void afterAQuestionNobodyIsNamed();
  void aFilmThatBeginsInTheMiddleIsJoinedThere();
  void aNewRackBeginsAnotherFrame();
  void ballsSetUpAgainAreAnotherFrame();
  void whatIsSaidOfAShotRulesAllAfterIt();
  void whatWasChosenIsInForce();
};

namespace {

ShotEvent event(EventKind kind, int ball) {
  ShotEvent made;
  made.kind = kind;
  made.ball = ball == 0 ? kCueBall : BallName(ball);
  return made;
}

/// A shot whose balls lie far apart, so that places raise no doubts of their own.
ReadShot shotOn(const std::vector<int>& balls, std::optional<int> met, const std::vector<int>& fallen, int rails,
                bool breaks = false) {
  ReadShot shot;
  ShotReading& reading = shot.reading;
  reading.outcome = breaks ? Outcome::Break : Outcome::Pot;
  reading.outcomeVerdict = Verdict::Certain;
  reading.before.push_back({kCueBall, {-0.9, 0.0}});
  for (const int ball : balls)
    reading.before.push_back({BallName(ball), {0.05 * ball, 0.3}});
  if (met) {
    reading.events.push_back(event(EventKind::Ball, 0));
    reading.events.back().other = BallName(*met);
    reading.firstContact = BallName(*met);
  }
  for (const int ball : fallen) {
    reading.events.push_back(event(EventKind::Pocket, ball));
    reading.events.back().pocket = PocketName::FootLeft;
  }
  for (int rail = 0; rail < rails; ++rail) {
    reading.events.push_back(event(EventKind::Cushion, 15 - rail));
    reading.events.back().cushion = CushionName::Foot;
  }
  reading.after = reading.before;
  std::erase_if(reading.after,
                [&](const BallAt& at) { return std::ranges::find(fallen, at.ball.number()) != fallen.end(); });
  return shot;
}

std::vector<int> without(std::initializer_list<int> gone) {
  std::vector<int> balls;
  for (int ball = 1; ball <= 15; ++ball) {
    if (std::ranges::find(gone, ball) == gone.end()) balls.push_back(ball);
  }
  return balls;
}

FilmReferee eightBallReferee() {
  return {worldRules(Game::EightBall), sample::table()};
}

}  // namespace

void FilmRefereeTest::aFrameIsFollowedFromItsBreak() {
  FilmReferee referee = eightBallReferee();
  const FilmRuling opening = referee.judge(shotOn(without({}), 1, {3}, 5, true));
  QCOMPARE(opening.shooter, std::optional(Seat::First));
  QCOMPARE(opening.ruled.ruling.sureness, Verdict::Certain);
  const FilmRuling second = referee.judge(shotOn(without({3}), 5, {5}, 0));
  QCOMPARE(second.shooter, std::optional(Seat::First));
  QCOMPARE(second.ruled.ruling.shooterGroup->value, Group::Solids);
  const FilmRuling miss = referee.judge(shotOn(without({3, 5}), 2, {}, 1));
  QCOMPARE(miss.ruled.ruling.next.value, Seat::Second);
  const FilmRuling foul = referee.judge(shotOn(without({3, 5}), 1, {}, 1));
  QCOMPARE(foul.shooter, std::optional(Seat::Second));
  QCOMPARE(foul.ruled.ruling.fouls.at(0).kind, FoulKind::WrongBallFirst);
  QCOMPARE(foul.ruled.frame, 1);
}

void FilmRefereeTest::afterAQuestionNobodyIsNamed() {
  FilmReferee referee = eightBallReferee();
  (void)referee.judge(shotOn(without({}), 1, {3}, 5, true));
  // A combination that nobody called: the film cannot know.
  QCOMPARE(referee.judge(shotOn(without({3}), 1, {5}, 0)).ruled.ruling.sureness, Verdict::Ask);
  QVERIFY(!referee.judge(shotOn(without({3, 5}), 1, {1}, 0)).shooter);
  // The next break is a new beginning only when it is known who won; here it is not.
  QVERIFY(!referee.judge(shotOn(without({}), 1, {3}, 5, true)).shooter);
}

void FilmRefereeTest::aFilmThatBeginsInTheMiddleIsJoinedThere() {
  FilmReferee referee = eightBallReferee();
  const FilmRuling first = referee.judge(shotOn({2, 8, 12}, 12, {12}, 0));
  QVERIFY(!first.shooter);
  QCOMPARE(first.ruled.ruling.sureness, Verdict::Ask);
  QCOMPARE(first.ruled.ruling.questions.at(0).doubt.kind, DoubtKind::GroupsUnknown);
  FilmReferee nineBall(worldRules(Game::NineBall), sample::table());
  const FilmRuling nine = nineBall.judge(shotOn({4, 9}, 4, {9}, 0));
  QCOMPARE(nine.ruled.ruling.result->value.why, WinReason::NinePocketed);
}

void FilmRefereeTest::aNewRackBeginsAnotherFrame() {
  FilmReferee referee(worldRules(Game::NineBall), sample::table());
  const std::vector<int> rack{1, 2, 3, 4, 5, 6, 7, 8, 9};
  const FilmRuling won = referee.judge(shotOn(rack, 1, {9}, 0, true));
  QCOMPARE(won.ruled.framesWon, (std::array<int, 2>{1, 0}));
  const FilmRuling next = referee.judge(shotOn(rack, 1, {2}, 0, true));
  QCOMPARE(next.ruled.frame, 2);
  QCOMPARE(next.shooter, std::optional(Seat::Second));  // breaks alternate
}

void FilmRefereeTest::ballsSetUpAgainAreAnotherFrame() {
  FilmReferee referee(worldRules(Game::NineBall), sample::table());
  QVERIFY(referee.judge(shotOn({1, 9}, 1, {9}, 0)).ruled.ruling.result);
  const FilmRuling again = referee.judge(shotOn({1, 9}, 1, {1}, 0));
  QCOMPARE(again.ruled.frame, 2);
  QVERIFY(!again.ruled.ruling.result);
  // Practice after the end, on what is left, is asked.
  QVERIFY(referee.judge(shotOn({9}, 9, {9}, 0)).ruled.ruling.result);
  const FilmRuling after = referee.judge(shotOn({}, std::nullopt, {}, 0));
  QCOMPARE(after.ruled.ruling.questions.at(0).doubt.kind, DoubtKind::FrameOver);
}

/// The same as if it had been said when the shot was judged.
void FilmRefereeTest::whatIsSaidOfAShotRulesAllAfterIt() {
  const std::vector<ReadShot> shots{shotOn(without({}), 1, {}, 4, true), shotOn(without({}), 2, {2}, 0),
                                    shotOn(without({2}), 9, {9}, 0)};
  SaidOfShot touched;
  Testimony said;
  said.kind = TestimonyKind::Foul;
  said.foul = FoulKind::TouchedBall;
  said.ball = BallName(4);
  touched.testimonies = {said};
  FilmReferee before = eightBallReferee();
  FilmReferee afterwards = eightBallReferee();
  std::vector<FilmRuling> expected;
  for (std::size_t i = 0; i < shots.size(); ++i) {
    expected.push_back(before.judge(shots[i], i == 1 ? touched : SaidOfShot{}));
    (void)afterwards.judge(shots[i]);
  }
  const GameState unsaid = afterwards.state();
  QCOMPARE(afterwards.say(1, touched), expected);
  QVERIFY(afterwards.state() != unsaid);
  QCOMPARE(afterwards.state(), before.state());
  // And taken back, all is as it was.
  (void)afterwards.say(1, {});
  QCOMPARE(afterwards.state(), unsaid);
}

void FilmRefereeTest::whatWasChosenIsInForce() {
  // A break of which too few balls meet a cushion: the other one may play on or have it broken again.
  FilmReferee referee = eightBallReferee();
  const FilmRuling weak = referee.judge(shotOn(without({}), 1, {}, 1, true));
  QVERIFY(weak.ruled.ruling.options.size() > 1);
  const Option& wanted = weak.ruled.ruling.options.back();
  QVERIFY(wanted.rack);
  SaidOfShot chosen;
  chosen.chosen = wanted.kind;
  (void)referee.say(0, chosen);
  QCOMPARE(referee.state().atTable, wanted.atTable);
  QCOMPARE(referee.state().phase, Phase::Break);
}

FERRULE_TEST(FilmRefereeTest)
#include "film_referee_test.moc"
