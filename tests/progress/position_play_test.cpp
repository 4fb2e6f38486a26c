// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/position_play.h"

#include <QtTest>
#include <cmath>

#include "core/progress/history_filter.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

PlayerHistory sessionsOf(std::size_t count) {
  PlayerHistory history;
  history.player = "Invented";
  history.tables = {{"9ft", Table{}, 0.028575}};
  for (std::size_t i = 0; i < count; ++i)
    history.sessions.push_back(
        {static_cast<std::int64_t>(i) + 1, "s", static_cast<std::int64_t>(i) * 86'400'000, 0, {}});
  return history;
}

/// A ball was potted into the side; the next one lies straight out from the foot-left pocket on the middle line, so
/// that a cue ball below the line cuts it to the left and one above it to the right.
PlayedShot leave(TablePoint meant, TablePoint rest) {
  PlayedShot shot;
  shot.outcome = Outcome::Pot;
  shot.made = true;
  shot.potted = 1;
  shot.pocket = PocketName::SideLeft;
  shot.cut_rad = 0.4;
  shot.objectBall = TablePoint{0.0, 0.3};
  shot.meant.rest = meant;
  shot.rest = rest;
  shot.cushionMet = false;
  const Table table;
  const TablePoint mouth = pockets(table)[static_cast<std::size_t>(PocketName::FootLeft)].mouth;
  shot.nextBall = mouth - TableVector{0.4, 0.4};
  return shot;
}

}  // namespace

/// Position for the next ball.
class PositionPlayTest : public QObject {
  Q_OBJECT
 private slots:
  void theSideIsTheSideOfTheNextBallsLine();
  void withoutAPlannedSideThereIsNone();
  void longIsFartherFromTheContact();
  void offACushionNothingIsLongOrShort();
  void sharesAndCostsAreByTheSide();
  void wrongSidesAreListed();
};

void PositionPlayTest::theSideIsTheSideOfTheNextBallsLine() {
  const PlayedTable table{"9ft", Table{}, 0.028575};
  // The line to the pocket runs at 45 degrees through the next ball.
  const TablePoint next = *leave({}, {}).nextBall;
  const auto from = [&](double back, double aside) {
    const double s = std::sqrt(0.5);
    return TablePoint{next.x - s * back - s * aside, next.y - s * back + s * aside};
  };
  const TablePoint left = from(0.5, 0.2);
  const TablePoint right = from(0.5, -0.2);
  const TablePoint onLine = from(0.5, 0.01);
  QCOMPARE(isOnWrongSide(leave(left, from(0.9, 0.1)), table), std::optional(false));
  QCOMPARE(isOnWrongSide(leave(left, right), table), std::optional(true));
  QCOMPARE(isOnWrongSide(leave(right, left), table), std::optional(true));
  QCOMPARE(isOnWrongSide(leave(right, right), table), std::optional(false));
  // On the line every way is open.
  QCOMPARE(isOnWrongSide(leave(left, onLine), table), std::optional(false));
  // A straight shot that was meant has no side.
  QVERIFY(!isOnWrongSide(leave(onLine, right), table));
}

void PositionPlayTest::withoutAPlannedSideThereIsNone() {
  const PlayedTable table{"9ft", Table{}, 0.028575};
  const PlayedShot whole = leave({0.3, 0.1}, {0.5, -0.3});
  QVERIFY(isOnWrongSide(whole, table).has_value());
  const auto without = [&](auto&& change) {
    PlayedShot shot = whole;
    change(shot);
    return isOnWrongSide(shot, table);
  };
  QVERIFY(!without([](PlayedShot& s) { s.made = false; }));
  QVERIFY(!without([](PlayedShot& s) { s.foul = true; }));
  QVERIFY(!without([](PlayedShot& s) { s.rest.reset(); }));
  QVERIFY(!without([](PlayedShot& s) { s.nextBall.reset(); }));
  QVERIFY(!without([](PlayedShot& s) { s.meant.rest.reset(); }));
}

void PositionPlayTest::longIsFartherFromTheContact() {
  const PlayedTable table{"9ft", Table{}, 0.028575};
  // The contact is two radii below the object ball: its pocket lies straight above.
  const TablePoint contact{0.0, 0.3 - 2.0 * 0.028575};
  const PlayedShot shot = leave({contact.x + 0.3, contact.y - 0.4}, {contact.x + 0.6, contact.y - 0.8});
  QVERIFY(std::abs(*longBy_m(shot, table) - 0.5) < 1e-12);
  const PlayedShot shorter = leave({contact.x + 0.3, contact.y - 0.4}, {contact.x + 0.12, contact.y - 0.16});
  QVERIFY(std::abs(*longBy_m(shorter, table) + 0.3) < 1e-12);
  // A ball that was to stop at the contact and rolled on is long, whichever way.
  const PlayedShot rolledOn = leave(contact, {contact.x + 0.1, contact.y});
  QVERIFY(std::abs(*longBy_m(rolledOn, table) - 0.1) < 1e-12);
}

void PositionPlayTest::offACushionNothingIsLongOrShort() {
  const PlayedTable table{"9ft", Table{}, 0.028575};
  const TablePoint contact{0.0, 0.3 - 2.0 * 0.028575};
  PlayedShot shot = leave({contact.x + 0.3, contact.y - 0.4}, {contact.x + 0.6, contact.y - 0.8});
  shot.cushionMet = true;
  QVERIFY(!longBy_m(shot, table));
  shot.cushionMet.reset();  // nobody followed the cue ball
  QVERIFY(!longBy_m(shot, table));
  shot.cushionMet = false;
  QVERIFY(longBy_m(shot, table).has_value());
  // The plan came back off a cushion to the other side of the contact, and the ball died before it.
  QVERIFY(!longBy_m(leave({contact.x - 0.3, contact.y - 0.1}, {contact.x + 0.2, contact.y - 0.2}), table));
}

void PositionPlayTest::sharesAndCostsAreByTheSide() {
  PlayerHistory history = sessionsOf(6);
  const TablePoint next = *leave({}, {}).nextBall;
  const TablePoint left{next.x - 0.5, next.y - 0.2};
  const TablePoint right{next.x - 0.2, next.y - 0.5};
  for (int i = 0; i < 60; ++i) {
    const bool wrong = i % 5 == 0;
    PlayedShot shot = leave(left, wrong ? right : left);
    shot.session = static_cast<std::size_t>(i) % 6;
    shot.deliveryLoss = wrong ? 0.20 : 0.05;
    history.shots.push_back(shot);
  }
  std::ranges::stable_sort(history.shots, {}, &PlayedShot::session);
  const PositionPlay play = positionPlay(history, {1, 199});
  QCOMPARE(play.told, 60);
  QCOMPARE(play.wrongSide->value, 0.2);
  QVERIFY(play.wrongSide->interval.holds(0.2));
  QVERIFY(std::abs(play.lossWrong->value - 0.20) < 1e-12);
  QVERIFY(std::abs(play.lossRight->value - 0.05) < 1e-12);
  QVERIFY(std::abs(play.lossInAll->value - 0.08) < 1e-12);
  history.shots.clear();
  QVERIFY(positionPlay(history, {1, 199}).wrongSide.error().kind == ShortageKind::NoValues);
}

void PositionPlayTest::wrongSidesAreListed() {
  PlayerHistory history = sessionsOf(1);
  const TablePoint next = *leave({}, {}).nextBall;
  history.shots = {leave({next.x - 0.5, next.y - 0.2}, {next.x - 0.5, next.y - 0.2}),
                   leave({next.x - 0.5, next.y - 0.2}, {next.x - 0.2, next.y - 0.5})};
  history.shots[1].id = 2;
  HistoryFilter filter;
  filter.group = ShotGroup::WrongSide;
  const PlayerHistory left = filtered(history, filter);
  QCOMPARE(left.shots.size(), std::size_t{1});
  QCOMPARE(left.shots.front().id, std::int64_t{2});
}

FERRULE_TEST(PositionPlayTest)
#include "position_play_test.moc"
