// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/ruling_text.h"

#include <QtTest>

#include "core/rules/testimony.h"
#include "tests/rules/rules_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class RulingTextTest : public QObject {
  Q_OBJECT
 private slots:
  void everyRulingIsReadBack_data();
  void everyRulingIsReadBack();
  void whatAPersonSaidIsReadBack();
  void whatIsNoRulingIsNothing();
  void everyWordIsReadBack();
  void sectionsFollowTheEdition();
};

void RulingTextTest::everyRulingIsReadBack_data() {
  QTest::addColumn<int>("game");
  QTest::addColumn<QString>("state");
  QTest::addColumn<QString>("call");
  QTest::addColumn<QString>("events");
  const auto row = [](Game game, const char* state, const char* call, const char* events) {
    QTest::addRow("%s %s %s", toText(game).data(), state, events) << static_cast<int>(game) << state << call << events;
  };
  row(Game::EightBall, "break", "", "FC 1, OBR 2");
  row(Game::EightBall, "break", "", "FC 1, P 8@FR, CB@HL");
  row(Game::EightBall, "open", "c=5@FR", "FC 5, P 5@FR");
  row(Game::EightBall, "clr", "", "FC 8, P 8@FR");
  row(Game::EightBall, "S", "c=2@SR", "FC 10, OFF 3, CB@FL");
  row(Game::NineBall, "second", "push-out", "P 9@FR");
  row(Game::TenBall, "low 2", "c=2@FL", "FC 2, P 5@FR");
  row(Game::StraightPool, "play", "c=3@SL", "FC 3, P 3@SL, P 9@FL");
}

void RulingTextTest::everyRulingIsReadBack() {
  QFETCH(int, game);
  QFETCH(QString, state);
  QFETCH(QString, call);
  QFETCH(QString, events);
  const GameState before = stateOf(worldRules(static_cast<Game>(game)), state);
  ShotEvents shot = shotOf(before.rules.game, call, events);
  shot.doubts = {{DoubtKind::NameUnsure, BallName(2), BallName(10)}};
  RuledShot ruled{before.rules.game, Edition::World2008, 3, {2, 1}, {-4, 37}, rule(before, shot)};
  QCOMPARE(rulingFromText(rulingText(ruled)), std::optional(ruled));
  Overrule overrule;
  overrule.who = "Referee \"R\"";
  overrule.reason = "seen from the side; é";
  overrule.winner = std::optional<Seat>(Seat::Second);
  ruled.ruling = overruled(ruled.ruling, overrule);
  QCOMPARE(rulingFromText(rulingText(ruled)), std::optional(ruled));
}

void RulingTextTest::whatAPersonSaidIsReadBack() {
  RuledShot ruled;
  QVERIFY(rulingText(ruled).find("said") == std::string::npos);
  ruled.said.fouls = {FoulKind::DoubleHit};
  ruled.said.noFouls = {FoulKind::NoRail, FoulKind::Scratch};
  QCOMPARE(rulingFromText(rulingText(ruled)), std::optional(ruled));
  Overrule overrule;
  overrule.who = "Cleo";
  ruled.said.overrule = overrule;
  QCOMPARE(rulingFromText(rulingText(ruled)), std::optional(ruled));
  overrule.reason = "seen from the side";
  overrule.foul = true;
  overrule.foulKind = FoulKind::PushShot;
  overrule.next = Seat::Second;
  overrule.cueBall = CueBallPlace::InHandAnywhere;
  overrule.shooterGroup = Group::Stripes;
  overrule.points = std::array<int, 2>{3, -1};
  overrule.onTable = std::vector<BallName>{BallName(4), BallName(9)};
  for (const std::optional<Seat>& winner : {std::optional<Seat>(), std::optional(Seat::First)}) {
    overrule.winner = winner;
    ruled.said.overrule = overrule;
    QCOMPARE(rulingFromText(rulingText(ruled)), std::optional(ruled));
  }
  overrule.foul = false;
  overrule.foulKind = Overrule{}.foulKind;
  ruled.said.overrule = overrule;
  QCOMPARE(rulingFromText(rulingText(ruled)), std::optional(ruled));
  std::string nobodys = rulingText(ruled);
  nobodys.replace(nobodys.find("Cleo"), 4, "");
  QVERIFY(!rulingFromText(nobodys));
}

void RulingTextTest::whatIsNoRulingIsNothing() {
  QVERIFY(!rulingFromText(""));
  QVERIFY(!rulingFromText("[]"));
  QVERIFY(!rulingFromText("{}"));
  const std::string whole = rulingText({});
  QVERIFY(rulingFromText(whole));
  QVERIFY(!rulingFromText(whole.substr(0, whole.size() - 1)));
  std::string wrong = whole;
  wrong.replace(wrong.find("eight-ball"), 10, "other-game");
  QVERIFY(!rulingFromText(wrong));
}

void RulingTextTest::everyWordIsReadBack() {
  for (const Game game : kGames)
    QCOMPARE(gameFromText(toText(game)), std::optional(game));
  for (const Edition edition : kEditions)
    QCOMPARE(editionFromText(toText(edition)), std::optional(edition));
  for (int i = 0; i <= static_cast<int>(FoulKind::BreakRequirement); ++i)
    QCOMPARE(foulKindFromText(toText(static_cast<FoulKind>(i))), std::optional(static_cast<FoulKind>(i)));
  for (int i = 0; i <= static_cast<int>(DoubtKind::FrameOver); ++i)
    QCOMPARE(doubtKindFromText(toText(static_cast<DoubtKind>(i))), std::optional(static_cast<DoubtKind>(i)));
  for (int i = 0; i <= static_cast<int>(WinReason::Person); ++i)
    QCOMPARE(winReasonFromText(toText(static_cast<WinReason>(i))), std::optional(static_cast<WinReason>(i)));
  for (int i = 0; i <= static_cast<int>(OptionKind::HandBack); ++i)
    QCOMPARE(optionKindFromText(toText(static_cast<OptionKind>(i))), std::optional(static_cast<OptionKind>(i)));
  QVERIFY(!foulKindFromText("Scratch"));
}

/// The foul of touching a rack template came in before unsportsmanlike conduct between 2008 and 2016.
void RulingTextTest::sectionsFollowTheEdition() {
  const auto section = [](Edition edition, RuleTopic topic) {
    return ruleNumber(worldRules(Game::EightBall, edition), topic);
  };
  QCOMPARE(section(Edition::World2016, RuleTopic::Unsportsmanlike), (RuleNumber{Edition::World2016, "6.17"}));
  QCOMPARE(section(Edition::World2008, RuleTopic::Unsportsmanlike), (RuleNumber{Edition::World2008, "6.16"}));
  QCOMPARE(section(Edition::World2025, RuleTopic::EightEarly), (RuleNumber{Edition::World2016, "3.8(b)"}));
  QCOMPARE(section(Edition::Before2008, RuleTopic::EightEarly), (RuleNumber{Edition::Before2008, ""}));
  QCOMPARE(ruleNumber(worldRules(Game::StraightPool), RuleTopic::StandardFoul).section, std::string("4.9"));
  QCOMPARE(ruleNumber(worldRules(Game::NineBall), RuleTopic::StandardFoul).section, std::string("2.7"));
}

FERRULE_TEST(RulingTextTest)
#include "ruling_text_test.moc"
