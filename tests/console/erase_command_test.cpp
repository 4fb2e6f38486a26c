// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/erase_command.h"

#include <QtTest>

#include "core/record/people.h"
#include "tests/console/program.h"
#include "tests/console/refusal.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class EraseCommandTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void withoutYesNothingIsErased();
  void withYesThePlayerIsGoneFromTheFile();
  void anUnknownPlayerIsNamed();
  void aMissingRecordIsNotMade();

 private:
  [[nodiscard]] static QStringList erase(const QString& player) {
    return {"erase", "--record", "club.sqlite", "--player", player};
  }
  std::unique_ptr<Workplace> workplace_;
};

void EraseCommandTest::init() {
  workplace_ = std::make_unique<Workplace>();
  Record record = sample::openOrDie(workplace_->path("club.sqlite").toStdString());
  const auto game = sample::addGame(record);
  QVERIFY(record.appendShot(game.frame, sample::shot(1), sample::tracks(1), game.ada).has_value());
  QVERIFY(record.appendShot(game.frame, sample::shot(2), sample::tracks(2), game.ben).has_value());
  QVERIFY(updatePerson(record, {{game.ada, "Zoraida Quux"}, {"juniors"}}).has_value());
}

void EraseCommandTest::withoutYesNothingIsErased() {
  const QByteArray before = workplace_->content("club.sqlite");
  const Ended ended = workplace_->run(erase("Zoraida Quux"));
  QCOMPARE(ended.status, 0);
  QVERIFY(ended.out.contains("What goes with Zoraida Quux:"));
  QVERIFY(ended.out.contains("  Shots: 1"));
  QVERIFY(ended.out.contains("  Tracks: 2"));
  QVERIFY(ended.out.contains("films/evening.mp4 (others play in it too"));
  QVERIFY(ended.out.contains("Others' shots in sessions with this player: 1"));
  QVERIFY(ended.words.join('\n').contains("add --yes"));
  QCOMPARE(workplace_->content("club.sqlite"), before);
}

void EraseCommandTest::withYesThePlayerIsGoneFromTheFile() {
  QVERIFY(workplace_->content("club.sqlite").contains("Zoraida Quux"));
  const Ended told = workplace_->run(erase("Zoraida Quux"));
  const Ended ended = workplace_->run(erase("Zoraida Quux") + QStringList{"--yes"});
  QVERIFY2(ended.status == 0, qPrintable(ended.words.join('\n')));
  // What was told is what is done.
  QCOMPARE(ended.out, told.out);
  QVERIFY(ended.words.join('\n').contains("nowhere in the record's files"));
  QVERIFY(!workplace_->content("club.sqlite").contains("Zoraida Quux"));
  QVERIFY(workplace_->content("club.sqlite").contains("Ben"));
  QCOMPARE(workplace_->run({"erase", "--record", "club.sqlite", "--player", "Zoraida Quux", "--compact"}).status, 0);
}

void EraseCommandTest::anUnknownPlayerIsNamed() {
  FERRULE_VERIFY_REFUSED(*workplace_, erase("Nobody"), "Nobody", "check the spelling");
  FERRULE_VERIFY_REFUSED(*workplace_, erase("Nobody") + QStringList{"--yes"}, "Nobody", "check the spelling");
}

void EraseCommandTest::aMissingRecordIsNotMade() {
  QVERIFY(QFile::remove(workplace_->path("club.sqlite")));
  FERRULE_VERIFY_REFUSED(*workplace_, erase("Ada") + QStringList{"--yes"}, "no file club.sqlite", "check the path");
}

FERRULE_TEST(EraseCommandTest)
#include "erase_command_test.moc"
