// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/table_fingerprint.h"

#include <QtTest>

#include "tests/record/sample.h"
#include "tests/support/filmed_shot.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class TableFingerprintTest : public QObject {
  Q_OBJECT
 private slots:
  void aSessionsShotsTellWhatItsTableIsLike();
  void withoutAFingerprintTheLiteratureHolds();
  void theTableIsTakenAsItWasLastMeasuredBefore();
  void theLatestFingerprintOfATableIsFoundByItsMeasures();
  void whatAPositionFileSetsStands();
  void aSessionWithoutFilmedShotsIsRefused();
  void aSessionIsFoundByItsName();
};

namespace {

NewSession evening(UtcMilliseconds started) {
  return {"Evening", started, "club table 2", sample::table(), {}, SessionKind::Practice};
}

/// Adds a session with three filmed shots on cloth of this rolling friction.
SessionSummary filmedSession(Record& record, double rollingFriction) {
  const SessionId session = *record.addSession(evening(1'772'389'800'000));
  const FrameId frame = *record.addFrame({session, "", std::nullopt, std::nullopt});
  PhysicsParameters cloth = parametersFor(sample::table().balls);
  cloth.rollingFriction = rollingFriction;
  Random random(5);
  for (int i = 0; i < 3; ++i) {
    const Position before{{kCueBall, {-0.6, -0.2 + 0.2 * i}}, {BallName{3}, {0.4, 0.45}}};
    const FingerprintShot shot = filmed(cloth, before, {0.05 * i, 1.2 + 0.3 * i, 0.0, 0.0, 0.0}, random);
    ShotReading reading;
    reading.number = i + 1;
    reading.strike_s = shot.strike_s;
    reading.rest_s = shot.rest_s;
    reading.before = shot.before;
    reading.delivery = shot.delivery;
    reading.events = shot.events;
    if (!record.appendShot(frame, reading, shot.tracks)) qFatal("the shot was not recorded");
  }
  return record.sessions()->front();
}

/// A fingerprint that found nothing but this rolling friction.
FingerprintEntry found(SessionId session, double rollingFriction) {
  const Fingerprint fingerprint{
      "club table 2", "2026-03-01", {{"rolling_friction", rollingFriction, 1e-4, 0.01, 3e-3, true}}, 3, 300,
      5e-4,           true};
  return {session, 1, 3, fingerprintText(fingerprint)};
}

}  // namespace

void TableFingerprintTest::aSessionsShotsTellWhatItsTableIsLike() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const SessionSummary session = filmedSession(record, 0.014);
  const auto fingerprint = fitSessionsFingerprint(record, session, 99);
  QVERIFY(fingerprint.has_value());
  QCOMPARE(fingerprint->table, std::string("club table 2"));
  QCOMPARE(fingerprint->date, std::string("2026-03-01"));
  QCOMPARE(fingerprint->shots, 3);
  // It is kept, and whoever asks for the table's parameters gets it.
  const auto kept = record.fingerprintOf(session.id);
  QVERIFY(kept.has_value() && kept->has_value());
  QCOMPARE((*kept)->fitted, UtcMilliseconds{99});
  QCOMPARE(*parseFingerprint((*kept)->content, "kept"), *fingerprint);
  const auto parameters = tableParameters(record, session.id);
  QVERIFY(parameters.has_value());
  QVERIFY2(std::abs(parameters->rollingFriction - 0.014) < 0.0005,
           qPrintable(QString::number(parameters->rollingFriction)));
}

void TableFingerprintTest::withoutAFingerprintTheLiteratureHolds() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const SessionId session = *record.addSession(evening(1));
  QCOMPARE(*tableParameters(record, session), parametersFor(sample::table().balls));
}

void TableFingerprintTest::theTableIsTakenAsItWasLastMeasuredBefore() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const SessionId march = *record.addSession(evening(1000));
  const SessionId april = *record.addSession(evening(2000));
  const SessionId may = *record.addSession(evening(3000));
  const SessionId june = *record.addSession(evening(4000));
  QVERIFY(record.keepFingerprint(found(april, 0.011)).has_value());
  QVERIFY(record.keepFingerprint(found(june, 0.013)).has_value());
  QCOMPARE(tableParameters(record, march)->rollingFriction, 0.011);  // nothing earlier: the nearest
  QCOMPARE(tableParameters(record, april)->rollingFriction, 0.011);
  QCOMPARE(tableParameters(record, may)->rollingFriction, 0.011);
  QCOMPARE(tableParameters(record, june)->rollingFriction, 0.013);
}

void TableFingerprintTest::theLatestFingerprintOfATableIsFoundByItsMeasures() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const SessionId march = *record.addSession(evening(1000));
  const SessionId april = *record.addSession(evening(2000));
  (void)*record.addSession(evening(3000));
  MeasuredTable other = sample::table();
  other.table.length_m = 2.54;
  QVERIFY(!latestFingerprint(record, sample::table())->has_value());
  QVERIFY(record.keepFingerprint(found(march, 0.011)).has_value());
  QVERIFY(record.keepFingerprint(found(april, 0.012)).has_value());
  MeasuredTable bare = sample::table();
  bare.tags.clear();  // tags do not make another table
  const auto latest = latestFingerprint(record, bare);
  QVERIFY(latest.has_value() && latest->has_value());
  QCOMPARE((*latest)->fingerprint.coefficients.front().value, 0.012);
  QCOMPARE((*latest)->session, std::string("Evening"));
  QVERIFY(!latestFingerprint(record, other)->has_value());
}

void TableFingerprintTest::whatAPositionFileSetsStands() {
  const PhysicsParameters literature = parametersFor(sample::table().balls);
  const Fingerprint fingerprint = *parseFingerprint(found(SessionId{1}, 0.012).content, "f");
  QCOMPARE(appliedWhereUsual(fingerprint, literature, literature).rollingFriction, 0.012);
  PhysicsParameters set = literature;
  set.rollingFriction = 0.007;
  QCOMPARE(appliedWhereUsual(fingerprint, set, literature), set);
}

void TableFingerprintTest::aSessionWithoutFilmedShotsIsRefused() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const auto game = sample::addGame(record);
  QVERIFY(record.appendShot(game.frame, sample::shot(1), {}).has_value());
  const auto refused = fitSessionsFingerprint(record, record.sessions()->front(), 99);
  QVERIFY(!refused.has_value());
  QCOMPARE(refused.error().code, ErrorCode::NotFound);
  QVERIFY(!record.fingerprintOf(game.session)->has_value());
}

void TableFingerprintTest::aSessionIsFoundByItsName() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const auto game = sample::addGame(record);
  QVERIFY(sessionNamed(record, "Evening")->id == game.session);
  QCOMPARE(sessionNamed(record, "Morning").error().code, ErrorCode::NotFound);
}

FERRULE_TEST(TableFingerprintTest)
#include "table_fingerprint_test.moc"
