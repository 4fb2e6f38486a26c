// SPDX-License-Identifier: GPL-3.0-or-later
#include <QProcess>
#include <QtTest>
#include <filesystem>

#include "core/record/record.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class RecordCrashTest : public QObject {
  Q_OBJECT
 private slots:
  void everyCommittedShotSurvivesAKill();
  void aKillBeforeTheFirstWriteLeavesAFileThatOpens();
};

void RecordCrashTest::everyCommittedShotSurvivesAKill() {
  for (int run = 0; run < 4; ++run) {
    const sample::Folder folder;
    const std::string path = folder.file("a.sqlite");
    QProcess appender;
    appender.start(QStringLiteral(FERRULE_RECORD_APPENDER), {QString::fromStdString(path)});
    // A different instant of its work each time.
    QByteArray said;
    while (said.count('\n') < 5 + 3 * run) {
      QVERIFY2(appender.waitForReadyRead(30'000), appender.readAllStandardError().constData());
      said += appender.readAllStandardOutput();
    }
    QTest::qSleep(run);
    appender.kill();
    QVERIFY(appender.waitForFinished(30'000));
    QCOMPARE(appender.exitStatus(), QProcess::CrashExit);
    said += appender.readAllStandardOutput();
    const int committed = static_cast<int>(said.count('\n'));

    Record record = sample::openOrDie(path);
    QVERIFY(record.check().has_value());
    const auto sessions = record.sessions();
    QCOMPARE(sessions->size(), std::size_t{1});
    const auto frames = record.frames(sessions->front().id);
    QVERIFY(!frames->front().complete);
    const auto shots = record.shots(frames->front().id);
    QVERIFY(shots.has_value());
    // The last one may have been committed without a word.
    const int found = static_cast<int>(shots->size());
    QVERIFY2(found == committed || found == committed + 1, qPrintable(QString("%1 of %2").arg(found).arg(committed)));
    for (int i = 0; i < found; ++i) {
      const auto shot = record.shot((*shots)[static_cast<std::size_t>(i)].id);
      QVERIFY(shot.has_value());
      QCOMPARE(shot->reading, sample::shot(i + 1));
      QCOMPARE(shot->tracks, sample::tracks(i + 1));
    }
    QVERIFY(record.appendShot(frames->front().id, sample::shot(found + 1), {}).has_value());
  }
}

void RecordCrashTest::aKillBeforeTheFirstWriteLeavesAFileThatOpens() {
  const sample::Folder folder;
  const std::string path = folder.file("a.sqlite");
  QProcess appender;
  appender.start(QStringLiteral(FERRULE_RECORD_APPENDER), {QString::fromStdString(path)});
  QVERIFY(appender.waitForStarted(30'000));
  while (!std::filesystem::exists(path) && appender.state() == QProcess::Running)
    QTest::qSleep(0);
  appender.kill();
  QVERIFY(appender.waitForFinished(30'000));
  Record record = sample::openOrDie(path);
  QVERIFY(record.check().has_value());
  QVERIFY(record.addPlayer(sample::player("Zoe")).has_value());
}

FERRULE_TEST(RecordCrashTest)
#include "record_crash_test.moc"
