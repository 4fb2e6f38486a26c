// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/recent_records.h"

#include <QSettings>
#include <QtTest>

#include "tests/app/fresh_settings.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class RecentRecordsTest : public QObject {
  Q_OBJECT
 private slots:
  void theLastOneOpenedComesFirstAndOnce();
  void whatIsGoneIsNotOfferedUntilItIsBack();
  void noMoreThanTheMenuHolds();
};

namespace {

QString touched(const FreshSettings& folder, const QString& name) {
  QFile file(folder.filePath(name));
  static_cast<void>(file.open(QIODevice::WriteOnly));
  return file.fileName();
}

}  // namespace

void RecentRecordsTest::theLastOneOpenedComesFirstAndOnce() {
  const FreshSettings folder;
  QSettings settings;
  const QString club = touched(folder, QStringLiteral("club.sqlite"));
  const QString home = touched(folder, QStringLiteral("home.sqlite"));
  for (const QString& path : {club, home, club})
    noteRecentRecord(settings, path);
  QCOMPARE(recentRecords(settings), QStringList({club, home}));
}

void RecentRecordsTest::whatIsGoneIsNotOfferedUntilItIsBack() {
  const FreshSettings folder;
  QSettings settings;
  const QString club = touched(folder, QStringLiteral("club.sqlite"));
  noteRecentRecord(settings, club);
  QFile::remove(club);
  QVERIFY(recentRecords(settings).isEmpty());
  touched(folder, QStringLiteral("club.sqlite"));
  QCOMPARE(recentRecords(settings), QStringList({club}));
}

void RecentRecordsTest::noMoreThanTheMenuHolds() {
  const FreshSettings folder;
  QSettings settings;
  for (int i = 0; i < kMostRecentRecords + 3; ++i)
    noteRecentRecord(settings, touched(folder, QStringLiteral("%1.sqlite").arg(i)));
  QCOMPARE(recentRecords(settings).size(), qsizetype{kMostRecentRecords});
  QVERIFY(recentRecords(settings).front().endsWith(QStringLiteral("10.sqlite")));
}

FERRULE_TEST(RecentRecordsTest)
#include "recent_records_test.moc"
