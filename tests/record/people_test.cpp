// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/people.h"

#include <QtTest>

#include "core/record/consent.h"
#include "core/record/draft_players.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

PersonDetails details(const std::string& name, std::vector<std::string> groups = {}) {
  return {sample::player(name), std::move(groups)};
}

ConsentEntry filmConsent(PlayerId player) {
  ConsentEntry entry;
  entry.player = player;
  entry.scope = ConsentScope::Film;
  entry.from = 1000;
  entry.noted = 1000;
  entry.by = "the guest";
  return entry;
}

PlayerId guestIn(Record& record) {
  PersonDetails guest = details("Guest 1", {"Tuesday"});
  guest.player.guest = true;
  return *addPerson(record, guest);
}

}  // namespace

class PeopleTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void aPersonMayBeInSeveralGroups();
  void aNewNameKeepsShotsNotesAndConsents();
  void aTakenNameIsRefused();
  void aNoteKeepsAuthorAndDateWhenItComesBack();
  void whoHasNotPlayedCanBeTakenAwayAndBroughtBack();
  void whoHasPlayedIsNotTakenAway();
  void guestsGetFreeNames();
  void aGuestsShotsAreGivenToAPlayerAndBack();
  void twoWhoPlayedTogetherAreNotOne();
  void aGuestAtTheTableStays();
  void draftsAreReadNotGuessed();

 private:
  std::unique_ptr<sample::Folder> folder_;
  std::optional<Record> record_;
};

void PeopleTest::init() {
  record_.reset();
  folder_ = std::make_unique<sample::Folder>();
  record_.emplace(sample::openOrDie(folder_->file("a.sqlite")));
}

void PeopleTest::aPersonMayBeInSeveralGroups() {
  const auto ada = addPerson(*record_, details("Ada", {"Tuesday", "juniors", "Tuesday"}));
  const auto ben = addPerson(*record_, details("Ben", {"juniors"}));
  QVERIFY(ada.has_value() && ben.has_value());
  const auto all = people(*record_);
  QCOMPARE(all->size(), std::size_t{2});
  QCOMPARE((*all)[0].details.groups, (std::vector<std::string>{"Tuesday", "juniors"}));
  QCOMPARE((*all)[1].details.groups, std::vector<std::string>{"juniors"});
  PersonDetails changed = (*all)[0].details;
  changed.groups = {"adults"};
  changed.player.handedness = Handedness::Left;
  QVERIFY(updatePerson(*record_, changed).has_value());
  QCOMPARE(person(*record_, *ada)->details, changed);
  QCOMPARE(person(*record_, *ben)->details.groups, std::vector<std::string>{"juniors"});
}

void PeopleTest::aNewNameKeepsShotsNotesAndConsents() {
  const auto game = sample::addGame(*record_);
  QVERIFY(record_->appendShot(game.frame, sample::shot(1), {}, game.ada).has_value());
  QVERIFY(addPlayerNote(*record_, game.ada, "drops the elbow", "Cleo", 7).has_value());
  QVERIFY(addConsent(*record_, filmConsent(game.ada)).has_value());
  const Person before = *person(*record_, game.ada);
  PersonDetails renamed = before.details;
  renamed.player.name = "Ada of the long name";
  QVERIFY(updatePerson(*record_, renamed).has_value());
  Person after = *person(*record_, game.ada);
  QCOMPARE(after.sessions, 1);
  QCOMPARE(after.shots, 1);
  QCOMPARE(after.lastPlayed, std::optional(UtcMilliseconds{1'760'000'000'000}));
  QCOMPARE(after.notes.front().who, std::string("Cleo"));
  QCOMPARE(after.notes.front().when, UtcMilliseconds{7});
  after.details = before.details;
  QCOMPARE(after, before);
  QCOMPARE(record_->sessions()->front().players.front(), std::string("Ada of the long name"));
  QCOMPARE(record_->shots(game.frame)->front().playerName, std::string("Ada of the long name"));
}

void PeopleTest::aTakenNameIsRefused() {
  const auto ada = addPerson(*record_, details("Ada", {"juniors"}));
  QVERIFY(addPerson(*record_, details("Ben")).has_value());
  QCOMPARE(addPerson(*record_, details("Ada")).error().code, ErrorCode::AlreadyRecorded);
  PersonDetails renamed = person(*record_, *ada)->details;
  renamed.player.name = "Ben";
  renamed.groups = {};
  QCOMPARE(updatePerson(*record_, renamed).error().code, ErrorCode::AlreadyRecorded);
  QCOMPARE(person(*record_, *ada)->details.groups, std::vector<std::string>{"juniors"});
  renamed.player.id = PlayerId{77};
  renamed.player.name = "Zoe";
  QCOMPARE(updatePerson(*record_, renamed).error().code, ErrorCode::NotFound);
}

void PeopleTest::aNoteKeepsAuthorAndDateWhenItComesBack() {
  const PlayerId ada = *addPerson(*record_, details("Ada"));
  const auto note = addPlayerNote(*record_, ada, "soft bridge", "Cleo", 42);
  const auto removed = removePlayerNote(*record_, ada, *note);
  QVERIFY(removed.has_value());
  QVERIFY(person(*record_, ada)->notes.empty());
  QVERIFY(addPlayerNote(*record_, ada, removed->text, removed->who, removed->when).has_value());
  const Note back = person(*record_, ada)->notes.front();
  QCOMPARE(back.text, std::string("soft bridge"));
  QCOMPARE(back.who, std::string("Cleo"));
  QCOMPARE(back.when, UtcMilliseconds{42});
  QCOMPARE(removePlayerNote(*record_, ada, NoteId{99}).error().code, ErrorCode::NotFound);
  QCOMPARE(addPlayerNote(*record_, PlayerId{99}, "x", "", 0).error().code, ErrorCode::NotFound);
}

void PeopleTest::whoHasNotPlayedCanBeTakenAwayAndBroughtBack() {
  const PlayerId ada = *addPerson(*record_, details("Ada", {"juniors"}));
  QVERIFY(addConsent(*record_, filmConsent(ada)).has_value());
  QVERIFY(addPlayerNote(*record_, ada, "soft bridge", "Cleo", 42).has_value());
  const Person before = *person(*record_, ada);
  const auto removed = removeUnplayed(*record_, ada);
  QVERIFY(removed.has_value() && removed->has_value());
  QVERIFY(people(*record_)->empty());
  QVERIFY(restorePerson(*record_, **removed).has_value());
  const Person after = *person(*record_, ada);
  QCOMPARE(after.details, before.details);
  QCOMPARE(after.uid, before.uid);
  QCOMPARE(after.consents, before.consents);
  QCOMPARE(after.notes.front().who, std::string("Cleo"));
  QCOMPARE(restorePerson(*record_, **removed).error().code, ErrorCode::AlreadyRecorded);
}

void PeopleTest::whoHasPlayedIsNotTakenAway() {
  const auto game = sample::addGame(*record_);
  const auto kept = removeUnplayed(*record_, game.ada);
  QVERIFY(kept.has_value());
  QVERIFY(!kept->has_value());
  QCOMPARE(people(*record_)->size(), std::size_t{2});
  const PlayerId cleo = *addPerson(*record_, details("Cleo"));
  QVERIFY(record_->keepDraft("hand-session", R"({"hand": {"players": ["Cleo"]}})").has_value());
  QVERIFY(!removeUnplayed(*record_, cleo)->has_value());
}

void PeopleTest::guestsGetFreeNames() {
  QCOMPARE(*freeGuestName(*record_, "Guest"), std::string("Guest 1"));
  (void)guestIn(*record_);
  QCOMPARE(*freeGuestName(*record_, "Guest"), std::string("Guest 2"));
}

void PeopleTest::aGuestsShotsAreGivenToAPlayerAndBack() {
  const auto game = sample::addGame(*record_);
  const PlayerId guest = guestIn(*record_);
  const PlayerId zoe = *addPerson(*record_, details("Zoe", {"juniors"}));
  const auto session =
      record_->addSession({"Open evening", 1'770'000'000'000, "club table 2", sample::table(), {guest, game.ben}});
  const auto frame = record_->addFrame({*session, "eight-ball", std::nullopt, std::nullopt});
  const auto struck = record_->appendShot(*frame, sample::shot(1), {}, game.ben);
  const auto correction = record_->correctShot(*struck, ShotField::Player, "Guest 1", "Cleo", 5);
  QVERIFY(correction.has_value());
  QVERIFY(record_->appendShot(*frame, sample::shot(2), {}, game.ben).has_value());
  QVERIFY(addConsent(*record_, filmConsent(guest)).has_value());
  QVERIFY(addPlayerNote(*record_, guest, "strong break", "Cleo", 42).has_value());
  const Person guestBefore = *person(*record_, guest);
  const Person zoeBefore = *person(*record_, zoe);

  const auto report = joinPeople(*record_, guest, zoe);
  QVERIFY(report.has_value());
  QVERIFY(report->ending == JoinReport::Ending::Joined);
  QCOMPARE(person(*record_, guest).error().code, ErrorCode::NotFound);
  const Person one = *person(*record_, zoe);
  QCOMPARE(one.shots, 1);
  QCOMPARE(one.sessions, 1);
  QCOMPARE(one.details.groups, (std::vector<std::string>{"Tuesday", "juniors"}));
  QVERIFY(!one.details.player.guest);
  QVERIFY(consentOf(*record_, zoe, ConsentScope::Film, 2000)->holds());
  QCOMPARE(one.notes.front().who, std::string("Cleo"));
  QCOMPARE(one.joinedUids, std::vector<std::string>{guestBefore.uid});
  QCOMPARE(record_->sessions()->front().players, (std::vector<std::string>{"Zoe", "Ben"}));

  QCOMPARE(record_->shot(*struck)->corrections.front().corrected, std::optional<std::string>("Zoe"));

  QVERIFY(partPeople(*record_, report->joined, "Cleo", 5000).has_value());
  const Person guestAfter = *person(*record_, guest);
  QCOMPARE(guestAfter, guestBefore);
  QCOMPARE(record_->shot(*struck)->corrections.front().corrected, std::optional<std::string>("Guest 1"));
  Person zoeAfter = *person(*record_, zoe);
  QVERIFY(!consentOf(*record_, zoe, ConsentScope::Film, 6000)->holds());
  // The ledger keeps what was noted, also what turned out to be somebody else's.
  QCOMPARE(zoeAfter.consents.size(), std::size_t{2});
  zoeAfter.consents.clear();
  QCOMPARE(zoeAfter, zoeBefore);
  QVERIFY(record_->check().has_value());
}

void PeopleTest::twoWhoPlayedTogetherAreNotOne() {
  const auto game = sample::addGame(*record_);
  const auto report = joinPeople(*record_, game.ada, game.ben);
  QVERIFY(report.has_value());
  QVERIFY(report->ending == JoinReport::Ending::PlayedTogether);
  QCOMPARE(report->session, std::string("Evening"));
  QCOMPARE(people(*record_)->size(), std::size_t{2});
  QCOMPARE(joinPeople(*record_, PlayerId{99}, game.ben).error().code, ErrorCode::NotFound);
}

void PeopleTest::aGuestAtTheTableStays() {
  const PlayerId guest = guestIn(*record_);
  const PlayerId zoe = *addPerson(*record_, details("Zoe"));
  const std::string draft = R"({"session": 1, "players": [)" + std::to_string(guest.value) + "]}";
  QVERIFY(record_->keepDraft("hand-session", draft).has_value());
  QVERIFY(joinPeople(*record_, guest, zoe)->ending == JoinReport::Ending::UnderWay);
  QVERIFY(person(*record_, guest).has_value());
}

void PeopleTest::draftsAreReadNotGuessed() {
  const std::string draft = R"({"session": 3, "players": [1, 2], "hand": {"name": "Ada", "players": ["Adam", "Ben"]}})";
  QVERIFY(draftKnows(draft, PlayerId{1}, "nobody"));
  QVERIFY(draftKnows(draft, PlayerId{9}, "Ben"));
  // A session's number, a session's name and a part of a name are not a player.
  QVERIFY(!draftKnows(draft, PlayerId{3}, "nobody"));
  QVERIFY(!draftKnows(draft, PlayerId{9}, "Ada"));
  QVERIFY(draftKnows("half a draft of Ben", PlayerId{9}, "Ben"));
  QVERIFY(!draftKnows("half a draft", PlayerId{9}, "Ben"));
  QVERIFY(!draftKnows("3", PlayerId{3}, "Ben"));
}

FERRULE_TEST(PeopleTest)
#include "people_test.moc"
