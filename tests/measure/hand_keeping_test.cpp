// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/hand_keeping.h"

#include <QtTest>

#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class HandKeepingTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void shotsReachTheRecordWithPlayerAndRuling();
  void undoTakesAShotOutOfTheRecord();
  void aSessionThatWasBrokenOffIsResumed();
  void anEndedSessionIsNotResumed();
  void theNextFrameIsBrokenByTheOther();
  void aSpoiltDraftIsSaidSo();

 private:
  [[nodiscard]] std::vector<ShotSummary> shots(FrameId frame) { return *record_->shots(frame); }
  std::unique_ptr<sample::Folder> folder_;
  std::unique_ptr<Record> record_;
};

namespace {

const BallName kOne{1};

HandTerms terms() {
  return {"Evening", "9ft", *measuredTableFrom("9ft"), Game::NineBall, {"Ada", "Ben"}, 1, Seat::First};
}

void logBreakAndMiss(Record& record, KeptHand& hand) {
  hand.session.log({Outcome::Break, {}, {}, {}, {{BallName{5}, PocketName::HeadLeft}}, {}}, 1.0);
  if (!keepHandSession(record, hand)) qFatal("not kept");
  hand.session.log({Outcome::Miss, kOne, PocketName::FootLeft, MissSide::Over, {}, {}}, 9.0, R"({"plans": []})");
  if (!keepHandSession(record, hand)) qFatal("not kept");
}

}  // namespace

void HandKeepingTest::init() {
  folder_ = std::make_unique<sample::Folder>();
  record_ = std::make_unique<Record>(sample::openOrDie(folder_->file("r.sqlite")));
}

void HandKeepingTest::shotsReachTheRecordWithPlayerAndRuling() {
  auto hand = beginHandSession(*record_, terms(), SessionKind::Match, 1000);
  QVERIFY(hand.has_value());
  logBreakAndMiss(*record_, *hand);
  // The last one may still be changed.
  QCOMPARE(shots(hand->place.frame).size(), std::size_t{1});
  QVERIFY(endHandSession(*record_, *hand).has_value());
  const auto kept = shots(hand->place.frame);
  QCOMPARE(kept.size(), std::size_t{2});
  QCOMPARE(kept[1].playerName, std::string("Ada"));
  QVERIFY(kept[1].outcome == Outcome::Miss);
  QVERIFY(kept[1].target->missSide == MissSide::Over);
  const auto shot = record_->shot(kept[1].id);
  QVERIFY(shot->ruling.has_value());
  QVERIFY(shot->ruling->fouls.empty());
  QVERIFY(!shot->film.has_value());
  // What was shown before the shot stands beside it: the choice was not the player's alone.
  QVERIFY(shot->suggestion.has_value());
  QVERIFY(shot->suggestion->shown);
  QCOMPARE(shot->suggestion->content, std::string(R"({"plans": []})"));
  QVERIFY(!record_->shot(kept[0].id)->suggestion.has_value());
  const auto session = record_->sessions()->front();
  QVERIFY(session.kind == SessionKind::Match);
  QCOMPARE(session.players, (std::vector<std::string>{"Ada", "Ben"}));
  QVERIFY(record_->frames(session.id)->front().complete);
  QCOMPARE(record_->frames(session.id)->front().game, std::string("nine-ball"));
}

void HandKeepingTest::undoTakesAShotOutOfTheRecord() {
  auto hand = beginHandSession(*record_, terms(), SessionKind::Practice, 1000);
  logBreakAndMiss(*record_, *hand);
  hand->session.undo();
  hand->session.undo();
  QVERIFY(keepHandSession(*record_, *hand).has_value());
  QVERIFY(shots(hand->place.frame).empty());
  hand->session.redo();
  hand->session.redo();
  QVERIFY(endHandSession(*record_, *hand).has_value());
  QCOMPARE(shots(hand->place.frame).size(), std::size_t{2});
}

void HandKeepingTest::aSessionThatWasBrokenOffIsResumed() {
  HandState left;
  FrameId frame;
  {
    auto hand = beginHandSession(*record_, terms(), SessionKind::Practice, 1000);
    logBreakAndMiss(*record_, *hand);
    hand->session.putBall(kCueBall, {0.1, 0.2});
    QVERIFY(keepHandSession(*record_, *hand).has_value());
    left = hand->session.state();
    frame = hand->place.frame;
  }
  record_.reset();
  record_ = std::make_unique<Record>(sample::openOrDie(folder_->file("r.sqlite")));
  const auto resumed = resumeHandSession(*record_);
  QVERIFY(resumed.has_value() && resumed->has_value());
  QCOMPARE((*resumed)->session.state(), left);
  QVERIFY((*resumed)->place.frame == frame);
  QVERIFY(endHandSession(*record_, **resumed).has_value());
  QCOMPARE(shots(frame).size(), std::size_t{2});
}

void HandKeepingTest::anEndedSessionIsNotResumed() {
  QVERIFY(!resumeHandSession(*record_)->has_value());
  auto hand = beginHandSession(*record_, terms(), SessionKind::Practice, 1000);
  QVERIFY(endHandSession(*record_, *hand).has_value());
  QVERIFY(!resumeHandSession(*record_)->has_value());
}

void HandKeepingTest::theNextFrameIsBrokenByTheOther() {
  auto hand = beginHandSession(*record_, terms(), SessionKind::Practice, 1000);
  logBreakAndMiss(*record_, *hand);
  const auto next = nextHandFrame(*record_, *hand);
  QVERIFY(next.has_value());
  QCOMPARE(shots(hand->place.frame).size(), std::size_t{2});
  QVERIFY(next->place.frame != hand->place.frame);
  QCOMPARE(next->session.terms().frame, 2);
  QVERIFY(next->session.referee()->state().atTable == Seat::Second);
  QVERIFY(next->session.state().shots.empty());
}

void HandKeepingTest::aSpoiltDraftIsSaidSo() {
  QVERIFY(record_->keepDraft("hand-session", "{\"hand\": 3}").has_value());
  QCOMPARE(resumeHandSession(*record_).error().code, ErrorCode::RecordBroken);
}

FERRULE_TEST(HandKeepingTest)
#include "hand_keeping_test.moc"
