// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/correct_shot.h"

#include <QtTest>

#include "core/measure/hand_keeping.h"
#include "core/measure/record_entries.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

ShotEvent event(EventKind kind, int ball) {
  ShotEvent made;
  made.kind = kind;
  made.ball = ball == 0 ? kCueBall : BallName(ball);
  return made;
}

/// A shot on balls that lie far apart: one that was met, those that fell foot-left, as many balls at the foot rail.
ShotReading shotOn(int number, const std::vector<int>& balls, int met, const std::vector<int>& fallen, int rails) {
  ShotReading reading;
  reading.number = number;
  reading.strike_s = 10.0 * number;
  reading.rest_s = reading.strike_s + 4.0;
  reading.outcome = number == 1 ? Outcome::Break : fallen.empty() ? Outcome::Miss : Outcome::Pot;
  reading.outcomeVerdict = Verdict::Certain;
  reading.before.push_back({kCueBall, {-0.9, 0.0}});
  for (const int ball : balls)
    reading.before.push_back({BallName(ball), {0.05 * ball, 0.3}});
  reading.events.push_back(event(EventKind::Ball, 0));
  reading.events.back().other = BallName(met);
  reading.firstContact = BallName(met);
  for (const int ball : fallen) {
    reading.events.push_back(event(EventKind::Pocket, ball));
    reading.events.back().pocket = PocketName::FootLeft;
    reading.pocketed.push_back({BallName(ball), PocketName::FootLeft});
  }
  for (int rail = 0; rail < rails; ++rail) {
    reading.events.push_back(event(EventKind::Cushion, 15 - rail));
    reading.events.back().cushion = CushionName::Foot;
  }
  if (number > 1) reading.target = Target{BallName(met), PocketName::FootLeft, 0.3, {}, {}};
  reading.after = reading.before;
  std::erase_if(reading.after,
                [&](const BallAt& at) { return std::ranges::find(fallen, at.ball.number()) != fallen.end(); });
  return reading;
}

std::vector<int> without(std::initializer_list<int> gone) {
  std::vector<int> balls;
  for (int ball = 1; ball <= 15; ++ball) {
    if (std::ranges::find(gone, ball) == gone.end()) balls.push_back(ball);
  }
  return balls;
}

/// Ada breaks and makes the 3, the 5 and the 2; that the 2 fell was not seen. Then she makes the 1 and misses the 4,
/// and Ben makes the 12.
std::vector<ShotReading> evening() {
  return {shotOn(1, without({}), 1, {3}, 5),          shotOn(2, without({3}), 5, {5}, 0),
          shotOn(3, without({3, 5}), 2, {}, 1),       shotOn(4, without({2, 3, 5}), 1, {1}, 0),
          shotOn(5, without({1, 2, 3, 5}), 4, {}, 1), shotOn(6, without({1, 2, 3, 5}), 12, {12}, 0)};
}

}  // namespace

class CorrectShotTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void aPotThatWasNotSeenSettlesTheRestOfTheFrame();
  void takingBackPutsTheWholeFrameBack();
  void aMissThatWasReadAsAPotPassesTheTurn();
  void aFoulThatAPersonSawGivesTheOtherBallInHand();
  void anOverruledTurnStandsWhateverIsReadBefore();
  void whoPlayedIsWhoseTurnItWas();
  void namedPlayersStayNamed();
  void namesThatWereSwappedAreReadAnewAndPutBack();
  void aPlaceIsMovedAndPutBack();
  void anyCorrectionIsTakenBack();
  void whatALaterCorrectionRestsOnStays();
  void whatCannotBeSaidIsRefusedAndChangesNothing();
  void shotsPutInByHandAreRuledByWhatWasSaid();

 private:
  [[nodiscard]] StoredShot shot(int number) { return *record_->shot(ids_.at(static_cast<std::size_t>(number) - 1)); }
  [[nodiscard]] RuledShot ruled(int number) { return *rulingFromText(shot(number).ruling->content); }
  [[nodiscard]] QStringList players() {
    QStringList names;
    for (std::size_t i = 1; i <= ids_.size(); ++i)
      names << QString::fromStdString(shot(static_cast<int>(i)).playerName);
    return names;
  }
  [[nodiscard]] std::vector<StoredShot> all() {
    std::vector<StoredShot> shots;
    for (const ShotId id : ids_)
      shots.push_back(*record_->shot(id));
    return shots;
  }
  CorrectionId say(int number, const ShotSaying& saying) {
    const auto report = sayOfShot(*record_, ids_.at(static_cast<std::size_t>(number) - 1), saying, "Cleo", 77);
    if (!report || !report->correction) qFatal("not corrected");
    return *report->correction;
  }
  [[nodiscard]] bool takeBack(CorrectionId correction) {
    const auto report = takeBackCorrection(*record_, game_.frame, correction);
    return report && !report->why;
  }
  void add(const std::vector<ShotReading>& readings);
  void take(FrameId frame) {
    ids_.clear();
    const auto rows = record_->shots(frame).value();
    for (const ShotSummary& row : rows)
      ids_.push_back(row.id);
  }

  std::unique_ptr<sample::Folder> folder_;
  std::optional<Record> record_;
  sample::Game game_;
  std::vector<ShotId> ids_;
};

/// As a film is measured.
void CorrectShotTest::add(const std::vector<ShotReading>& readings) {
  ids_.clear();
  FilmReferee referee(worldRules(Game::EightBall), sample::table());
  for (const ShotReading& reading : readings) {
    const FilmRuling ruling = referee.judge({reading, {}});
    std::optional<PlayerId> player;
    if (ruling.shooter) player = *ruling.shooter == Seat::First ? game_.ada : game_.ben;
    ids_.push_back(record_->appendShot(game_.frame, reading, {}, player, entryOf(ruling.ruled)).value());
  }
}

void CorrectShotTest::init() {
  record_.reset();
  folder_ = std::make_unique<sample::Folder>();
  record_.emplace(sample::openOrDie(folder_->file("a.sqlite")));
  game_ = sample::addGame(*record_);
  add(evening());
}

void CorrectShotTest::aPotThatWasNotSeenSettlesTheRestOfTheFrame() {
  // As it was read, Ben came to the table, met a wrong ball, and another ball was missing.
  QCOMPARE(players(), (QStringList{"Ada", "Ada", "Ada", "Ben", "", ""}));
  QCOMPARE(ruled(4).ruling.fouls.at(0).kind, FoulKind::WrongBallFirst);
  const StoredShot second = shot(2);
  say(3, OutcomeSaid{Outcome::Pot, std::nullopt});

  const StoredShot made = shot(3);
  QCOMPARE(made.reading.outcome, Outcome::Pot);
  QCOMPARE(made.reading.outcomeVerdict, Verdict::Certain);
  QCOMPARE(made.reading.pocketed, (std::vector<PocketedBall>{{BallName(2), PocketName::FootLeft}}));
  QVERIFY(ballIn(made.reading.after, BallName(2)) == nullptr);
  QCOMPARE(ruled(3).ruling.next.value, Seat::First);
  QVERIFY(ruled(4).ruling.fouls.empty());
  QCOMPARE(ruled(4).ruling.next.value, Seat::First);
  QCOMPARE(ruled(5).ruling.next.value, Seat::Second);
  QCOMPARE(ruled(6).ruling.shooter, Seat::Second);
  QVERIFY(ruled(6).ruling.sureness != Verdict::Ask);
  QCOMPARE(players(), (QStringList{"Ada", "Ada", "Ada", "Ada", "Ada", "Ben"}));
  // What came before is not touched, and what only followed is no correction of its own.
  QCOMPARE(shot(2), second);
  const auto rows = *record_->shots(game_.frame);
  QVERIFY(rows[2].corrected);
  QVERIFY(!rows[3].corrected && !rows[5].corrected);
  // The measured value stands beside the corrected one.
  QVERIFY(made.corrections.at(0).measured == "miss" && made.corrections.at(0).corrected == "pot");
  QCOMPARE(made.corrections.at(0).who, std::string("Cleo"));
}

void CorrectShotTest::takingBackPutsTheWholeFrameBack() {
  const auto before = all();
  const CorrectionId correction = say(3, OutcomeSaid{Outcome::Pot, std::nullopt});
  const auto after = all();
  QVERIFY(after != before);
  QVERIFY(takeBack(correction));
  QVERIFY(all() == before);
  // Again, as redo does.
  say(3, OutcomeSaid{Outcome::Pot, std::nullopt});
  for (std::size_t i = 0; i < after.size(); ++i) {
    QCOMPARE(shot(static_cast<int>(i) + 1).reading, after[i].reading);
    QCOMPARE(shot(static_cast<int>(i) + 1).ruling, after[i].ruling);
  }
}

void CorrectShotTest::aMissThatWasReadAsAPotPassesTheTurn() {
  QCOMPARE(ruled(2).ruling.next.value, Seat::First);
  say(2, OutcomeSaid{Outcome::Miss, std::nullopt});
  QVERIFY(shot(2).reading.pocketed.empty());
  // Nobody saw where the ball came to rest instead.
  QVERIFY(ballIn(shot(2).reading.after, BallName(5)) == nullptr);
  QVERIFY(!ruled(2).ruling.pot);
}

void CorrectShotTest::aFoulThatAPersonSawGivesTheOtherBallInHand() {
  say(2, OutcomeSaid{Outcome::Foul, FoulKind::DoubleHit});
  QCOMPARE(shot(2).reading.outcome, Outcome::Foul);
  QCOMPARE(ruled(2).ruling.fouls.at(0).kind, FoulKind::DoubleHit);
  QCOMPARE(ruled(2).ruling.next.value, Seat::Second);
  QCOMPARE(ruled(2).ruling.cueBall.value, CueBallPlace::InHandAnywhere);
  QCOMPARE(shot(3).playerName, std::string("Ben"));
  // It was none after all.
  say(2, RulingSaid{{{}, {FoulKind::DoubleHit}, std::nullopt}});
  QVERIFY(ruled(2).ruling.fouls.empty());
  QCOMPARE(ruled(2).ruling.next.value, Seat::First);
  QCOMPARE(shot(3).playerName, std::string("Ada"));
}

void CorrectShotTest::anOverruledTurnStandsWhateverIsReadBefore() {
  Overrule overrule;
  overrule.next = Seat::Second;
  overrule.who = "Cleo";
  overrule.reason = "agreed at the table";
  say(4, RulingSaid{{{}, {}, overrule}});
  QCOMPARE(ruled(4).ruling.next.value, Seat::Second);
  QCOMPARE(ruled(4).ruling.overruledBy, std::string("Cleo"));
  QCOMPARE(ruled(5).ruling.shooter, Seat::Second);
  say(3, OutcomeSaid{Outcome::Pot, std::nullopt});
  QVERIFY(ruled(4).ruling.fouls.empty());  // ruled anew
  QCOMPARE(ruled(4).ruling.next.value, Seat::Second);
  QCOMPARE(ruled(4).said.overrule, std::optional(overrule));
  QCOMPARE(shot(5).playerName, std::string("Ben"));
  // The referee's own stands again.
  say(4, RulingSaid{});
  QCOMPARE(ruled(4).ruling.next.value, Seat::First);
  QVERIFY(ruled(4).ruling.overruledBy.empty());
}

void CorrectShotTest::whoPlayedIsWhoseTurnItWas() {
  say(2, PlayerSaid{"Ben"});
  QCOMPARE(shot(2).playerName, std::string("Ben"));
  QCOMPARE(ruled(2).ruling.shooter, Seat::Second);
  QVERIFY(ruled(2).ruling.fouls.empty());
  QCOMPARE(ruled(2).ruling.next.value, Seat::Second);  // Ben made it and plays on
  QCOMPARE(shot(3).playerName, std::string("Ben"));
  QVERIFY(shot(2).player == game_.ben);
}

void CorrectShotTest::namedPlayersStayNamed() {
  say(6, PlayerSaid{"Ada"});
  say(3, OutcomeSaid{Outcome::Pot, std::nullopt});
  QCOMPARE(shot(6).playerName, std::string("Ada"));
  QCOMPARE(ruled(6).ruling.shooter, Seat::First);
  QCOMPARE(shot(5).playerName, std::string("Ada"));
}

void CorrectShotTest::namesThatWereSwappedAreReadAnewAndPutBack() {
  const ShotId id = record_->appendShot(game_.frame, sample::shot(7), sample::tracks(7)).value();
  ids_.push_back(id);
  const StoredShot before = shot(7);
  const SwappedNames names{BallName(3), BallName(8), 70.2};
  const CorrectionId correction = say(7, NamesSaid{names});
  const StoredShot after = shot(7);
  QCOMPARE(after.corrections.at(0).field, std::string("ball_names"));
  QVERIFY(after.corrections.at(0).measured == "8 3 70.2" && after.corrections.at(0).corrected == "3 8 70.2");
  std::vector<Track> swapped = before.tracks;
  swapNames(swapped, names);
  QCOMPARE(swapped.size(), std::size_t{3});
  QVERIFY(after.tracks == swapped);
  QVERIFY(takeBack(correction));
  QVERIFY(shot(7) == before);
}

void CorrectShotTest::aPlaceIsMovedAndPutBack() {
  const StoredShot before = shot(5);
  const BallAt there{BallName(9), {0.5, 0.25}};
  const CorrectionId correction = say(5, PlaceSaid{ShotEnd::After, there});
  QVERIFY(ballIn(shot(5).reading.after, BallName(9))->position == there.position);
  QVERIFY(ballIn(shot(5).reading.before, BallName(9))->position ==
          ballIn(before.reading.before, BallName(9))->position);
  QVERIFY(shot(5).corrections.at(0).measured == "9 0.45 0.3");
  QVERIFY(shot(5).corrections.at(0).corrected == "9 0.5 0.25");
  // What is corrected later leaves it there.
  const CorrectionId later = say(5, OutcomeSaid{Outcome::Safety, std::nullopt});
  QVERIFY(ballIn(shot(5).reading.after, BallName(9))->position == there.position);
  QVERIFY(takeBack(later));
  QVERIFY(takeBack(correction));
  QVERIFY(shot(5) == before);
}

/// What was said later is said again without it, as if the first had never been said.
void CorrectShotTest::anyCorrectionIsTakenBack() {
  say(5, OutcomeSaid{Outcome::Safety, std::nullopt});
  const auto without = all();
  QVERIFY(takeBack(without[4].corrections.front().id));
  const auto before = all();

  const CorrectionId first = say(3, OutcomeSaid{Outcome::Pot, std::nullopt});
  const CorrectionId second = say(5, OutcomeSaid{Outcome::Safety, std::nullopt});
  const auto report = takeBackCorrection(*record_, game_.frame, first);
  QVERIFY(report.has_value() && !report->why);
  QCOMPARE(report->saying, std::optional<ShotSaying>(OutcomeSaid{Outcome::Pot, std::nullopt}));
  QCOMPARE(report->renewed.size(), std::size_t{1});
  QCOMPARE(report->renewed.front().first, second);
  const auto now = all();
  for (std::size_t i = 0; i < now.size(); ++i) {
    QCOMPARE(now[i].reading, without[i].reading);
    QCOMPARE(now[i].ruling, without[i].ruling);
    QCOMPARE(now[i].playerName, without[i].playerName);
    QCOMPARE(now[i].corrections.size(), without[i].corrections.size());
  }
  QCOMPARE(now[4].corrections.front().who, std::string("Cleo"));
  QVERIFY(takeBack(report->renewed.front().second));
  QVERIFY(all() == before);
  QCOMPARE(takeBackCorrection(*record_, game_.frame, first).error().code, ErrorCode::NotFound);
}

/// That the pot was made says something only as long as it is said which pot was meant.
void CorrectShotTest::whatALaterCorrectionRestsOnStays() {
  const CorrectionId target = say(1, TargetSaid{PocketedBall{BallName(3), PocketName::FootLeft}});
  say(1, OutcomeSaid{Outcome::Pot, std::nullopt});
  const auto before = all();
  const auto report = takeBackCorrection(*record_, game_.frame, target);
  QVERIFY(report.has_value());
  QCOMPARE(report->why, std::optional(NotSaid::LaterStands));
  QVERIFY(all() == before);
}

void CorrectShotTest::whatCannotBeSaidIsRefusedAndChangesNothing() {
  const auto why = [&](int number, const ShotSaying& saying) {
    const auto report = sayOfShot(*record_, ids_.at(static_cast<std::size_t>(number) - 1), saying, "Cleo", 1);
    return report ? report->why : std::nullopt;
  };
  const auto before = all();
  QCOMPARE(why(1, OutcomeSaid{Outcome::Pot, std::nullopt}), std::optional(NotSaid::NoTarget));
  QCOMPARE(why(2, NamesSaid{{BallName(3), BallName(4), std::nullopt}}), std::optional(NotSaid::NoTrack));
  QCOMPARE(why(2, TimesSaid{{1.0, 2.0}}), std::optional(NotSaid::OutsideTracks));
  const auto nobody = sayOfShot(*record_, ids_[0], PlayerSaid{"Nobody"}, "Cleo", 1);
  QVERIFY(!nobody.has_value());
  QCOMPARE(nobody.error().code, ErrorCode::NotFound);
  QCOMPARE(sayOfShot(*record_, ShotId{999}, PlayerSaid{}, "Cleo", 1).error().code, ErrorCode::NotFound);
  QVERIFY(all() == before);
  const ShotId unruled = record_->appendShot(game_.frame, sample::shot(7), {}).value();
  const auto report = sayOfShot(*record_, unruled, RulingSaid{}, "Cleo", 1);
  QVERIFY(report.has_value());
  QCOMPARE(report->why, std::optional(NotSaid::NoReferee));
}

/// Nine-ball by hand: Ada makes the 5 on the break and misses the 1, Ben misses the 1 as well.
void CorrectShotTest::shotsPutInByHandAreRuledByWhatWasSaid() {
  const HandTerms terms{"By hand", "9ft", *measuredTableFrom("9ft"), Game::NineBall, {"Ada", "Ben"}, 1, Seat::First};
  auto hand = beginHandSession(*record_, terms, SessionKind::Match, 1000);
  QVERIFY(hand.has_value());
  const BallName one{1};
  hand->session.log({Outcome::Break, {}, {}, {}, {{BallName{5}, PocketName::HeadLeft}}, {}}, 1.0);
  hand->session.log({Outcome::Miss, one, PocketName::FootLeft, MissSide::Over, {}, {}}, 9.0);
  hand->session.log({Outcome::Miss, one, PocketName::FootLeft, {}, {}, {}}, 19.0);
  QVERIFY(keepHandSession(*record_, *hand).has_value());
  take(hand->place.frame);
  const auto early = sayOfShot(*record_, ids_.at(1), OutcomeSaid{Outcome::Pot, std::nullopt}, "Cleo", 1);
  QCOMPARE(early->why, std::optional(NotSaid::StillPutIn));

  QVERIFY(endHandSession(*record_, *hand).has_value());
  take(hand->place.frame);
  QCOMPARE(players(), (QStringList{"Ada", "Ada", "Ben"}));
  say(2, OutcomeSaid{Outcome::Pot, std::nullopt});
  QCOMPARE(ruled(2).ruling.next.value, Seat::First);
  QCOMPARE(players(), (QStringList{"Ada", "Ada", "Ada"}));
  QVERIFY(ruled(3).ruling.questions.empty() || ruled(3).ruling.sureness == Verdict::Ask);
}

FERRULE_TEST(CorrectShotTest)
#include "correct_shot_test.moc"
