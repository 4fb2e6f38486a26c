// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/import_command.h"

#include <QtTest>

#include "tests/console/program.h"
#include "tests/console/refusal.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class ImportCommandTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void anotherRecordComesInOnce();
  void whatIsNoRecordIsRefused();

 private:
  std::unique_ptr<Workplace> workplace_;
};

void ImportCommandTest::init() {
  workplace_ = std::make_unique<Workplace>();
  Record record = sample::openOrDie(workplace_->path("laptop.sqlite").toStdString());
  const auto game = sample::addGame(record);
  QVERIFY(record.appendShot(game.frame, sample::shot(1), sample::tracks(1), game.ada).has_value());
}

void ImportCommandTest::anotherRecordComesInOnce() {
  const QStringList call{"import", "--record", "club.sqlite", "laptop.sqlite"};
  const Ended first = workplace_->run(call);
  QVERIFY2(first.status == 0, qPrintable(first.words.join('\n')));
  QVERIFY2(first.out.contains("1 session"), qPrintable(first.out));
  const Ended second = workplace_->run(call);
  QCOMPARE(second.status, 0);
  QVERIFY(second.out.contains("Nothing of it was new."));
}

void ImportCommandTest::whatIsNoRecordIsRefused() {
  FERRULE_VERIFY_REFUSED(*workplace_, (QStringList{"import", "--record", "club.sqlite", "gone.sqlite"}),
                         "no file gone.sqlite", "check the path");
  QVERIFY(!QFile::exists(workplace_->path("club.sqlite")));
}

FERRULE_TEST(ImportCommandTest)
#include "import_command_test.moc"
