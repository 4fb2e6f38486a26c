// SPDX-License-Identifier: GPL-3.0-or-later
#include <sys/stat.h>
#include <unistd.h>

#include <QFile>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QtTest>
#include <filesystem>

#include "core/record/consent.h"
#include "core/record/drill_rows.h"
#include "core/record/people.h"
#include "core/record/record.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// A copy of an old record that is kept with the tests (tests/data/records/README.md).
std::string oldRecord(const sample::Folder& folder, int version = 1) {
  const std::string path = folder.file("old.sqlite");
  const std::string name = "/tests/data/records/version-" + std::to_string(version) + ".sqlite";
  std::filesystem::copy_file(FERRULE_SOURCE_DIR + name, path);
  return path;
}

QVariant valueIn(const std::string& path, const QString& sql) {
  QVariant value;
  {
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("look"));
    database.setDatabaseName(QString::fromStdString(path));
    if (database.open()) {
      QSqlQuery query(database);
      if (query.exec(sql) && query.next()) value = query.value(0);
    }
  }
  QSqlDatabase::removeDatabase(QStringLiteral("look"));
  return value;
}

}  // namespace

class RecordMigrationTest : public QObject {
  Q_OBJECT
 private slots:
  void aVersionOneRecordIsBroughtForwardWithItsContent();
  void aVersionTwoRecordIsBroughtForwardWithItsContent();
  void aVersionThreeRecordIsBroughtForwardWithItsContent();
  void aVersionFourRecordIsBroughtForwardWithItsContent();
  void aVersionSixRecordIsBroughtForwardWithItsContent();
  void theOldFileIsCopiedFirst();
  void anOlderCopyStays();
  void aStepThatFailsLeavesTheOldRecordWhole();
  void anOldRecordIsBroughtForwardByReadingToo();
  void anOldRecordThatMayOnlyBeReadIsRefusedAndStaysAsItIs();
};

void RecordMigrationTest::aVersionOneRecordIsBroughtForwardWithItsContent() {
  const sample::Folder folder;
  const std::string path = oldRecord(folder);
  QCOMPARE(valueIn(path, "PRAGMA user_version").toInt(), 1);
  {
    Record record = sample::openOrDie(path);
    const auto players = record.players();
    QVERIFY(players.has_value());
    QCOMPARE(players->size(), std::size_t{2});
    QCOMPARE((*players)[0].name, std::string("Ada"));
    QVERIFY((*players)[0].handedness == Handedness::Left);
    QVERIFY(!(*players)[0].minor);
    QVERIFY(consents(record, (*players)[0].id)->empty());
    const auto sessions = record.sessions();
    QVERIFY(sessions.has_value());
    QCOMPARE(sessions->size(), std::size_t{1});
    QCOMPARE(sessions->front().name, std::string("Tuesday practice"));
    QCOMPARE(sessions->front().players, (std::vector<std::string>{"Ada", "Ben"}));
    const auto frames = record.frames(sessions->front().id);
    QVERIFY(frames.has_value());
    const auto shots = record.shots(frames->front().id);
    QVERIFY(shots.has_value());
    QCOMPARE(shots->size(), std::size_t{1});
    const auto shot = record.shot(shots->front().id);
    QVERIFY(shot.has_value());
    QVERIFY(shot->reading.outcome == Outcome::Pot);
    QVERIFY(shot->reading.outcomeVerdict == Verdict::Ask);
    QCOMPARE(shot->reading.delivery.speed_mps->value, 2.25);
    QCOMPARE(shot->reading.before.size(), std::size_t{2});
    QCOMPARE(shot->tracks.size(), std::size_t{1});
    QCOMPARE(shot->tracks[0].samples.size(), std::size_t{2});
    QCOMPARE(shot->tracks[0].samples[1].time_s, 1.016667);
    // What is new works on the old rows.
    QVERIFY(record.correctShot(shot->id, ShotField::Outcome, "miss", "Cleo", 5).has_value());
    QVERIFY(record.check().has_value());
  }
  QCOMPARE(valueIn(path, "PRAGMA user_version").toInt(), kRecordVersion);
  QCOMPARE(valueIn(path, "SELECT note FROM notes WHERE entity = 'player'").toString(), "drops the elbow");
  QCOMPARE(valueIn(path, "SELECT count(*) FROM pragma_foreign_key_check").toInt(), 0);
}

/// Version 3 keeps rulings; the shots before it have none.
void RecordMigrationTest::aVersionTwoRecordIsBroughtForwardWithItsContent() {
  const sample::Folder folder;
  const std::string path = oldRecord(folder, 2);
  QCOMPARE(valueIn(path, "PRAGMA user_version").toInt(), 2);
  {
    Record record = sample::openOrDie(path);
    const auto players = record.players();
    QVERIFY(players.has_value());
    QVERIFY((*players)[1].minor);
    QCOMPARE(consents(record, (*players)[1].id)->front().by, std::string("a guardian"));
    const auto frames = record.frames(record.sessions()->front().id);
    QVERIFY(frames.has_value());
    const auto shots = record.shots(frames->front().id);
    QVERIFY(shots.has_value());
    const auto shot = record.shot(shots->front().id);
    QVERIFY(shot.has_value());
    QVERIFY(shot->reading.outcome == Outcome::Miss);
    QCOMPARE(shot->corrections.size(), std::size_t{1});
    QCOMPARE(shot->tags, std::vector<std::string>{"thin"});
    QVERIFY(!shot->ruling.has_value());
    // What is new works in the old frame.
    const RulingEntry ruling{Verdict::Proposed, {"no-rail"}, "{}"};
    const auto ruled = record.appendShot(frames->front().id, sample::shot(2), {}, std::nullopt, ruling);
    QVERIFY(ruled.has_value());
    QCOMPARE(record.shot(*ruled)->ruling, std::optional(ruling));
    QVERIFY(record.check().has_value());
  }
  QCOMPARE(valueIn(path, "PRAGMA user_version").toInt(), kRecordVersion);
  QCOMPARE(valueIn(path + ".version-2.backup", "PRAGMA user_version").toInt(), 2);
  QCOMPARE(valueIn(path, "SELECT count(*) FROM pragma_foreign_key_check").toInt(), 0);
}

/// Version 4 keeps what a session was for, and what was found out about its table and its shots.
void RecordMigrationTest::aVersionThreeRecordIsBroughtForwardWithItsContent() {
  const sample::Folder folder;
  const std::string path = oldRecord(folder, 3);
  QCOMPARE(valueIn(path, "PRAGMA user_version").toInt(), 3);
  {
    Record record = sample::openOrDie(path);
    const auto sessions = record.sessions();
    QVERIFY(sessions.has_value());
    const SessionId session = sessions->front().id;
    QVERIFY(sessions->front().kind == SessionKind::Unknown);
    const auto frames = record.frames(session);
    QVERIFY(frames.has_value());
    const ShotId id = record.shots(frames->front().id)->front().id;
    const auto shot = record.shot(id);
    QVERIFY(shot.has_value());
    QVERIFY(shot->ruling.has_value());
    QCOMPARE(shot->ruling->fouls, std::vector<std::string>{"no-rail"});
    QVERIFY(!shot->suggestion.has_value());
    QVERIFY(!shot->explanation.has_value());
    // What is new works on the old rows.
    QVERIFY(record.keepExplanation(id, "{}").has_value());
    QVERIFY(record.keepFingerprint({session, 7, 1, "{}"}).has_value());
    QCOMPARE(record.shot(id)->explanation, std::optional<std::string>("{}"));
    QVERIFY(record.check().has_value());
  }
  QCOMPARE(valueIn(path, "PRAGMA user_version").toInt(), kRecordVersion);
  QCOMPARE(valueIn(path + ".version-3.backup", "PRAGMA user_version").toInt(), 3);
  QCOMPARE(valueIn(path, "SELECT count(*) FROM pragma_foreign_key_check").toInt(), 0);
}

/// Version 5 keeps a ledger of consents; what was consented to until then was filming and keeping.
void RecordMigrationTest::aVersionFourRecordIsBroughtForwardWithItsContent() {
  constexpr UtcMilliseconds kLater = 1'780'000'000'000;
  const sample::Folder folder;
  const std::string path = oldRecord(folder, 4);
  QCOMPARE(valueIn(path, "PRAGMA user_version").toInt(), 4);
  {
    Record record = sample::openOrDie(path);
    QVERIFY(record.sessions()->front().kind == SessionKind::Lesson);
    const auto players = record.players();
    QVERIFY(players.has_value());
    QCOMPARE(players->size(), std::size_t{4});
    const PlayerId ada = (*players)[0].id;
    const PlayerId ben = (*players)[1].id;
    const PlayerId cleo = (*players)[2].id;
    const PlayerId dora = (*players)[3].id;
    QVERIFY(!(*players)[0].guest);
    // A guardian had consented for Ben, a minor; Dora herself.
    for (const ConsentScope scope : {ConsentScope::Measuring, ConsentScope::FilmOfMinor})
      QVERIFY(consentOf(record, ben, scope, kLater)->holds());
    QVERIFY(consentOf(record, ben, ConsentScope::Sharing, kLater)->consent == Consent::Missing);
    QVERIFY(consentOf(record, dora, ConsentScope::Film, kLater)->holds());
    QCOMPARE(consentOf(record, dora, ConsentScope::Film, kLater)->entry->from, UtcMilliseconds{1'770'000'000'000});
    QVERIFY(consentOf(record, dora, ConsentScope::Film, 1'769'000'000'000)->consent == Consent::Missing);
    QVERIFY(consents(record, ada)->empty());
    // A name without a date was no consent; it is kept as a note.
    QVERIFY(consents(record, cleo)->empty());
    QCOMPARE(person(record, cleo)->notes.front().text, std::string("consent_by: her brother, by word"));
    QCOMPARE(person(record, ada)->notes.front().text, std::string("drops the elbow"));
    // What is new works on the old rows.
    QVERIFY(updatePerson(record, {(*players)[0], {"Tuesday"}}).has_value());
    QCOMPARE(person(record, ada)->details.groups, std::vector<std::string>{"Tuesday"});
    QCOMPARE(record.draft("hand-session")->value_or(""), std::string("{\"session\": 1}"));
    QVERIFY(record.check().has_value());
  }
  QCOMPARE(valueIn(path, "PRAGMA user_version").toInt(), kRecordVersion);
  QCOMPARE(valueIn(path + ".version-4.backup", "PRAGMA user_version").toInt(), 4);
  QCOMPARE(valueIn(path, "SELECT count(*) FROM pragma_foreign_key_check").toInt(), 0);
}

/// Version 7 takes the figures of suggestions out of their contents.
void RecordMigrationTest::aVersionSixRecordIsBroughtForwardWithItsContent() {
  const sample::Folder folder;
  const std::string path = oldRecord(folder, 6);
  QCOMPARE(valueIn(path, "PRAGMA user_version").toInt(), 6);
  {
    Record record = sample::openOrDie(path);
    const PlayerId ada = record.players()->front().id;
    const auto runs = record.drillRunsOf(ada);
    QVERIFY(runs.has_value());
    QCOMPARE(runs->size(), std::size_t{1});
    QCOMPARE(runs->front().trials.front().goals.size(), std::size_t{2});
    const auto frames = record.frames(record.sessions()->front().id);
    const ShotId id = record.shots(frames->front().id)->front().id;
    QCOMPARE(record.shot(id)->suggestion->planner, std::string("planner 2"));
    QVERIFY(record.check().has_value());
  }
  const auto figure = [&](const char* column) {
    return valueIn(path, QStringLiteral("SELECT %1 FROM suggestions").arg(QLatin1String(column)));
  };
  // As they stand in the content: the chance and the leave of the plan that was taken, the speed of the one shown.
  QCOMPARE(figure("pot_chance").toDouble(), 0.58);
  QCOMPARE(figure("leave_x_m").toDouble(), 0.27);
  QCOMPARE(figure("leave_y_m").toDouble(), 0.1905);
  QCOMPARE(figure("next_ball").toString(), QString("5"));
  QCOMPARE(figure("asked_speed_mps").toDouble(), 2.0);
  QCOMPARE(figure("asked_side").toDouble(), 0.1);
  QCOMPARE(figure("asked_height").toDouble(), -0.2);
  QCOMPARE(figure("direct_chance").toDouble(), 0.62);
  QCOMPARE(valueIn(path, "PRAGMA user_version").toInt(), kRecordVersion);
  QCOMPARE(valueIn(path + ".version-6.backup", "PRAGMA user_version").toInt(), 6);
}

void RecordMigrationTest::theOldFileIsCopiedFirst() {
  const sample::Folder folder;
  const std::string path = oldRecord(folder);
  { Record record = sample::openOrDie(path); }
  const std::string copy = path + ".version-1.backup";
  QVERIFY(std::filesystem::exists(copy));
  QCOMPARE(valueIn(copy, "PRAGMA user_version").toInt(), 1);
  QCOMPARE(valueIn(copy, "SELECT remark FROM players WHERE name = 'Ada'").toString(), "drops the elbow");
  struct stat info {};
  QVERIFY(::stat(copy.c_str(), &info) == 0);
  QCOMPARE(info.st_mode & 0777, mode_t{0600});
  // Opened again, nothing is copied again.
  { Record record = sample::openOrDie(path); }
  QVERIFY(!std::filesystem::exists(copy + ".2"));
}

void RecordMigrationTest::anOlderCopyStays() {
  const sample::Folder folder;
  const std::string path = oldRecord(folder);
  const std::string copy = path + ".version-1.backup";
  QFile earlier(QString::fromStdString(copy));
  QVERIFY(earlier.open(QIODevice::WriteOnly));
  earlier.write("earlier");
  earlier.close();
  { Record record = sample::openOrDie(path); }
  QVERIFY(earlier.open(QIODevice::ReadOnly));
  QCOMPARE(earlier.readAll(), QByteArray("earlier"));
  QCOMPARE(valueIn(copy + ".2", "PRAGMA user_version").toInt(), 1);
}

void RecordMigrationTest::aStepThatFailsLeavesTheOldRecordWhole() {
  const sample::Folder folder;
  const std::string path = oldRecord(folder);
  // A table in the way of version 2.
  {
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("spoil"));
    database.setDatabaseName(QString::fromStdString(path));
    QVERIFY(database.open());
    QSqlQuery query(database);
    QVERIFY(query.exec("CREATE TABLE notes(mine TEXT)"));
  }
  QSqlDatabase::removeDatabase(QStringLiteral("spoil"));
  const auto opened = Record::open(path);
  QVERIFY(!opened.has_value());
  QCOMPARE(opened.error().code, ErrorCode::RecordBroken);
  QCOMPARE(valueIn(path, "PRAGMA user_version").toInt(), 1);
  QCOMPARE(valueIn(path, "SELECT remark FROM players WHERE name = 'Ada'").toString(), "drops the elbow");
  QCOMPARE(valueIn(path, "SELECT count(*) FROM pragma_table_info('players') WHERE name = 'minor'").toInt(), 0);
  QVERIFY(!std::filesystem::exists(path + ".version-1.backup"));
}

void RecordMigrationTest::anOldRecordIsBroughtForwardByReadingToo() {
  const sample::Folder folder;
  const std::string path = oldRecord(folder);
  {
    auto opened = Record::open(path, {RecordMode::ReadOnly, 0, 0});
    QVERIFY(opened.has_value());
    QCOMPARE(opened->sessions()->size(), std::size_t{1});
    // Still for looking only.
    QVERIFY(!opened->addPlayer(sample::player("Cleo")));
  }
  QCOMPARE(valueIn(path, "PRAGMA user_version").toInt(), kRecordVersion);
  QCOMPARE(valueIn(path + ".version-1.backup", "PRAGMA user_version").toInt(), 1);
}

void RecordMigrationTest::anOldRecordThatMayOnlyBeReadIsRefusedAndStaysAsItIs() {
  const sample::Folder folder;
  const std::string path = oldRecord(folder);
  QVERIFY(QFile::setPermissions(QString::fromStdString(path), QFileDevice::ReadOwner));
  // Whoever may do everything may write it all the same.
  if (::access(path.c_str(), W_OK) == 0) QSKIP("run by a user whom permissions do not bind");
  const auto opened = Record::open(path, {RecordMode::ReadOnly, 0, 0});
  QVERIFY(!opened.has_value());
  QCOMPARE(opened.error().code, ErrorCode::RecordReadOnly);
  QCOMPARE(valueIn(path, "PRAGMA user_version").toInt(), 1);
}

FERRULE_TEST(RecordMigrationTest)
#include "record_migration_test.moc"
