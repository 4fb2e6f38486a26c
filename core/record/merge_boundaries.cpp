// SPDX-License-Identifier: GPL-3.0-or-later
// Shots that people split or joined, where two records become one (shot_boundaries.h).
#include "core/record/merge_rows.h"
#include "core/table/told_values.h"

namespace ferrule {

Result<void> clearParted(Connection& connection) {
  return runAll(
      connection,
      {QStringLiteral("DELETE FROM parted WHERE m NOT IN (SELECT m FROM updated)"),
       QStringLiteral("CREATE TEMP TABLE kept_notes AS SELECT h.frame_id, h.strike_s, n.note, n.who, n.when_ms FROM "
                      "main.notes n JOIN main.shots h ON h.id = n.entity_id WHERE n.entity = 'shot' AND h.frame_id IN "
                      "(SELECT m FROM parted)"),
       QStringLiteral("CREATE TEMP TABLE kept_tags AS SELECT h.frame_id, h.strike_s, t.tag FROM main.tags t JOIN "
                      "main.shots h ON h.id = t.entity_id WHERE t.entity = 'shot' AND h.frame_id IN (SELECT m FROM "
                      "parted)"),
       QStringLiteral("DELETE FROM main.shots WHERE frame_id IN (SELECT m FROM parted)")});
}

Result<void> giveBackRemarks(Connection& connection) {
  return runAll(
      connection,
      {QStringLiteral(
           "INSERT OR IGNORE INTO main.tags(entity, entity_id, tag) SELECT 'shot', h.id, t.tag FROM kept_tags "
           "t JOIN main.shots h ON h.frame_id = t.frame_id AND h.strike_s = t.strike_s AND h.number > 0"),
       QStringLiteral(
           "INSERT INTO main.notes(entity, entity_id, note, who, when_ms) SELECT 'shot', h.id, n.note, n.who, "
           "n.when_ms "
           "FROM kept_notes n JOIN main.shots h ON h.frame_id = n.frame_id AND h.strike_s = n.strike_s AND h.number > "
           "0 "
           "WHERE NOT EXISTS(SELECT 1 FROM main.notes k WHERE k.entity = 'shot' AND k.entity_id = h.id AND k.note = "
           "n.note AND k.who = n.who AND k.when_ms = n.when_ms)")});
}

Result<void> mapPutAside(Connection& connection) {
  for (int known = -1;;) {
    const auto now = countOf(connection, QStringLiteral("SELECT count(*) FROM map_shots"));
    if (!now) return tl::make_unexpected(now.error());
    if (*now == known) return {};
    known = *now;
    auto done = connection.run(QStringLiteral(
        "INSERT OR IGNORE INTO map_shots SELECT CAST(substr(c.corrected, instr(c.corrected, ' ') + 1) AS INTEGER), "
        "CAST(substr(k.corrected, instr(k.corrected, ' ') + 1) AS INTEGER) FROM other.corrections c JOIN map_shots s "
        "ON "
        "s.o = c.entity_id JOIN main.corrections k ON k.entity = 'shot' AND k.entity_id = s.m AND k.field = c.field "
        "AND "
        "k.when_ms = c.when_ms AND substr(k.corrected, 1, instr(k.corrected, ' ')) = substr(c.corrected, 1, "
        "instr(c.corrected, ' ')) WHERE c.entity = 'shot' AND c.field = 'joined' AND c.corrected IS NOT NULL"));
    if (!done) return done;
  }
}

Result<void> renameBoundaries(Connection& connection) {
  const auto rows = connection.rows(
      QStringLiteral("SELECT id, corrected FROM main.corrections WHERE id IN (SELECT m FROM map_corrections) AND field "
                     "IN ('split', 'joined') AND corrected IS NOT NULL"),
      {});
  if (!rows) return tl::make_unexpected(rows.error());
  for (const Row& row : *rows) {
    auto boundary = shotBoundaryFromText(textOf(row[1]));
    if (!boundary) return failure(ErrorCode::RecordBroken, connection.path(), "boundary");
    const auto here = connection.row(QStringLiteral("SELECT m FROM map_shots WHERE o = ?"), {bound(boundary->shot)});
    if (!here) return tl::make_unexpected(here.error());
    // Of somebody who was erased here: there is nothing any more to go back to.
    if (!*here) continue;
    boundary->shot = (**here)[0].toLongLong();
    auto done = connection.run(QStringLiteral("UPDATE main.corrections SET corrected = ? WHERE id = ?"),
                               {bound(std::string_view(toText(*boundary))), row[0]});
    if (!done) return done;
  }
  return {};
}

}  // namespace ferrule
