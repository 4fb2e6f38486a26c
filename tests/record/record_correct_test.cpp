// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/record/record.h"
#include "core/table/reading_text.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class RecordCorrectTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void aCorrectedValueKeepsTheMeasuredOne();
  void aCorrectedTargetLosesWhatWasMeasuredAgainstTheOldOne();
  void aCalledTargetTakesTheAccountOfTheMissWithIt();
  void withdrawingPutsEverythingBack();
  void onlyTheLatestCorrectionOfAFieldIsWithdrawn();
  void valuesThatAreNoneAreRefused();
  void everyFieldCanBeCorrected();
  void anOverruledRulingKeepsTheRefereesOwn();
  void aPlayersCorrectionSurvivesARename();
  void severalValuesAreOneCorrection();
  void aReadingPutAnewWaitsForWhatCameAfterIt();
  void oneWrongValueRefusesTheWholeCorrection();
  void notesAndTagsStayWithTheShot();
  void aNoteIsTakenAway();
  void everyTagOfTheRecordIsKnownOnce();
  void severalCallsAreOneTransaction();
  void aPartThatFailsTakesNothingElseWithIt();

 private:
  std::unique_ptr<sample::Folder> folder_;
  std::optional<Record> record_;
  sample::Game game_;
  ShotId shot_;
};

void RecordCorrectTest::init() {
  record_.reset();
  folder_ = std::make_unique<sample::Folder>();
  record_.emplace(sample::openOrDie(folder_->file("a.sqlite")));
  game_ = sample::addGame(*record_);
  shot_ = record_->appendShot(game_.frame, sample::shot(1), sample::tracks(1)).value();
}

void RecordCorrectTest::aCorrectedValueKeepsTheMeasuredOne() {
  QVERIFY(record_->correctShot(shot_, ShotField::Outcome, "safety", "Cleo", 1234).has_value());
  const auto shot = record_->shot(shot_);
  QVERIFY(shot.has_value());
  QVERIFY(shot->reading.outcome == Outcome::Safety);
  QVERIFY(shot->reading.outcomeVerdict == Verdict::Certain);
  QCOMPARE(shot->corrections.size(), std::size_t{2});
  const ValueCorrection& first = shot->corrections[0];
  QCOMPARE(first.field, std::string("outcome"));
  QVERIFY(first.measured == "pot");
  QVERIFY(first.corrected == "safety");
  QCOMPARE(first.who, std::string("Cleo"));
  QCOMPARE(first.when, std::int64_t{1234});
  QVERIFY(!first.cause.has_value());
  QCOMPARE(shot->corrections[1].field, std::string("verdict"));
  QVERIFY(shot->corrections[1].measured == "proposed");
  QVERIFY(shot->corrections[1].cause == first.id);
  QVERIFY(record_->shots(game_.frame)->front().corrected);
}

void RecordCorrectTest::aCorrectedTargetLosesWhatWasMeasuredAgainstTheOldOne() {
  QVERIFY(record_->correctShot(shot_, ShotField::TargetBall, "12", "Cleo", 1).has_value());
  const auto shot = record_->shot(shot_);
  QVERIFY(shot.has_value());
  QVERIFY(shot->reading.target == (Target{BallName(12), PocketName::FootRight, {}, {}, {}}));
  QCOMPARE(shot->corrections.size(), std::size_t{4});
}

/// The account of a miss is an account of that target's line.
void RecordCorrectTest::aCalledTargetTakesTheAccountOfTheMissWithIt() {
  const auto shot = record_->appendShot(game_.frame, sample::explainedShot(2), {});
  QVERIFY(shot.has_value());
  QVERIFY(record_->shot(*shot)->reading == sample::explainedShot(2));
  const auto correction = record_->correctShot(*shot, ShotField::TargetPocket, "side-left", "Cleo", 1);
  QVERIFY(correction.has_value());
  const ShotReading called = record_->shot(*shot)->reading;
  QVERIFY(!called.missAccount.has_value());
  QVERIFY(!called.target->missAtMouth_m.has_value());
  // What does not hang on the target stays.
  QVERIFY(called.events == sample::explainedShot(2).events);
  QVERIFY(called.flags == sample::explainedShot(2).flags);
  QVERIFY(record_->withdrawCorrection(*correction).has_value());
  QVERIFY(record_->shot(*shot)->reading == sample::explainedShot(2));
}

void RecordCorrectTest::withdrawingPutsEverythingBack() {
  const auto target = record_->correctShot(shot_, ShotField::TargetPocket, "side-left", "Cleo", 1);
  const auto outcome = record_->correctShot(shot_, ShotField::Outcome, "miss", "Cleo", 2);
  QVERIFY(target.has_value() && outcome.has_value());
  QVERIFY(record_->withdrawCorrection(*target).has_value());
  QVERIFY(record_->withdrawCorrection(*outcome).has_value());
  const auto shot = record_->shot(shot_);
  QVERIFY(shot.has_value());
  QCOMPARE(shot->reading, sample::shot(1));
  QVERIFY(shot->corrections.empty());
}

void RecordCorrectTest::onlyTheLatestCorrectionOfAFieldIsWithdrawn() {
  const auto first = record_->correctShot(shot_, ShotField::FirstContact, "12", "Cleo", 1);
  const auto second = record_->correctShot(shot_, ShotField::FirstContact, std::nullopt, "Cleo", 2);
  QVERIFY(first.has_value() && second.has_value());
  QCOMPARE(record_->withdrawCorrection(*first).error().code, ErrorCode::NotFound);
  QVERIFY(record_->withdrawCorrection(*second).has_value());
  QVERIFY(record_->shot(shot_)->reading.firstContact == BallName(12));
  QVERIFY(record_->withdrawCorrection(*first).has_value());
  QVERIFY(record_->shot(shot_)->reading.firstContact == BallName(3));
  QCOMPARE(record_->withdrawCorrection(*first).error().code, ErrorCode::NotFound);
}

void RecordCorrectTest::valuesThatAreNoneAreRefused() {
  const auto code = [&](ShotField field, std::optional<std::string> value) {
    const auto result = record_->correctShot(shot_, field, value, "Cleo", 1);
    return result ? ErrorCode::Cancelled : result.error().code;
  };
  QCOMPARE(code(ShotField::Outcome, "victory"), ErrorCode::FieldInvalid);
  QCOMPARE(code(ShotField::Outcome, std::nullopt), ErrorCode::FieldInvalid);
  QCOMPARE(code(ShotField::TargetBall, "16"), ErrorCode::FieldInvalid);
  QCOMPARE(code(ShotField::TargetPocket, "middle"), ErrorCode::FieldInvalid);
  QCOMPARE(code(ShotField::Scratch, "1"), ErrorCode::FieldInvalid);
  QCOMPARE(code(ShotField::Player, "Nobody"), ErrorCode::NotFound);
  QCOMPARE(record_->correctShot(ShotId{99}, ShotField::Outcome, "pot", "Cleo", 1).error().code, ErrorCode::NotFound);
  QCOMPARE(record_->shot(shot_)->reading, sample::shot(1));
  QVERIFY(record_->shot(shot_)->corrections.empty());
}

void RecordCorrectTest::everyFieldCanBeCorrected() {
  QVERIFY(record_->correctShot(shot_, ShotField::Player, "Ada", "Cleo", 1).has_value());
  QVERIFY(record_->correctShot(shot_, ShotField::FirstContact, "cue", "Cleo", 1).has_value());
  QVERIFY(record_->correctShot(shot_, ShotField::Scratch, "true", "Cleo", 1).has_value());
  QVERIFY(record_->correctShot(shot_, ShotField::TargetBall, std::nullopt, "Cleo", 1).has_value());
  auto shot = record_->shot(shot_);
  QVERIFY(shot.has_value());
  QVERIFY(shot->player == game_.ada);
  QVERIFY(shot->reading.firstContact == kCueBall);
  QVERIFY(shot->reading.scratch);
  QVERIFY(!shot->reading.target.has_value());
  QVERIFY(record_->correctShot(shot_, ShotField::Player, std::nullopt, "Cleo", 2).has_value());
  shot = record_->shot(shot_);
  QVERIFY(!shot->player.has_value());
  const ValueCorrection& last = shot->corrections.back();
  QVERIFY(last.measured == "Ada" && !last.corrected.has_value());
}

void RecordCorrectTest::anOverruledRulingKeepsTheRefereesOwn() {
  const std::string own = R"({"sureness":"ask","fouls":[{"kind":"no-rail"}]})";
  const std::string persons = R"({"sureness":"certain","fouls":[]})";
  const RulingEntry entry{Verdict::Ask, {"no-rail"}, own};
  const auto ruled = record_->appendShot(game_.frame, sample::shot(2), {}, std::nullopt, entry);
  QVERIFY(ruled.has_value());
  const auto correction = record_->correctShot(*ruled, ShotField::Ruling, persons, "Cleo", 1);
  QVERIFY(correction.has_value());
  QCOMPARE(record_->shot(*ruled)->ruling, std::optional(RulingEntry{Verdict::Certain, {}, persons}));
  QCOMPARE(record_->shot(*ruled)->corrections.front().measured, std::optional(own));
  QVERIFY(record_->withdrawCorrection(*correction).has_value());
  QCOMPARE(record_->shot(*ruled)->ruling, std::optional(entry));
  for (const char* none :
       {"", "[]", "{}", R"({"sureness":"perhaps","fouls":[]})", R"({"sureness":"ask","fouls":[1]})"}) {
    const auto refused = record_->correctShot(*ruled, ShotField::Ruling, none, "Cleo", 2);
    QVERIFY(!refused.has_value());
    QCOMPARE(refused.error().code, ErrorCode::FieldInvalid);
  }
  // A shot that no referee watched can be ruled by hand, and that too can be taken back.
  const auto byHand = record_->correctShot(shot_, ShotField::Ruling, persons, "Cleo", 3);
  QVERIFY(byHand.has_value());
  QVERIFY(record_->shot(shot_)->ruling.has_value());
  QVERIFY(record_->withdrawCorrection(*byHand).has_value());
  QVERIFY(!record_->shot(shot_)->ruling.has_value());
}

void RecordCorrectTest::aPlayersCorrectionSurvivesARename() {
  const auto toAda = record_->correctShot(shot_, ShotField::Player, "Ada", "Cleo", 1);
  const auto toBen = record_->correctShot(shot_, ShotField::Player, "Ben", "Cleo", 2);
  QVERIFY(toAda.has_value() && toBen.has_value());
  Player ada = **record_->playerNamed("Ada");
  ada.name = "Ada Lee";
  QVERIFY(record_->updatePlayer(ada).has_value());
  // Somebody else takes the name.
  QVERIFY(record_->addPlayer(sample::player("Ada")).has_value());
  const auto renamed = record_->shot(shot_);
  QVERIFY(renamed->corrections.at(0).corrected == "Ada Lee");
  QVERIFY(renamed->corrections.at(1).measured == "Ada Lee");
  QVERIFY(record_->withdrawCorrection(*toBen).has_value());
  QVERIFY(record_->shot(shot_)->player == game_.ada);
  QCOMPARE(record_->shot(shot_)->playerName, std::string("Ada Lee"));
  QVERIFY(record_->withdrawCorrection(*toAda).has_value());
  QVERIFY(!record_->shot(shot_)->player.has_value());
}

void RecordCorrectTest::severalValuesAreOneCorrection() {
  const ShotId other = record_->appendShot(game_.frame, sample::explainedShot(2), sample::tracks(2)).value();
  ShotReading anew = sample::explainedShot(1);
  anew.strike_s += 0.125;
  anew.outcome = Outcome::Miss;
  anew.pocketed.clear();
  anew.before[1].position = {0.3, 0.3};
  const std::string ruling = R"({"sureness":"certain","fouls":[]})";
  const std::vector<ShotChange> changes{
      {shot_, ShotField::Outcome, "miss"},        {shot_, ShotField::Reading, readingText(anew)},
      {other, ShotField::Player, "Ben"},          {other, ShotField::Outcome, "pot"},  // as it is
      {other, ShotField::BallNames, "3 8 20.25"}, {other, ShotField::Ruling, ruling}};
  const StoredShot shotBefore = *record_->shot(shot_);
  const StoredShot otherBefore = *record_->shot(other);
  const auto struckBefore = record_->shots(game_.frame)->front().struckAt;
  const auto correction = record_->correctShots(changes, "Cleo", 5);
  QVERIFY(correction.has_value());
  QCOMPARE(record_->shot(shot_)->reading, anew);
  QCOMPARE(record_->shots(game_.frame)->front().struckAt, std::optional(*struckBefore + 125));
  QVERIFY(record_->shot(other)->player == game_.ben);
  QCOMPARE(record_->shot(other)->tracks.size(), std::size_t{3});
  QCOMPARE(record_->shot(other)->corrections.size(), std::size_t{3});
  // Only the shot that a person spoke of counts as corrected.
  QVERIFY(record_->shots(game_.frame)->at(0).corrected);
  QVERIFY(!record_->shots(game_.frame)->at(1).corrected);
  QVERIFY(record_->withdrawCorrection(*correction).has_value());
  QCOMPARE(*record_->shot(shot_), shotBefore);
  QCOMPARE(*record_->shot(other), otherBefore);
  QCOMPARE(record_->shots(game_.frame)->front().struckAt, struckBefore);
}

void RecordCorrectTest::aReadingPutAnewWaitsForWhatCameAfterIt() {
  ShotReading anew = sample::shot(1);
  anew.rest_s += 1.0;
  const ShotChange told{shot_, ShotField::Times, "10.25 15.5", "10.25 14.5"};
  const auto times =
      record_->correctShots(std::vector{told, ShotChange{shot_, ShotField::Reading, readingText(anew)}}, "Cleo", 1);
  QVERIFY(times.has_value());
  QVERIFY(record_->shot(shot_)->corrections.front().measured == "10.25 14.5");
  const auto outcome = record_->correctShot(shot_, ShotField::Outcome, "miss", "Cleo", 2);
  QVERIFY(outcome.has_value());
  // The reading holds the outcome too.
  QCOMPARE(record_->withdrawCorrection(*times).error().code, ErrorCode::NotFound);
  const auto player = record_->correctShot(shot_, ShotField::Player, "Ada", "Cleo", 3);
  QVERIFY(record_->withdrawCorrection(*outcome).has_value());
  // Who played is apart from it.
  QVERIFY(record_->withdrawCorrection(*times).has_value());
  QCOMPARE(record_->shot(shot_)->reading, sample::shot(1));
  QVERIFY(record_->withdrawCorrection(*player).has_value());
  QVERIFY(record_->shot(shot_)->corrections.empty());
}

void RecordCorrectTest::oneWrongValueRefusesTheWholeCorrection() {
  const StoredShot before = *record_->shot(shot_);
  const std::vector<std::vector<ShotChange>> wrong{
      {{shot_, ShotField::Outcome, "miss"}, {shot_, ShotField::Reading, "{}"}},
      {{shot_, ShotField::Outcome, "miss"}, {ShotId{99}, ShotField::Outcome, "miss"}},
      {{shot_, ShotField::Outcome, "miss"}, {shot_, ShotField::Player, "Nobody"}},
      {{shot_, ShotField::BallNames, "3 3"}},
      {{shot_, ShotField::BallBefore, "3 here"}},
      {{shot_, ShotField::Times, "5 4"}}};
  for (const auto& changes : wrong)
    QVERIFY(!record_->correctShots(changes, "Cleo", 1).has_value());
  QCOMPARE(*record_->shot(shot_), before);
}

void RecordCorrectTest::notesAndTagsStayWithTheShot() {
  QVERIFY(record_->addNote(shot_, "Bridge too short; \"steady\" next time", "Cleo", 77).has_value());
  QVERIFY(record_->addTag(shot_, "thin cut").has_value());
  QVERIFY(record_->addTag(shot_, "thin cut").has_value());
  QVERIFY(record_->addTag(shot_, "bridge").has_value());
  QVERIFY(record_->removeTag(shot_, "bridge").has_value());
  const auto shot = record_->shot(shot_);
  QVERIFY(shot.has_value());
  QCOMPARE(shot->notes.size(), std::size_t{1});
  QCOMPARE(shot->notes[0].text, std::string("Bridge too short; \"steady\" next time"));
  QCOMPARE(shot->tags, std::vector<std::string>{"thin cut"});
  QCOMPARE(record_->addNote(ShotId{99}, "x", "Cleo", 1).error().code, ErrorCode::NotFound);
  QCOMPARE(record_->addTag(ShotId{99}, "x").error().code, ErrorCode::NotFound);
}

void RecordCorrectTest::aNoteIsTakenAway() {
  const auto first = record_->addNote(shot_, "stance", "Cleo", 1);
  const auto second = record_->addNote(shot_, "bridge", "Cleo", 2);
  QVERIFY(first.has_value() && second.has_value());
  QVERIFY(record_->removeNote(*first).has_value());
  QCOMPARE(record_->shot(shot_)->notes, (std::vector<Note>{{*second, "bridge", "Cleo", 2}}));
  QCOMPARE(record_->removeNote(*first).error().code, ErrorCode::NotFound);
}

void RecordCorrectTest::everyTagOfTheRecordIsKnownOnce() {
  QVERIFY(record_->tags()->empty());
  const ShotId other = record_->appendShot(game_.frame, sample::shot(2), {}).value();
  for (const ShotId shot : {shot_, other})
    QVERIFY(record_->addTag(shot, "thin cut").has_value());
  QVERIFY(record_->addTag(other, "bridge").has_value());
  QCOMPARE(*record_->tags(), (std::vector<std::string>{"bridge", "thin cut"}));
  QVERIFY(record_->removeTag(other, "bridge").has_value());
  QCOMPARE(*record_->tags(), std::vector<std::string>{"thin cut"});
}

void RecordCorrectTest::severalCallsAreOneTransaction() {
  const StoredShot before = *record_->shot(shot_);
  const auto done = record_->together([&]() -> Result<void> {
    if (auto tagged = record_->addTag(shot_, "bridge"); !tagged) return tagged;
    const auto corrected = record_->correctShot(shot_, ShotField::Outcome, "safety", "Cleo", 1);
    if (!corrected) return tl::make_unexpected(corrected.error());
    return failure(ErrorCode::Cancelled);
  });
  QCOMPARE(done.error().code, ErrorCode::Cancelled);
  QVERIFY(*record_->shot(shot_) == before);
  // The next transaction is one of its own again.
  QVERIFY(record_->addTag(shot_, "thin cut").has_value());
  QCOMPARE(record_->shot(shot_)->tags, std::vector<std::string>{"thin cut"});
}

void RecordCorrectTest::aPartThatFailsTakesNothingElseWithIt() {
  const auto done = record_->together([&]() -> Result<void> {
    if (auto tagged = record_->addTag(shot_, "bridge"); !tagged) return tagged;
    const auto refused = record_->correctShot(shot_, ShotField::Outcome, "no such word", "Cleo", 1);
    if (refused) return failure(ErrorCode::Cancelled);
    return {};
  });
  QVERIFY(done.has_value());
  QCOMPARE(record_->shot(shot_)->tags, std::vector<std::string>{"bridge"});
  QVERIFY(record_->shot(shot_)->corrections.empty());
}

FERRULE_TEST(RecordCorrectTest)
#include "record_correct_test.moc"
