// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/merge_record.h"

#include <QFile>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QtTest>
#include <filesystem>

#include "core/record/consent.h"
#include "core/record/drill_rows.h"
#include "core/record/erase_player.h"
#include "core/record/export_record.h"
#include "core/record/people.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Two records that were one, or never met, become one without doubles.
class MergeTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void anEmptyRecordTakesEverything();
  void twiceMergedGivesNoDoubles();
  void bothWaysTheRecordsHoldTheSame();
  void aLaterCorrectionComesWithItsFrame();
  void ownCorrectionsStand();
  void framesThatWentApartStayAsTheyAreHere();
  void aFrameThatWasGoneOnWithGrows();
  void anotherAdaIsAnotherPlayer();
  void whoWasErasedStaysErased();
  void consentsGroupsNotesAndTagsComeTogether();
  void aRunThatWasGoneOnWithKeepsItsTries();
  void whatIsUnderWayStaysWhereItIs();
  void aNewerRecordIsRefusedAndNothingChanges();
  void anOlderRecordIsBroughtForwardInACopy();
  void aFileThatIsNoRecordIsRefused();

 private:
  /// Everything that the record holds, as text.
  [[nodiscard]] QByteArray textOf(const std::string& path) const;
  [[nodiscard]] std::string ours() const { return folder_->file("ours.sqlite"); }
  [[nodiscard]] std::string theirs() const { return folder_->file("theirs.sqlite"); }
  MergeReport merged() const {
    const auto report = mergeRecord(ours(), theirs());
    if (!report) qFatal("%s %s", report.error().subject.c_str(), report.error().detail.c_str());
    return *report;
  }
  /// The same record on two machines.
  void copyToTheirs() const {
    std::filesystem::copy_file(ours(), theirs(), std::filesystem::copy_options::overwrite_existing);
  }

  std::unique_ptr<sample::Folder> folder_;
};

namespace {

/// A session with two shots, and remarks on the first.
sample::Game addPlayed(Record& record) {
  const auto game = sample::addGame(record);
  const RulingEntry ruling{Verdict::Certain, {}, "{\"content\":1}"};
  for (int number : {1, 2}) {
    const auto shot =
        record.appendShot(game.frame, sample::explainedShot(number), sample::tracks(number), game.ada, ruling);
    if (!shot) qFatal("no shot");
    if (number == 1 && (!record.addNote(*shot, "elbow", "Cleo", 5) || !record.addTag(*shot, "good"))) qFatal("no note");
    if (!record.keepSuggestion(*shot, {"planner 1", true, 0.1, 0.2, "{}"})) qFatal("no suggestion");
  }
  if (!record.addPlacement(game.frame, {BallName(3), 1.0, {0.1, 0.2}}) || !record.completeFrame(game.frame))
    qFatal("no frame");
  return game;
}

FrameId firstFrame(Record& record) {
  return record.frames(record.sessions()->front().id)->front().id;
}

ShotId shotOf(Record& record, int number) {
  const auto shots = record.shots(firstFrame(record));
  for (const ShotSummary& shot : *shots) {
    if (shot.number == number) return shot.id;
  }
  qFatal("no such shot");
}

void correct(const std::string& path, int number, const char* outcome, UtcMilliseconds when) {
  Record record = sample::openOrDie(path);
  const auto done = record.correctShot(shotOf(record, number), ShotField::Outcome, std::string(outcome), "Cleo", when);
  if (!done) qFatal("not corrected");
}

Outcome outcomeOf(const std::string& path, int number) {
  Record record = sample::openOrDie(path);
  return record.shot(shotOf(record, number))->reading.outcome;
}

void runSql(const std::string& path, const QString& sql) {
  {
    QSqlDatabase database = QSqlDatabase::addDatabase("QSQLITE", "merge-test");
    database.setDatabaseName(QString::fromStdString(path));
    if (!database.open() || !QSqlQuery(database).exec(sql)) qFatal("no such statement");
  }
  QSqlDatabase::removeDatabase("merge-test");
}

}  // namespace

void MergeTest::init() {
  folder_ = std::make_unique<sample::Folder>();
}

QByteArray MergeTest::textOf(const std::string& path) const {
  Record record = sample::openOrDie(path);
  const std::string folder = folder_->file("export");
  if (!exportRecord(record, {folder, std::nullopt})) qFatal("no export");
  QByteArray text;
  for (const char* name : {"/record.json", "/shots.csv"}) {
    QFile file(QString::fromStdString(folder) + name);
    if (!file.open(QIODevice::ReadOnly)) qFatal("no file");
    text += file.readAll();
  }
  return text;
}

void MergeTest::anEmptyRecordTakesEverything() {
  {
    Record record = sample::openOrDie(theirs());
    addPlayed(record);
  }
  const MergeReport report = merged();
  QCOMPARE(report.players, 2);
  QCOMPARE(report.sessions, 1);
  QCOMPARE(report.frames, 1);
  QCOMPARE(report.shots, 2);
  QVERIFY(!report.isEmpty());
  QCOMPARE(textOf(ours()), textOf(theirs()));
  QVERIFY(sample::openOrDie(ours()).check().has_value());
}

void MergeTest::twiceMergedGivesNoDoubles() {
  {
    Record record = sample::openOrDie(theirs());
    addPlayed(record);
  }
  {
    // Something of our own, so that ids differ.
    Record record = sample::openOrDie(ours());
    QVERIFY(addPerson(record, {sample::player("Zoe"), {}}).has_value());
    QVERIFY(record.addSession({"Alone", 1'770'000'000'000, "other table", sample::table(), {}}).has_value());
  }
  merged();
  const QByteArray once = textOf(ours());
  QVERIFY(merged().isEmpty());
  QCOMPARE(textOf(ours()), once);
  // And by way of a third one.
  std::filesystem::copy_file(ours(), folder_->file("third.sqlite"));
  QVERIFY(mergeRecord(folder_->file("third.sqlite"), theirs())->isEmpty());
  QVERIFY(mergeRecord(ours(), ours())->isEmpty());
}

void MergeTest::bothWaysTheRecordsHoldTheSame() {
  {
    Record record = sample::openOrDie(ours());
    addPlayed(record);
  }
  copyToTheirs();
  {
    Record record = sample::openOrDie(theirs());
    QVERIFY(record.addSession({"Next week", 1'770'000'000'000, "table", sample::table(), {}}).has_value());
  }
  QCOMPARE(merged().sessions, 1);
  QVERIFY(mergeRecord(theirs(), ours())->isEmpty());
  QCOMPARE(textOf(ours()), textOf(theirs()));
}

void MergeTest::aLaterCorrectionComesWithItsFrame() {
  {
    Record record = sample::openOrDie(ours());
    addPlayed(record);
  }
  copyToTheirs();
  correct(theirs(), 2, "scratch", 77);
  const MergeReport report = merged();
  QCOMPARE(report.framesUpdated, 1);
  QCOMPARE(report.shots, 0);
  QCOMPARE(textOf(ours()), textOf(theirs()));
  // Both values are there, and the correction can be taken back here.
  Record record = sample::openOrDie(ours());
  const auto shot = record.shot(shotOf(record, 2));
  QCOMPARE(shot->reading.outcome, Outcome::Scratch);
  const auto& correction = shot->corrections.front();
  QCOMPARE(correction.corrected, std::optional<std::string>("scratch"));
  QVERIFY(correction.measured.has_value());
  QVERIFY(record.withdrawCorrection(correction.id).has_value());
  QVERIFY(record.shot(shotOf(record, 2))->reading.outcome != Outcome::Scratch);
}

void MergeTest::ownCorrectionsStand() {
  {
    Record record = sample::openOrDie(ours());
    addPlayed(record);
  }
  copyToTheirs();
  correct(ours(), 1, "safety", 50);
  const QByteArray before = textOf(ours());
  const MergeReport report = merged();
  QVERIFY(report.isEmpty());
  QCOMPARE(report.framesApart, 0);
  QCOMPARE(textOf(ours()), before);
}

void MergeTest::framesThatWentApartStayAsTheyAreHere() {
  {
    Record record = sample::openOrDie(ours());
    addPlayed(record);
  }
  copyToTheirs();
  correct(ours(), 1, "safety", 50);
  correct(theirs(), 2, "scratch", 60);
  const MergeReport report = merged();
  QCOMPARE(report.framesApart, 1);
  QCOMPARE(report.framesUpdated, 0);
  QCOMPARE(outcomeOf(ours(), 1), Outcome::Safety);
  QVERIFY(outcomeOf(ours(), 2) != Outcome::Scratch);
}

void MergeTest::aFrameThatWasGoneOnWithGrows() {
  {
    Record record = sample::openOrDie(ours());
    addPlayed(record);
  }
  copyToTheirs();
  {
    Record record = sample::openOrDie(theirs());
    const auto ben = record.playerNamed("Ben");
    QVERIFY(record.appendShot(firstFrame(record), sample::shot(3), sample::tracks(3), (*ben)->id).has_value());
  }
  {
    // A note of ours on a shot that both have stays.
    Record record = sample::openOrDie(ours());
    QVERIFY(record.addNote(shotOf(record, 2), "ours", "Dee", 9).has_value());
  }
  const MergeReport report = merged();
  QCOMPARE(report.shots, 1);
  QCOMPARE(report.framesUpdated, 1);
  Record record = sample::openOrDie(ours());
  QCOMPARE(record.shots(firstFrame(record))->size(), std::size_t{3});
  QCOMPARE(record.shot(shotOf(record, 3))->playerName, std::string("Ben"));
  QCOMPARE(record.shot(shotOf(record, 2))->notes.front().text, std::string("ours"));
  QCOMPARE(record.shot(shotOf(record, 1))->notes.size(), std::size_t{1});
}

void MergeTest::anotherAdaIsAnotherPlayer() {
  for (const std::string& path : {ours(), theirs()}) {
    Record record = sample::openOrDie(path);
    addPlayed(record);
  }
  correct(theirs(), 1, "miss", 3);
  {
    Record record = sample::openOrDie(theirs());
    QVERIFY(record.correctShot(shotOf(record, 2), ShotField::Player, std::string("Ben"), "Cleo", 4).has_value());
  }
  const MergeReport report = merged();
  QCOMPARE(report.renamed.size(), std::size_t{2});
  QCOMPARE(report.renamed.front(), (std::pair<std::string, std::string>("Ada", "Ada (2)")));
  QCOMPARE(report.sessions, 1);
  Record record = sample::openOrDie(ours());
  QCOMPARE(record.players()->size(), std::size_t{4});
  const auto ada = record.playerNamed("Ada");
  QCOMPARE(person(record, (*ada)->id)->shots, 2);
  // Their correction names their Ben as he is called here, and can be taken back.
  const auto ben = record.playerNamed("Ben (2)");
  QCOMPARE(person(record, (*ben)->id)->shots, 1);
  const auto sessions = record.sessions();
  for (const SessionSummary& session : *sessions) {
    const auto shots = record.shots(record.frames(session.id)->front().id);
    for (const ShotSummary& shot : *shots) {
      const auto stored = record.shot(shot.id);
      if (stored->playerName != "Ben (2)") continue;
      QCOMPARE(stored->corrections.back().corrected, std::optional<std::string>("Ben (2)"));
      QVERIFY(record.withdrawCorrection(stored->corrections.back().id).has_value());
      QCOMPARE(record.shot(shot.id)->playerName, std::string("Ada (2)"));
    }
  }
}

void MergeTest::whoWasErasedStaysErased() {
  {
    Record record = sample::openOrDie(ours());
    addPlayed(record);
    // Ben alone, too.
    const auto ben = record.playerNamed("Ben");
    const auto session = record.addSession({"Ben alone", 1'770'000'000'000, "table", sample::table(), {(*ben)->id}});
    const auto frame = record.addFrame({*session, "", std::nullopt, std::nullopt});
    QVERIFY(record.appendShot(*frame, sample::shot(1), {}, (*ben)->id).has_value());
  }
  copyToTheirs();
  {
    Record record = sample::openOrDie(ours());
    const auto ben = record.playerNamed("Ben");
    QVERIFY(erasePlayer(record, (*ben)->id, {}, 9).has_value());
  }
  const QByteArray before = textOf(ours());
  const MergeReport report = merged();
  QCOMPARE(report.erasedHere, 1);
  QVERIFY(report.isEmpty());
  QCOMPARE(textOf(ours()), before);
  QVERIFY(!before.contains("Ben"));
  // The other way round it is said, and nothing is taken away.
  const auto back = mergeRecord(theirs(), ours());
  QCOMPARE(back->erasedThere, std::vector<std::string>{"Ben"});
  Record record = sample::openOrDie(theirs());
  QVERIFY(record.playerNamed("Ben")->has_value());
}

void MergeTest::consentsGroupsNotesAndTagsComeTogether() {
  {
    Record record = sample::openOrDie(ours());
    addPlayed(record);
  }
  copyToTheirs();
  {
    Record record = sample::openOrDie(theirs());
    const PlayerId ada = (*record.playerNamed("Ada"))->id;
    ConsentEntry entry;
    entry.player = ada;
    entry.scope = ConsentScope::Film;
    entry.from = 5;
    QVERIFY(addConsent(record, entry).has_value());
    QVERIFY(addPlayerNote(record, ada, "soft bridge", "Cleo", 42).has_value());
    QVERIFY(updatePerson(record, {(*record.players())[0], {"juniors"}}).has_value());
    QVERIFY(record.addTag(shotOf(record, 2), "again").has_value());
    QVERIFY(record.addNote(shotOf(record, 2), "late", "Cleo", 43).has_value());
  }
  merged();
  QVERIFY(merged().isEmpty());
  Record record = sample::openOrDie(ours());
  const auto ada = person(record, (*record.playerNamed("Ada"))->id);
  QCOMPARE(ada->consents.size(), std::size_t{1});
  QCOMPARE(ada->notes.size(), std::size_t{1});
  QCOMPARE(ada->details.groups, std::vector<std::string>{"juniors"});
  const auto shot = record.shot(shotOf(record, 2));
  QCOMPARE(shot->tags, std::vector<std::string>{"again"});
  QCOMPARE(shot->notes.size(), std::size_t{1});
}

void MergeTest::aRunThatWasGoneOnWithKeepsItsTries() {
  DrillRunId run;
  {
    Record record = sample::openOrDie(ours());
    QVERIFY(record.keepDrill({"own-1", "{}"}, 1).has_value());
    NewDrillRun wanted;
    wanted.drillKey = "own-1";
    wanted.drill = "{}";
    wanted.tableName = "table";
    wanted.table = sample::table();
    wanted.started = 10;
    run = *record.addDrillRun(wanted);
    TrialEntry first;
    first.goals = {{true, 0.01}};
    QVERIFY(record.appendTrial(run, first).has_value());
  }
  copyToTheirs();
  {
    Record record = sample::openOrDie(theirs());
    TrialEntry second;
    second.goals = {{false, std::nullopt}};
    QVERIFY(record.appendTrial(run, second).has_value());
  }
  merged();
  merged();
  Record record = sample::openOrDie(ours());
  const auto runs = record.drillRuns(std::nullopt);
  QCOMPARE(runs->size(), std::size_t{1});
  QCOMPARE(runs->front().trials.size(), std::size_t{2});
  QCOMPARE(runs->front().trials.back().goals.front().met, std::optional(false));
  QCOMPARE(record.drills()->size(), std::size_t{1});
}

void MergeTest::whatIsUnderWayStaysWhereItIs() {
  for (const std::string& path : {ours(), theirs()}) {
    Record record = sample::openOrDie(path);
    QVERIFY(record.keepDraft("hand", path).has_value());
  }
  merged();
  Record record = sample::openOrDie(ours());
  QCOMPARE(*record.draft("hand"), std::optional(ours()));
}

void MergeTest::aNewerRecordIsRefusedAndNothingChanges() {
  for (const std::string& path : {ours(), theirs()}) {
    Record record = sample::openOrDie(path);
    addPlayed(record);
  }
  runSql(theirs(), QStringLiteral("PRAGMA user_version = %1").arg(kRecordVersion + 1));
  const QByteArray before = textOf(ours());
  const auto report = mergeRecord(ours(), theirs());
  QVERIFY(!report.has_value());
  QCOMPARE(report.error().code, ErrorCode::RecordTooNew);
  QCOMPARE(report.error().subject, theirs());
  QCOMPARE(textOf(ours()), before);
}

void MergeTest::anOlderRecordIsBroughtForwardInACopy() {
  const QString old = QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/records/");
  const QStringList files = QDir(old).entryList({"*.sqlite"}, QDir::Files);
  QVERIFY(!files.isEmpty());
  for (const QString& name : files) {
    const std::string other = folder_->file(name.toStdString());
    QVERIFY(QFile::copy(old + name, QString::fromStdString(other)));
    const QByteArray bytes = [&] {
      QFile file(QString::fromStdString(other));
      return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }();
    const std::string fresh = folder_->file("fresh-" + name.toStdString());
    const auto report = mergeRecord(fresh, other);
    QVERIFY2(report.has_value(), report ? "" : report.error().detail.c_str());
    QVERIFY(report->shots > 0);
    QVERIFY(mergeRecord(fresh, other)->isEmpty());
    QFile file(QString::fromStdString(other));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(file.readAll(), bytes);
  }
}

void MergeTest::aFileThatIsNoRecordIsRefused() {
  { QFile(QString::fromStdString(theirs())).open(QIODevice::WriteOnly); }
  QFile text(QString::fromStdString(folder_->file("text.sqlite")));
  QVERIFY(text.open(QIODevice::WriteOnly));
  text.write(QByteArray(8192, 'x'));
  text.close();
  QCOMPARE(mergeRecord(ours(), folder_->file("text.sqlite")).error().code, ErrorCode::RecordNotADatabase);
  QCOMPARE(mergeRecord(ours(), folder_->file("gone.sqlite")).error().code, ErrorCode::FileMissing);
}

FERRULE_TEST(MergeTest)
#include "merge_test.moc"
