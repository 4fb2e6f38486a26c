// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/outcome.h"

#include <QtTest>
#include <cmath>
#include <numbers>

#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;

/// A tight triangle with its apex on the foot spot. Rows lie R sqrt(3) apart.
Position racked(const Table& table, int rows) {
  Position position{{kCueBall, {headString_m(table) - 0.05, 0.05}}};
  int number = 1;
  for (int row = 0; row < rows; ++row) {
    for (int i = 0; i <= row; ++i) {
      const TablePoint place{footSpot(table).x + row * kRadius_m * std::numbers::sqrt3, (2.0 * i - row) * kRadius_m};
      position.push_back({BallName(number++), place});
    }
  }
  return position;
}

}  // namespace

class OutcomeTest : public QObject {
  Q_OBJECT
 private slots:
  void aRackHitFromBehindTheHeadStringIsABreak();
  void aRackHitFromElsewhereIsNoBreak();
  void sixBallsTogetherAreNoRack();
  void aScratchIsCertainEvenWhenABallFell();
  void noContactIsAFoulThatCanBeUndone();
  void aPotIsCertain();
  void withoutATargetAMissIsASafety();
  void aSplitHitAsks();
};

void OutcomeTest::aRackHitFromBehindTheHeadStringIsABreak() {
  const Table table;
  QVERIFY(isBreak(racked(table, 5), table, kRadius_m));
  QVERIFY(isBreak(racked(table, 4), table, kRadius_m));
}

void OutcomeTest::aRackHitFromElsewhereIsNoBreak() {
  const Table table;
  Position position = racked(table, 5);
  position.front().position.x = headString_m(table) + 0.2;
  QVERIFY(!isBreak(position, table, kRadius_m));
}

void OutcomeTest::sixBallsTogetherAreNoRack() {
  const Table table;
  QVERIFY(!isBreak(racked(table, 3), table, kRadius_m));
}

void OutcomeTest::aScratchIsCertainEvenWhenABallFell() {
  ShotReading reading;
  reading.firstContact = BallName(3);
  reading.pocketed = {{BallName(3), PocketName::FootLeft}, {kCueBall, PocketName::SideLeft}};
  reading.scratch = true;
  const Judged judged = judgeOutcome(reading, Table{}, kRadius_m, {});
  QCOMPARE(judged.outcome, Outcome::Scratch);
  QCOMPARE(judged.verdict, Verdict::Certain);
}

void OutcomeTest::noContactIsAFoulThatCanBeUndone() {
  const Judged judged = judgeOutcome({}, Table{}, kRadius_m, {});
  QCOMPARE(judged.outcome, Outcome::Foul);
  QCOMPARE(judged.verdict, Verdict::Proposed);
}

void OutcomeTest::aPotIsCertain() {
  ShotReading reading;
  reading.firstContact = BallName(3);
  reading.pocketed = {{BallName(3), PocketName::FootLeft}};
  const Judged judged = judgeOutcome(reading, Table{}, kRadius_m, {});
  QCOMPARE(judged.outcome, Outcome::Pot);
  QCOMPARE(judged.verdict, Verdict::Certain);
}

void OutcomeTest::withoutATargetAMissIsASafety() {
  ShotReading reading;
  reading.firstContact = BallName(3);
  QCOMPARE(judgeOutcome(reading, Table{}, kRadius_m, {}).outcome, Outcome::Safety);
  reading.target = Target{BallName(3), PocketName::FootLeft, {}, {}, {}};
  QCOMPARE(judgeOutcome(reading, Table{}, kRadius_m, {}).outcome, Outcome::Miss);
}

/// World standardized rules, regulation on split hits: without evidence the shot counts for the player, a person
/// decides.
void OutcomeTest::aSplitHitAsks() {
  ShotReading reading;
  reading.firstContact = BallName(3);
  Doubts doubts;
  doubts.splitHit = true;
  QCOMPARE(judgeOutcome(reading, Table{}, kRadius_m, doubts).verdict, Verdict::Ask);
}

FERRULE_TEST(OutcomeTest)
#include "outcome_test.moc"
