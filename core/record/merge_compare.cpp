// SPDX-License-Identifier: GPL-3.0-or-later
// Which frames the other record knows more of.
#include "core/record/merge_rows.h"

namespace ferrule {

namespace {

enum class Numbered { No, Yes };

constexpr const char* kAny = "1";
constexpr const char* kBoundaries = "c.field IN ('split', 'joined') AND c.corrected IS NOT NULL";

/// A boundary's text ends with the id of a shot, which each record gives by itself; its time is the same everywhere.
const QString kCorrected = QStringLiteral(
    "CASE WHEN c.field IN ('split', 'joined') THEN substr(c.corrected, 1, instr(c.corrected, ' ')) ELSE c.corrected "
    "END");

/// What tells two corrections apart in all records.
QString keyOf(Numbered numbered, const QString& measured, const QString& corrected) {
  return QStringLiteral("%1c.field, %2, %3, c.who, c.when_ms")
      .arg(numbered == Numbered::Yes ? QStringLiteral("h.number, ") : QString(), measured, corrected);
}
QString theirCorrections(Numbered numbered, const char* which = kAny) {
  return QStringLiteral(
             "SELECT f.m AS m, c.field AS field, %1 FROM other.corrections c JOIN other.shots h ON h.id = c.entity_id "
             "JOIN map_frames f ON f.o = h.frame_id WHERE c.entity = 'shot' AND %2")
      .arg(keyOf(numbered, namedHere(QStringLiteral("c.measured")), namedHere(kCorrected)), QLatin1String(which));
}
QString ourCorrections(Numbered numbered, const char* which = kAny) {
  return QStringLiteral(
             "SELECT h.frame_id AS m, c.field AS field, %1 FROM main.corrections c JOIN main.shots h ON h.id = "
             "c.entity_id WHERE c.entity = 'shot' AND h.frame_id IN (SELECT m FROM map_frames) AND %2")
      .arg(keyOf(numbered, QStringLiteral("c.measured"), kCorrected), QLatin1String(which));
}

/// Shots of people who were erased here are left out.
constexpr const char* kShotKeys =
    "SELECT f.m AS m, h.number FROM other.shots h JOIN map_frames f ON f.o = h.frame_id WHERE h.number > 0 AND "
    "(h.player_id IS NULL OR h.player_id IN (SELECT o FROM map_players))";
constexpr const char* kOurShotKeys =
    "SELECT h.frame_id AS m, h.number FROM main.shots h WHERE h.number > 0 AND h.frame_id IN (SELECT m FROM "
    "map_frames)";

QString onlyIn(const char* name, const QString& these, const QString& those) {
  return QStringLiteral("INSERT OR IGNORE INTO %1 SELECT DISTINCT m FROM (%2 EXCEPT %3)")
      .arg(QLatin1String(name), these, those);
}

/// How many shots the film gave a frame, however people split and joined them since: (m, shots).
QString filmedShots(const QString& shots, const QString& boundaries) {
  return QStringLiteral(
             "SELECT s.m, s.n - (SELECT total(CASE b.field WHEN 'split' THEN 1 ELSE -1 END) FROM (%2) b WHERE b.m = "
             "s.m) "
             "AS n FROM (SELECT m, count(*) AS n FROM (%1) GROUP BY m) s")
      .arg(shots, boundaries);
}

}  // namespace

Result<void> compareFrames(Connection& connection) {
  const QString shots = QLatin1String(kShotKeys);
  const QString ourShots = QLatin1String(kOurShotKeys);
  const QString bounds = theirCorrections(Numbered::No, kBoundaries);
  const QString ourBounds = ourCorrections(Numbered::No, kBoundaries);
  const QString filmed = filmedShots(shots, bounds);
  const QString ourFilmed = filmedShots(ourShots, ourBounds);
  const auto more = [](const char* name, const QString& these, const QString& those) {
    return QStringLiteral(
               "INSERT OR IGNORE INTO %1 SELECT a.m FROM (%2) a JOIN (%3) b ON b.m = a.m WHERE a.n > b.n AND "
               "a.m IN (SELECT m FROM parted)")
        .arg(QLatin1String(name), these, those);
  };
  return runAll(
      connection,
      {QStringLiteral("CREATE TEMP TABLE theirs(m INTEGER PRIMARY KEY)"),
       QStringLiteral("CREATE TEMP TABLE ours(m INTEGER PRIMARY KEY)"),
       QStringLiteral("CREATE TEMP TABLE parted(m INTEGER PRIMARY KEY)"), onlyIn("parted", bounds, ourBounds),
       onlyIn("parted", ourBounds, bounds), QStringLiteral("DELETE FROM parted WHERE m IN (SELECT m FROM new_frames)"),
       onlyIn("theirs", theirCorrections(Numbered::Yes), ourCorrections(Numbered::Yes)),
       onlyIn("theirs", shots, ourShots),
       onlyIn("ours", ourCorrections(Numbered::Yes), theirCorrections(Numbered::Yes)), onlyIn("ours", ourShots, shots),
       QStringLiteral("DELETE FROM theirs WHERE m IN (SELECT m FROM new_frames UNION SELECT m FROM parted)"),
       QStringLiteral("DELETE FROM ours WHERE m IN (SELECT m FROM parted)"),
       QStringLiteral("INSERT OR IGNORE INTO theirs SELECT DISTINCT m FROM (%1 EXCEPT %2) WHERE m IN (SELECT m FROM "
                      "parted)")
           .arg(theirCorrections(Numbered::No), ourCorrections(Numbered::No)),
       QStringLiteral("INSERT OR IGNORE INTO ours SELECT DISTINCT m FROM (%1 EXCEPT %2) WHERE m IN (SELECT m FROM "
                      "parted)")
           .arg(ourCorrections(Numbered::No), theirCorrections(Numbered::No)),
       more("theirs", filmed, ourFilmed), more("ours", ourFilmed, filmed),
       QStringLiteral("CREATE TEMP TABLE updated AS SELECT m FROM theirs WHERE m NOT IN (SELECT m FROM ours)")});
}

}  // namespace ferrule
