// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/filmed_shot.h"

#include <QtTest>

#include "tests/support/test_registry.h"

using namespace ferrule;

class FilmedShotTest : public QObject {
  Q_OBJECT
 private slots:
  void aClearShotLeavesNoDoubt();
  void twoContactsTooCloseAreASplitHit();
  void aBallNearACushionMayHaveTouchedIt();
  void aBallThatMovedByItselfWasMovedByHand();
  void aBallThatIsGoneWithoutFallingIsLost();
  void ballsPastTheHeadStringAreCounted();
  void anUnsureReadingStaysUnsure();
};

namespace {

const Table kTable;
constexpr double kRadius_m = 0.028575;

ShotEvent contact(double time_s, int ball, TablePoint place) {
  ShotEvent event;
  event.time_s = time_s;
  event.kind = EventKind::Ball;
  event.ball = kCueBall;
  event.other = BallName(ball);
  event.position = place;
  return event;
}

ShotReading clearShot() {
  ShotReading reading;
  reading.strike_s = 1.0;
  reading.rest_s = 3.0;
  reading.before = {{kCueBall, {0.0, 0.0}}, {BallName(2), {0.3, 0.0}}, {BallName(5), {0.0, 0.4}}};
  reading.after = {{kCueBall, {0.2, 0.0}}, {BallName(2), {0.6, 0.0}}, {BallName(5), {0.0, 0.401}}};
  reading.events = {contact(1.3, 2, {0.243, 0.0})};
  reading.firstContact = BallName(2);
  reading.outcomeVerdict = Verdict::Proposed;
  return reading;
}

Track straightTrack(int ball, TablePoint from, TablePoint to) {
  Track track{ball == 0 ? kCueBall : BallName(ball), {}};
  for (int i = 0; i <= 60; ++i) {
    const TablePoint at = from + (i / 60.0) * (to - from);
    track.samples.push_back({1.0 + i / 60.0, at, 0.0005, true});
  }
  return track;
}

ShotEvents filmed(const ShotReading& reading, const std::vector<Track>& tracks = {}) {
  return filmedShot(reading, tracks, kTable, kRadius_m);
}

}  // namespace

void FilmedShotTest::aClearShotLeavesNoDoubt() {
  const ShotEvents shot = filmed(clearShot(), {straightTrack(2, {0.3, 0.0}, {0.6, 0.0})});
  QVERIFY(shot.doubts.empty());
  QCOMPARE(shot.firstContact, std::optional(BallName(2)));
  QCOMPARE(shot.witness, Witness::Camera);
  QVERIFY(!shot.call);
}

void FilmedShotTest::twoContactsTooCloseAreASplitHit() {
  ShotReading reading = clearShot();
  reading.events.push_back(contact(1.304, 5, {0.244, 0.001}));
  QCOMPARE(filmed(reading).doubts, (std::vector<Doubt>{{DoubtKind::SplitHit, BallName(2), BallName(5)}}));
  reading.events.back().position.x = 0.25;  // 7 mm further the order is clear
  QVERIFY(filmed(reading).doubts.empty());
  reading.events.back() = contact(1.33, 5, {0.244, 0.001});  // so it is two images later
  QVERIFY(filmed(reading).doubts.empty());
}

void FilmedShotTest::aBallNearACushionMayHaveTouchedIt() {
  ShotReading reading = clearShot();
  const double rail_m = kTable.length_m / 2.0 - kRadius_m;
  const auto doubtsAt = [&](double gap_m) {
    return filmed(reading, {straightTrack(2, {0.3, 0.0}, {rail_m - gap_m, 0.0})}).doubts;
  };
  QCOMPARE(doubtsAt(0.003), (std::vector<Doubt>{{DoubtKind::NearRail, BallName(2), std::nullopt}}));
  QVERIFY(doubtsAt(0.008).empty());
  ShotEvent rail;
  rail.kind = EventKind::Cushion;
  rail.ball = BallName(2);
  rail.cushion = CushionName::Foot;
  reading.events.push_back(rail);
  QVERIFY(doubtsAt(0.003).empty());
}

void FilmedShotTest::aBallThatMovedByItselfWasMovedByHand() {
  ShotReading reading = clearShot();
  reading.after[2].position.y = 0.42;
  QCOMPARE(filmed(reading).doubts, (std::vector<Doubt>{{DoubtKind::MovedByHand, BallName(5), std::nullopt}}));
  // Where a ball passed close by, or one lay beside it as in a rack, a contact was missed rather than made by hand.
  QVERIFY(filmed(reading, {straightTrack(2, {0.3, 0.0}, {0.02, 0.35})}).doubts.empty());
  reading.before.push_back({BallName(7), {0.06, 0.4}});
  reading.after.push_back({BallName(7), {0.06, 0.4}});
  QVERIFY(filmed(reading).doubts.empty());
}

void FilmedShotTest::aBallThatIsGoneWithoutFallingIsLost() {
  ShotReading reading = clearShot();
  reading.after.pop_back();
  QCOMPARE(filmed(reading).doubts, (std::vector<Doubt>{{DoubtKind::BallLost, BallName(5), std::nullopt}}));
  ShotEvent fall;
  fall.kind = EventKind::Pocket;
  fall.ball = BallName(5);
  fall.pocket = PocketName::SideLeft;
  reading.events.push_back(fall);
  QVERIFY(filmed(reading).doubts.empty());
}

void FilmedShotTest::ballsPastTheHeadStringAreCounted() {
  QVERIFY(!filmed(clearShot()).pastHeadString);
  const ShotEvents shot =
      filmed(clearShot(), {straightTrack(0, {0.0, 0.0}, {-0.8, 0.0}), straightTrack(2, {0.3, 0.0}, {-0.64, 0.0}),
                           straightTrack(5, {0.0, 0.4}, {-0.6, 0.4})});
  QCOMPARE(shot.pastHeadString, std::optional(std::vector<BallName>{BallName(2)}));
}

void FilmedShotTest::anUnsureReadingStaysUnsure() {
  ShotReading reading = clearShot();
  reading.outcomeVerdict = Verdict::Ask;
  QCOMPARE(filmed(reading).doubts, (std::vector<Doubt>{{DoubtKind::Unfinished, std::nullopt, std::nullopt}}));
}

FERRULE_TEST(FilmedShotTest)
#include "filmed_shot_test.moc"
