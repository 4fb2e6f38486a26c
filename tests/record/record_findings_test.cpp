// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/record/record.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class RecordFindingsTest : public QObject {
  Q_OBJECT
 private slots:
  void aSuggestionComesBackBesideItsShot();
  void aLaterSuggestionTakesTheEarlierOnesPlace();
  void anExplanationComesBackBesideItsShot();
  void aTablesFingerprintsComeInTheOrderOfItsSessions();
  void whatASessionWasForIsKept();
  void findingsOfWhatIsNotThereAreRefused();
  void theLastShotPutInByHandCanBeTakenBack();
  void aFilmedShotIsNotTakenBack();
  void aDraftIsKeptUntilItIsDone();
};

void RecordFindingsTest::aSuggestionComesBackBesideItsShot() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const ShotId first = *record.appendShot(game.frame, sample::shot(1), {});
  const ShotId second = *record.appendShot(game.frame, sample::shot(2), {});
  const SuggestionEntry suggestion{"planner 1", true, 0.07, std::nullopt, R"([{"rank": 1}])"};
  QVERIFY(record.keepSuggestion(first, suggestion).has_value());
  QCOMPARE(record.shot(first)->suggestion, std::optional(suggestion));
  QVERIFY(!record.shot(second)->suggestion.has_value());
}

void RecordFindingsTest::aLaterSuggestionTakesTheEarlierOnesPlace() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const ShotId shot = *record.appendShot(game.frame, sample::shot(1), {});
  QVERIFY(record.keepSuggestion(shot, {"planner 1", false, 0.1, 0.2, "[]"}).has_value());
  const SuggestionEntry later{"planner 2", false, 0.0, -0.1, "[]"};
  QVERIFY(record.keepSuggestion(shot, later).has_value());
  QCOMPARE(record.shot(shot)->suggestion, std::optional(later));
}

void RecordFindingsTest::anExplanationComesBackBesideItsShot() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const ShotId shot = *record.appendShot(game.frame, sample::shot(1), {});
  QVERIFY(record.keepExplanation(shot, R"({"aim": 1.5})").has_value());
  QCOMPARE(record.shot(shot)->explanation, std::optional<std::string>(R"({"aim": 1.5})"));
}

void RecordFindingsTest::aTablesFingerprintsComeInTheOrderOfItsSessions() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto session = [&](UtcMilliseconds started, const std::string& table) {
    return *record.addSession({"Evening", started, table, sample::table(), {}, SessionKind::Unknown});
  };
  const SessionId late = session(3000, "club table 2");
  const SessionId early = session(1000, "club table 2");
  const SessionId elsewhere = session(2000, "club table 5");
  for (const SessionId id : {late, early, elsewhere})
    QVERIFY(record.keepFingerprint({id, 9000, 4, std::to_string(id.value)}).has_value());
  const auto all = record.fingerprintsOfTable(late);
  QVERIFY(all.has_value());
  QCOMPARE(all->size(), std::size_t{2});
  QVERIFY((*all)[0].session == early);
  QVERIFY((*all)[1].session == late);
  // Fitted again, the later one stands.
  const FingerprintEntry again{early, 9500, 5, "{}"};
  QVERIFY(record.keepFingerprint(again).has_value());
  QCOMPARE(*record.fingerprintOf(early), std::optional(again));
  QCOMPARE(record.fingerprintsOfTable(late)->size(), std::size_t{2});
}

void RecordFindingsTest::whatASessionWasForIsKept() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  for (const SessionKind kind :
       {SessionKind::Unknown, SessionKind::Practice, SessionKind::Match, SessionKind::Lesson}) {
    QVERIFY(record.addSession({"Evening", 1, "club table 2", sample::table(), {}, kind}).has_value());
    QVERIFY(record.sessions()->front().kind == kind);  // the newest of one date is the last added
  }
}

void RecordFindingsTest::findingsOfWhatIsNotThereAreRefused() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  QCOMPARE(record.keepSuggestion(ShotId{9}, {"planner 1", false, {}, {}, "[]"}).error().code, ErrorCode::NotFound);
  QCOMPARE(record.keepExplanation(ShotId{9}, "{}").error().code, ErrorCode::NotFound);
  QCOMPARE(record.keepFingerprint({SessionId{9}, 1, 1, "{}"}).error().code, ErrorCode::NotFound);
}

void RecordFindingsTest::theLastShotPutInByHandCanBeTakenBack() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const FrameId frame = *record.addFrame({game.session, "", std::nullopt, std::nullopt});
  for (const int number : {1, 2}) {
    const auto id = record.appendShot(frame, sample::shot(number), {});
    QVERIFY(record.addNote(*id, "seen", "Ada", 1).has_value());
  }
  QVERIFY(record.removeLastShot(frame).has_value());
  const auto shots = record.shots(frame);
  QCOMPARE(shots->size(), std::size_t{1});
  QCOMPARE(shots->front().number, 1);
  QVERIFY(record.removeLastShot(frame).has_value());
  QCOMPARE(record.removeLastShot(frame).error().code, ErrorCode::NotFound);
}

void RecordFindingsTest::aFilmedShotIsNotTakenBack() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  QVERIFY(record.appendShot(game.frame, sample::shot(1), {}).has_value());
  QCOMPARE(record.removeLastShot(game.frame).error().code, ErrorCode::NotFound);
  QCOMPARE(record.shots(game.frame)->size(), std::size_t{1});
}

void RecordFindingsTest::aDraftIsKeptUntilItIsDone() {
  const sample::Folder folder;
  {
    Record record = sample::openOrDie(folder.file("a.sqlite"));
    QVERIFY(!record.draft("hand")->has_value());
    QVERIFY(record.keepDraft("hand", "{1}").has_value());
    QVERIFY(record.keepDraft("hand", "{2}").has_value());
  }
  Record again = sample::openOrDie(folder.file("a.sqlite"));
  QCOMPARE(*again.draft("hand"), std::optional<std::string>("{2}"));
  QVERIFY(again.keepDraft("hand", std::nullopt).has_value());
  QVERIFY(!again.draft("hand")->has_value());
}

FERRULE_TEST(RecordFindingsTest)
#include "record_findings_test.moc"
