// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/frame_moves.h"

#include <QtTest>

#include "core/record/export_record.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Moves of the camera as the record keeps them beside a frame's rig.
class FrameMovesTest : public QObject {
  Q_OBJECT
 private slots:
  void aCameraThatStoodStillHasNone();
  void bothRigsComeBack();
  void anotherFrameOfTheSameRigHasNone();
  void movesAreReplacedAndTakenBack();
  void aFrameByHandHasNone();
  void theRigThatHeldIsFoundByTime();
  void onlyShotsWithinAMoveAreDoubtful();

 private:
  static CameraMove move(double time_s);
};

CameraMove FrameMovesTest::move(double time_s) {
  CameraMove move;
  move.image = static_cast<long>(60.0 * time_s);
  move.time_s = time_s;
  move.since_s = time_s - 1.0;
  move.settled_s = time_s + 0.6;
  move.moved_m = 0.0125;
  move.rig = sample::rig();
  move.rig.pose.translation_m.x() += 0.01 * time_s;
  return move;
}

void FrameMovesTest::aCameraThatStoodStillHasNone() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const auto game = sample::addGame(record);
  QVERIFY(movesOf(record, game.frame)->empty());
  QVERIFY(keepMoves(record, game.frame, {}).has_value());
  QVERIFY(**record.rigOf(game.frame) == sample::rig());
}

void FrameMovesTest::bothRigsComeBack() {
  const sample::Folder folder;
  const std::vector<CameraMove> moves{move(12.0), move(40.0)};
  FrameId frame;
  {
    Record record = sample::openOrDie(folder.file("r.sqlite"));
    frame = sample::addGame(record).frame;
    QVERIFY(keepMoves(record, frame, moves).has_value());
  }
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  QVERIFY(**record.rigOf(frame) == sample::rig());
  const auto back = movesOf(record, frame);
  QVERIFY(back.has_value());
  QCOMPARE(back->size(), std::size_t{2});
  for (std::size_t i = 0; i < 2; ++i) {
    QCOMPARE((*back)[i].image, moves[i].image);
    QCOMPARE((*back)[i].settled_s, moves[i].settled_s);
    QVERIFY(std::abs((*back)[i].moved_m - moves[i].moved_m) < 1e-12);
    QVERIFY((*back)[i].rig.pose == moves[i].rig.pose);
  }
  // What leaves the record has them too.
  QVERIFY(exportRecord(record, {folder.file("out"), {}}).has_value());
}

void FrameMovesTest::anotherFrameOfTheSameRigHasNone() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const auto game = sample::addGame(record);
  const auto other = record.addFrame({game.session, "eight-ball", game.film, sample::rig()});
  QVERIFY(other.has_value());
  QVERIFY(keepMoves(record, game.frame, std::vector{move(3.0)}).has_value());
  QVERIFY(movesOf(record, *other)->empty());
  QCOMPARE(movesOf(record, game.frame)->size(), std::size_t{1});
}

void FrameMovesTest::movesAreReplacedAndTakenBack() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const auto game = sample::addGame(record);
  QVERIFY(keepMoves(record, game.frame, std::vector{move(3.0)}).has_value());
  QVERIFY(keepMoves(record, game.frame, std::vector{move(3.0), move(9.0)}).has_value());
  QCOMPARE(movesOf(record, game.frame)->size(), std::size_t{2});
  QVERIFY(keepMoves(record, game.frame, {}).has_value());
  QVERIFY(movesOf(record, game.frame)->empty());
  QVERIFY(**record.rigOf(game.frame) == sample::rig());
}

void FrameMovesTest::aFrameByHandHasNone() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const auto game = sample::addGame(record);
  const auto byHand = record.addFrame({game.session, "eight-ball", {}, {}});
  QVERIFY(keepMoves(record, *byHand, std::vector{move(3.0)}).has_value());
  QVERIFY(movesOf(record, *byHand)->empty());
  QCOMPARE(movesOf(record, FrameId{999}).error().code, ErrorCode::NotFound);
}

void FrameMovesTest::theRigThatHeldIsFoundByTime() {
  const Rig first = sample::rig();
  const std::vector<CameraMove> moves{move(12.0), move(40.0)};
  QVERIFY(rigAt(first, moves, 11.9) == first);
  QVERIFY(rigAt(first, moves, 12.0) == moves[0].rig);
  QVERIFY(rigAt(first, moves, 39.0) == moves[0].rig);
  QVERIFY(rigAt(first, moves, 100.0) == moves[1].rig);
}

/// Nothing had moved at 11 s, the new rig holds from 12.6 s on.
void FrameMovesTest::onlyShotsWithinAMoveAreDoubtful() {
  QVERIFY(!isDuring(move(12.0), 5.0, 10.9));
  QVERIFY(isDuring(move(12.0), 5.0, 11.5));
  QVERIFY(isDuring(move(12.0), 12.1, 15.0));
  QVERIFY(!isDuring(move(12.0), 12.7, 15.0));
}

FERRULE_TEST(FrameMovesTest)
#include "frame_moves_test.moc"
