// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>
#include <QFile>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QtTest>

#include "core/camera/rig_file.h"
#include "tests/console/refusal.h"
#include "tests/support/ball_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// Another program's hold on a database.
class OtherProgram {
 public:
  explicit OtherProgram(const QString& path) {
    database_ = QSqlDatabase::addDatabase("QSQLITE", "another");
    database_.setDatabaseName(path);
    opened_ = database_.open();
  }
  ~OtherProgram() {
    database_.close();
    database_ = QSqlDatabase();
    QSqlDatabase::removeDatabase("another");
  }
  bool run(const QString& sql) { return opened_ && QSqlQuery(database_).exec(sql); }

 private:
  QSqlDatabase database_;
  bool opened_ = false;
};

}  // namespace

/// Records that cannot be written or read.
class BadRecordTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void aLockedRecordIsRefused();
  void aReadOnlyRecordIsRefusedForMeasuringButExports();
  void aRecordOfALaterVersionIsRefused();
  void whatIsNoRecordIsRefusedAndKept_data();
  void whatIsNoRecordIsRefusedAndKept();
  void aMissingRecordIsNotMadeByExporting();
  void anUnknownPlayerIsNamed();

 private:
  QStringList measure(const QString& record) const;
  QStringList exporting(const QString& record) const { return {"export", "--record", record, "-o", "out"}; }
  std::unique_ptr<Workplace> workplace_;
};

/// A record of one film, without a shot.
void BadRecordTest::init() {
  workplace_ = std::make_unique<Workplace>();
  workplace_->writeEmptyCloth("cloth.avi", 640, 360, 2);
  QVERIFY(writeRigFile(workplace_->path("rig.json").toStdString(), overheadRig()).has_value());
  const Ended ended =
      workplace_->run({"measure", "cloth.avi", "--rig", "rig.json", "--table", "9ft", "--record", "r.sqlite"});
  QVERIFY2(ended.status == 0, qPrintable(ended.words.join('\n')));
}

QStringList BadRecordTest::measure(const QString& record) const {
  return {"measure",  dataPath("clip/stop-shot.mp4"),
          "--rig",    dataPath("clip/rig.json"),
          "--table",  dataPath("clip/table.json"),
          "--record", record,
          "-o",       "measured.json"};
}

void BadRecordTest::aLockedRecordIsRefused() {
  const QByteArray record = workplace_->content("r.sqlite");
  {
    OtherProgram other(workplace_->path("r.sqlite"));
    QVERIFY(other.run("BEGIN IMMEDIATE"));
    FERRULE_VERIFY_REFUSED(*workplace_, measure("r.sqlite"), "r.sqlite is in use by another program", "close it there");
  }
  QCOMPARE(workplace_->content("r.sqlite"), record);
}

void BadRecordTest::aReadOnlyRecordIsRefusedForMeasuringButExports() {
  const auto readable = QFileDevice::ReadOwner | QFileDevice::ReadUser;
  QVERIFY(QFile::setPermissions(workplace_->path("r.sqlite"), readable));
  const QStringList before = workplace_->files();
  const Ended ended = workplace_->run(measure("r.sqlite"), Workplace::Rights::NoMoreThanFilesSay);
  const QString wrong = wrongWithRefusal(ended, "r.sqlite may only be read", "copy it to a folder of your own", before,
                                         workplace_->files());
  QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
  const Ended exported = workplace_->run(exporting("r.sqlite"), Workplace::Rights::NoMoreThanFilesSay);
  QVERIFY2(exported.status == 0, qPrintable(exported.words.join('\n')));
  QVERIFY(workplace_->content("out/record.json").contains("cloth"));
}

void BadRecordTest::aRecordOfALaterVersionIsRefused() {
  {
    OtherProgram other(workplace_->path("r.sqlite"));
    QVERIFY(other.run("PRAGMA user_version = 99"));
  }
  const QByteArray record = workplace_->content("r.sqlite");
  FERRULE_VERIFY_REFUSED(*workplace_, measure("r.sqlite"), "r.sqlite was written by a later version (form 99",
                         "update this program");
  FERRULE_VERIFY_REFUSED(*workplace_, exporting("r.sqlite"), "r.sqlite was written by a later version (form 99",
                         "update this program");
  QCOMPARE(workplace_->content("r.sqlite"), record);
}

void BadRecordTest::whatIsNoRecordIsRefusedAndKept_data() {
  QTest::addColumn<QByteArray>("content");
  QTest::newRow("text") << QByteArray("my shots\n").repeated(300);
  QTest::newRow("few bytes") << QByteArray("shots\n");
  QTest::newRow("zeros") << QByteArray(8192, '\0');
}

void BadRecordTest::whatIsNoRecordIsRefusedAndKept() {
  QFETCH(QByteArray, content);
  workplace_->write("notes.sqlite", content);
  FERRULE_VERIFY_REFUSED(*workplace_, measure("notes.sqlite"), "notes.sqlite is not a record", "choose another file");
  FERRULE_VERIFY_REFUSED(*workplace_, exporting("notes.sqlite"), "notes.sqlite is not a record", "choose another file");
  QCOMPARE(workplace_->content("notes.sqlite"), content);
}

void BadRecordTest::aMissingRecordIsNotMadeByExporting() {
  FERRULE_VERIFY_REFUSED(*workplace_, exporting("none.sqlite"), "no file none.sqlite", "check the path");
  QVERIFY(!QDir(workplace_->path("out")).exists());
}

void BadRecordTest::anUnknownPlayerIsNamed() {
  FERRULE_VERIFY_REFUSED(*workplace_, exporting("r.sqlite") + QStringList({"--player", "Nobody"}), "Nobody",
                         "check the spelling");
  QVERIFY(!QDir(workplace_->path("out")).exists());
}

FERRULE_TEST(BadRecordTest)
#include "bad_record_test.moc"
