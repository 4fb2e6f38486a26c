// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/film_in_record.h"

#include <QtTest>
#include <fstream>

#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class FilmInRecordTest : public QObject {
  Q_OBJECT
 private slots:
  void aFilmThatNobodyMeasuredIsNotThere();
  void aPartIsToldUntilAWholeMeasurementStandsBesideIt();
  void aLaterPartDoesNotHideTheWhole();
  void aMissingFilmIsNamed();

 private:
  /// A frame of that film in a session of its own.
  static FrameId measured(Record& record, const std::string& session, const std::string& film, bool whole);
};

namespace {

std::string writtenFile(const sample::Folder& folder, const std::string& name, const std::string& content) {
  const std::string path = folder.file(name);
  std::ofstream(path) << content;
  return path;
}

}  // namespace

FrameId FilmInRecordTest::measured(Record& record, const std::string& session, const std::string& film, bool whole) {
  FilmEntry entry;
  entry.path = film;
  entry.sha256 = *fileSha256(film);
  const auto filmId = record.addFilm(entry);
  NewSession made;
  made.name = session;
  made.table = sample::table();
  const auto sessionId = record.addSession(made);
  const auto frame = record.addFrame({*sessionId, "", *filmId, sample::rig()});
  if (whole && !record.completeFrame(*frame)) qFatal("not completed");
  return *frame;
}

void FilmInRecordTest::aFilmThatNobodyMeasuredIsNotThere() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const auto found = filmInRecord(record, writtenFile(folder, "a.mp4", "one"));
  QVERIFY(found.has_value());
  QVERIFY(!found->has_value());
}

void FilmInRecordTest::aPartIsToldUntilAWholeMeasurementStandsBesideIt() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const std::string film = writtenFile(folder, "a.mp4", "one");
  measured(record, "Broken off", film, false);
  auto found = filmInRecord(record, film);
  QVERIFY(found.has_value() && found->has_value());
  QCOMPARE((*found)->session.name, std::string("Broken off"));
  QVERIFY(!(*found)->complete);
  measured(record, "Whole", film, true);
  // The same content under another name is the same film.
  found = filmInRecord(record, writtenFile(folder, "copy.mp4", "one"));
  QVERIFY(found.has_value() && found->has_value());
  QCOMPARE((*found)->session.name, std::string("Whole"));
  QVERIFY((*found)->complete);
}

void FilmInRecordTest::aLaterPartDoesNotHideTheWhole() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const std::string film = writtenFile(folder, "a.mp4", "one");
  measured(record, "Whole", film, true);
  measured(record, "Again", film, false);
  const auto found = filmInRecord(record, film);
  QVERIFY(found.has_value() && found->has_value());
  QCOMPARE((*found)->session.name, std::string("Whole"));
}

void FilmInRecordTest::aMissingFilmIsNamed() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const auto found = filmInRecord(record, folder.file("none.mp4"));
  QVERIFY(!found.has_value());
  QCOMPARE(found.error().code, ErrorCode::FileMissing);
}

FERRULE_TEST(FilmInRecordTest)
#include "film_in_record_test.moc"
