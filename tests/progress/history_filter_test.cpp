// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/history_filter.h"

#include <QtTest>
#include <cmath>

#include "core/progress/game_measures.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

PlayedShot pot(std::size_t session, std::int64_t id, double cut_rad, bool made) {
  PlayedShot shot;
  shot.id = id;
  shot.session = session;
  shot.game = session == 0 ? "eight-ball" : "nine-ball";
  shot.pocket = PocketName::FootLeft;
  shot.cut_rad = cut_rad;
  shot.made = made;
  if (!made) shot.missSide = MissSide::Under;
  shot.speed_mps = 1.0 + cut_rad;
  return shot;
}

/// A practice on one table and a match on another.
PlayerHistory twoSessions() {
  PlayerHistory history;
  history.player = "Invented";
  history.tables = {{"One", {}, 0.028575}, {"Two", {}, 0.028575}};
  history.sessions = {{1, "practice", 1000, 0, Occasion::Practice}, {2, "match", 2000, 1, Occasion::Match}};
  history.shots = {pot(0, 1, 0.2, true), pot(0, 2, 0.9, false), pot(1, 3, 0.3, false), pot(1, 4, 1.0, true)};
  PlayedShot safety;
  safety.id = 5;
  safety.session = 1;
  safety.outcome = Outcome::Safety;
  history.shots.push_back(safety);
  return history;
}

std::vector<std::int64_t> idsOf(const PlayerHistory& history) {
  std::vector<std::int64_t> ids;
  for (const PlayedShot& shot : history.shots)
    ids.push_back(shot.id);
  return ids;
}

using Ids = std::vector<std::int64_t>;

}  // namespace

/// Choosing from a history.
class HistoryFilterTest : public QObject {
  Q_OBJECT
 private slots:
  void noConditionChangesNothing();
  void aPeriodEndsBeforeItsEnd();
  void sessionsAndTablesWithoutAShotGo();
  void conditionsOnShotsHoldTogether();
  void sideTimeAndSurenessAreConditions();
  void aShotWithoutAValuePassesNoConditionOnIt();
  void groupsHoldWhatTheySay();
  void longPotsHaveALargeProduct();
  void aTagFindsTheShotsThatBearIt();
  void aFrameIsLostByItsDearestChoice();
};

void HistoryFilterTest::noConditionChangesNothing() {
  const PlayerHistory history = twoSessions();
  QVERIFY(filtered(history, {}) == history);
}

void HistoryFilterTest::aPeriodEndsBeforeItsEnd() {
  HistoryFilter filter;
  filter.from_ms = 1000;
  filter.until_ms = 2000;
  QCOMPARE(idsOf(filtered(twoSessions(), filter)), (Ids{1, 2}));
}

void HistoryFilterTest::sessionsAndTablesWithoutAShotGo() {
  HistoryFilter filter;
  filter.occasion = Occasion::Match;
  const PlayerHistory left = filtered(twoSessions(), filter);
  QCOMPARE(idsOf(left), (Ids{3, 4, 5}));
  QCOMPARE(left.sessions.size(), std::size_t{1});
  QCOMPARE(left.tables.size(), std::size_t{1});
  QCOMPARE(left.tableOf(left.shots.front()).name, std::string("Two"));
  filter = {};
  filter.table = "One";
  QCOMPARE(idsOf(filtered(twoSessions(), filter)), (Ids{1, 2}));
  filter.table = "Three";
  QVERIFY(filtered(twoSessions(), filter).sessions.empty());
  filter = {};
  filter.game = "nine-ball";
  QCOMPARE(idsOf(filtered(twoSessions(), filter)), (Ids{3, 4}));
}

void HistoryFilterTest::conditionsOnShotsHoldTogether() {
  HistoryFilter filter;
  filter.group = ShotGroup::Missed;
  QCOMPARE(idsOf(filtered(twoSessions(), filter)), (Ids{2, 3}));
  filter.mostCut_rad = 0.5;
  QCOMPARE(idsOf(filtered(twoSessions(), filter)), (Ids{3}));
  filter.missSide = MissSide::Over;
  QVERIFY(filtered(twoSessions(), filter).shots.empty());
  filter = {};
  filter.leastSpeed_mps = 1.5;
  QCOMPARE(idsOf(filtered(twoSessions(), filter)), (Ids{2, 4}));
  filter.pocket = PocketName::HeadLeft;
  QVERIFY(filtered(twoSessions(), filter).shots.empty());
}

void HistoryFilterTest::aShotWithoutAValuePassesNoConditionOnIt() {
  HistoryFilter filter;
  filter.mostSpeed_mps = 99.0;
  QCOMPARE(idsOf(filtered(twoSessions(), filter)), (Ids{1, 2, 3, 4}));
  filter = {};
  filter.leastCut_rad = 0.0;
  QCOMPARE(idsOf(filtered(twoSessions(), filter)), (Ids{1, 2, 3, 4}));
}

void HistoryFilterTest::groupsHoldWhatTheySay() {
  PlayerHistory history = twoSessions();
  history.shots[0].deliveryLoss = 0.2;  // made, but the frame stood worse after it
  history.shots[1].deliveryLoss = 0.5;  // a miss loses more than position
  history.shots[2].choiceLoss = 0.1;
  history.shots[3].choiceLoss = 0.01;  // a tie
  history.shots[3].foul = true;
  const auto of = [&](ShotGroup group) {
    HistoryFilter filter;
    filter.group = group;
    return idsOf(filtered(history, filter));
  };
  QCOMPARE(of(ShotGroup::Missed), (Ids{2, 3}));
  QCOMPARE(of(ShotGroup::PositionLost), (Ids{1}));
  QCOMPARE(of(ShotGroup::PoorChoice), (Ids{3}));
  QCOMPARE(of(ShotGroup::Fouls), (Ids{4}));
  QCOMPARE(of(ShotGroup::Safeties), (Ids{5}));
  QVERIFY(of(ShotGroup::Breaks).empty());
}

/// Two ways of 0.635 m on a table of 2.54 m are two diamonds each: 4.
void HistoryFilterTest::longPotsHaveALargeProduct() {
  PlayerHistory history = twoSessions();
  history.shots[0].cueToGhost_m = 0.635;
  history.shots[0].objectToPocket_m = 0.635;
  history.shots[1].cueToGhost_m = 1.27;
  history.shots[1].objectToPocket_m = 0.9525;
  QVERIFY(std::abs(*distanceProduct(history.shots[0], history.tables[0]) - 4.0) < 1e-9);
  QVERIFY(std::abs(*distanceProduct(history.shots[1], history.tables[0]) - 12.0) < 1e-9);
  HistoryFilter filter;
  filter.mostProduct = 5.0;
  QCOMPARE(idsOf(filtered(history, filter)), (Ids{1}));
}

void HistoryFilterTest::aTagFindsTheShotsThatBearIt() {
  PlayerHistory history = twoSessions();
  history.shots[1].tags = {"bridge", "thin cut"};
  history.shots[3].tags = {"bridge"};
  HistoryFilter filter;
  filter.tag = "bridge";
  QCOMPARE(idsOf(filtered(history, filter)), (Ids{2, 4}));
  filter.tag = "thin";
  QVERIFY(idsOf(filtered(history, filter)).empty());
}

void HistoryFilterTest::aFrameIsLostByItsDearestChoice() {
  PlayerHistory history = twoSessions();
  const auto put = [&](std::size_t shot, std::int64_t frame, double choice, double delivery) {
    history.shots[shot].frame = frame;
    history.shots[shot].choiceLoss = choice;
    history.shots[shot].deliveryLoss = delivery;
  };
  put(0, 7, 0.05, 0.0);
  put(1, 7, 0.20, 0.1);
  put(2, 8, 0.10, 0.4);  // lost by the delivery
  put(3, 9, 0.30, 0.0);
  history.shots[3].wonFrame = true;
  markLostByChoice(history);
  HistoryFilter filter;
  filter.group = ShotGroup::LostByChoice;
  QCOMPARE(idsOf(filtered(history, filter)), (Ids{2}));
  history.shots[1].suggestionShown = true;
  markLostByChoice(history);
  QCOMPARE(idsOf(filtered(history, filter)), (Ids{1}));
}

void HistoryFilterTest::sideTimeAndSurenessAreConditions() {
  PlayerHistory history = twoSessions();
  history.shots[0].cutSide = CutSide::Left;
  history.shots[1].cutSide = CutSide::Right;
  history.shots[2].minutes = 39.9;
  history.shots[3].minutes = 40.0;
  history.shots[1].corrected = true;
  history.shots[2].verdict = Verdict::Ask;
  history.shots[3].tracked = false;
  const auto ids = [&](auto&& set) {
    HistoryFilter filter;
    set(filter);
    return idsOf(filtered(history, filter));
  };
  QCOMPARE(ids([](HistoryFilter& f) { f.cutSide = CutSide::Right; }), Ids{2});
  QCOMPARE(ids([](HistoryFilter& f) { f.leastMinutes = 40.0; }), Ids{4});
  QCOMPARE(ids([](HistoryFilter& f) { f.group = ShotGroup::Corrected; }), Ids{2});
  QCOMPARE(ids([](HistoryFilter& f) { f.group = ShotGroup::Unsure; }), Ids{3});
  QCOMPARE(ids([](HistoryFilter& f) { f.group = ShotGroup::Untracked; }), Ids{4});
}

FERRULE_TEST(HistoryFilterTest)
#include "history_filter_test.moc"
