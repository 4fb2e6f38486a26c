// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/record/record.h"
#include "core/record/recorded_shot.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// One player's shots at once.
class RecordStatisticsTest : public QObject {
  Q_OBJECT
 private slots:
  void aShotComesWithWhatStatisticsNeed();
  void onlyThePlayersShotsComeAndInOrder();
  void aPeriodTakesSessionsByTheirStart();
  void whatPeopleChangedIsToldApart();
  void foulsAndWonFramesComeFromTheRuling();
  void lossesComeFromTheSuggestion();
  void figuresComeFromTheSuggestionsContent();
  void theReplyToASafetyIsSomebodyElsesShot();
  void whetherTheCueBallMetACushionIsToldOfPots();
  void aPlayerWithoutShotsHasNone();
};

void RecordStatisticsTest::aShotComesWithWhatStatisticsNeed() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  QVERIFY(record.appendShot(game.frame, sample::shot(1), {}, game.ben).has_value());
  const ShotReading whole = sample::shot(2);
  QVERIFY(record.appendShot(game.frame, whole, {}, game.ada).has_value());
  const auto shots = record.shotsOf(game.ada, {});
  QVERIFY(shots.has_value());
  QCOMPARE(shots->size(), std::size_t{1});
  const RecordedShot& shot = shots->front();
  QVERIFY(record.shot(shot.id).has_value());
  QCOMPARE(record.shot(shot.id)->reading.number, whole.number);
  QCOMPARE(shot.game, record.frames(game.session)->front().game);
  QCOMPARE(shot.session, game.session);
  QCOMPARE(shot.frame, game.frame);
  QCOMPARE(shot.struckAt, std::optional<UtcMilliseconds>(1'760'000'000'000 + 20'250));
  QCOMPARE(shot.restBefore_s, std::optional(sample::shot(1).rest_s));
  ShotReading expected = whole;
  expected.before.pop_back();  // neither cue ball nor target
  expected.after.pop_back();
  expected.events.clear();
  expected.delivery.elevation_rad.reset();
  QCOMPARE(shot.reading, expected);
  QVERIFY(!shot.corrected && !shot.targetByPerson && !shot.ruled && !shot.fouled && !shot.wonFrame);
}

void RecordStatisticsTest::onlyThePlayersShotsComeAndInOrder() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const FrameId second = *record.addFrame({game.session, "eight-ball", game.film, {}});
  QVERIFY(record.appendShot(second, sample::shot(1), {}, game.ada).has_value());
  for (int i = 3; i > 0; --i)
    QVERIFY(record.appendShot(game.frame, sample::shot(i), {}, i == 2 ? game.ben : game.ada).has_value());
  const auto shots = record.shotsOf(game.ada, {});
  QCOMPARE(shots->size(), std::size_t{3});
  QCOMPARE((*shots)[0].reading.number, 1);
  QCOMPARE((*shots)[1].reading.number, 3);
  QCOMPARE((*shots)[2].frame, second);
  for (const RecordedShot& shot : *shots)
    QCOMPARE(shot.reading.pocketed.size(), std::size_t{1});
}

void RecordStatisticsTest::aPeriodTakesSessionsByTheirStart() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  QVERIFY(record.appendShot(game.frame, sample::shot(1), {}, game.ada).has_value());
  constexpr UtcMilliseconds kStart = 1'760'000'000'000;
  QCOMPARE(record.shotsOf(game.ada, {kStart, kStart + 1})->size(), std::size_t{1});
  QVERIFY(record.shotsOf(game.ada, {kStart + 1, kStart + 2})->empty());
  QVERIFY(record.shotsOf(game.ada, {0, kStart})->empty());
}

void RecordStatisticsTest::whatPeopleChangedIsToldApart() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const ShotId first = *record.appendShot(game.frame, sample::shot(1), {}, game.ada);
  const ShotId second = *record.appendShot(game.frame, sample::shot(2), {}, game.ada);
  QVERIFY(record.correctShot(first, ShotField::Outcome, "miss", "coach", 1).has_value());
  QVERIFY(record.addTag(second, "thin cut").has_value());
  QVERIFY(record.addTag(second, "bridge").has_value());
  QVERIFY(record.correctShot(second, ShotField::TargetPocket, "head-left", "coach", 1).has_value());
  const auto shots = record.shotsOf(game.ada, {});
  QVERIFY((*shots)[0].corrected && !(*shots)[0].targetByPerson);
  QCOMPARE((*shots)[0].reading.outcome, Outcome::Miss);
  QVERIFY((*shots)[1].corrected && (*shots)[1].targetByPerson);
  QCOMPARE((*shots)[1].reading.target->pocket, PocketName::HeadLeft);
  QVERIFY(!(*shots)[1].reading.target->lineError_rad);
  QVERIFY((*shots)[0].tags.empty());
  QCOMPARE((*shots)[1].tags, (std::vector<std::string>{"bridge", "thin cut"}));
}

void RecordStatisticsTest::foulsAndWonFramesComeFromTheRuling() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const auto ruled = [](const std::vector<std::string>& fouls, const std::string& result) {
    return RulingEntry{Verdict::Certain, fouls, "{\"shooter\":\"second\",\"result\":" + result + "}"};
  };
  int number = 1;
  for (const auto& ruling : {ruled({}, "null"), ruled({"scratch"}, "null"), ruled({}, "{\"winner\":\"second\"}"),
                             ruled({}, "{\"winner\":\"first\"}")}) {
    QVERIFY(record.appendShot(game.frame, sample::shot(number++), {}, game.ada, ruling).has_value());
  }
  const auto shots = record.shotsOf(game.ada, {});
  QVERIFY(shots.has_value());
  QVERIFY((*shots)[0].ruled && !(*shots)[0].fouled && !(*shots)[0].wonFrame);
  QVERIFY((*shots)[1].fouled);
  QVERIFY((*shots)[2].wonFrame);
  QVERIFY(!(*shots)[3].wonFrame);
}

void RecordStatisticsTest::lossesComeFromTheSuggestion() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const ShotId shot = *record.appendShot(game.frame, sample::shot(1), {}, game.ada);
  QVERIFY(record.keepSuggestion(shot, {"planner 1", true, 0.07, std::nullopt, "[]"}).has_value());
  const auto shots = record.shotsOf(game.ada, {});
  const SuggestionFigures& figures = shots->front().suggestion;
  QVERIFY(figures.shown);
  QCOMPARE(figures.choiceLoss, std::optional(0.07));
  QVERIFY(!figures.deliveryLoss);
  // What the content does not hold is not there, and is never 0.
  QVERIFY(!figures.potChance && !figures.leave && !figures.nextBall && !figures.askedSpeed_mps);
}

void RecordStatisticsTest::figuresComeFromTheSuggestionsContent() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const ShotId shot = *record.appendShot(game.frame, sample::shot(1), {}, game.ada);
  const BallAt left = sample::shot(1).after.back();
  const std::string ball(toText(left.ball));
  const auto content = [&](int rank) {
    return R"({"plans": [{"kind": "direct", "pot_chance": 0.3}], "review": {"suggested": {"speed_m_s": 1.8, "side": 0,)"
           R"( "height": 0.25}, "taken": {"rank": )" +
           std::to_string(rank) + R"(, "pot_chance": 0.75, "leave_x_mm": 100, "leave_y_mm": -50, "next_ball": ")" +
           ball + "\"}}}";
  };
  QVERIFY(record.keepSuggestion(shot, {"planner 2", true, 0.0, 0.1, content(1)}).has_value());
  auto shots = record.shotsOf(game.ada, {});
  QVERIFY(shots.has_value());
  const SuggestionFigures& figures = shots->front().suggestion;
  QCOMPARE(figures.potChance, std::optional(0.75));
  QCOMPARE(figures.leave, std::optional(TablePoint{0.1, -0.05}));
  QCOMPARE(figures.nextBall, std::optional(left.ball));
  QCOMPARE(shots->front().nextBallAt, std::optional(left.position));
  QCOMPARE(figures.askedSpeed_mps, std::optional(1.8));
  QCOMPARE(figures.askedSide, std::optional(0.0));
  QCOMPARE(figures.askedHeight, std::optional(0.25));
  // Another plan than the one that was shown first was not asked for.
  QVERIFY(record.keepSuggestion(shot, {"planner 2", true, 0.0, 0.1, content(2)}).has_value());
  shots = record.shotsOf(game.ada, {});
  QVERIFY(!shots->front().suggestion.askedSpeed_mps);
  QCOMPARE(shots->front().suggestion.potChance, std::optional(0.75));
}

void RecordStatisticsTest::theReplyToASafetyIsSomebodyElsesShot() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const auto safety = [](int number) {
    ShotReading reading = sample::shot(number);
    reading.outcome = Outcome::Safety;
    return reading;
  };
  QVERIFY(record.appendShot(game.frame, safety(1), {}, game.ada).has_value());
  const ShotId hers = *record.appendShot(game.frame, safety(2), {}, game.ada);
  ShotReading answer = sample::shot(3);
  answer.outcome = Outcome::Miss;
  const ShotId reply = *record.appendShot(game.frame, answer, {}, game.ben);
  QVERIFY(record.correctShot(hers, ShotField::Outcome, "safety", "coach", 1).has_value());
  auto shots = record.shotsOf(game.ada, {});
  QVERIFY(!(*shots)[0].reply);  // her own shot came next
  QVERIFY((*shots)[1].reply.has_value());
  QCOMPARE((*shots)[1].reply->outcome, Outcome::Miss);
  QVERIFY(!(*shots)[1].reply->fouled);
  QVERIFY(!(*shots)[1].reply->directChance);
  const auto plans = [](const char* kind) {
    return std::string(R"({"plans": [{"kind": ")") + kind + R"(", "pot_chance": 0.2}]})";
  };
  QVERIFY(record.keepSuggestion(reply, {"planner 2", false, {}, {}, plans("bank")}).has_value());
  QCOMPARE((*record.shotsOf(game.ada, {}))[1].reply->directChance, std::optional(0.0));
  QVERIFY(record.keepSuggestion(reply, {"planner 2", false, {}, {}, plans("direct")}).has_value());
  QCOMPARE((*record.shotsOf(game.ada, {}))[1].reply->directChance, std::optional(0.2));
  // A direct pot that was tried and is not among the plans that are listed counts, too.
  const std::string unlisted = R"({"direct_chance": 0.3, "plans": [{"kind": "safety", "pot_chance": 0.0}]})";
  QVERIFY(record.keepSuggestion(reply, {"planner 2", false, {}, {}, unlisted}).has_value());
  QCOMPARE((*record.shotsOf(game.ada, {}))[1].reply->directChance, std::optional(0.3));
}

void RecordStatisticsTest::whetherTheCueBallMetACushionIsToldOfPots() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const auto told = [&](int number, bool cueBall, bool events) {
    ShotReading reading = sample::shot(number);
    reading.outcome = Outcome::Pot;
    reading.events.clear();
    if (events) {
      reading.events = {
          {0.4, EventKind::Ball, kCueBall, *ballFromText("3"), {}, {}, {}},
          {0.9, EventKind::Cushion, cueBall ? kCueBall : *ballFromText("3"), {}, CushionName::Foot, {}, {}}};
    }
    if (!record.appendShot(game.frame, reading, {}, game.ada)) return std::optional<bool>();
    return record.shotsOf(game.ada, {})->back().cushionMet;
  };
  QCOMPARE(told(1, true, true), std::optional(true));
  QCOMPARE(told(2, false, true), std::optional(false));
  QCOMPARE(told(3, false, false), std::optional<bool>());
}

void RecordStatisticsTest::aPlayerWithoutShotsHasNone() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  QVERIFY(record.shotsOf(game.ben, {})->empty());
}

FERRULE_TEST(RecordStatisticsTest)
#include "record_statistics_test.moc"
