// SPDX-License-Identifier: GPL-3.0-or-later
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QtTest>
#include <filesystem>

#include "core/base/text_file.h"
#include "core/record/record.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// Another program's connection to a file.
class OtherProgram {
 public:
  explicit OtherProgram(const std::string& path) {
    database_ = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("other"));
    database_.setDatabaseName(QString::fromStdString(path));
    opened_ = database_.open();
  }
  ~OtherProgram() {
    database_ = QSqlDatabase();
    QSqlDatabase::removeDatabase(QStringLiteral("other"));
  }
  bool run(const QString& sql) { return opened_ && QSqlQuery(database_).exec(sql); }
  QVariant value(const QString& sql) {
    QSqlQuery query(database_);
    return query.exec(sql) && query.next() ? query.value(0) : QVariant();
  }

 private:
  QSqlDatabase database_;
  bool opened_ = false;
};

/// Root may write everywhere; a check of permissions needs an ordinary user.
class OrdinaryUser {
 public:
  OrdinaryUser() : wasRoot_(::geteuid() == 0) {
    if (wasRoot_) is_ = ::seteuid(65534) == 0;
  }
  ~OrdinaryUser() {
    if (wasRoot_ && ::seteuid(0) != 0) std::abort();
  }
  [[nodiscard]] bool is() const { return is_; }

 private:
  bool wasRoot_ = false;
  bool is_ = true;
};

template <class T>
ErrorCode codeOf(const Result<T>& result) {
  return result ? ErrorCode::Cancelled : result.error().code;
}

mode_t permissionsOf(const std::string& path) {
  struct stat info {};
  return ::stat(path.c_str(), &info) == 0 ? info.st_mode & 0777 : 0;
}

/// No writer waits in these tests.
constexpr RecordOptions kImpatient{RecordMode::ReadWrite, 0, 0};

}  // namespace

class RecordFileTest : public QObject {
  Q_OBJECT
 private slots:
  void aNewRecordIsReadableByItsOwnerOnly();
  void theEngineIsSetForDurability();
  void anEmptyFileBecomesARecord();
  void aGarbageFileIsNotADatabaseAndStaysAsItIs();
  void anotherProgramsDatabaseIsRefusedAndStaysAsItIs();
  void aNewerRecordIsRefusedWithBothVersions();
  void aLockedRecordSaysSo();
  void aReadOnlyFileIsRefusedForWritingAndOpensForReading();
  void aMissingFileIsNotMadeForReading();
  void aFolderThatIsNotThereIsNamed();
  void aFullDiskLosesTheShotButNothingElse();
  void aDamagedRecordSaysSo();
  void deletingAPlayerLeavesNoOrphans();
  void textInANumberColumnIsRefused();
};

void RecordFileTest::aNewRecordIsReadableByItsOwnerOnly() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  const mode_t before = ::umask(0);
  {
    Record record = sample::openOrDie(path);
    sample::addGame(record);
    QCOMPARE(permissionsOf(path), mode_t{0600});
    QCOMPARE(permissionsOf(path + "-wal"), mode_t{0600});
    QCOMPARE(permissionsOf(path + "-shm"), mode_t{0600});
  }
  ::umask(before);
}

/// Durability: SQLite documentation, PRAGMA synchronous: FULL (2) is durable in WAL mode, NORMAL (1) is not.
void RecordFileTest::theEngineIsSetForDurability() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  Record record = sample::openOrDie(path);
  OtherProgram other(path);
  QCOMPARE(other.value("PRAGMA journal_mode").toString(), "wal");
  QCOMPARE(other.value("PRAGMA user_version").toInt(), kRecordVersion);
  QCOMPARE(other
               .value("SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND type = 'table' "
                      "AND name NOT LIKE 'sqlite_%' AND strict = 0")
               .toInt(),
           0);
  QVERIFY(record.check().has_value());
}

void RecordFileTest::anEmptyFileBecomesARecord() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  QFile empty(QString::fromStdString(path));
  QVERIFY(empty.open(QIODevice::WriteOnly));
  empty.close();
  Record record = sample::openOrDie(path);
  QVERIFY(record.sessions()->empty());
  QVERIFY(!std::filesystem::exists(path + ".version-0.backup"));
}

void RecordFileTest::aGarbageFileIsNotADatabaseAndStaysAsItIs() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  const std::string garbage(20'000, 'g');
  QVERIFY(writeTextFile(path, garbage).has_value());
  QCOMPARE(codeOf(Record::open(path)), ErrorCode::RecordNotADatabase);
  QCOMPARE(codeOf(Record::open(path, {RecordMode::ReadOnly, 0, 0})), ErrorCode::RecordNotADatabase);
  QVERIFY(*readTextFile(path) == garbage);
}

void RecordFileTest::anotherProgramsDatabaseIsRefusedAndStaysAsItIs() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  {
    OtherProgram other(path);
    QVERIFY(other.run("CREATE TABLE recipes(id INTEGER PRIMARY KEY, name TEXT)"));
  }
  const std::string before = *readTextFile(path);
  QCOMPARE(codeOf(Record::open(path)), ErrorCode::RecordNotADatabase);
  QVERIFY(*readTextFile(path) == before);
}

void RecordFileTest::aNewerRecordIsRefusedWithBothVersions() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  { Record record = sample::openOrDie(path); }
  { QVERIFY(OtherProgram(path).run(QStringLiteral("PRAGMA user_version = %1").arg(kRecordVersion + 1))); }
  const auto opened = Record::open(path);
  QCOMPARE(codeOf(opened), ErrorCode::RecordTooNew);
  QCOMPARE(opened.error().numbers, (std::vector<double>{kRecordVersion + 1, kRecordVersion}));
  QCOMPARE(codeOf(Record::open(path, {RecordMode::ReadOnly, 0, 0})), ErrorCode::RecordTooNew);
}

void RecordFileTest::aLockedRecordSaysSo() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  Record record = sample::openOrDie(path, kImpatient);
  const auto game = sample::addGame(record);
  OtherProgram other(path);
  QVERIFY(other.run("BEGIN IMMEDIATE"));
  QCOMPARE(codeOf(record.appendShot(game.frame, sample::shot(1), sample::tracks(1))), ErrorCode::RecordLocked);
  // Reading goes on, and a second window opens.
  QCOMPARE(record.sessions()->size(), std::size_t{1});
  QVERIFY(Record::open(path, kImpatient).has_value());
  QVERIFY(other.run("ROLLBACK"));
  QVERIFY(record.appendShot(game.frame, sample::shot(1), sample::tracks(1)).has_value());
}

void RecordFileTest::aReadOnlyFileIsRefusedForWritingAndOpensForReading() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  {
    Record record = sample::openOrDie(path);
    sample::addGame(record);
  }
  const std::string parent = std::filesystem::path(path).parent_path().string();
  QVERIFY(::chmod(path.c_str(), 0444) == 0);
  QVERIFY(::chmod(parent.c_str(), 0555) == 0);
  {
    const OrdinaryUser user;
    QVERIFY(user.is());
    QCOMPARE(codeOf(Record::open(path)), ErrorCode::RecordReadOnly);
    auto reader = Record::open(path, {RecordMode::ReadOnly, 0, 0});
    QVERIFY2(reader.has_value(), reader ? "" : reader.error().detail.c_str());
    QCOMPARE(reader->sessions()->size(), std::size_t{1});
    QCOMPARE(codeOf(reader->addPlayer(sample::player("Zoe"))), ErrorCode::RecordReadOnly);
  }
  QVERIFY(::chmod(parent.c_str(), 0755) == 0);
}

void RecordFileTest::aMissingFileIsNotMadeForReading() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  QCOMPARE(codeOf(Record::open(path, {RecordMode::ReadOnly, 0, 0})), ErrorCode::FileMissing);
  QVERIFY(!std::filesystem::exists(path));
}

void RecordFileTest::aFolderThatIsNotThereIsNamed() {
  const sample::Folder folder;
  QCOMPARE(codeOf(Record::open(folder.file("none/a.sqlite"))), ErrorCode::FileNotWritable);
  QCOMPARE(codeOf(Record::open(folder.file("."))), ErrorCode::FileNotWritable);
}

void RecordFileTest::aFullDiskLosesTheShotButNothingElse() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  sample::Game game;
  std::size_t kept = 0;
  {
    Record record = sample::openOrDie(path, {RecordMode::ReadWrite, 0, 80});
    game = sample::addGame(record);
    std::vector<Track> tracks = sample::tracks(1, 3000);
    ErrorCode ended = ErrorCode::Cancelled;
    for (int number = 1; number <= 1000 && ended == ErrorCode::Cancelled; ++number) {
      ended = codeOf(record.appendShot(game.frame, sample::shot(number), tracks));
      if (ended == ErrorCode::Cancelled) ++kept;
    }
    QCOMPARE(ended, ErrorCode::RecordFull);
    QVERIFY(kept >= 1);
    QCOMPARE(record.shots(game.frame)->size(), kept);
    QVERIFY(record.check().has_value());
  }
  // Room was made: the record goes on from where it was.
  Record record = sample::openOrDie(path);
  QVERIFY(record.appendShot(game.frame, sample::shot(2000), sample::tracks(1)).has_value());
  QCOMPARE(record.shots(game.frame)->size(), kept + 1);
}

void RecordFileTest::aDamagedRecordSaysSo() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  {
    Record record = sample::openOrDie(path);
    const auto game = sample::addGame(record);
    for (int number = 1; number <= 40; ++number) {
      QVERIFY(record.appendShot(game.frame, sample::shot(number), sample::tracks(number)).has_value());
    }
  }
  // Every page but the first few is overwritten, as a failing disk would.
  std::string bytes = *readTextFile(path);
  QVERIFY(bytes.size() > 100'000);
  std::fill(bytes.begin() + 60'000, bytes.end(), '\x5a');
  QVERIFY(writeTextFile(path, bytes).has_value());
  auto record = Record::open(path);
  if (record) {
    QCOMPARE(codeOf(record->check()), ErrorCode::RecordBroken);
  } else {
    QCOMPARE(codeOf(record), ErrorCode::RecordBroken);
  }
}

void RecordFileTest::deletingAPlayerLeavesNoOrphans() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  Record record = sample::openOrDie(path);
  const auto game = sample::addGame(record);
  const RulingEntry ruling{Verdict::Certain, {}, "{}"};
  const auto adas = record.appendShot(game.frame, sample::shot(1), sample::tracks(1), game.ada, ruling);
  const auto bens = record.appendShot(game.frame, sample::shot(2), sample::tracks(2), game.ben);
  QVERIFY(adas.has_value() && bens.has_value());
  QVERIFY(record.addNote(*adas, "note", "Cleo", 1).has_value());
  QVERIFY(record.addTag(*adas, "tag").has_value());
  QVERIFY(record.correctShot(*adas, ShotField::Outcome, "miss", "Cleo", 1).has_value());
  {
    OtherProgram other(path);
    QVERIFY(other.run("PRAGMA foreign_keys = ON"));
    QVERIFY(other.run("DELETE FROM players WHERE name = 'Ada'"));
    for (const char* table : {"positions", "deliveries", "events", "pocketed", "tracks", "rulings"}) {
      const QString orphans =
          QStringLiteral("SELECT count(*) FROM %1 WHERE shot_id NOT IN (SELECT id FROM shots)").arg(table);
      QCOMPARE(other.value(orphans).toInt(), 0);
    }
    for (const char* table : {"notes", "tags", "corrections"}) {
      QCOMPARE(other.value(QStringLiteral("SELECT count(*) FROM %1").arg(table)).toInt(), 0);
    }
  }
  QCOMPARE(codeOf(record.shot(*adas)), ErrorCode::NotFound);
  QVERIFY(record.shot(*bens).has_value());
  // And a row that points at nobody is refused from the start.
  QVERIFY(!record.appendShot(game.frame, sample::shot(3), {}, PlayerId{99}).has_value());
}

void RecordFileTest::textInANumberColumnIsRefused() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  Record record = sample::openOrDie(path);
  const auto game = sample::addGame(record);
  QVERIFY(record.addPlacement(game.frame, {kCueBall, 1.0, {0.0, 0.0}}).has_value());
  OtherProgram other(path);
  QVERIFY(!other.run("UPDATE placements SET x_m = '1,5'"));
  QVERIFY(other.run("UPDATE placements SET x_m = 1.5"));
}

FERRULE_TEST(RecordFileTest)
#include "record_file_test.moc"
