// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <cmath>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "core/base/text_file.h"
#include "core/measure/correct_shot.h"
#include "core/measure/record_entries.h"
#include "core/reading/shot_reader.h"
#include "core/record/export_record.h"
#include "core/record/merge_record.h"
#include "core/record/recorded_shot.h"
#include "tests/reading/synthetic_play.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kSecondStrike_s = 8.0;
const BallName kThree{3};

/// A film of two shots: the cue ball is sent at the 3, and once all rest it is sent away from it.
struct Filmed {
  std::vector<ReadShot> shots;

  Filmed() {
    const MeasuredTable measured = synthetic::nineFeet();
    synthetic::Play play(measured, {{kCueBall, {-0.6, 0.1}}, {kThree, {0.3, 0.12}}, {BallName(9), {-0.8, -0.4}}});
    play.strike({1.5, 0.03, 1.2, 0.0});
    play.strike({kSecondStrike_s, 2.6, 0.9, 0.0});
    ShotReader reader(measured);
    for (const ImageReading& image : play.film(15.0, {60.0, 0.0004, 0.0, 5}))
      reader.feed(image);
    reader.finish();
    shots = reader.takeShots();
    if (shots.size() != 2) qFatal("the film shows two shots");
  }
};

/// Balls that met and fell, in order.
std::vector<std::pair<EventKind, BallName>> metIn(const ShotReading& reading) {
  std::vector<std::pair<EventKind, BallName>> met;
  for (const ShotEvent& event : reading.events) {
    if (event.kind != EventKind::Cushion) met.emplace_back(event.kind, event.ball);
  }
  return met;
}

/// What happened, for a failure's message.
QString told(const ShotReading& reading) {
  QString words = QStringLiteral("shot %1, %2 to %3 s: ").arg(reading.number).arg(reading.strike_s).arg(reading.rest_s);
  for (const ShotEvent& event : reading.events) {
    words +=
        QStringLiteral("%1 %2 at %3 s; ")
            .arg(QString::fromStdString(toText(event.ball)), QString::fromStdString(std::string(toText(event.kind))))
            .arg(event.time_s);
  }
  return words;
}

}  // namespace

/// Two shots that were read as one, one that was read as two, and balls that were put down between them.
class ShotBoundariesTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void twoShotsBecomeOneAndTwoAgain();
  void aShotThatWasPutAsideIsInNoListAndNoStatistic();
  void oneShotIsSplitIntoTheTwoThatItWas();
  void takingASplitBackPutsTheWholeFrameBack();
  void aSplitThatIsSaidAgainKeepsWhatWasSaidOfItsSecondShot();
  void boundariesThatCannotBeAreRefused();
  void aPlacementIsCorrectedAndPutBack();
  void aBallThatIsMovedMovesItsPlacement();
  void boundariesComeWithAMergedRecordAndAreTakenBackThere();
  void boundariesOnBothSidesLeaveTheFrameAsItIsHere();
  void whatBothPutAsideIsOneShot();
  void anExportHoldsWhatWasPutAside();
  void anAnswerOfWhatFellIsInTheReadingUntilItIsTakenBack();

 private:
  [[nodiscard]] std::vector<ShotSummary> rows() { return record_->shots(game_.frame).value(); }
  [[nodiscard]] std::vector<StoredShot> all() {
    std::vector<StoredShot> shots;
    for (const ShotSummary& row : rows())
      shots.push_back(*record_->shot(row.id));
    return shots;
  }
  SayReport say(ShotId shot, const ShotSaying& saying) {
    const auto report = sayOfShot(*record_, shot, saying, "Cleo", 77);
    if (!report) qFatal("the record failed");
    return *report;
  }
  [[nodiscard]] bool takeBack(const SayReport& said) {
    if (!said.correction) return false;
    const auto report = takeBackCorrection(*record_, game_.frame, *said.correction);
    return report && !report->why;
  }

  [[nodiscard]] std::string file(const char* name) const { return folder_->file(name); }
  /// The record as it stands, in a file of its own.
  void copyTo(const char* name) {
    record_.reset();
    std::filesystem::copy_file(file("a.sqlite"), file(name));
    record_.emplace(sample::openOrDie(file("a.sqlite")));
  }
  /// What a record holds, without the ids that it gave.
  [[nodiscard]] static std::vector<StoredShot> shotsOf(const std::string& path) {
    Record record = sample::openOrDie(path);
    std::vector<StoredShot> shots;
    const auto frame = record.frames(record.sessions()->back().id)->front().id;
    const auto rows = record.shots(frame);
    for (const ShotSummary& row : *rows) {
      StoredShot shot = *record.shot(row.id);
      shot.id = {};
      shot.frame = {};
      shot.session = {};
      shot.player.reset();
      for (ValueCorrection& correction : shot.corrections) {
        correction.id = {};
        correction.entityId = {};
        correction.cause.reset();
        if (correction.corrected && (correction.field == "joined" || correction.field == "split"))
          correction.corrected = correction.corrected->substr(0, correction.corrected->find(' '));
      }
      for (Note& note : shot.notes)
        note.id = {};
      shots.push_back(std::move(shot));
    }
    return shots;
  }
  [[nodiscard]] MergeReport merged(const char* into, const char* from) {
    record_.reset();
    const auto report = mergeRecord(file(into), file(from));
    if (!report) qFatal("%s %s", report.error().subject.c_str(), report.error().detail.c_str());
    if (!sample::openOrDie(file(into)).check()) qFatal("a broken record");
    return *report;
  }
  /// Takes the only joining of a record back.
  static void takeJoiningBack(const std::string& path) {
    Record record = sample::openOrDie(path);
    const auto frame = record.frames(record.sessions()->back().id)->front().id;
    const auto corrections = record.correctionsIn(frame);
    for (const auto& correction : *corrections) {
      if (correction.field != "joined" || !correction.corrected) continue;
      const auto report = takeBackCorrection(record, frame, correction.id);
      QVERIFY(report && !report->why);
      return;
    }
    QFAIL("no joining");
  }

  std::unique_ptr<sample::Folder> folder_;
  std::optional<Record> record_;
  sample::Game game_;
};

void ShotBoundariesTest::init() {
  static const Filmed filmed;
  record_.reset();
  folder_ = std::make_unique<sample::Folder>();
  record_.emplace(sample::openOrDie(folder_->file("a.sqlite")));
  game_ = sample::addGame(*record_);
  FilmReferee referee(worldRules(Game::EightBall), sample::table());
  for (const ReadShot& shot : filmed.shots) {
    const FilmRuling ruling = referee.judge({shot.reading, shot.tracks});
    QVERIFY(record_->appendShot(game_.frame, shot.reading, shot.tracks, game_.ada, entryOf(ruling.ruled)).has_value());
  }
  // A third one, so that numbers behind a boundary move.
  QVERIFY(record_->appendShot(game_.frame, sample::shot(3), sample::tracks(3), game_.ben).has_value());
  QVERIFY(record_->addPlacement(game_.frame, {kThree, 7.25, {0.4, -0.1}}).has_value());
  QVERIFY(record_->addPlacement(game_.frame, {kThree, 7.6, {0.45, -0.12}}).has_value());
}

void ShotBoundariesTest::twoShotsBecomeOneAndTwoAgain() {
  const auto before = all();
  const SayReport joined = say(before[0].id, JoinSaid{});
  QVERIFY(joined.correction.has_value());
  const auto after = all();
  QCOMPARE(after.size(), std::size_t{2});
  QCOMPARE(after[0].reading.number, 1);
  QCOMPARE(after[1].reading.number, 2);
  QCOMPARE(after[1].id, before[2].id);
  // One way from the first image of the first shot to the last of the second, each image once.
  const Track& cue = after[0].tracks.front();
  QCOMPARE(cue.samples.front().time_s, before[0].tracks.front().samples.front().time_s);
  QCOMPARE(cue.samples.back().time_s, before[1].tracks.front().samples.back().time_s);
  QVERIFY(std::ranges::is_sorted(cue.samples, std::ranges::less_equal(), &TrackSample::time_s));
  QVERIFY(after[0].reading.rest_s > kSecondStrike_s);
  QVERIFY(std::abs(after[0].reading.strike_s - before[0].reading.strike_s) < 0.002);
  QCOMPARE(after[0].corrections.front().field, std::string("joined"));
  QVERIFY(takeBack(joined));
  QVERIFY(all() == before);
}

void ShotBoundariesTest::aShotThatWasPutAsideIsInNoListAndNoStatistic() {
  const ShotId second = rows()[1].id;
  const auto counts = [&] {
    return std::array{record_->sessions()->front().shots, record_->frames(game_.session)->front().shots};
  };
  const auto isCounted = [&] {
    const auto mine = record_->shotsOf(game_.ada, {});
    return mine && std::ranges::find(*mine, second, &RecordedShot::id) != mine->end();
  };
  QVERIFY(record_->correctShot(second, ShotField::Player, "Ada", "Cleo", 1).has_value());
  QVERIFY(isCounted());
  QVERIFY(counts() == (std::array{3, 3}));
  const SayReport joined = say(rows()[0].id, JoinSaid{});
  QVERIFY(!isCounted());
  QVERIFY(counts() == (std::array{2, 2}));
  QVERIFY(takeBack(joined));
  QVERIFY(isCounted());
  QVERIFY(counts() == (std::array{3, 3}));
}

void ShotBoundariesTest::oneShotIsSplitIntoTheTwoThatItWas() {
  const auto apart = all();
  QVERIFY(say(apart[0].id, JoinSaid{}).correction.has_value());
  const SayReport split = say(apart[0].id, SplitSaid{kSecondStrike_s - 0.004});
  QVERIFY(split.correction.has_value() && split.made);
  const auto again = all();
  QCOMPARE(again.size(), std::size_t{3});
  for (std::size_t i = 0; i < 2; ++i) {
    const ShotReading& now = again[i].reading;
    const ShotReading& then = apart[i].reading;
    QCOMPARE(now.number, then.number);
    QCOMPARE(now.firstContact, then.firstContact);
    QCOMPARE(now.pocketed, then.pocketed);
    // A touch of a cushion at walking pace just before rest is not found again in every part: the images around it
    // differ.
    QVERIFY2(metIn(now) == metIn(then), qPrintable(told(now) + told(then)));
    QVERIFY(std::abs(now.strike_s - then.strike_s) < 0.02);
    QVERIFY(std::abs(now.rest_s - then.rest_s) < 0.3);
    QVERIFY(now.delivery.aim_rad.has_value() == then.delivery.aim_rad.has_value());
    for (const BallAt& at : then.after)
      QVERIFY(distance(ballIn(now.after, at.ball)->position, at.position) < 0.002);
    QVERIFY(again[i].ruling.has_value());
  }
  QCOMPARE(again[1].id, split.made);
  QCOMPARE(again[1].tracks.front().samples.back(), apart[1].tracks.front().samples.back());
  QVERIFY(again[0].tracks.front().samples.back().time_s < kSecondStrike_s);
  QCOMPARE(again[2].reading.number, 3);
}

void ShotBoundariesTest::takingASplitBackPutsTheWholeFrameBack() {
  QVERIFY(say(rows()[0].id, JoinSaid{}).correction.has_value());
  const auto before = all();
  const SayReport split = say(before[0].id, SplitSaid{kSecondStrike_s});
  QVERIFY(all() != before);
  QVERIFY(takeBack(split));
  QVERIFY(all() == before);
  QVERIFY(!record_->shot(split.made).has_value());
}

void ShotBoundariesTest::aSplitThatIsSaidAgainKeepsWhatWasSaidOfItsSecondShot() {
  const ShotId first = rows()[0].id;
  const SayReport placed = say(first, OutcomeSaid{Outcome::Safety, std::nullopt});
  QVERIFY(say(first, JoinSaid{}).correction.has_value());
  const SayReport split = say(first, SplitSaid{kSecondStrike_s});
  QVERIFY(say(split.made, PlayerSaid{"Ben"}).correction.has_value());
  // What was said first is taken back from under all of that.
  const auto report = takeBackCorrection(*record_, game_.frame, *placed.correction);
  QVERIFY(report.has_value() && !report->why);
  QCOMPARE(report->renewed.size(), std::size_t{3});
  QCOMPARE(report->remade.size(), std::size_t{1});
  QCOMPARE(report->remade.front().first, split.made);
  const auto now = all();
  QCOMPARE(now.size(), std::size_t{3});
  QCOMPARE(now[1].id, report->remade.front().second);
  QCOMPARE(now[1].playerName, std::string("Ben"));
  QCOMPARE(now[1].corrections.front().who, std::string("Cleo"));
  QVERIFY(std::ranges::none_of(now[0].corrections, [](const ValueCorrection& c) { return c.field == "outcome"; }));
}

void ShotBoundariesTest::boundariesThatCannotBeAreRefused() {
  const auto before = all();
  QCOMPARE(say(before[2].id, JoinSaid{}).why, std::optional(NotSaid::NoNextShot));
  QCOMPARE(say(before[0].id, SplitSaid{1.0}).why, std::optional(NotSaid::OutsideTracks));
  QCOMPARE(say(before[0].id, SplitSaid{before[0].reading.rest_s + 5.0}).why, std::optional(NotSaid::OutsideTracks));
  QCOMPARE(say(before[1].id, PlacementSaid{Placement{kThree, 1.0, {}}, std::nullopt}).why,
           std::optional(NotSaid::NoPlacement));
  QVERIFY(all() == before);
}

void ShotBoundariesTest::aPlacementIsCorrectedAndPutBack() {
  const auto before = all();
  const auto placed = record_->placements(game_.frame).value();
  QCOMPARE(placed.size(), std::size_t{2});
  // Nobody put it down the first time.
  const SayReport none = say(before[1].id, PlacementSaid{placed[0], std::nullopt});
  QCOMPARE(record_->placements(game_.frame).value(), std::vector<Placement>{placed[1]});
  // The second time it was another ball: then that ball lay there before the shot.
  Placement other = placed[1];
  other.ball = BallName(5);
  const SayReport another = say(before[1].id, PlacementSaid{placed[1], other});
  QCOMPARE(record_->placements(game_.frame).value(), std::vector<Placement>{other});
  const StoredShot now = *record_->shot(before[1].id);
  QVERIFY(ballIn(now.reading.before, kThree) == nullptr);
  QCOMPARE(ballIn(now.reading.before, BallName(5))->position, other.position);
  // One that nobody saw.
  const Placement added{BallName(9), 7.9, {-0.8, -0.4}};
  const SayReport more = say(before[1].id, PlacementSaid{std::nullopt, added});
  QCOMPARE(record_->placements(game_.frame).value(), (std::vector<Placement>{other, added}));
  for (const SayReport& said : {more, another, none})
    QVERIFY(takeBack(said));
  QCOMPARE(record_->placements(game_.frame).value(), placed);
  QVERIFY(all() == before);
}

void ShotBoundariesTest::aBallThatIsMovedMovesItsPlacement() {
  const auto before = all();
  const auto placed = record_->placements(game_.frame).value();
  const TablePoint there{0.5, -0.2};
  const SayReport moved = say(before[1].id, PlaceSaid{ShotEnd::Before, {kThree, there}});
  const auto now = record_->placements(game_.frame).value();
  QCOMPARE(now[0], placed[0]);
  QCOMPARE(now[1].position, there);
  QVERIFY(takeBack(moved));
  QCOMPARE(record_->placements(game_.frame).value(), placed);
  QVERIFY(all() == before);
}

void ShotBoundariesTest::boundariesComeWithAMergedRecordAndAreTakenBackThere() {
  {
    // Something of its own, so that the other record gives other ids.
    Record other = sample::openOrDie(file("b.sqlite"));
    const auto own = sample::addGame(other);
    for (int number : {1, 2, 3})
      QVERIFY(other.appendShot(own.frame, sample::shot(number), sample::tracks(number), own.ada).has_value());
  }
  copyTo("before.sqlite");
  const auto before = shotsOf(file("before.sqlite"));
  // One that never saw the frame, and one that knew it whole and noted something since.
  {
    Record known = sample::openOrDie(file("before.sqlite"));
    const auto frame = known.frames(known.sessions()->back().id)->front().id;
    QVERIFY(known.addNote(known.shots(frame)->at(2).id, "late", "Dee", 9).has_value());
  }
  QVERIFY(say(rows()[0].id, JoinSaid{}).correction.has_value());
  const auto joined = shotsOf(file("a.sqlite"));
  QCOMPARE(joined.size(), std::size_t{2});

  QCOMPARE(merged("b.sqlite", "a.sqlite").shots, 2);
  Record fresh = sample::openOrDie(file("b.sqlite"));
  const auto sessions = fresh.sessions();
  QCOMPARE(sessions->size(), std::size_t{2});

  const MergeReport report = merged("before.sqlite", "a.sqlite");
  QCOMPARE(report.framesUpdated, 1);
  QCOMPARE(report.framesApart, 0);
  QCOMPARE(report.shots, 0);
  auto now = shotsOf(file("before.sqlite"));
  QCOMPARE(now.size(), std::size_t{2});
  QCOMPARE(now[1].notes.size(), std::size_t{1});
  QCOMPARE(now[1].notes.front().text, std::string("late"));
  now[1].notes.clear();
  QVERIFY(now == joined);
  QVERIFY(merged("before.sqlite", "a.sqlite").isEmpty());
  takeJoiningBack(file("before.sqlite"));
  now = shotsOf(file("before.sqlite"));
  QCOMPARE(now.size(), before.size());
  now[2].notes.clear();
  QVERIFY(now == before);
}

void ShotBoundariesTest::boundariesOnBothSidesLeaveTheFrameAsItIsHere() {
  copyTo("other.sqlite");
  QVERIFY(say(rows()[0].id, JoinSaid{}).correction.has_value());
  {
    Record other = sample::openOrDie(file("other.sqlite"));
    const auto frame = other.frames(other.sessions()->back().id)->front().id;
    const auto second = other.shots(frame)->at(1).id;
    QVERIFY(other.correctShot(second, ShotField::Outcome, std::string("safety"), "Dee", 5).has_value());
  }
  const auto here = shotsOf(file("a.sqlite"));
  const MergeReport report = merged("a.sqlite", "other.sqlite");
  QCOMPARE(report.framesApart, 1);
  QCOMPARE(report.framesUpdated, 0);
  QVERIFY(shotsOf(file("a.sqlite")) == here);
  QCOMPARE(merged("other.sqlite", "a.sqlite").framesApart, 1);
}

void ShotBoundariesTest::whatBothPutAsideIsOneShot() {
  QVERIFY(say(rows()[0].id, JoinSaid{}).correction.has_value());
  {
    Record other = sample::openOrDie(file("b.sqlite"));
    const auto own = sample::addGame(other);
    QVERIFY(other.appendShot(own.frame, sample::shot(1), sample::tracks(1), own.ada).has_value());
  }
  (void)merged("b.sqlite", "a.sqlite");
  // Later one more correction here: it comes, and the shot that was put aside is still one.
  record_.emplace(sample::openOrDie(file("a.sqlite")));
  const auto last = rows()[1].id;
  QVERIFY(record_->correctShot(last, ShotField::Outcome, std::string("safety"), "Dee", 500).has_value());
  const MergeReport report = merged("b.sqlite", "a.sqlite");
  QCOMPARE(report.framesUpdated, 1);
  QCOMPARE(report.framesApart, 0);
  QCOMPARE(report.shots, 0);
  QVERIFY(merged("b.sqlite", "a.sqlite").isEmpty());
}

void ShotBoundariesTest::anExportHoldsWhatWasPutAside() {
  const ShotId second = rows()[1].id;
  QVERIFY(say(rows()[0].id, JoinSaid{}).correction.has_value());
  const auto report = exportRecord(*record_, {file("out"), std::nullopt});
  QVERIFY(report.has_value());
  // One of the two parts is no shot of its own any more: it is not counted, and no row of the table.
  QCOMPARE(report->shots, 2);
  const auto all = nlohmann::json::parse(*readTextFile(file("out/record.json")));
  const auto& frame = all["sessions"][0]["frames"][0];
  QCOMPARE(frame["shots"].size(), std::size_t{2});
  QCOMPARE(frame["put_aside"].size(), std::size_t{1});
  const auto& aside = frame["put_aside"][0];
  QCOMPARE(aside["number"].get<std::int64_t>(), -second.value);
  QVERIFY(aside["tracks"].size() > 1);
  // The correction names it.
  const auto said = frame["shots"][0]["corrections"][0]["corrected"].get<std::string>();
  QVERIFY(said.ends_with(" " + std::to_string(second.value)));
}

void ShotBoundariesTest::anAnswerOfWhatFellIsInTheReadingUntilItIsTakenBack() {
  const StoredShot before = all()[0];
  QVERIFY(before.reading.pocketed.empty());
  RulingSaid said;
  Testimony answer;
  answer.kind = TestimonyKind::Fell;
  answer.ball = kThree;
  answer.pocket = PocketName::FootLeft;
  said.said.answers = {answer};
  const SayReport report = say(before.id, said);
  const StoredShot after = all()[0];
  QCOMPARE(after.reading.pocketed, (std::vector<PocketedBall>{{kThree, PocketName::FootLeft}}));
  QCOMPARE(after.reading.outcome, Outcome::Pot);
  QCOMPARE(after.reading.outcomeVerdict, Verdict::Certain);
  QVERIFY(ballIn(after.reading.after, kThree) == nullptr);
  // The answer is the correction; the reading follows from it.
  QCOMPARE(after.corrections.front().field, std::string("ruling"));
  QVERIFY(takeBack(report));
  QVERIFY(all()[0] == before);
  // Answered otherwise, what was answered first is gone.
  QVERIFY(say(before.id, said).correction.has_value());
  said.said.answers[0].holds = false;
  QVERIFY(say(before.id, said).correction.has_value());
  const StoredShot otherwise = all()[0];
  QVERIFY(otherwise.reading.pocketed.empty());
  QCOMPARE(otherwise.reading.outcome, before.reading.outcome);
  QVERIFY(ballIn(otherwise.reading.after, kThree) != nullptr);
  // Off the table is no pot.
  answer.kind = TestimonyKind::LeftTable;
  said.said.answers = {answer};
  QVERIFY(say(before.id, said).correction.has_value());
  const StoredShot off = all()[0];
  QVERIFY(off.reading.pocketed.empty() && off.reading.outcome != Outcome::Pot);
  QVERIFY(ballIn(off.reading.after, kThree) == nullptr);
  QCOMPARE(off.reading.events.back().kind, EventKind::OffTable);
}

FERRULE_TEST(ShotBoundariesTest)
#include "shot_boundaries_test.moc"
