// SPDX-License-Identifier: GPL-3.0-or-later
#include <pwd.h>
#include <unistd.h>

#include <QDir>
#include <QSettings>
#include <QStandardPaths>
#include <QtTest>

#include "app/setup/setup_place.h"
#include "app/window/own_record.h"
#include "tests/app/fresh_settings.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// What a test keeps never comes near what the person who runs it keeps.
class OwnHomeTest : public QObject {
  Q_OBJECT
 private slots:
  void everyFolderIsATemporaryOne();
  void freshSettingsHaveAHomeOfTheirOwn();
};

namespace {

bool isBelow(const QString& path, const QString& folder) {
  return QDir::cleanPath(path).startsWith(QDir::cleanPath(folder) + QLatin1Char('/'));
}

}  // namespace

/// The user's own folder as the system knows it, whatever the environment says.
void OwnHomeTest::everyFolderIsATemporaryOne() {
  const passwd* user = getpwuid(getuid());
  QVERIFY(user != nullptr);
  const QString real = QString::fromLocal8Bit(user->pw_dir);
  QVERIFY(QDir::homePath() != real);
  for (const auto kind : {QStandardPaths::HomeLocation, QStandardPaths::GenericDataLocation,
                          QStandardPaths::AppDataLocation, QStandardPaths::GenericConfigLocation,
                          QStandardPaths::AppConfigLocation, QStandardPaths::GenericCacheLocation}) {
    const QString path = QStandardPaths::writableLocation(kind);
    QVERIFY2(isBelow(path, QDir::tempPath()), qPrintable(path));
    QVERIFY2(!isBelow(path, real) || isBelow(QDir::tempPath(), real), qPrintable(path));
  }
  QVERIFY(isBelow(ownSetupFolder(), QDir::homePath()));
  QVERIFY(isBelow(ownRecord(), QDir::homePath()));
}

void OwnHomeTest::freshSettingsHaveAHomeOfTheirOwn() {
  const QString before = QDir::homePath();
  {
    const FreshSettings fresh;
    QCOMPARE(QDir::homePath(), fresh.path());
    QVERIFY(isBelow(ownSetupFolder(), fresh.path()));
    QVERIFY(isBelow(ownRecord(), fresh.path()));
    QSettings().setValue("a", 1);
    QVERIFY(isBelow(QSettings().fileName(), fresh.path()));
  }
  QCOMPARE(QDir::homePath(), before);
}

FERRULE_TEST(OwnHomeTest)
#include "own_home_test.moc"
