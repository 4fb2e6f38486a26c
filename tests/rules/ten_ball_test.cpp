// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/rules/rules_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Ten-ball by the world rules of play, section 9, as effective 2009. What a row marks [M] is from memory.
class TenBallTest : public QObject {
  Q_OBJECT
 private slots:
  void aShotIsRuledBySection9_data();
  void aShotIsRuledBySection9();
  void aHandedBackTableLiesAsItIs();
};

namespace {

const RuleSet kWorld = worldRules(Game::TenBall);

}  // namespace

void TenBallTest::aShotIsRuledBySection9_data() {
  QTest::addColumn<QString>("state");
  QTest::addColumn<QString>("call");
  QTest::addColumn<QString>("events");
  QTest::addColumn<QString>("expected");
  const auto row = [](const char* id, const char* state, const char* call, const char* events, const char* expected) {
    QTest::newRow(id) << state << call << events << expected;
  };
  row("a fair break", "break", "", "FC 1, OBR 4", "next second | as-it-lies | certain");
  row("too weak a break", "break", "", "FC 1, OBR 3", "break-requirement | next second | in-hand | proposed");
  row("the ten on the break is spotted", "break", "", "FC 1, P 10@FL", "next first | as-it-lies | spot 10 | certain");
  row("a called ball", "low 2", "c=2@FL", "FC 2, P 2@FL", "next first | as-it-lies | out 2 | certain");
  row("a called combination", "low 2", "c=7@FL", "FC 2, P 7@FL", "next first | as-it-lies | out 7 | certain");
  row("another pocket", "low 2", "c=2@FL", "FC 2, P 2@FR",
      "next second | as-it-lies | second may accept/hand-back | out 2 | certain");
  row("another ball", "low 2", "c=2@FL", "FC 2, P 5@FR",
      "next second | as-it-lies | second may accept/hand-back | out 5 | certain");
  row("the ten uncalled is spotted [M]", "low 2", "c=2@FL", "FC 2, P 10@FR",
      "next second | as-it-lies | second may accept/hand-back | spot 10 | certain");
  row("the ten beside the called ball is spotted [M]", "low 2", "c=2@FL", "FC 2, P 2@FL, P 10@FR",
      "next first | as-it-lies | spot 10 | out 2 | certain");
  row("the called ten wins [M]", "low 2", "c=10@FL", "FC 2, P 10@FL", "first wins: ten-pocketed | out 10 | certain");
  row("the called ten with a scratch", "low 10", "c=10@FL", "FC 10, P 10@FL, CB@SL",
      "scratch | next second | in-hand | spot 10 | certain");
  row("a safety", "low 2", "safety", "FC 2, R 1", "next second | as-it-lies | certain");
  row("a ball on a safety [M]", "low 2", "safety", "FC 2, P 2@FL",
      "next second | as-it-lies | second may accept/hand-back | out 2 | proposed");
  row("a miss", "low 2", "c=2@FL", "FC 2, R 1", "next second | as-it-lies | certain");
  row("the obvious call is inferred", "low 2", "", "FC 2, P 2@FL", "next first | as-it-lies | out 2 | proposed");
  row("two balls without a call", "low 2", "", "FC 2, P 2@FL, P 5@FR", "next first | as-it-lies | out 2 5 | ask");
  row("the ten without a call", "low 10", "", "FC 10, P 10@FL", "first wins: ten-pocketed | out 10 | ask");
}

void TenBallTest::aShotIsRuledBySection9() {
  QFETCH(QString, state);
  QFETCH(QString, call);
  QFETCH(QString, events);
  QFETCH(QString, expected);
  const GameState before = stateOf(kWorld, state);
  QCOMPARE(summaryOf(before, rule(before, shotOf(Game::TenBall, call, events))), expected);
}

void TenBallTest::aHandedBackTableLiesAsItIs() {
  const GameState before = stateOf(kWorld, "low 2");
  const Ruling ruling = rule(before, shotOf(Game::TenBall, "c=2@FL", "FC 2, P 5@FR"));
  const GameState back = apply(before, ruling, {OptionKind::HandBack});
  QCOMPARE(back.atTable, Seat::First);
  QCOMPARE(back.cueBall, CueBallPlace::AsItLies);
  QVERIFY(!isOnTable(back, BallName(5)));
}

FERRULE_TEST(TenBallTest)
#include "ten_ball_test.moc"
