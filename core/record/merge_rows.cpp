// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/merge_rows.h"

#include <QStringList>

namespace ferrule {

namespace {

/// "INSERT ... SELECT" of rows that have an id: they get ours in their order, and map_X tells which.
/// select: what is new, o: its alias; columns: all but the id, as ours are to be.
Result<void> insertMapped(Connection& connection, const QString& table, const QString& columns, const QString& values,
                          const QString& from) {
  const auto base = countOf(connection, QStringLiteral("SELECT coalesce(max(id), 0) FROM main.%1").arg(table));
  if (!base) return tl::make_unexpected(base.error());
  return runAll(
      connection,
      {QStringLiteral("CREATE TEMP TABLE new_%1(o INTEGER PRIMARY KEY, m INTEGER NOT NULL)").arg(table),
       QStringLiteral("INSERT INTO new_%1 SELECT o.id, %2 + row_number() OVER (ORDER BY o.id) FROM %3")
           .arg(table)
           .arg(*base)
           .arg(from),
       QStringLiteral("INSERT INTO main.%1(id, %2) SELECT new.m, %3 FROM new_%1 new JOIN other.%1 o ON o.id = new.o "
                      "ORDER BY o.id")
           .arg(table, columns, values),
       QStringLiteral("INSERT INTO map_%1 SELECT o, m FROM new_%1").arg(table)});
}

QString mapTable(const char* table) {
  return QStringLiteral("CREATE TEMP TABLE map_%1(o INTEGER PRIMARY KEY, m INTEGER NOT NULL)")
      .arg(QLatin1String(table));
}

/// What is known of one kind by a column that is the same everywhere.
QString knownBy(const char* table, const char* column) {
  return QStringLiteral("INSERT INTO map_%1 SELECT o.id, m.id FROM other.%1 o JOIN main.%1 m ON m.%2 = o.%2")
      .arg(QLatin1String(table), QLatin1String(column));
}

/// Names are unique in one record: "Ada (2)" is another Ada.
Result<std::string> freeName(Connection& connection, const std::string& name) {
  std::string wanted = name;
  for (int number = 2;; ++number) {
    const auto taken =
        connection.row(QStringLiteral("SELECT 1 FROM main.players WHERE name = ?"), {bound(std::string_view(wanted))});
    if (!taken) return tl::make_unexpected(taken.error());
    if (!*taken) return wanted;
    wanted = name + " (" + std::to_string(number) + ")";
  }
}

Result<void> addNewPlayers(Connection& connection, MergeReport& report) {
  const auto fresh = connection.rows(
      QStringLiteral("SELECT id, name FROM other.players WHERE id NOT IN (SELECT o FROM map_players) AND id NOT IN "
                     "(SELECT o FROM gone) ORDER BY id"));
  if (!fresh) return tl::make_unexpected(fresh.error());
  const auto columns = columnsOf(connection, QStringLiteral("players"), {"id", "name"});
  if (!columns) return tl::make_unexpected(columns.error());
  for (const Row& row : *fresh) {
    const std::string name = textOf(row[1]);
    const auto free = freeName(connection, name);
    if (!free) return tl::make_unexpected(free.error());
    const auto id = connection.insert(
        QStringLiteral("INSERT INTO main.players(name, %1) SELECT ?, %1 FROM other.players WHERE id = ?").arg(*columns),
        {bound(std::string_view(*free)), row[0]});
    if (!id) return tl::make_unexpected(id.error());
    auto mapped = connection.run(QStringLiteral("INSERT INTO map_players VALUES(?, ?)"), {row[0], bound(*id)});
    if (!mapped) return mapped;
    if (*free != name) report.renamed.emplace_back(name, *free);
    ++report.players;
  }
  return {};
}

Result<void> addErased(Connection& connection, MergeReport& report) {
  const auto here = countOf(connection, QStringLiteral("SELECT count(*) FROM gone"));
  if (!here) return tl::make_unexpected(here.error());
  report.erasedHere = *here;
  const auto there = connection.rows(QStringLiteral(
      "SELECT name FROM main.players WHERE uid IN (SELECT uid FROM other.erased_players) ORDER BY name"));
  if (!there) return tl::make_unexpected(there.error());
  for (const Row& row : *there)
    report.erasedThere.push_back(textOf(row[0]));
  return connection.run(
      QStringLiteral("INSERT OR IGNORE INTO main.erased_players SELECT uid, erased_ms FROM other.erased_players WHERE "
                     "uid NOT IN (SELECT uid FROM main.players) AND uid NOT IN (SELECT uid FROM main.joined_players)"));
}

}  // namespace

Result<void> runAll(Connection& connection, std::initializer_list<QString> statements) {
  for (const QString& statement : statements) {
    if (auto done = connection.run(statement); !done) return done;
  }
  return {};
}

QString namedHere(const QString& value) {
  return QStringLiteral(
             "CASE WHEN c.field = 'player' THEN coalesce((SELECT k.name FROM other.players o JOIN map_players p ON p.o "
             "= "
             "o.id JOIN main.players k ON k.id = p.m WHERE o.name = %1), %1) ELSE %1 END")
      .arg(value);
}

Result<QString> columnsOf(Connection& connection, const QString& table, const QStringList& skip,
                          const QString& prefix) {
  const auto rows = connection.rows(QStringLiteral("SELECT name FROM pragma_table_info('%1')").arg(table));
  if (!rows) return tl::make_unexpected(rows.error());
  QStringList columns;
  for (const Row& row : *rows) {
    const QString name = row[0].toString();
    if (!skip.contains(name)) columns << prefix + name;
  }
  return columns.join(QStringLiteral(", "));
}

Result<int> countOf(Connection& connection, const QString& select) {
  const auto row = connection.row(select);
  if (!row) return tl::make_unexpected(row.error());
  return *row ? (**row)[0].toInt() : 0;
}

Result<void> mergePeople(Connection& connection, MergeReport& report) {
  auto done = runAll(
      connection,
      {mapTable("players"), QStringLiteral("CREATE TEMP TABLE gone(o INTEGER PRIMARY KEY)"), knownBy("players", "uid"),
       // Two who turned out to be one, here or there.
       QStringLiteral("INSERT OR IGNORE INTO map_players SELECT o.id, j.player_id FROM other.players o JOIN "
                      "main.joined_players j ON j.uid = o.uid"),
       QStringLiteral(
           "INSERT OR IGNORE INTO map_players SELECT j.player_id, min(m.id) FROM other.joined_players j JOIN "
           "main.players m ON m.uid = j.uid GROUP BY j.player_id"),
       QStringLiteral(
           "INSERT INTO gone SELECT id FROM other.players WHERE id NOT IN (SELECT o FROM map_players) AND (uid "
           "IN (SELECT uid FROM main.erased_players) OR id IN (SELECT player_id FROM other.joined_players "
           "WHERE uid IN (SELECT uid FROM main.erased_players)))")});
  if (done) done = addNewPlayers(connection, report);
  if (done) done = addErased(connection, report);
  if (!done) return done;
  const auto consents = columnsOf(connection, QStringLiteral("consents"), {"id", "player_id"});
  if (!consents) return tl::make_unexpected(consents.error());
  return runAll(
      connection,
      {QStringLiteral("INSERT OR IGNORE INTO main.joined_players SELECT j.uid, p.m FROM other.joined_players j JOIN "
                      "map_players p ON p.o = j.player_id WHERE j.uid NOT IN (SELECT uid FROM main.players)"),
       QStringLiteral("INSERT OR IGNORE INTO main.player_groups SELECT p.m, g.name FROM other.player_groups g JOIN "
                      "map_players p ON p.o = g.player_id"),
       QStringLiteral("INSERT OR IGNORE INTO main.consents(player_id, %1) SELECT p.m, %1 FROM other.consents c JOIN "
                      "map_players p ON p.o = c.player_id ORDER BY c.id")
           .arg(*consents),
       QStringLiteral(
           "INSERT OR IGNORE INTO main.tags SELECT 'player', p.m, t.tag FROM other.tags t JOIN map_players p ON "
           "p.o = t.entity_id WHERE t.entity = 'player'"),
       QStringLiteral(
           "INSERT INTO main.notes(entity, entity_id, note, who, when_ms) SELECT 'player', p.m, n.note, n.who, "
           "n.when_ms FROM other.notes n JOIN map_players p ON p.o = n.entity_id WHERE n.entity = 'player' AND "
           "NOT EXISTS(SELECT 1 FROM main.notes k WHERE k.entity = 'player' AND k.entity_id = p.m AND k.note = "
           "n.note AND k.who = n.who AND k.when_ms = n.when_ms) ORDER BY n.id")});
}

Result<void> mergeThings(Connection& connection) {
  auto done =
      runAll(connection,
             {mapTable("tables"), mapTable("lenses"), mapTable("rigs"), mapTable("films"), knownBy("tables", "uid"),
              QStringLiteral(
                  "INSERT OR IGNORE INTO map_tables SELECT o.id, m.id FROM other.tables o JOIN main.tables m ON m.name "
                  "= o.name AND m.measured = o.measured"),
              knownBy("lenses", "sha256"), knownBy("rigs", "sha256"), knownBy("films", "sha256")});
  for (const char* name : {"tables", "lenses", "rigs", "films"}) {
    if (!done) return done;
    const QString table = QLatin1String(name);
    const bool points = table == QLatin1String("rigs");
    const QStringList skip = points ? QStringList{"id", "lens_id"} : QStringList{"id"};
    const auto columns = columnsOf(connection, table, skip);
    const auto values = columnsOf(connection, table, skip, QStringLiteral("o."));
    if (!columns) return tl::make_unexpected(columns.error());
    if (!values) return tl::make_unexpected(values.error());
    done = insertMapped(connection, table, points ? *columns + ", lens_id" : *columns,
                        points ? *values + ", (SELECT l.m FROM map_lenses l WHERE l.o = o.lens_id)" : *values,
                        QStringLiteral("other.%1 o WHERE o.id NOT IN (SELECT o FROM map_%1)").arg(table));
  }
  return done;
}

Result<void> mergeFrames(Connection& connection, MergeReport& report) {
  // A session that only people have played who were erased here stays away.
  auto done = runAll(
      connection,
      {mapTable("sessions"), mapTable("frames"), knownBy("sessions", "uid"), knownBy("frames", "uid"),
       QStringLiteral(
           "CREATE TEMP TABLE gone_sessions AS SELECT s.id AS o FROM other.sessions s WHERE EXISTS(SELECT 1 FROM "
           "(SELECT "
           "player_id FROM other.session_players WHERE session_id = s.id UNION SELECT h.player_id FROM other.shots h "
           "JOIN "
           "other.frames f ON f.id = h.frame_id WHERE f.session_id = s.id) WHERE player_id IN (SELECT o FROM gone)) "
           "AND NOT "
           "EXISTS(SELECT 1 FROM (SELECT player_id FROM other.session_players WHERE session_id = s.id UNION SELECT "
           "h.player_id FROM other.shots h JOIN other.frames f ON f.id = h.frame_id WHERE f.session_id = s.id) WHERE "
           "player_id IS NOT NULL AND player_id NOT IN (SELECT o FROM gone))")});
  if (!done) return done;
  const auto sessions = columnsOf(connection, QStringLiteral("sessions"), {"id", "table_id"});
  const auto sessionValues =
      columnsOf(connection, QStringLiteral("sessions"), {"id", "table_id"}, QStringLiteral("o."));
  if (!sessions) return tl::make_unexpected(sessions.error());
  if (!sessionValues) return tl::make_unexpected(sessionValues.error());
  done = insertMapped(connection, QStringLiteral("sessions"), *sessions + ", table_id",
                      *sessionValues + ", (SELECT t.m FROM map_tables t WHERE t.o = o.table_id)",
                      QStringLiteral("other.sessions o WHERE o.id NOT IN (SELECT o FROM map_sessions) AND o.id NOT IN "
                                     "(SELECT o FROM gone_sessions)"));
  if (!done) return done;
  const auto frames =
      columnsOf(connection, QStringLiteral("frames"), {"id", "session_id", "number", "film_id", "rig_id"});
  const auto frameValues = columnsOf(connection, QStringLiteral("frames"),
                                     {"id", "session_id", "number", "film_id", "rig_id"}, QStringLiteral("o."));
  if (!frames) return tl::make_unexpected(frames.error());
  if (!frameValues) return tl::make_unexpected(frameValues.error());
  // In a session that went on in both records the other's frames come after ours.
  done = insertMapped(
      connection, QStringLiteral("frames"), *frames + ", session_id, number, film_id, rig_id",
      *frameValues +
          ", (SELECT s.m FROM map_sessions s WHERE s.o = o.session_id), CASE WHEN EXISTS(SELECT 1 FROM main.frames k "
          "JOIN "
          "map_sessions s ON s.m = k.session_id WHERE s.o = o.session_id AND k.id NOT IN (SELECT m FROM new_frames) "
          "AND "
          "k.number >= o.number) THEN o.number + (SELECT max(k.number) FROM main.frames k JOIN map_sessions s ON s.m = "
          "k.session_id WHERE s.o = o.session_id AND k.id NOT IN (SELECT m FROM new_frames)) ELSE o.number END, "
          "(SELECT f.m FROM map_films f WHERE f.o = o.film_id), (SELECT r.m FROM map_rigs r WHERE r.o = o.rig_id)",
      QStringLiteral("other.frames o WHERE o.id NOT IN (SELECT o FROM map_frames) AND o.session_id IN (SELECT o FROM "
                     "map_sessions)"));
  if (!done) return done;
  const auto newSessions = countOf(connection, QStringLiteral("SELECT count(*) FROM new_sessions"));
  const auto newFrames = countOf(connection, QStringLiteral("SELECT count(*) FROM new_frames"));
  if (!newSessions) return tl::make_unexpected(newSessions.error());
  if (!newFrames) return tl::make_unexpected(newFrames.error());
  report.sessions = *newSessions;
  report.frames = *newFrames;
  const auto fingerprints = columnsOf(connection, QStringLiteral("fingerprints"), {"session_id", "table_id"});
  if (!fingerprints) return tl::make_unexpected(fingerprints.error());
  return runAll(
      connection,
      {QStringLiteral(
           "INSERT OR IGNORE INTO main.session_players(session_id, seat, player_id) SELECT s.m, p.seat, k.m FROM "
           "other.session_players p JOIN map_sessions s ON s.o = p.session_id JOIN map_players k ON k.o = "
           "p.player_id"),
       QStringLiteral(
           "INSERT OR IGNORE INTO main.fingerprints(session_id, table_id, %1) SELECT s.m, t.m, %1 FROM "
           "other.fingerprints f JOIN map_sessions s ON s.o = f.session_id JOIN map_tables t ON t.o = f.table_id")
           .arg(*fingerprints),
       QStringLiteral(
           "UPDATE main.frames SET complete = 1 WHERE id IN (SELECT f.m FROM map_frames f JOIN other.frames o ON "
           "o.id = f.o WHERE o.complete = 1)")});
}

Result<void> mergeDrills(Connection& connection, MergeReport& report) {
  const auto drills = columnsOf(connection, QStringLiteral("drills"), {"id"});
  if (!drills) return tl::make_unexpected(drills.error());
  auto done =
      runAll(connection, {mapTable("drill_runs"), mapTable("trials"), knownBy("drill_runs", "uid"),
                          QStringLiteral("INSERT OR IGNORE INTO main.drills(%1) SELECT %1 FROM other.drills ORDER "
                                         "BY id")
                              .arg(*drills)});
  if (!done) return done;
  const QStringList skip{"id", "table_id", "player_id", "session_id"};
  const auto runs = columnsOf(connection, QStringLiteral("drill_runs"), skip);
  const auto runValues = columnsOf(connection, QStringLiteral("drill_runs"), skip, QStringLiteral("o."));
  if (!runs) return tl::make_unexpected(runs.error());
  if (!runValues) return tl::make_unexpected(runValues.error());
  done = insertMapped(
      connection, QStringLiteral("drill_runs"), *runs + ", table_id, player_id, session_id",
      *runValues +
          ", (SELECT t.m FROM map_tables t WHERE t.o = o.table_id), (SELECT p.m FROM map_players p WHERE "
          "p.o = o.player_id), (SELECT s.m FROM map_sessions s WHERE s.o = o.session_id)",
      QStringLiteral("other.drill_runs o WHERE o.id NOT IN (SELECT o FROM map_drill_runs) AND (o.player_id "
                     "IS NULL OR o.player_id IN (SELECT o FROM map_players)) AND (o.session_id IS NULL OR "
                     "o.session_id IN (SELECT o FROM map_sessions))"));
  if (!done) return done;
  const auto newRuns = countOf(connection, QStringLiteral("SELECT count(*) FROM new_drill_runs"));
  if (!newRuns) return tl::make_unexpected(newRuns.error());
  report.drillRuns = *newRuns;
  const auto trials = columnsOf(connection, QStringLiteral("trials"), {"id", "run_id", "shot_id"});
  const auto trialValues =
      columnsOf(connection, QStringLiteral("trials"), {"id", "run_id", "shot_id"}, QStringLiteral("o."));
  if (!trials) return tl::make_unexpected(trials.error());
  if (!trialValues) return tl::make_unexpected(trialValues.error());
  // Also of a run that was gone on with there.
  done = insertMapped(
      connection, QStringLiteral("trials"), *trials + ", run_id, shot_id",
      *trialValues +
          ", (SELECT r.m FROM map_drill_runs r WHERE r.o = o.run_id), (SELECT h.m FROM map_shots h WHERE h.o = "
          "o.shot_id)",
      QStringLiteral(
          "other.trials o JOIN map_drill_runs r ON r.o = o.run_id WHERE NOT EXISTS(SELECT 1 FROM main.trials k "
          "WHERE k.run_id = r.m AND k.number = o.number)"));
  if (!done) return done;
  return connection.run(
      QStringLiteral("INSERT INTO main.trial_goals(trial_id, number, met, figure) SELECT t.m, g.number, "
                     "g.met, g.figure FROM other.trial_goals g JOIN new_trials t ON t.o = g.trial_id"));
}

}  // namespace ferrule
