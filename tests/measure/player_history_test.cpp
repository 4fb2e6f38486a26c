// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/player_history.h"

#include <QTemporaryDir>
#include <QtTest>
#include <cmath>

#include "tests/support/squad_record.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// From the record to the statistics' values.
class PlayerHistoryTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase();
  void whatWasPlayedComesBackAsItWas();
  void anUnknownPlayerIsNotFound();
  void aPeriodWithoutSessionsIsEmpty();

 private:
  [[nodiscard]] Record open() const { return std::move(*Record::open(folder_.filePath("squad.sqlite").toStdString())); }
  QTemporaryDir folder_;
  invented::Squad squad_;
};

void PlayerHistoryTest::initTestCase() {
  std::vector<invented::Habits> two = invented::juniorSquad();
  two.resize(2);
  invented::Plan plan;
  plan.weeks = 2;
  plan.practiceShots = 25;
  plan.matchShots = 20;
  squad_ = invented::squad(two, plan);
  Record record = open();
  QVERIFY(invented::putInto(record, squad_).has_value());
}

void PlayerHistoryTest::whatWasPlayedComesBackAsItWas() {
  Record record = open();
  const PlayerHistory played = invented::historyOf(squad_, 1);
  const auto read = playerHistory(record, played.player, {});
  QVERIFY(read.has_value());
  QCOMPARE(read->tables.size(), std::size_t{1});
  QCOMPARE(read->tables.front().table, played.tables.front().table);
  QCOMPARE(read->sessions.size(), played.sessions.size());
  for (std::size_t i = 0; i < read->sessions.size(); ++i) {
    QCOMPARE(read->sessions[i].occasion, played.sessions[i].occasion);
    QCOMPARE(read->sessions[i].started_ms, played.sessions[i].started_ms);
  }
  QCOMPARE(read->shots.size(), played.shots.size());
  for (std::size_t i = 0; i < played.shots.size(); ++i) {
    PlayedShot shot = read->shots[i];
    const PlayedShot& expected = played.shots[i];
    // Minutes count from the player's own first shot, to a millisecond.
    std::size_t first = i;
    while (first > 0 && played.shots[first - 1].session == expected.session)
      --first;
    QVERIFY(std::abs(*shot.minutes - (*expected.minutes - *played.shots[first].minutes)) < 1e-4);
    QVERIFY(shot.ruled == (played.sessions[expected.session].occasion == Occasion::Match));
    const auto stored = record.shot(ShotId{shot.id});
    QVERIFY(stored.has_value() && stored->reading.number == expected.number);
    QVERIFY(shot.game == (shot.ruled ? "eight-ball" : ""));
    shot.id = expected.id;
    shot.game = expected.game;
    shot.minutes = expected.minutes;
    shot.frame = expected.frame;
    shot.ruled = expected.ruled;
    // The first shot of a later frame has none before it in its frame.
    if (shot.number == 1) shot.preparation_s = expected.preparation_s;
    QVERIFY2(shot == expected, qPrintable(QString::number(i)));
  }
}

void PlayerHistoryTest::anUnknownPlayerIsNotFound() {
  Record record = open();
  const auto read = playerHistory(record, "Nobody", {});
  QVERIFY(!read.has_value());
  QCOMPARE(read.error().code, ErrorCode::NotFound);
  QCOMPARE(read.error().subject, std::string("Nobody"));
}

void PlayerHistoryTest::aPeriodWithoutSessionsIsEmpty() {
  Record record = open();
  const auto read = playerHistory(record, squad_.players[0].name, {0, 1});
  QVERIFY(read.has_value());
  QVERIFY(read->shots.empty());
  QVERIFY(read->sessions.empty());
}

FERRULE_TEST(PlayerHistoryTest)
#include "player_history_test.moc"
