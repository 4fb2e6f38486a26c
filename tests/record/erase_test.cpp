// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/erase_player.h"

#include <QCryptographicHash>
#include <QFile>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QtTest>
#include <filesystem>
#include <map>

#include "core/record/byte_search.h"
#include "core/record/consent.h"
#include "core/record/drill_rows.h"
#include "core/record/erase_rows.h"
#include "core/record/people.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// A name that no other text holds by chance.
const std::string kName = "Zoraida Quux";

/// Rows of every table, by the engine alone.
std::map<QString, long> rowCounts(const std::string& path) {
  std::map<QString, long> counts;
  {
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("counts"));
    database.setDatabaseName(QString::fromStdString(path));
    if (!database.open()) return counts;
    for (const QString& table : database.tables()) {
      QSqlQuery query(database);
      if (query.exec(QStringLiteral("SELECT count(*) FROM %1").arg(table)) && query.next())
        counts[table] = query.value(0).toLongLong();
    }
  }
  QSqlDatabase::removeDatabase(QStringLiteral("counts"));
  return counts;
}

/// How often the name stands in any file that lies beside the record, the record included.
long namesInFolder(const std::string& path) {
  long times = 0;
  for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::path(path).parent_path()))
    times += timesInFile(entry.path().string(), kName).value_or(1000);
  return times;
}

std::string writeFile(const sample::Folder& folder, const std::string& name, const QByteArray& content) {
  QFile file(QString::fromStdString(folder.file(name)));
  if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size()) qFatal("cannot write the film");
  return folder.file(name);
}

FilmEntry film(const std::string& path, const QByteArray& content) {
  FilmEntry entry = sample::film();
  entry.path = path;
  entry.sha256 = QCryptographicHash::hash(content, QCryptographicHash::Sha256).toHex().toStdString();
  return entry;
}

ConsentEntry consent(PlayerId player, const std::string& by) {
  ConsentEntry entry;
  entry.player = player;
  entry.by = by;
  return entry;
}

}  // namespace

class EraseTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void theNameIsInNoFileAfterwards();
  void whatWasToldIsWhatGoes();
  void othersKeepTheirShotsSeatsAndNotes();
  void aMatchStaysAMatchAndSeatsStayWhereTheyWere();
  void textsOfOthersLoseTheNameOrStayAsAsked();
  void aNameWithinAnotherWordIsNoMention();
  void aDraftOfTheirsGoesAndOthersStay();
  void filmsAreNamedAndDeletedOnlyWhenAsked();
  void anotherFileAtAFilmsPlaceStays();
  void backupsThatHoldTheNameAreListed();
  void consentsOfOthersStayAsEvidence();
  void whileAnotherProgramReadsNothingIsClaimed();
  void anUnknownPlayerIsRefused();
  void bytesAreFoundAcrossBlocks();

 private:
  /// A session alone, one of two and one of four, with everything that can hang on a person.
  void fill();

  std::unique_ptr<sample::Folder> folder_;
  std::optional<Record> record_;
  std::string path_;
  PlayerId zoraida_;
  PlayerId ben_;
  PlayerId cleo_;
  PlayerId dora_;
  FrameId alone_;
  FrameId match_;
  FrameId doubles_;
  ShotId bens_;
  std::string ownFilm_;
  std::string sharedFilm_;
};

void EraseTest::init() {
  record_.reset();
  folder_ = std::make_unique<sample::Folder>();
  path_ = folder_->file("club.sqlite");
  record_.emplace(sample::openOrDie(path_));
  fill();
}

void EraseTest::fill() {
  Record& record = *record_;
  // A name that was longer before leaves its bytes in the page's free room.
  zoraida_ = record.addPlayer(sample::player(kName + " the elder")).value();
  ben_ = record.addPlayer(sample::player("Ben")).value();
  cleo_ = record.addPlayer(sample::player("Cleo")).value();
  dora_ = record.addPlayer(sample::player("Dora")).value();
  Player renamed = sample::player(kName);
  renamed.id = zoraida_;
  QVERIFY(record.updatePlayer(renamed).has_value());
  QVERIFY(updatePerson(record, {renamed, {"juniors"}}).has_value());
  ownFilm_ = writeFile(*folder_, "alone.mp4", "a film of one");
  sharedFilm_ = writeFile(*folder_, "match.mp4", "a film of two");
  const FilmId own = record.addFilm(film(ownFilm_, "a film of one")).value();
  const FilmId shared = record.addFilm(film(sharedFilm_, "a film of two")).value();
  const auto session = [&](const std::string& name, std::vector<PlayerId> players) {
    return record.addSession({name, 1'760'000'000'000, "club table 2", sample::table(), std::move(players)}).value();
  };
  const SessionId alone = session("Practice of " + kName, {zoraida_});
  alone_ = record.addFrame({alone, "", own, sample::rig()}).value();
  const SessionId match = session(kName + " and Ben", {zoraida_, ben_});
  match_ = record.addFrame({match, "eight-ball", shared, sample::rig()}).value();
  const SessionId doubles = session("Doubles", {cleo_, zoraida_, dora_, ben_});
  doubles_ = record.addFrame({doubles, "nine-ball", std::nullopt, std::nullopt}).value();
  const RulingEntry ruling{
      Verdict::Certain, {}, R"({"fouls": [], "sureness": "certain", "overruled_by": ")" + kName + "\"}"};
  const ShotId first = record.appendShot(alone_, sample::explainedShot(1), sample::tracks(1), zoraida_, ruling).value();
  // Whose shot it was nobody knew; in a session alone it was hers.
  (void)record.appendShot(alone_, sample::shot(2), sample::tracks(2)).value();
  const ShotId hers = record.appendShot(match_, sample::shot(1), sample::tracks(1), zoraida_).value();
  bens_ = record.appendShot(match_, sample::shot(2), sample::tracks(2), zoraida_, ruling).value();
  (void)record.correctShot(bens_, ShotField::Player, "Ben", kName, 5).value();
  for (int number = 1; number <= 4; ++number) {
    const std::array players{cleo_, zoraida_, dora_, ben_};
    (void)record.appendShot(doubles_, sample::shot(number), {}, players[static_cast<std::size_t>(number - 1)]).value();
  }
  QVERIFY(record.addPlacement(alone_, {kCueBall, 1.0, {0.0, 0.0}}).has_value());
  QVERIFY(record.addPlacement(match_, {kCueBall, 1.0, {0.0, 0.0}}).has_value());
  QVERIFY(record.keepFingerprint({alone, 7, 1, "{}"}).has_value());
  QVERIFY(record.keepSuggestion(first, {"planner 1", true, {}, {}, "{}"}).has_value());
  (void)record.correctShot(hers, ShotField::Outcome, "miss", "Cleo", 5).value();
  (void)record.addNote(hers, kName + " was nervous", "Cleo", 6).value();
  (void)record.addNote(bens_, "well struck", kName, 6).value();
  (void)record.addNote(bens_, "against " + kName + ", who watched", "Cleo", 6).value();
  QVERIFY(record.addTag(hers, "nervous").has_value());
  QVERIFY(record.addTag(bens_, kName).has_value());
  (void)addPlayerNote(record, zoraida_, "drops the elbow", "Cleo", 7).value();
  (void)addPlayerNote(record, ben_, "practises with " + kName, "Cleo", 7).value();
  (void)addConsent(record, consent(zoraida_, kName)).value();
  // A run of hers by hand, one counted from her session alone, and one of Ben's that holds a shot of hers.
  const auto run = [&](std::optional<PlayerId> player, std::optional<SessionId> from, ShotId shot) {
    const DrillRunId id =
        record.addDrillRun({"long-cut", "{}", "", "club table 2", sample::table(), player, from, 8, RunSource::Hand})
            .value();
    QVERIFY(record.appendTrial(id, {0, {}, {}, {}, shot, {{true, {}}}}).has_value());
  };
  run(zoraida_, std::nullopt, hers);
  run(std::nullopt, alone, first);
  run(ben_, match, hers);
  QVERIFY(
      record.keepDraft("hand-session", R"({"session": 9, "players": [], "hand": {"players": [")" + kName + R"("]}})")
          .has_value());
}

void EraseTest::theNameIsInNoFileAfterwards() {
  QVERIFY(namesInFolder(path_) > 0);
  const auto report = erasePlayer(*record_, zoraida_, {}, 1'770'000'000'000);
  QVERIFY(report.has_value());
  QCOMPARE(report->namesLeft, std::optional<long>(0));
  QCOMPARE(namesInFolder(path_), 0L);
  QCOMPARE(QFileInfo(QString::fromStdString(path_ + "-wal")).size(), qint64{0});
  QVERIFY(record_->check().has_value());
  record_.reset();
  QCOMPARE(namesInFolder(path_), 0L);
  record_.emplace(sample::openOrDie(path_));
  QCOMPARE(people(*record_)->size(), std::size_t{3});
}

void EraseTest::whatWasToldIsWhatGoes() {
  const auto before = rowCounts(path_);
  const auto preview = previewErase(*record_, zoraida_);
  QVERIFY(preview.has_value());
  QCOMPARE(rowCounts(path_), before);
  const auto report = erasePlayer(*record_, zoraida_, {}, 1'770'000'000'000);
  QVERIFY(report.has_value());
  QCOMPARE(report->erased, *preview);
  auto after = rowCounts(path_);
  const std::map<QString, ErasedKind> kinds{{"sessions", ErasedKind::Sessions},
                                            {"frames", ErasedKind::Frames},
                                            {"placements", ErasedKind::Placements},
                                            {"fingerprints", ErasedKind::Fingerprints},
                                            {"shots", ErasedKind::Shots},
                                            {"positions", ErasedKind::Positions},
                                            {"deliveries", ErasedKind::Deliveries},
                                            {"events", ErasedKind::Events},
                                            {"pocketed", ErasedKind::Pocketed},
                                            {"tracks", ErasedKind::Tracks},
                                            {"rulings", ErasedKind::Rulings},
                                            {"suggestions", ErasedKind::Suggestions},
                                            {"explanations", ErasedKind::Explanations},
                                            {"corrections", ErasedKind::Corrections},
                                            {"notes", ErasedKind::Notes},
                                            {"tags", ErasedKind::Tags},
                                            {"consents", ErasedKind::Consents},
                                            {"player_groups", ErasedKind::Groups},
                                            {"drill_runs", ErasedKind::DrillRuns},
                                            {"trials", ErasedKind::DrillTries},
                                            {"drafts", ErasedKind::Drafts}};
  for (const auto& [table, count] : before) {
    const long gone = count - after[table];
    if (kinds.contains(table)) {
      QVERIFY2(gone > 0, qPrintable(table + " has nothing of the person in this test"));
      QVERIFY2(gone == preview->rowsOf(kinds.at(table)),
               qPrintable(
                   QStringLiteral("%1: %2 gone, %3 told").arg(table).arg(gone).arg(preview->rowsOf(kinds.at(table)))));
    } else if (table == "trial_goals") {
      QCOMPARE(gone, 2L);  // one with each of her tries
    } else if (table == "players" || table == "films") {
      QCOMPARE(gone, 1L);
    } else if (table == "session_players") {
      // One seat goes with the session.
      QCOMPARE(gone, preview->rowsOf(ErasedKind::Seats) + 1);
    } else if (table == "erased_players") {
      QCOMPARE(gone, -1L);
    } else {
      QVERIFY2(gone == 0, qPrintable(table));
    }
  }
  QCOMPARE(preview->rowsOf(ErasedKind::Sessions), 1L);
  QCOMPARE(preview->rowsOf(ErasedKind::Seats), 2L);
  QCOMPARE(preview->rowsOf(ErasedKind::Shots), 4L);
  QCOMPARE(preview->rowsOf(ErasedKind::NotesWithoutAuthor), 1L);
  QCOMPARE(preview->rowsOf(ErasedKind::CorrectionsWithoutAuthor), 1L);
  QCOMPARE(preview->rowsOf(ErasedKind::NamesInCorrections), 1L);
  QCOMPARE(preview->rowsOf(ErasedKind::NamesInRulings), 1L);
  QCOMPARE(preview->othersShots, 4);
  QCOMPARE(preview->othersPositions, 12);
}

void EraseTest::othersKeepTheirShotsSeatsAndNotes() {
  QVERIFY(erasePlayer(*record_, zoraida_, {}, 1'770'000'000'000).has_value());
  QCOMPARE(record_->shots(match_)->size(), std::size_t{1});
  QCOMPARE(record_->shots(doubles_)->size(), std::size_t{3});
  QCOMPARE(record_->placements(match_)->size(), std::size_t{1});
  const auto shot = record_->shot(bens_);
  QVERIFY(shot.has_value());
  QCOMPARE(shot->playerName, std::string("Ben"));
  QCOMPARE(shot->tracks, sample::tracks(2));
  QCOMPARE(shot->reading.before.size(), std::size_t{3});
  QCOMPARE(shot->notes.size(), std::size_t{2});
  QCOMPARE(shot->notes[0].text, std::string("well struck"));
  QCOMPARE(shot->notes[0].who, std::string());
  QCOMPARE(shot->corrections.size(), std::size_t{1});
  QVERIFY(!shot->corrections[0].measured.has_value());
  QCOMPARE(shot->corrections[0].corrected, std::optional<std::string>("Ben"));
  QVERIFY(shot->ruling.has_value());
  QVERIFY(shot->ruling->content.find(kName) == std::string::npos);
  QCOMPARE(person(*record_, ben_)->shots, 2);
  QCOMPARE(person(*record_, zoraida_).error().code, ErrorCode::NotFound);
}

void EraseTest::aMatchStaysAMatchAndSeatsStayWhereTheyWere() {
  QVERIFY(erasePlayer(*record_, zoraida_, {}, 1'770'000'000'000).has_value());
  const auto sessions = record_->sessions();
  QCOMPARE(sessions->size(), std::size_t{2});
  for (const SessionSummary& session : *sessions) {
    QVERIFY(session.kind == SessionKind::Match);
    const auto expected = session.name == "Doubles" ? std::vector<std::string>{"Cleo", "", "Dora", "Ben"}
                                                    : std::vector<std::string>{"", "Ben"};
    QCOMPARE(session.players, expected);
  }
}

void EraseTest::textsOfOthersLoseTheNameOrStayAsAsked() {
  const auto preview = previewErase(*record_, zoraida_);
  QCOMPARE(preview->mentions.size(), std::size_t{4});
  QCOMPARE(preview->mentions[0].text, kName + " and Ben");
  QCOMPARE(preview->mentions[0].withoutName, std::string("\u2026 and Ben"));
  EraseOptions options;
  options.blankMentions = false;
  const auto report = erasePlayer(*record_, zoraida_, options, 1'770'000'000'000);
  QCOMPARE(report->namesLeft, std::optional<long>(namesInFolder(path_)));
  QVERIFY(*report->namesLeft >= 4);
  QCOMPARE(record_->shot(bens_)->notes[1].text, "against " + kName + ", who watched");
  init();
  QVERIFY(erasePlayer(*record_, zoraida_, {}, 1'770'000'000'000).has_value());
  QCOMPARE(record_->shot(bens_)->notes[1].text, std::string("against \u2026, who watched"));
  QCOMPARE(record_->shot(bens_)->notes[1].who, std::string("Cleo"));
  QCOMPARE(record_->shot(bens_)->tags, std::vector<std::string>{"\u2026"});
  QCOMPARE(person(*record_, ben_)->notes[0].text, std::string("practises with \u2026"));
}

void EraseTest::aNameWithinAnotherWordIsNoMention() {
  QVERIFY(!withoutName("Benedikt and Reuben", "Ben").has_value());
  QCOMPARE(withoutName("Ben's break, Ben.", "Ben"), std::optional<std::string>("\u2026's break, \u2026."));
  QCOMPARE(withoutName("J\u00f6rg (left)", "J\u00f6rg"), std::optional<std::string>("\u2026 (left)"));
  QVERIFY(!withoutName("J\u00f6rg", "J").has_value());
  QVERIFY(!withoutName("a (b", "(c").has_value());
  QVERIFY(!withoutOverruler(R"({"overruled_by": "Benedikt"})", "Ben").has_value());
  QVERIFY(!withoutOverruler("no json of Ben", "Ben").has_value());
}

void EraseTest::aDraftOfTheirsGoesAndOthersStay() {
  const std::string other = R"({"hand": {"players": ["Zoraida Quux the younger", "Ben"]}})";
  QVERIFY(record_->keepDraft("other", other).has_value());
  QCOMPARE(previewErase(*record_, zoraida_)->rowsOf(ErasedKind::Drafts), 1L);
  QVERIFY(erasePlayer(*record_, zoraida_, {}, 1'770'000'000'000).has_value());
  QVERIFY(!record_->draft("hand-session")->has_value());
  QCOMPARE(*record_->draft("other"), std::optional(other));
}

void EraseTest::filmsAreNamedAndDeletedOnlyWhenAsked() {
  const auto preview = previewErase(*record_, zoraida_);
  QCOMPARE(preview->films.size(), std::size_t{2});
  QCOMPARE(preview->films[0].path, ownFilm_);
  QVERIFY(!preview->films[0].shared);
  QCOMPARE(preview->films[1].path, sharedFilm_);
  QVERIFY(preview->films[1].shared);
  const std::string hash = preview->films[0].sha256;
  QVERIFY(erasePlayer(*record_, zoraida_, {}, 1'770'000'000'000).has_value());
  QVERIFY(std::filesystem::exists(ownFilm_));
  QVERIFY(!record_->filmWithHash(hash)->has_value());
  QVERIFY(record_->filmWithHash(preview->films[1].sha256)->has_value());
  init();
  EraseOptions options;
  options.deleteFilms = true;
  const auto report = erasePlayer(*record_, zoraida_, options, 1'770'000'000'000);
  QCOMPARE(report->files, (std::vector<FileFate>{{FileFate::Fate::Deleted, ownFilm_, {}}}));
  QVERIFY(!std::filesystem::exists(ownFilm_));
  QVERIFY(std::filesystem::exists(sharedFilm_));
}

void EraseTest::anotherFileAtAFilmsPlaceStays() {
  (void)writeFile(*folder_, "alone.mp4", "somebody else's film");
  EraseOptions options;
  options.deleteFilms = true;
  const auto report = erasePlayer(*record_, zoraida_, options, 1'770'000'000'000);
  QCOMPARE(report->files.size(), std::size_t{1});
  QVERIFY(report->files[0].fate == FileFate::Fate::Another);
  QVERIFY(std::filesystem::exists(ownFilm_));
  init();
  std::filesystem::remove(ownFilm_);
  const auto gone = erasePlayer(*record_, zoraida_, options, 1'770'000'000'000);
  QVERIFY(gone->files[0].fate == FileFate::Fate::Gone);
}

void EraseTest::backupsThatHoldTheNameAreListed() {
  const std::string with = writeFile(*folder_, "club.sqlite.version-3.backup", QByteArray::fromStdString("x" + kName));
  const std::string second = writeFile(*folder_, "club.sqlite.version-3.backup.2", "nobody");
  const std::string other = writeFile(*folder_, "other.sqlite.version-3.backup", QByteArray::fromStdString(kName));
  const auto preview = previewErase(*record_, zoraida_);
  QCOMPARE(preview->backups, std::vector<std::string>{with});
  QVERIFY(erasePlayer(*record_, zoraida_, {}, 1'770'000'000'000).has_value());
  QVERIFY(std::filesystem::exists(with));
  init();
  (void)writeFile(*folder_, "club.sqlite.version-3.backup", QByteArray::fromStdString("x" + kName));
  EraseOptions options;
  options.deleteBackups = true;
  const auto report = erasePlayer(*record_, zoraida_, options, 1'770'000'000'000);
  QCOMPARE(report->files.size(), std::size_t{1});
  QVERIFY(!std::filesystem::exists(folder_->file("club.sqlite.version-3.backup")));
}

void EraseTest::consentsOfOthersStayAsEvidence() {
  ConsentEntry entry = consent(ben_, kName);
  entry.byGuardian = true;
  QVERIFY(addConsent(*record_, entry).has_value());
  QCOMPARE(previewErase(*record_, zoraida_)->guardianLines, 1);
  const auto report = erasePlayer(*record_, zoraida_, {}, 1'770'000'000'000);
  QVERIFY(report.has_value());
  QCOMPARE(consents(*record_, ben_)->front().by, kName);
  // Nothing is claimed that is not so.
  QCOMPARE(report->namesLeft, std::optional<long>(1));
}

void EraseTest::whileAnotherProgramReadsNothingIsClaimed() {
  record_.emplace(sample::openOrDie(path_, {.busyTimeout_ms = 20}));
  {
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("reader"));
    database.setDatabaseName(QString::fromStdString(path_));
    QVERIFY(database.open());
    QSqlQuery query(database);
    QVERIFY(query.exec("BEGIN"));
    QVERIFY(query.exec("SELECT count(*) FROM players"));
    QVERIFY(query.next());
    const auto report = erasePlayer(*record_, zoraida_, {}, 1'770'000'000'000);
    QVERIFY(report.has_value());
    QVERIFY(!report->namesLeft.has_value());
    QCOMPARE(people(*record_)->size(), std::size_t{3});
  }
  QSqlDatabase::removeDatabase(QStringLiteral("reader"));
  // The next try makes good for it.
  QCOMPARE(compactAndCount(*record_, kName), std::optional<long>(0));
  QCOMPARE(namesInFolder(path_), 0L);
}

void EraseTest::anUnknownPlayerIsRefused() {
  QCOMPARE(previewErase(*record_, PlayerId{99}).error().code, ErrorCode::NotFound);
  QCOMPARE(erasePlayer(*record_, PlayerId{99}, {}, 0).error().code, ErrorCode::NotFound);
  QCOMPARE(people(*record_)->size(), std::size_t{4});
}

void EraseTest::bytesAreFoundAcrossBlocks() {
  QByteArray content((1 << 20) - 3, 'x');
  content += "needle" + QByteArray(1 << 20, 'y') + "needle";
  const std::string path = writeFile(*folder_, "big", content);
  QCOMPARE(timesInFile(path, "needle"), std::optional<long>(2));
  QCOMPARE(timesInFile(path, "xxneedle"), std::optional<long>(1));
  QCOMPARE(timesInFile(path, "thread"), std::optional<long>(0));
  QCOMPARE(timesInFile(path, ""), std::optional<long>(0));
  QVERIFY(!timesInFile(folder_->file("none"), "needle").has_value());
}

FERRULE_TEST(EraseTest)
#include "erase_test.moc"
