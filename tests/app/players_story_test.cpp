// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QToolButton>
#include <QtTest>

#include "app/players/people_list_model.h"
#include "app/players/person_form.h"
#include "app/players/players_place.h"
#include "core/record/record.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// The Players place alone, as a coach uses it.
class PlayersStoryTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void cleanup();
  void nobodyYetSaysWhatToDoFirst();
  void aPlayerIsAddedAndNamed();
  void missingConsentSaysWhatFollows();
  void consentIsNotedWithdrawnAndTheLedgerKeepsAll();
  void aMinorNeedsAGuardian();
  void everyEditIsUndone();
  void anUndoneConsentStaysInTheLedger();
  void aNoteKeepsItsAuthor();
  void aGuestIsGivenToAPlayerAndBack();
  void aTakenNameIsOneSentenceAndNothingIsLost();
  void erasingShowsWhatGoesAndThenDoesIt();
  void whoPlaysNowIsNotErased();
  void aPlayerIsExported();
  void searchAndGroupFilterTheList();
  void theListModelKeepsTheRules();
  void groupsAreReadFromText();

 private:
  void open();
  /// Adds somebody by the place's own action and types the name.
  void add(const QString& name);
  void choose(const QString& name);
  template <class T>
  T* find(const char* name) const {
    return place_->findChild<T*>(QString::fromLatin1(name));
  }
  [[nodiscard]] PeopleDesk& desk() const { return place_->desk(); }
  [[nodiscard]] QString sentence(const char* scope) const {
    return place_->findChild<QLabel*>(QStringLiteral("consent-") + QLatin1String(scope))->text();
  }
  void note(const char* scope, const QString& by);
  [[nodiscard]] QStringList listed() const;
  void type(const char* field, const QString& text);

  std::unique_ptr<QTemporaryDir> folder_;
  std::unique_ptr<QWidget> window_;
  std::unique_ptr<PlayersPlace> place_;
  UtcMilliseconds now_ = 1'772'389'800'000;
};

void PlayersStoryTest::init() {
  folder_ = std::make_unique<QTemporaryDir>();
  QLocale::setDefault(QLocale::c());
  open();
}

void PlayersStoryTest::cleanup() {
  place_.reset();
  window_.reset();
  folder_.reset();
}

void PlayersStoryTest::open() {
  window_ = std::make_unique<QWidget>();
  const auto* actions = new ActionSet(window_.get());
  place_ = std::make_unique<PlayersPlace>(*actions, [this] { return now_ += 1000; });
  place_->resize(1200, 900);
  place_->openRecord(folder_->filePath("club.sqlite"));
  place_->show();
  QTRY_VERIFY(desk().wasRead());
}

void PlayersStoryTest::type(const char* field, const QString& text) {
  auto* edit = find<QLineEdit>(field);
  edit->setFocus();
  edit->selectAll();
  QTest::keyClicks(edit, text);
  QTest::keyClick(edit, Qt::Key_Return);
}

void PlayersStoryTest::add(const QString& name) {
  const std::size_t before = desk().people().size();
  place_->act(ActionId::AddPlayer);
  QTRY_COMPARE(desk().people().size(), before + 1);
  QTRY_VERIFY(desk().person() != nullptr && desk().person()->details.player.name.starts_with("New player"));
  type("personName", name);
  QTRY_COMPARE(QString::fromStdString(desk().person()->details.player.name), name);
}

void PlayersStoryTest::choose(const QString& name) {
  for (const PersonRow& row : desk().people()) {
    if (QString::fromStdString(row.details.player.name) == name) desk().choose(row.details.player.id);
  }
  QTRY_VERIFY(desk().person() != nullptr && QString::fromStdString(desk().person()->details.player.name) == name);
}

void PlayersStoryTest::note(const char* scope, const QString& by) {
  place_->findChild<QPushButton*>(QStringLiteral("give-") + QLatin1String(scope))->click();
  QVERIFY(find<QWidget>("consentEditor")->isVisible());
  find<QLineEdit>("consentBy")->setText(by);
  const std::size_t before = desk().person()->consents.size();
  find<QPushButton>("keepConsent")->click();
  QTRY_COMPARE(desk().person()->consents.size(), before + 1);
}

QStringList PlayersStoryTest::listed() const {
  QStringList names;
  const QAbstractItemModel* model = find<QListView>("playerList")->model();
  for (int row = 0; row < model->rowCount(); ++row)
    names << model->index(row, 0).data().toString();
  return names;
}

void PlayersStoryTest::nobodyYetSaysWhatToDoFirst() {
  QVERIFY(find<QWidget>("emptyPlayers")->isVisible());
  QVERIFY(find<QLabel>("emptyPlayersWords")->text().contains("Add a player first"));
  // Looking makes no record.
  QVERIFY(!QFile::exists(folder_->filePath("club.sqlite")));
  place_->act(ActionId::AddPlayer);
  QTRY_VERIFY(!find<QWidget>("emptyPlayers")->isVisible());
  QVERIFY(QFile::exists(folder_->filePath("club.sqlite")));
}

void PlayersStoryTest::aPlayerIsAddedAndNamed() {
  add("Ada");
  QCOMPARE(find<QLabel>("playerTitle")->text(), QString("Ada"));
  QCOMPARE(find<QLabel>("played")->text(), QString("Has not played yet."));
  type("personGroups", "Tuesday, juniors");
  QTRY_COMPARE(desk().person()->details.groups, (std::vector<std::string>{"Tuesday", "juniors"}));
  auto* hand = find<QComboBox>("personHand");
  hand->setCurrentIndex(hand->findData(static_cast<int>(Handedness::Left)));
  emit hand->activated(hand->currentIndex());
  QTRY_VERIFY(desk().person()->details.player.handedness == Handedness::Left);
  QCOMPARE(listed(), QStringList{"Ada"});
}

void PlayersStoryTest::missingConsentSaysWhatFollows() {
  add("Ada");
  QVERIFY(sentence("film").contains("Missing"));
  QVERIFY(sentence("film").contains("No film is kept of this person"));
  QVERIFY(find<QLabel>("consentCaution")->text().contains("guardian"));
  const QModelIndex row = find<QListView>("playerList")->model()->index(0, 0);
  QCOMPARE(row.data(PeopleListModel::MarkRole).toString(), QString("no consent"));
  note("measuring", "Ada");
  QCOMPARE(find<QListView>("playerList")->model()->index(0, 0).data(PeopleListModel::MarkRole).toString(),
           QString("no film"));
}

void PlayersStoryTest::consentIsNotedWithdrawnAndTheLedgerKeepsAll() {
  add("Ada");
  find<QLineEdit>("author")->setText("Cleo");
  // With an end before its beginning nothing is noted.
  find<QPushButton>("give-film")->click();
  find<QCheckBox>("consentEnds")->setChecked(true);
  find<QDateEdit>("consentUntil")->setDate(find<QDateEdit>("consentFrom")->date().addDays(-1));
  find<QPushButton>("keepConsent")->click();
  QVERIFY(find<QLabel>("playersMessage")->text().contains("would end before it begins"));
  QVERIFY(desk().person()->consents.empty());
  find<QDateEdit>("consentUntil")->setDate(find<QDateEdit>("consentFrom")->date());
  find<QPushButton>("keepConsent")->click();
  QTRY_VERIFY(sentence("film").contains("Given by Ada"));
  QCOMPARE(desk().person()->consents.front().notedBy, std::string("Cleo"));
  find<QPushButton>("withdraw-film")->click();
  find<QPushButton>("keepConsent")->click();
  QTRY_VERIFY(sentence("film").contains("Withdrawn by Ada"));
  QVERIFY(sentence("film").contains("No film is kept of this person"));
  note("film", "Ada");
  QVERIFY(sentence("film").contains("until it is withdrawn"));
  QCOMPARE(find<QLabel>("consentLedger")->text().count('\n'), 2);
  // A day later the first would have ended; the last goes on.
  QCOMPARE(desk().person()->consents.size(), std::size_t{3});
}

void PlayersStoryTest::aMinorNeedsAGuardian() {
  add("Ada");
  find<QCheckBox>("personMinor")->click();
  QTRY_VERIFY(place_->findChild<QLabel*>("consent-film-of-minor") != nullptr);
  find<QPushButton>("give-film-of-minor")->click();
  QVERIFY(find<QCheckBox>("consentGuardian")->isChecked());
  // Nobody's word is none.
  find<QPushButton>("keepConsent")->click();
  QVERIFY(desk().person()->consents.empty());
  find<QCheckBox>("consentGuardian")->setChecked(false);
  find<QLineEdit>("consentBy")->setText("Ada");
  find<QPushButton>("keepConsent")->click();
  QTRY_VERIFY(sentence("film-of-minor").contains("a parent or guardian must give it"));
  note("film-of-minor", "Ada's mother");
  QVERIFY(sentence("film-of-minor").contains("Given by Ada's mother (parent or guardian)"));
}

void PlayersStoryTest::everyEditIsUndone() {
  add("Ada");
  QCOMPARE(desk().undoName(), QString("rename New player to Ada"));
  QVERIFY(find<QToolButton>("undoPlayers")->toolTip().contains("rename New player to Ada"));
  type("personGroups", "juniors");
  QTRY_COMPARE(desk().person()->details.groups.size(), std::size_t{1});
  find<QCheckBox>("personMinor")->click();
  QTRY_VERIFY(desk().person()->details.player.minor);
  place_->act(ActionId::Undo);
  QTRY_VERIFY(!desk().person()->details.player.minor);
  QVERIFY(!find<QCheckBox>("personMinor")->isChecked());
  place_->act(ActionId::Undo);
  QTRY_VERIFY(desk().person()->details.groups.empty());
  QCOMPARE(find<QLineEdit>("personGroups")->text(), QString());
  place_->act(ActionId::Undo);
  QTRY_COMPARE(desk().person()->details.player.name, std::string("New player"));
  place_->act(ActionId::Undo);
  QTRY_VERIFY(desk().people().empty());
  QVERIFY(find<QWidget>("emptyPlayers")->isVisible());
  for (int step = 0; step < 4; ++step)
    place_->act(ActionId::Redo);
  QTRY_VERIFY(desk().person() != nullptr && desk().person()->details.player.minor);
  QCOMPARE(desk().person()->details.player.name, std::string("Ada"));
  QCOMPARE(desk().person()->details.groups, std::vector<std::string>{"juniors"});
  QVERIFY(desk().redoName().isEmpty());
}

void PlayersStoryTest::anUndoneConsentStaysInTheLedger() {
  add("Ada");
  note("film", "Ada");
  place_->act(ActionId::Undo);
  QTRY_VERIFY(sentence("film").contains("Missing"));
  QVERIFY(find<QLabel>("consentLedger")->text().contains("taken back as a mistake"));
  place_->act(ActionId::Redo);
  QTRY_VERIFY(sentence("film").contains("Given by Ada"));
  place_->act(ActionId::Undo);
  QTRY_VERIFY(sentence("film").contains("Missing"));
  QCOMPARE(desk().person()->consents.size(), std::size_t{4});
}

void PlayersStoryTest::aNoteKeepsItsAuthor() {
  add("Ada");
  find<QLineEdit>("author")->setText("Cleo");
  QVERIFY(!find<QPushButton>("addNote")->isEnabled());
  find<QPlainTextEdit>("noteText")->setPlainText("Drops the elbow");
  find<QPushButton>("addNote")->click();
  QTRY_COMPARE(find<QListWidget>("noteList")->count(), 1);
  QVERIFY(find<QListWidget>("noteList")->item(0)->text().contains("Cleo"));
  QVERIFY(find<QPlainTextEdit>("noteText")->toPlainText().isEmpty());
  const UtcMilliseconds when = desk().person()->notes.front().when;
  // Somebody else renames the player and removes the note; undo brings it back as it was.
  find<QLineEdit>("author")->setText("Dora");
  type("personName", "Ada the second");
  QTRY_COMPARE(desk().person()->details.player.name, std::string("Ada the second"));
  QCOMPARE(desk().person()->notes.front().who, std::string("Cleo"));
  find<QListWidget>("noteList")->setCurrentRow(0);
  find<QPushButton>("removeNote")->click();
  QTRY_VERIFY(desk().person()->notes.empty());
  place_->act(ActionId::Undo);
  QTRY_COMPARE(desk().person()->notes.size(), std::size_t{1});
  QCOMPARE(desk().person()->notes.front().who, std::string("Cleo"));
  QCOMPARE(desk().person()->notes.front().when, when);
}

void PlayersStoryTest::aGuestIsGivenToAPlayerAndBack() {
  add("Ada");
  place_->act(ActionId::AddGuest);
  QTRY_COMPARE(desk().people().size(), std::size_t{2});
  QTRY_VERIFY(desk().person() != nullptr && desk().person()->details.player.guest);
  QCOMPARE(desk().person()->details.player.name, std::string("Guest 1"));
  QVERIFY(!find<QPushButton>("join")->isEnabled());
  auto* whom = find<QComboBox>("joinTo");
  whom->setCurrentIndex(whom->findText("Ada"));
  find<QPushButton>("join")->click();
  QTRY_COMPARE(desk().people().size(), std::size_t{1});
  QTRY_COMPARE(find<QLabel>("playerTitle")->text(), QString("Ada"));
  place_->act(ActionId::Undo);
  QTRY_COMPARE(desk().people().size(), std::size_t{2});
  QTRY_COMPARE(find<QLabel>("playerTitle")->text(), QString("Guest 1"));
}

void PlayersStoryTest::aTakenNameIsOneSentenceAndNothingIsLost() {
  add("Ada");
  add("Ben");
  type("personName", "Ada");
  QTRY_VERIFY(find<QLabel>("playersMessage")->text().contains("Ada is already in the record"));
  QCOMPARE(desk().person()->details.player.name, std::string("Ben"));
  QCOMPARE(desk().undoName(), QString("rename New player to Ben"));
  type("personName", "   ");
  QVERIFY(find<QLabel>("playersMessage")->text().contains("needs a name"));
  QCOMPARE(find<QLineEdit>("personName")->text(), QString("Ben"));
}

void PlayersStoryTest::erasingShowsWhatGoesAndThenDoesIt() {
  add("Zoraida Quux");
  note("film", "Zoraida Quux");
  add("Ben");
  find<QPlainTextEdit>("noteText")->setPlainText("plays with Zoraida Quux");
  find<QPushButton>("addNote")->click();
  QTRY_COMPARE(desk().person()->notes.size(), std::size_t{1});
  choose("Zoraida Quux");
  QVERIFY(!find<QPushButton>("erase")->isVisible());
  find<QPushButton>("showErase")->click();
  QTRY_VERIFY(find<QPushButton>("erase")->isVisible());
  const QString told = find<QPlainTextEdit>("eraseList")->toPlainText();
  QVERIFY2(told.contains("What goes with Zoraida Quux"), qPrintable(told));
  QVERIFY(told.contains("Lines of consent: 1"));
  QVERIFY(told.contains("\"plays with Zoraida Quux\" becomes"));
  // Nothing has happened yet, and nothing does for who thinks better of it.
  find<QPushButton>("cancelErase")->click();
  QVERIFY(!find<QPushButton>("erase")->isVisible());
  QCOMPARE(desk().people().size(), std::size_t{2});
  find<QPushButton>("showErase")->click();
  QTRY_VERIFY(find<QPushButton>("erase")->isVisible());
  QSignalSpy erased(place_.get(), &Place::playerErased);
  find<QPushButton>("erase")->click();
  QTRY_COMPARE(erased.size(), 1);
  QCOMPARE(erased.front().front().toString(), QString("Zoraida Quux"));
  QCOMPARE(desk().people().size(), std::size_t{1});
  QVERIFY(find<QLabel>("playersMessage")->text().contains("Zoraida Quux was erased"));
  QVERIFY(find<QLabel>("playersMessage")->text().contains("nowhere in the record's files"));
  QVERIFY(desk().undoName().isEmpty());
  QVERIFY(desk().person() == nullptr);
  for (const char* ending : {"", "-wal"}) {
    QFile file(folder_->filePath("club.sqlite") + QLatin1String(ending));
    QVERIFY(!file.open(QIODevice::ReadOnly) || !file.readAll().contains("Quux"));
  }
}

void PlayersStoryTest::whoPlaysNowIsNotErased() {
  add("Ada");
  {
    auto record = Record::open(folder_->filePath("club.sqlite").toStdString());
    QVERIFY(record.has_value());
    QVERIFY(record->keepDraft("hand-session", R"({"hand": {"players": ["Ada"]}})").has_value());
  }
  find<QPushButton>("showErase")->click();
  QTRY_VERIFY(find<QPushButton>("erase")->isVisible());
  find<QPushButton>("erase")->click();
  QTRY_VERIFY(find<QLabel>("playersMessage")->text().contains("end it first"));
  QCOMPARE(desk().people().size(), std::size_t{1});
  QVERIFY(!desk().undoName().isEmpty());
}

void PlayersStoryTest::aPlayerIsExported() {
  add("Ada");
  add("Ben");
  choose("Ada");
  place_->exportTo(folder_->filePath("out"));
  QTRY_VERIFY(find<QLabel>("playersMessage")->text().contains("record.json"));
  QFile file(folder_->filePath("out/record.json"));
  QVERIFY(file.open(QIODevice::ReadOnly));
  const QByteArray json = file.readAll();
  QVERIFY(json.contains("\"Ada\""));
  QVERIFY(!json.contains("\"Ben\""));
}

void PlayersStoryTest::searchAndGroupFilterTheList() {
  add("Ada");
  type("personGroups", "juniors");
  QTRY_COMPARE(desk().person()->details.groups.size(), std::size_t{1});
  add("Ben");
  find<QLineEdit>("searchPlayers")->setText("JUN");
  QCOMPARE(listed(), QStringList{"Ada"});
  find<QLineEdit>("searchPlayers")->setText("nobody of this name");
  QVERIFY(find<QLabel>("nobodyPasses")->isVisible());
  find<QLineEdit>("searchPlayers")->clear();
  auto* group = find<QComboBox>("groupFilter");
  group->setCurrentIndex(group->findData("juniors"));
  QCOMPARE(listed(), QStringList{"Ada"});
  // Whoever is added while a group is shown is of that group.
  add("Cleo");
  QCOMPARE(desk().person()->details.groups, std::vector<std::string>{"juniors"});
  QCOMPARE(listed(), (QStringList{"Ada", "Cleo"}));
  // The filter outlives the place.
  QSettings settings(folder_->filePath("settings.ini"), QSettings::IniFormat);
  place_->save(settings);
  place_.reset();
  open();
  place_->restore(settings);
  place_->hide();
  place_->show();
  QTRY_COMPARE(listed(), (QStringList{"Ada", "Cleo"}));
  QTRY_COMPARE(find<QLabel>("playerTitle")->text(), QString("Cleo"));
}

void PlayersStoryTest::theListModelKeepsTheRules() {
  PeopleListModel model;
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::QtTest);
  std::vector<PersonRow> people(3);
  for (std::size_t i = 0; i < people.size(); ++i)
    people[i].details.player = {PlayerId{static_cast<std::int64_t>(i + 1)}, std::string(1, static_cast<char>('A' + i))};
  people[1].details.player.guest = true;
  model.setPeople(people, 0);
  QCOMPARE(model.rowCount(), 3);
  QCOMPARE(model.rowOf(PlayerId{3}), 2);
  QCOMPARE(model.index(1).data(Qt::AccessibleTextRole).toString(), QString("B, guest, no consent"));
  model.setFilter("b", {});
  QCOMPARE(model.rowCount(), 1);
  QCOMPARE(model.rowOf(PlayerId{3}), -1);
  QCOMPARE(model.rowOf(PlayerId{2}), 0);
}

void PlayersStoryTest::groupsAreReadFromText() {
  QCOMPARE(groupsFromText(" juniors ,, Tuesday,juniors"), (std::vector<std::string>{"Tuesday", "juniors"}));
  QVERIFY(groupsFromText("").empty());
  QCOMPARE(groupsText({"Tuesday", "juniors"}), QString("Tuesday, juniors"));
}

FERRULE_TEST(PlayersStoryTest)
#include "players_story_test.moc"
