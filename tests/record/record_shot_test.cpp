// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/record/record.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class RecordShotTest : public QObject {
  Q_OBJECT
 private slots:
  void aShotComesBackAsItWasRead();
  void whatWasNotObservedComesBackAbsent();
  void theListShowsTheShotsByNumber();
  void aSessionKnowsItsTableAndAFrameItsRig();
  void framesAreNumberedWithinTheirSession();
  void theSameFilmIsOneRow();
  void aShotNumberIsTakenOnce();
  void unknownIdsAreNamed();
  void shotsAcrossTheRepeatedAutumnHourStayInOrder();
  void placementsComeBackInOrder();
  void playersKeepWhatIsKnownOfThem();
  void aPlayersNameIsTakenOnce();
};

void RecordShotTest::aShotComesBackAsItWasRead() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const auto id = record.appendShot(game.frame, sample::shot(1), sample::tracks(1), game.ben);
  QVERIFY(id.has_value());
  const auto shot = record.shot(*id);
  QVERIFY(shot.has_value());
  QCOMPARE(shot->reading, sample::shot(1));
  QCOMPARE(shot->tracks, sample::tracks(1));
  QCOMPARE(shot->id, *id);
  QCOMPARE(shot->frame, game.frame);
  QCOMPARE(shot->session, game.session);
  QVERIFY(shot->player == game.ben);
  QCOMPARE(shot->playerName, std::string("Ben"));
  QVERIFY(shot->film.has_value());
  QCOMPARE(shot->film->path, std::string("films/evening.mp4"));
  QVERIFY(shot->corrections.empty());
}

void RecordShotTest::whatWasNotObservedComesBackAbsent() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  ShotReading bare;
  bare.number = 1;
  bare.strike_s = 1.0;
  bare.rest_s = 2.0;
  const auto id = record.appendShot(game.frame, bare, {});
  QVERIFY(id.has_value());
  const auto shot = record.shot(*id);
  QVERIFY(shot.has_value());
  QCOMPARE(shot->reading, bare);
  QVERIFY(!shot->player.has_value());
}

void RecordShotTest::theListShowsTheShotsByNumber() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  for (const int number : {2, 1, 3})
    QVERIFY(record.appendShot(game.frame, sample::shot(number), {}).has_value());
  const auto shots = record.shots(game.frame);
  QVERIFY(shots.has_value());
  QCOMPARE(shots->size(), std::size_t{3});
  for (int i = 0; i < 3; ++i) {
    const ShotSummary& row = (*shots)[static_cast<std::size_t>(i)];
    const ShotReading reading = sample::shot(i + 1);
    QCOMPARE(row.number, reading.number);
    QCOMPARE(row.delivery, reading.delivery);
    QCOMPARE(row.pocketed, reading.pocketed);
    QVERIFY(row.target == reading.target);
    QVERIFY(row.outcome == reading.outcome);
    // The film's first image was at 1760000000000 ms.
    QCOMPARE(*row.struckAt, std::int64_t{1'760'000'000'250} + 10'000 * (i + 1));
  }
  const auto sessions = record.sessions();
  QVERIFY(sessions.has_value());
  QCOMPARE(sessions->size(), std::size_t{1});
  QCOMPARE(sessions->front(),
           (SessionSummary{game.session, "Evening", 1'760'000'000'000, "club table 2", {"Ada", "Ben"}, 1, 3}));
}

void RecordShotTest::aSessionKnowsItsTableAndAFrameItsRig() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const auto table = record.tableOf(game.session);
  QVERIFY(table.has_value());
  QCOMPARE(*table, sample::table());
  const auto rig = record.rigOf(game.frame);
  QVERIFY(rig.has_value() && rig->has_value());
  QCOMPARE(**rig, sample::rig());
  const auto byHand = record.addFrame({game.session, "nine-ball", std::nullopt, std::nullopt});
  QVERIFY(byHand.has_value());
  const auto none = record.rigOf(*byHand);
  QVERIFY(none.has_value() && !none->has_value());
}

void RecordShotTest::framesAreNumberedWithinTheirSession() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  QVERIFY(record.addFrame({game.session, "eight-ball", std::nullopt, std::nullopt}).has_value());
  const auto other = record.addSession({"Other", 5, "9ft", sample::table(), {}});
  QVERIFY(other.has_value());
  QVERIFY(record.addFrame({*other, "", std::nullopt, std::nullopt}).has_value());
  QVERIFY(record.completeFrame(game.frame).has_value());
  const auto frames = record.frames(game.session);
  QVERIFY(frames.has_value());
  QCOMPARE(frames->size(), std::size_t{2});
  QCOMPARE((*frames)[0].number, 1);
  QVERIFY((*frames)[0].complete);
  QVERIFY((*frames)[0].film.has_value());
  QCOMPARE((*frames)[1].number, 2);
  QVERIFY(!(*frames)[1].complete);
  QVERIFY(!(*frames)[1].film.has_value());
  const auto othersFrames = record.frames(*other);
  QVERIFY(othersFrames.has_value());
  QCOMPARE(othersFrames->front().number, 1);
}

void RecordShotTest::theSameFilmIsOneRow() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  FilmEntry moved = sample::film();
  moved.path = "elsewhere/evening.mp4";
  const auto again = record.addFilm(moved);
  QVERIFY(again.has_value());
  QCOMPARE(*again, game.film);
  const auto film = record.filmWithHash(moved.sha256);
  QVERIFY(film.has_value() && film->has_value());
  QCOMPARE((*film)->path, moved.path);
  const auto unknown = record.filmWithHash(std::string(64, 'b'));
  QVERIFY(unknown.has_value() && !unknown->has_value());
  const auto sessions = record.sessionsOfFilm(game.film);
  QVERIFY(sessions.has_value());
  QCOMPARE(sessions->size(), std::size_t{1});
  QCOMPARE(sessions->front().name, std::string("Evening"));
}

void RecordShotTest::aShotNumberIsTakenOnce() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  QVERIFY(record.appendShot(game.frame, sample::shot(1), sample::tracks(1)).has_value());
  const auto again = record.appendShot(game.frame, sample::shot(1), sample::tracks(1));
  QVERIFY(!again.has_value());
  QCOMPARE(again.error().code, ErrorCode::AlreadyRecorded);
  QCOMPARE(record.shots(game.frame)->size(), std::size_t{1});
}

void RecordShotTest::unknownIdsAreNamed() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto code = [](const auto& result) { return result ? ErrorCode::Cancelled : result.error().code; };
  QCOMPARE(code(record.shot(ShotId{9})), ErrorCode::NotFound);
  QCOMPARE(code(record.appendShot(FrameId{9}, sample::shot(1), {})), ErrorCode::NotFound);
  QCOMPARE(code(record.addFrame({SessionId{9}, "", std::nullopt, std::nullopt})), ErrorCode::NotFound);
  QCOMPARE(code(record.addPlacement(FrameId{9}, {})), ErrorCode::NotFound);
  QCOMPARE(code(record.tableOf(SessionId{9})), ErrorCode::NotFound);
  QCOMPARE(code(record.rigOf(FrameId{9})), ErrorCode::NotFound);
  QCOMPARE(code(record.addSession({"x", 0, "9ft", sample::table(), {PlayerId{9}}})), ErrorCode::NotFound);
  // The refused session left nothing behind.
  QVERIFY(record.sessions()->empty());
}

/// In central Europe 2026-10-25 00:59 UTC is 02:59 local, 01:01 UTC is 02:01 local again.
void RecordShotTest::shotsAcrossTheRepeatedAutumnHourStayInOrder() {
  const sample::Folder folder;
  qputenv("TZ", "Europe/Berlin");
  tzset();
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto before = record.addSession({"before", 1'792'889'940'000, "9ft", sample::table(), {}});
  const auto after = record.addSession({"after", 1'792'890'060'000, "9ft", sample::table(), {}});
  QVERIFY(before.has_value() && after.has_value());
  const auto sessions = record.sessions();
  QVERIFY(sessions.has_value());
  QCOMPARE((*sessions)[0].name, std::string("after"));
  QCOMPARE((*sessions)[1].name, std::string("before"));
  QCOMPARE((*sessions)[0].started - (*sessions)[1].started, std::int64_t{120'000});
  // The check of the check: local clock readings are the other way round.
  const auto local = [](UtcMilliseconds time) { return QDateTime::fromMSecsSinceEpoch(time).time(); };
  QCOMPARE(QDateTime::fromMSecsSinceEpoch(1'792'889'940'000, Qt::UTC).toString(Qt::ISODate), "2026-10-25T00:59:00Z");
  if (local(1'792'889'940'000).hour() == 2) QVERIFY(local(1'792'890'060'000) < local(1'792'889'940'000));
  qunsetenv("TZ");
  tzset();
}

void RecordShotTest::placementsComeBackInOrder() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const std::vector<Placement> placed{{kCueBall, 31.5, {-0.6, 0.1}}, {BallName(8), 32.0, {0.5, 0.0}}};
  for (const Placement& placement : placed)
    QVERIFY(record.addPlacement(game.frame, placement).has_value());
  const auto back = record.placements(game.frame);
  QVERIFY(back.has_value());
  QCOMPARE(*back, placed);
}

void RecordShotTest::playersKeepWhatIsKnownOfThem() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  Player player = sample::player("Cleo", Handedness::Both);
  player.minor = true;
  const auto id = record.addPlayer(player);
  QVERIFY(id.has_value());
  player.id = *id;
  player.guest = true;
  player.handedness = Handedness::Left;
  QVERIFY(record.updatePlayer(player).has_value());
  const auto back = record.playerNamed("Cleo");
  QVERIFY(back.has_value() && back->has_value());
  QCOMPARE(**back, player);
  QCOMPARE(record.players()->size(), std::size_t{1});
}

void RecordShotTest::aPlayersNameIsTakenOnce() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto ada = record.addPlayer(sample::player("Ada"));
  const auto ben = record.addPlayer(sample::player("Ben"));
  QVERIFY(ada.has_value() && ben.has_value());
  QCOMPARE(record.addPlayer(sample::player("Ada")).error().code, ErrorCode::AlreadyRecorded);
  Player renamed = sample::player("Ada");
  renamed.id = *ben;
  QCOMPARE(record.updatePlayer(renamed).error().code, ErrorCode::AlreadyRecorded);
  renamed.name = "Zoe";
  renamed.id = PlayerId{77};
  QCOMPARE(record.updatePlayer(renamed).error().code, ErrorCode::NotFound);
}

FERRULE_TEST(RecordShotTest)
#include "record_shot_test.moc"
