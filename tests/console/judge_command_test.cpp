// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/judge_command.h"

#include <QtTest>

#include "tests/console/call.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class JudgeCommandTest : public QObject {
  Q_OBJECT
 private slots:
  void aSessionWithoutShotsIsJudgedAtOnce();
  void aMissingRecordIsNotMade();
  void anUnknownSessionOrLevelIsRefused();
};

namespace {

std::string recordWithSession(const sample::Folder& folder) {
  const std::string path = folder.file("club.sqlite");
  Record record = sample::openOrDie(path);
  if (!record.addSession({"Evening", 1'772'389'800'000, "table", sample::table(), {}, SessionKind::Practice}))
    qFatal("the session was not recorded");
  return path;
}

}  // namespace

void JudgeCommandTest::aSessionWithoutShotsIsJudgedAtOnce() {
  const sample::Folder folder;
  QCOMPARE(call({"judge", "--record", recordWithSession(folder), "--session", "Evening", "--level", "expert"}), 0);
}

void JudgeCommandTest::aMissingRecordIsNotMade() {
  const sample::Folder folder;
  const std::string path = folder.file("nowhere.sqlite");
  QCOMPARE(call({"judge", "--record", path, "--session", "Evening"}), 1);
  QVERIFY(!QFile::exists(QString::fromStdString(path)));
}

void JudgeCommandTest::anUnknownSessionOrLevelIsRefused() {
  const sample::Folder folder;
  const std::string path = recordWithSession(folder);
  QCOMPARE(call({"judge", "--record", path, "--session", "Morning"}), 1);
  QCOMPARE(call({"judge", "--record", path, "--session", "Evening", "--level", "master"}), 1);
}

FERRULE_TEST(JudgeCommandTest)
#include "judge_command_test.moc"
