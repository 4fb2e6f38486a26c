// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/film_permission.h"

#include <QtTest>
#include <filesystem>

#include "core/record/record.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class FilmPermissionTest : public QObject {
  Q_OBJECT
 private slots:
  void ofPeopleWhomNobodyNamedNoFilmIsKept();
  void whoIsNotInTheRecordHasConsentedToNothing();
  void aConsentOpensTheWayForItsPlayerAlone();
  void aMinorNeedsAGuardiansWord();
};

namespace {

constexpr UtcMilliseconds kNow = 1'772'389'800'000;

PlayerId added(Record& record, const std::string& name, bool minor = false) {
  Player player;
  player.name = name;
  player.minor = minor;
  const auto id = record.addPlayer(player);
  if (!id) qFatal("not added");
  return *id;
}

void consent(Record& record, PlayerId player, ConsentScope scope, bool guardian) {
  ConsentEntry entry;
  entry.player = player;
  entry.scope = scope;
  entry.from = kNow - 1000;
  entry.by = "somebody";
  entry.byGuardian = guardian;
  if (!addConsent(record, entry)) qFatal("not noted");
}

}  // namespace

void FilmPermissionTest::ofPeopleWhomNobodyNamedNoFilmIsKept() {
  const sample::Folder folder;
  const auto permission = filmPermission(folder.file("r.sqlite"), {}, kNow);
  QVERIFY(!permission->granted());
  QVERIFY(permission->obstacles.empty());
}

void FilmPermissionTest::whoIsNotInTheRecordHasConsentedToNothing() {
  const sample::Folder folder;
  const std::string path = folder.file("r.sqlite");
  for (const bool made : {false, true}) {
    if (made) {
      Record record = sample::openOrDie(path);
      added(record, "Ada");
    }
    const auto permission = filmPermission(path, {"Ben"}, kNow);
    QVERIFY(!permission->granted());
    QCOMPARE(permission->obstacles.size(), std::size_t{1});
    QCOMPARE(permission->obstacles.front().player.name, std::string("Ben"));
    QCOMPARE(permission->obstacles.front().state.consent, Consent::Missing);
    // Nothing is made by asking.
    QCOMPARE(std::filesystem::exists(path), made);
  }
}

void FilmPermissionTest::aConsentOpensTheWayForItsPlayerAlone() {
  const sample::Folder folder;
  const std::string path = folder.file("r.sqlite");
  Record record = sample::openOrDie(path);
  consent(record, added(record, "Ada"), ConsentScope::Film, false);
  added(record, "Ben");
  QVERIFY(filmPermission(path, {"Ada"}, kNow)->granted());
  const auto both = filmPermission(path, {"Ada", "Ben"}, kNow);
  QVERIFY(!both->granted());
  QCOMPARE(both->obstacles.size(), std::size_t{1});
  QCOMPARE(both->obstacles.front().player.name, std::string("Ben"));
  QVERIFY(!filmPermission(path, {"Ada"}, kNow - 5000)->granted());
}

void FilmPermissionTest::aMinorNeedsAGuardiansWord() {
  const sample::Folder folder;
  const std::string path = folder.file("r.sqlite");
  Record record = sample::openOrDie(path);
  const PlayerId child = added(record, "Cy", true);
  consent(record, child, ConsentScope::FilmOfMinor, false);
  QCOMPARE(filmPermission(path, {"Cy"}, kNow)->obstacles.front().state.consent, Consent::NotByGuardian);
  consent(record, child, ConsentScope::FilmOfMinor, true);
  QVERIFY(filmPermission(path, {"Cy"}, kNow)->granted());
}

FERRULE_TEST(FilmPermissionTest)
#include "film_permission_test.moc"
