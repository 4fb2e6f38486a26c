// SPDX-License-Identifier: GPL-3.0-or-later
#include <QStringList>
#include <array>

#include "core/record/merge_rows.h"

namespace ferrule {

namespace {

/// What was read and ruled of a shot; replaced as a whole.
constexpr std::array kOfShot{"positions", "deliveries", "events", "pocketed", "tracks", "rulings", "explanations"};

/// A shot that is put aside has a number of its record alone (shot_boundaries.h): such numbers are moved out of the way
/// of those that are here, and made anew at the end.
constexpr const char* kNumber = "(CASE WHEN o.number < 0 THEN o.number - 1000000000 ELSE o.number END)";

Result<void> addShots(Connection& connection) {
  const QStringList skip{"id", "frame_id", "player_id", "number"};
  const auto columns = columnsOf(connection, QStringLiteral("shots"), skip);
  const auto values = columnsOf(connection, QStringLiteral("shots"), skip, QStringLiteral("o."));
  if (!columns) return tl::make_unexpected(columns.error());
  if (!values) return tl::make_unexpected(values.error());
  auto done = runAll(
      connection,
      {QStringLiteral("CREATE TEMP TABLE map_shots(o INTEGER PRIMARY KEY, m INTEGER NOT NULL)"),
       QStringLiteral("CREATE TEMP TABLE filled(o INTEGER PRIMARY KEY, m INTEGER NOT NULL)"),
       QStringLiteral(
           "INSERT INTO map_shots SELECT o.id, k.id FROM other.shots o JOIN map_frames f ON f.o = o.frame_id JOIN "
           "main.shots k ON k.frame_id = f.m AND k.number = o.number WHERE o.number > 0 AND (f.m NOT IN (SELECT m FROM "
           "parted))")});
  if (done) done = mapPutAside(connection);
  if (!done) return done;
  return runAll(
      connection,
      {// Known ones that the other record has more of.
       QStringLiteral(
           "INSERT INTO filled SELECT s.o, s.m FROM map_shots s JOIN main.shots k ON k.id = s.m WHERE k.frame_id "
           "IN (SELECT m FROM updated)"),
       QStringLiteral(
           "UPDATE main.shots SET (player_id, %1) = (SELECT (SELECT p.m FROM map_players p WHERE p.o = "
           "o.player_id), %2 FROM other.shots o JOIN filled s ON s.o = o.id WHERE s.m = main.shots.id) WHERE id "
           "IN (SELECT m FROM filled)")
           .arg(*columns, *values),
       QStringLiteral(
           "INSERT INTO main.shots(frame_id, player_id, number, %1) SELECT f.m, p.m, %3, %2 FROM other.shots o JOIN "
           "map_frames f ON f.o = o.frame_id LEFT JOIN map_players p ON p.o = o.player_id WHERE o.id NOT IN "
           "(SELECT o FROM map_shots) AND (o.player_id IS NULL OR p.m IS NOT NULL) AND (f.m IN (SELECT m FROM "
           "new_frames) OR f.m IN (SELECT m FROM updated)) ORDER BY f.m, o.number")
           .arg(*columns, *values, QLatin1String(kNumber)),
       QStringLiteral("INSERT OR IGNORE INTO filled SELECT o.id, k.id FROM other.shots o JOIN map_frames f ON f.o = "
                      "o.frame_id JOIN main.shots k ON k.frame_id = f.m AND k.number = %1 WHERE o.id NOT IN (SELECT o "
                      "FROM map_shots)")
           .arg(QLatin1String(kNumber)),
       QStringLiteral("UPDATE main.shots SET number = -id WHERE number < -1000000000"),
       QStringLiteral(
           "CREATE TEMP TABLE new_shots AS SELECT o, m FROM filled WHERE o NOT IN (SELECT o FROM map_shots)"),
       QStringLiteral("INSERT INTO map_shots SELECT o, m FROM new_shots")});
}

Result<void> fillShots(Connection& connection) {
  for (const char* name : kOfShot) {
    const QString table = QLatin1String(name);
    const QStringList skip{"id", "shot_id"};
    const auto columns = columnsOf(connection, table, skip);
    const auto values = columnsOf(connection, table, skip, QStringLiteral("o."));
    if (!columns) return tl::make_unexpected(columns.error());
    if (!values) return tl::make_unexpected(values.error());
    auto done = runAll(connection,
                       {QStringLiteral("DELETE FROM main.%1 WHERE shot_id IN (SELECT m FROM filled)").arg(table),
                        QStringLiteral("INSERT INTO main.%1(shot_id, %2) SELECT s.m, %3 FROM other.%1 o JOIN filled s "
                                       "ON s.o = o.shot_id ORDER BY s.m")
                            .arg(table, *columns, *values)});
    if (!done) return done;
  }
  return {};
}

/// With the rows that fell with them; names of players as they are known here.
Result<void> addCorrections(Connection& connection) {
  const auto base = countOf(connection, QStringLiteral("SELECT coalesce(max(id), 0) FROM main.corrections"));
  if (!base) return tl::make_unexpected(base.error());
  return runAll(
      connection,
      {QStringLiteral("DELETE FROM main.corrections WHERE entity = 'shot' AND entity_id IN (SELECT m FROM filled)"),
       QStringLiteral("CREATE TEMP TABLE map_corrections(o INTEGER PRIMARY KEY, m INTEGER NOT NULL)"),
       QStringLiteral("INSERT INTO map_corrections SELECT c.id, %1 + row_number() OVER (ORDER BY c.id) FROM "
                      "other.corrections c JOIN filled s ON s.o = c.entity_id WHERE c.entity = 'shot'")
           .arg(*base),
       QStringLiteral(
           "INSERT INTO main.corrections(id, entity, entity_id, field, measured, corrected, who, when_ms, "
           "cause_id) SELECT n.m, 'shot', s.m, c.field, %1, %2, c.who, c.when_ms, (SELECT k.m FROM "
           "map_corrections k WHERE k.o = c.cause_id) FROM other.corrections c JOIN map_corrections n ON n.o = "
           "c.id JOIN filled s ON s.o = c.entity_id ORDER BY c.id")
           .arg(namedHere(QStringLiteral("c.measured")), namedHere(QStringLiteral("c.corrected")))});
}

/// What may have been added to any shot, session or frame since, without being a correction.
Result<void> addRemarks(Connection& connection) {
  const auto suggestions = columnsOf(connection, QStringLiteral("suggestions"), {"shot_id"});
  if (!suggestions) return tl::make_unexpected(suggestions.error());
  auto done = connection.run(QStringLiteral("INSERT OR IGNORE INTO main.suggestions(shot_id, %1) SELECT s.m, %1 FROM "
                                            "other.suggestions o JOIN map_shots s ON s.o = o.shot_id")
                                 .arg(*suggestions));
  for (const char* entity : {"shot", "frame", "session"}) {
    if (!done) return done;
    const QString map = QStringLiteral("map_%1s").arg(QLatin1String(entity));
    done = runAll(
        connection,
        {QStringLiteral(
             "INSERT OR IGNORE INTO main.tags(entity, entity_id, tag) SELECT t.entity, s.m, t.tag FROM other.tags "
             "t JOIN %2 s ON s.o = t.entity_id WHERE t.entity = '%1'")
             .arg(QLatin1String(entity), map),
         QStringLiteral(
             "INSERT INTO main.notes(entity, entity_id, note, who, when_ms) SELECT n.entity, s.m, n.note, n.who, "
             "n.when_ms FROM other.notes n JOIN %2 s ON s.o = n.entity_id WHERE n.entity = '%1' AND NOT "
             "EXISTS(SELECT 1 FROM main.notes k WHERE k.entity = n.entity AND k.entity_id = s.m AND k.note = "
             "n.note AND k.who = n.who AND k.when_ms = n.when_ms) ORDER BY n.id")
             .arg(QLatin1String(entity), map)});
  }
  return done;
}

Result<void> addPlacements(Connection& connection) {
  return runAll(
      connection,
      {QStringLiteral("DELETE FROM main.placements WHERE frame_id IN (SELECT m FROM updated)"),
       QStringLiteral("INSERT INTO main.placements(frame_id, ball, time_s, x_m, y_m) SELECT f.m, o.ball, o.time_s, "
                      "o.x_m, o.y_m FROM other.placements o JOIN map_frames f ON f.o = o.frame_id WHERE f.m IN "
                      "(SELECT m FROM new_frames) OR f.m IN (SELECT m FROM updated) ORDER BY o.id")});
}

}  // namespace

Result<void> mergeShots(Connection& connection, MergeReport& report) {
  auto done = compareFrames(connection);
  if (done) done = clearParted(connection);
  if (done) done = addShots(connection);
  if (done) done = fillShots(connection);
  if (done) done = addCorrections(connection);
  if (done) done = renameBoundaries(connection);
  if (done) done = giveBackRemarks(connection);
  if (done) done = addRemarks(connection);
  if (done) done = addPlacements(connection);
  if (!done) return done;
  const std::array<std::pair<int*, const char*>, 3> counts{
      {{&report.shots,
        "SELECT count(*) FROM new_shots n JOIN main.shots k ON k.id = n.m WHERE k.number > 0 AND k.frame_id NOT IN "
        "(SELECT m FROM parted)"},
       {&report.framesUpdated, "SELECT count(*) FROM updated"},
       {&report.framesApart, "SELECT count(*) FROM theirs WHERE m IN (SELECT m FROM ours)"}}};
  for (const auto& [count, select] : counts) {
    const auto found = countOf(connection, QString::fromLatin1(select));
    if (!found) return tl::make_unexpected(found.error());
    *count = *found;
  }
  return {};
}

}  // namespace ferrule
