// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/rules/frame_log.h"
#include "core/rules/match.h"
#include "tests/rules/rules_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class FrameLogTest : public QObject {
  Q_OBJECT
 private slots:
  void aFrameIsPlayedToItsEnd();
  void anAnswerRulesAllThatFollowsAnew();
  void anOverruleHoldsAndKeepsWhatWasRuled();
  void aWithdrawnOverruleLeavesNoTrace();
  void undoAndRedoGoThroughEveryEdit();
  void aNewEditForgetsWhatWasUndone();
  void aVoidedShotCountsForNothing();
  void aChoiceThatIsNoLongerOfferedFallsBackToTheFirst();
  void aStalemateIsBrokenAgainByTheSameBreaker();
  void aConcessionLosesTheFrame();
  void aShotAfterTheEndChangesNothingAndAsks();
  void breaksAlternateOrFollowTheScore();
  void aRaceEndsWhenItIsWon();
};

namespace {

ShotEvents shot(const char* call, const char* events) {
  return shotOf(Game::EightBall, call, events);
}

/// The first seat breaks and takes the solids; the second fouls; the first runs out.
FrameLog sampleFrame() {
  FrameLog log(newFrame(worldRules(Game::EightBall)));
  log.add(shot("", "FC 1, P 3@SL"));
  log.add(shot("c=5@FR", "FC 5, P 5@FR"));
  log.add(shot("c=1@FR", "FC 1, R 1"));
  log.add(shot("c=12@FL", "FC 2, R 1"));
  log.add(shot("c=1@FR", "FC 1, P 1@FR, P 2@FL, P 4@SL, P 6@SR, P 7@HL"));
  log.add(shot("c=8@HR", "FC 8, P 8@HR"));
  return log;
}

}  // namespace

void FrameLogTest::aFrameIsPlayedToItsEnd() {
  const FrameLog log = sampleFrame();
  QCOMPARE(log.stateBefore(3).atTable, Seat::Second);
  QCOMPARE(log.entries().at(3).ruling.fouls.at(0).kind, FoulKind::WrongBallFirst);
  QCOMPARE(log.state().result, std::optional(FrameResult{Seat::First, WinReason::EightPocketed}));
  QVERIFY(log.open().empty());
}

void FrameLogTest::anAnswerRulesAllThatFollowsAnew() {
  FrameLog log = sampleFrame();
  // Somebody saw that the 5 fell into another pocket: the turn passed, the table stayed open.
  log.testify(1, {.kind = TestimonyKind::Fell, .ball = BallName(5), .pocket = PocketName::FootLeft});
  QCOMPARE(log.entries().at(1).ruling.next.value, Seat::Second);
  QCOMPARE(log.entries().at(1).automatic.next.value, Seat::First);
  QVERIFY(!log.entries().at(2).after.groupOfFirst);
  QCOMPARE(log.entries().at(2).ruling.shooter, Seat::Second);
  QVERIFY(log.entries().at(3).ruling.fouls.empty());
  log.clearTestimonies(1);
  QCOMPARE(log.entries(), sampleFrame().entries());
}

void FrameLogTest::anOverruleHoldsAndKeepsWhatWasRuled() {
  FrameLog log = sampleFrame();
  Overrule overrule;
  overrule.next = Seat::First;
  overrule.foul = false;
  overrule.cueBall = CueBallPlace::AsItLies;
  overrule.who = "Referee";
  overrule.reason = "12 was met first";
  log.overrule(3, overrule);
  const FrameEntry& entry = log.entries().at(3);
  QVERIFY(entry.ruling.fouls.empty());
  QCOMPARE(entry.automatic.fouls.size(), std::size_t{1});
  QCOMPARE(entry.ruling.overruledBy, std::string("Referee"));
  QCOMPARE(entry.ruling.sureness, Verdict::Certain);
  QCOMPARE(entry.after.cueBall, CueBallPlace::AsItLies);

  Overrule loss;
  loss.winner = std::optional<Seat>(Seat::Second);
  loss.who = "Referee";
  log.overrule(4, loss);
  QCOMPARE(log.entries().at(4).after.result, std::optional(FrameResult{Seat::Second, WinReason::Person}));
  QCOMPARE(log.open(), std::vector<std::size_t>{5});  // a shot after the end
}

void FrameLogTest::aWithdrawnOverruleLeavesNoTrace() {
  FrameLog log = sampleFrame();
  Overrule overrule;
  overrule.shooterGroup = Group::Stripes;
  overrule.who = "Referee";
  log.overrule(1, overrule);
  QVERIFY(!(log == sampleFrame()));
  log.overrule(1, std::nullopt);
  QVERIFY(log == sampleFrame());
}

void FrameLogTest::undoAndRedoGoThroughEveryEdit() {
  std::vector<FrameLog> after;
  FrameLog log(newFrame(worldRules(Game::EightBall)));
  const auto keep = [&] { after.push_back(log); };
  keep();
  log.add(shot("", "FC 1, OBR 2"));
  keep();
  log.choose(0, OptionKind::RackAgain);
  keep();
  log.add(shot("", "FC 1, OBR 5"));
  keep();
  log.testify(0, {.kind = TestimonyKind::DrivenToRail, .number = 4});
  keep();
  log.add(Announcement{AnnouncementKind::Concession, Seat::First});
  keep();
  Overrule overrule;
  overrule.next = Seat::Second;
  overrule.who = "Referee";
  log.overrule(1, overrule);
  keep();
  log.setVoided(1, true);
  keep();
  log.restart(newFrame(worldRules(Game::EightBall), Seat::Second));
  keep();
  for (std::size_t i = after.size() - 1; i > 0; --i) {
    QVERIFY(log == after[i]);
    QVERIFY(log.canUndo());
    log.undo();
  }
  QVERIFY(log == after.front());
  QVERIFY(!log.canUndo());
  log.undo();
  QVERIFY(log == after.front());
  for (std::size_t i = 1; i < after.size(); ++i) {
    QVERIFY(log.canRedo());
    log.redo();
    QVERIFY(log == after[i]);
  }
  QVERIFY(!log.canRedo());
}

void FrameLogTest::aNewEditForgetsWhatWasUndone() {
  FrameLog log = sampleFrame();
  log.undo();
  log.add(shot("c=8@HL", "FC 8, P 8@HR"));
  QVERIFY(!log.canRedo());
  QCOMPARE(log.state().result->winner, Seat::Second);
}

/// 1.9.
void FrameLogTest::aVoidedShotCountsForNothing() {
  FrameLog log = sampleFrame();
  log.setVoided(5, true);
  QVERIFY(!log.state().result);
  QCOMPARE(log.state(), log.stateBefore(5));
}

void FrameLogTest::aChoiceThatIsNoLongerOfferedFallsBackToTheFirst() {
  FrameLog log(newFrame(worldRules(Game::EightBall)));
  log.add(shot("", "FC 1, OBR 2"));
  log.choose(0, OptionKind::OpponentBreaks);
  QCOMPARE(log.state().phase, Phase::Break);
  QCOMPARE(log.state().atTable, Seat::First);
  log.testify(0, {.kind = TestimonyKind::DrivenToRail, .number = 4});
  QCOMPARE(log.state().phase, Phase::Play);
  QCOMPARE(log.state().atTable, Seat::Second);
}

/// 1.12, 3.11.
void FrameLogTest::aStalemateIsBrokenAgainByTheSameBreaker() {
  FrameLog log(newFrame(worldRules(Game::EightBall), Seat::Second));
  log.add(shot("", "FC 1, P 3@SL"));
  log.add(shot("c=5@FR", "FC 5, P 5@FR"));
  QVERIFY(log.state().groupOfFirst);
  log.add(Announcement{AnnouncementKind::Stalemate, Seat::First});
  QCOMPARE(log.state(), newFrame(worldRules(Game::EightBall), Seat::Second));
}

/// 1.11.
void FrameLogTest::aConcessionLosesTheFrame() {
  FrameLog log(newFrame(worldRules(Game::NineBall)));
  log.add(Announcement{AnnouncementKind::Concession, Seat::Second});
  QCOMPARE(log.state().result, std::optional(FrameResult{Seat::First, WinReason::Concession}));
}

void FrameLogTest::aShotAfterTheEndChangesNothingAndAsks() {
  FrameLog log = sampleFrame();
  const GameState end = log.state();
  log.add(shot("", "FC 1, R 1"));
  QCOMPARE(log.entries().back().ruling.questions.at(0).doubt.kind, DoubtKind::FrameOver);
  QCOMPARE(log.state().result, end.result);
  QCOMPARE(log.open(), std::vector<std::size_t>{6});
}

/// 1.2: alternate unless the event has it otherwise.
void FrameLogTest::breaksAlternateOrFollowTheScore() {
  const auto breakers = [](BreakOrder order) {
    MatchTerms terms;
    terms.rules = worldRules(Game::EightBall);
    terms.breaks = order;
    Match match(terms);
    QString seats;
    for (const Seat loser : {Seat::First, Seat::First, Seat::Second, Seat::Second}) {
      seats += match.current().state().breaker == Seat::First ? '1' : '2';
      match.current().add(Announcement{AnnouncementKind::Concession, loser});
      match.nextFrame();
    }
    return seats;
  };
  QCOMPARE(breakers(BreakOrder::Alternate), QString("1212"));
  QCOMPARE(breakers(BreakOrder::Winner), QString("1221"));
  QCOMPARE(breakers(BreakOrder::Loser), QString("1112"));
}

void FrameLogTest::aRaceEndsWhenItIsWon() {
  MatchTerms terms;
  terms.rules = worldRules(Game::NineBall);
  terms.raceTo = 2;
  Match match(terms);
  QVERIFY(!match.winner());
  match.current().add(Announcement{AnnouncementKind::Concession, Seat::First});
  match.nextFrame();
  match.current().add(Announcement{AnnouncementKind::Concession, Seat::First});
  QCOMPARE(match.score(), (std::array<int, 2>{0, 2}));
  QCOMPARE(match.winner(), std::optional(Seat::Second));
  // A frame put right long after still counts.
  match.frame(0).undo();
  QCOMPARE(match.score(), (std::array<int, 2>{0, 1}));
  QVERIFY(!match.winner());
}

FERRULE_TEST(FrameLogTest)
#include "frame_log_test.moc"
