// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/consent.h"

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QtTest>

#include "core/record/people.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr UtcMilliseconds kDay = 86'400'000;
/// Days of an invented year.
constexpr UtcMilliseconds day(int number) {
  return 1'760'000'000'000 + number * kDay;
}

ConsentEntry given(PlayerId player, ConsentScope scope, int from, std::optional<int> until = std::nullopt) {
  ConsentEntry entry;
  entry.player = player;
  entry.scope = scope;
  entry.from = day(from);
  if (until) entry.until = day(*until);
  entry.by = "Ada";
  entry.notedBy = "Cleo";
  entry.noted = day(from);
  return entry;
}

ConsentEntry withdrawn(PlayerId player, ConsentScope scope, int from) {
  ConsentEntry entry = given(player, scope, from);
  entry.event = ConsentEvent::Withdrawn;
  return entry;
}

}  // namespace

class ConsentTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void whatNobodyGaveIsMissing();
  void consentHoldsFromItsDayUntilItsEnd();
  void aWithdrawalEndsWhatWasGivenBeforeAndARenewalHoldsAgain();
  void aRenewalOfTheSameDayHolds();
  void ofSeveralThatHoldTheLongestDecides();
  void forAMinorOnlyAGuardiansWordHolds();
  void oneScopeSaysNothingOfAnother();
  void whatWasNotedByMistakeIsStruckOutAndStays();
  void theLedgerCannotBeChangedOrShortened();
  void whoMustNotBeFilmedIsNamed();
  void anEndBeforeTheBeginningIsRefused();

 private:
  [[nodiscard]] Consent at(ConsentScope scope, int number) {
    return consentOf(*record_, ada_, scope, day(number))->consent;
  }

  std::unique_ptr<sample::Folder> folder_;
  std::optional<Record> record_;
  PlayerId ada_;
};

void ConsentTest::init() {
  record_.reset();
  folder_ = std::make_unique<sample::Folder>();
  record_.emplace(sample::openOrDie(folder_->file("a.sqlite")));
  ada_ = *record_->addPlayer(sample::player("Ada"));
}

void ConsentTest::whatNobodyGaveIsMissing() {
  QVERIFY(at(ConsentScope::Film, 0) == Consent::Missing);
  QVERIFY(!consentOf(*record_, ada_, ConsentScope::Film, day(0))->entry.has_value());
  QCOMPARE(consentOf(*record_, PlayerId{99}, ConsentScope::Film, day(0)).error().code, ErrorCode::NotFound);
}

void ConsentTest::consentHoldsFromItsDayUntilItsEnd() {
  QVERIFY(addConsent(*record_, given(ada_, ConsentScope::Film, 10, 20)).has_value());
  QVERIFY(at(ConsentScope::Film, 9) == Consent::Missing);
  QVERIFY(at(ConsentScope::Film, 10) == Consent::Given);
  QVERIFY(at(ConsentScope::Film, 19) == Consent::Given);
  QVERIFY(at(ConsentScope::Film, 20) == Consent::Expired);
}

void ConsentTest::aWithdrawalEndsWhatWasGivenBeforeAndARenewalHoldsAgain() {
  QVERIFY(addConsent(*record_, given(ada_, ConsentScope::Film, 10)).has_value());
  QVERIFY(addConsent(*record_, withdrawn(ada_, ConsentScope::Film, 15)).has_value());
  QVERIFY(at(ConsentScope::Film, 14) == Consent::Given);
  QVERIFY(at(ConsentScope::Film, 15) == Consent::Withdrawn);
  QVERIFY(addConsent(*record_, given(ada_, ConsentScope::Film, 30)).has_value());
  QVERIFY(at(ConsentScope::Film, 29) == Consent::Withdrawn);
  QVERIFY(at(ConsentScope::Film, 30) == Consent::Given);
  // All three lines are still there, as they were noted.
  const auto ledger = consents(*record_, ada_);
  QCOMPARE(ledger->size(), std::size_t{3});
  QVERIFY((*ledger)[1].event == ConsentEvent::Withdrawn);
  QCOMPARE((*ledger)[1].from, day(15));
  QCOMPARE((*ledger)[0].by, std::string("Ada"));
  QCOMPARE((*ledger)[0].notedBy, std::string("Cleo"));
}

void ConsentTest::aRenewalOfTheSameDayHolds() {
  QVERIFY(addConsent(*record_, given(ada_, ConsentScope::Film, 10)).has_value());
  ConsentEntry end = withdrawn(ada_, ConsentScope::Film, 15);
  end.noted += 1000;
  ConsentEntry again = given(ada_, ConsentScope::Film, 15);
  again.noted += 2000;
  QVERIFY(addConsent(*record_, end).has_value());
  QVERIFY(at(ConsentScope::Film, 15) == Consent::Withdrawn);
  QVERIFY(addConsent(*record_, again).has_value());
  QVERIFY(at(ConsentScope::Film, 15) == Consent::Given);
}

void ConsentTest::ofSeveralThatHoldTheLongestDecides() {
  QVERIFY(addConsent(*record_, given(ada_, ConsentScope::Film, 10, 50)).has_value());
  QVERIFY(addConsent(*record_, given(ada_, ConsentScope::Film, 20, 30)).has_value());
  QCOMPARE(consentOf(*record_, ada_, ConsentScope::Film, day(25))->entry->until, std::optional(day(50)));
  QVERIFY(at(ConsentScope::Film, 40) == Consent::Given);
  QVERIFY(at(ConsentScope::Film, 60) == Consent::Expired);
}

void ConsentTest::forAMinorOnlyAGuardiansWordHolds() {
  Player minor = sample::player("Ben");
  minor.minor = true;
  minor.id = *record_->addPlayer(minor);
  QVERIFY(addConsent(*record_, given(minor.id, ConsentScope::FilmOfMinor, 10)).has_value());
  QVERIFY(consentOf(*record_, minor.id, ConsentScope::FilmOfMinor, day(11))->consent == Consent::NotByGuardian);
  ConsentEntry guardian = given(minor.id, ConsentScope::FilmOfMinor, 12);
  guardian.byGuardian = true;
  QVERIFY(addConsent(*record_, guardian).has_value());
  QVERIFY(consentOf(*record_, minor.id, ConsentScope::FilmOfMinor, day(12))->holds());
  // Grown up: the guardian's word for a film of a minor is none for a film of a grown person.
  QVERIFY(filmScopeOf(minor) == ConsentScope::FilmOfMinor);
  minor.minor = false;
  QVERIFY(record_->updatePlayer(minor).has_value());
  QVERIFY(!consentOf(*record_, minor.id, filmScopeOf(minor), day(13))->holds());
}

void ConsentTest::oneScopeSaysNothingOfAnother() {
  QVERIFY(addConsent(*record_, given(ada_, ConsentScope::Measuring, 10)).has_value());
  QVERIFY(addConsent(*record_, given(ada_, ConsentScope::Film, 10)).has_value());
  QVERIFY(addConsent(*record_, withdrawn(ada_, ConsentScope::Film, 11)).has_value());
  QVERIFY(at(ConsentScope::Measuring, 12) == Consent::Given);
  QVERIFY(at(ConsentScope::Film, 12) == Consent::Withdrawn);
  QVERIFY(at(ConsentScope::Sharing, 12) == Consent::Missing);
}

void ConsentTest::whatWasNotedByMistakeIsStruckOutAndStays() {
  const auto first = addConsent(*record_, given(ada_, ConsentScope::Film, 10));
  const auto strike = strikeConsent(*record_, *first, "Cleo", day(11));
  QVERIFY(strike.has_value());
  QVERIFY(at(ConsentScope::Film, 12) == Consent::Missing);
  QCOMPARE(consents(*record_, ada_)->size(), std::size_t{2});
  QVERIFY(countingConsents(*consents(*record_, ada_)).empty());
  // The strike was the mistake: struck out in its turn.
  QVERIFY(strikeConsent(*record_, *strike, "Cleo", day(11)).has_value());
  QVERIFY(at(ConsentScope::Film, 12) == Consent::Given);
  QCOMPARE(consents(*record_, ada_)->size(), std::size_t{3});
  // A clock that goes wrong does not turn the order round.
  QVERIFY(strikeConsent(*record_, *first, "Cleo", 0).has_value());
  QVERIFY(at(ConsentScope::Film, 12) == Consent::Missing);
  QCOMPARE(strikeConsent(*record_, "nobody's", "Cleo", 0).error().code, ErrorCode::NotFound);
}

void ConsentTest::theLedgerCannotBeChangedOrShortened() {
  QVERIFY(addConsent(*record_, given(ada_, ConsentScope::Film, 10)).has_value());
  const std::string path = record_->path();
  bool changed = true;
  bool removed = true;
  {
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("ledger"));
    database.setDatabaseName(QString::fromStdString(path));
    QVERIFY(database.open());
    QSqlQuery query(database);
    changed = query.exec("UPDATE consents SET by_whom = 'Nobody'");
    removed = query.exec("DELETE FROM consents");
  }
  QSqlDatabase::removeDatabase(QStringLiteral("ledger"));
  QVERIFY(!changed);
  QVERIFY(!removed);
  QCOMPARE(consents(*record_, ada_)->size(), std::size_t{1});
}

void ConsentTest::whoMustNotBeFilmedIsNamed() {
  const PlayerId ben = *record_->addPlayer(sample::player("Ben"));
  QVERIFY(addConsent(*record_, given(ada_, ConsentScope::Film, 10)).has_value());
  const std::vector<PlayerId> both{ben, ada_};
  const auto obstacles = filmObstacles(*record_, both, day(12));
  QVERIFY(obstacles.has_value());
  QCOMPARE(obstacles->size(), std::size_t{1});
  QCOMPARE(obstacles->front().player.name, std::string("Ben"));
  QVERIFY(obstacles->front().state.consent == Consent::Missing);
  QVERIFY(addConsent(*record_, given(ben, ConsentScope::Film, 11)).has_value());
  QVERIFY(filmObstacles(*record_, both, day(12))->empty());
  QCOMPARE(filmObstacles(*record_, both, day(10))->size(), std::size_t{1});
}

void ConsentTest::anEndBeforeTheBeginningIsRefused() {
  QCOMPARE(addConsent(*record_, given(ada_, ConsentScope::Film, 10, 10)).error().code, ErrorCode::FieldInvalid);
  QCOMPARE(addConsent(*record_, given(PlayerId{99}, ConsentScope::Film, 10)).error().code, ErrorCode::NotFound);
  QVERIFY(consents(*record_, ada_)->empty());
}

FERRULE_TEST(ConsentTest)
#include "consent_test.moc"
