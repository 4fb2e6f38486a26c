// SPDX-License-Identifier: GPL-3.0-or-later
// A person's own drills, and the runs of all drills with their tries.
#include <QUuid>
#include <map>

#include "core/base/word_list.h"
#include "core/record/drill_rows.h"
#include "core/record/record_impl.h"
#include "core/table/measured_table.h"

namespace ferrule {

namespace {

constexpr WordList<3> kSourceWords{"hand", "film", "live"};

constexpr const char* kRunColumns =
    "SELECT r.id, r.drill_key, r.drill, r.mirrored, t.name, t.measured, r.player_id, p.name, r.session_id, "
    "r.started_ms, r.ended_ms, r.source FROM drill_runs r JOIN tables t ON t.id = r.table_id "
    "LEFT JOIN players p ON p.id = r.player_id ";

template <class Tag>
QVariant boundId(const std::optional<Id<Tag>>& id) {
  return id ? bound(id->value) : QVariant();
}

template <class Tag>
std::optional<Id<Tag>> idIn(const QVariant& value) {
  const auto number = optionalIntegerOf(value);
  return number ? std::optional(Id<Tag>{*number}) : std::nullopt;
}

/// The tries of all runs that a condition lets pass, put to their runs; one question each for tries and goals, however
/// many there are.
Result<void> addTrials(Connection& connection, const QString& condition, const std::vector<QVariant>& values,
                       std::map<std::int64_t, DrillRunEntry*>& runs) {
  const auto rows = connection.rows(
      QStringLiteral("SELECT t.run_id, t.id, t.station, t.leave_x_m, t.leave_y_m, t.miss_side, t.set_up_error_m, "
                     "t.shot_id FROM drill_runs r JOIN trials t ON t.run_id = r.id ") +
          condition + QStringLiteral("ORDER BY t.run_id, t.number"),
      values);
  if (!rows) return tl::make_unexpected(rows.error());
  const auto goals = connection.rows(
      QStringLiteral("SELECT t.run_id, t.id, g.met, g.figure FROM drill_runs r JOIN trials t ON t.run_id = r.id "
                     "JOIN trial_goals g ON g.trial_id = t.id ") +
          condition + QStringLiteral("ORDER BY t.run_id, t.number, g.number"),
      values);
  if (!goals) return tl::make_unexpected(goals.error());
  auto goal = goals->begin();
  for (const Row& row : *rows) {
    const auto run = runs.find(row[0].toLongLong());
    // Another program may have written between the questions.
    if (run == runs.end()) continue;
    TrialEntry trial;
    trial.station = row[2].toInt();
    if (!row[3].isNull()) trial.leave = TablePoint{row[3].toDouble(), row[4].toDouble()};
    if (!row[5].isNull()) trial.missSide = missSideFromText(textOf(row[5]));
    trial.setUpError_m = optionalRealOf(row[6]);
    trial.shot = idIn<ShotTag>(row[7]);
    for (; goal != goals->end() && (*goal)[1].toLongLong() == row[1].toLongLong(); ++goal) {
      const auto met = optionalIntegerOf((*goal)[2]);
      trial.goals.push_back({met ? std::optional(*met != 0) : std::nullopt, optionalRealOf((*goal)[3])});
    }
    run->second->trials.push_back(std::move(trial));
  }
  return {};
}

/// condition: on r, with a blank after it; empty for all.
Result<std::vector<DrillRunEntry>> runsWhere(RecordInside::Impl& inside, const QString& condition,
                                             const std::vector<QVariant>& values) {
  Connection& connection = inside.connection;
  const auto rows =
      connection.rows(QLatin1String(kRunColumns) + condition + QStringLiteral("ORDER BY r.started_ms, r.id"), values);
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<DrillRunEntry> runs;
  runs.reserve(rows->size());
  for (const Row& row : *rows) {
    auto table = parseMeasuredTable(textOf(row[5]), connection.path());
    const auto source = runSourceFromText(textOf(row[11]));
    if (!table || !source) return inside.senseless("drill_runs");
    DrillRunEntry entry;
    entry.id = DrillRunId{row[0].toLongLong()};
    entry.run = {textOf(row[1]),           textOf(row[2]),      textOf(row[3]),
                 textOf(row[4]),           std::move(*table),   idIn<PlayerTag>(row[6]),
                 idIn<SessionTag>(row[8]), row[9].toLongLong(), *source};
    entry.playerName = textOf(row[7]);
    entry.ended = optionalIntegerOf(row[10]);
    runs.push_back(std::move(entry));
  }
  std::map<std::int64_t, DrillRunEntry*> byId;
  for (DrillRunEntry& run : runs)
    byId[run.id.value] = &run;
  if (auto done = addTrials(connection, condition, values, byId); !done) return tl::make_unexpected(done.error());
  return runs;
}

}  // namespace

std::string_view toText(RunSource source) {
  return wordOf(kSourceWords, source);
}

std::optional<RunSource> runSourceFromText(std::string_view text) {
  return valueOf<RunSource>(kSourceWords, text);
}

Result<std::vector<DrillEntry>> Record::drills() {
  const auto rows = impl_->connection.rows(QStringLiteral("SELECT drill_key, content FROM drills ORDER BY id"));
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<DrillEntry> drills;
  for (const Row& row : *rows)
    drills.push_back({textOf(row[0]), textOf(row[1])});
  return drills;
}

Result<void> Record::keepDrill(const DrillEntry& drill, UtcMilliseconds when) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    return connection.run(
        QStringLiteral("INSERT INTO drills(drill_key, content, changed_ms) VALUES(?, ?, ?) ON CONFLICT(drill_key) DO "
                       "UPDATE SET content = excluded.content, changed_ms = excluded.changed_ms"),
        {bound(std::string_view(drill.key)), bound(std::string_view(drill.content)), bound(when)});
  });
}

Result<void> Record::removeDrill(const std::string& key) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    auto done =
        connection.run(QStringLiteral("DELETE FROM drills WHERE drill_key = ?"), {bound(std::string_view(key))});
    if (done && connection.changedRows() == 0) return failure(ErrorCode::NotFound, key, connection.path());
    return done;
  });
}

Result<DrillRunId> Record::addDrillRun(const NewDrillRun& run) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<DrillRunId> {
    const auto table = tableRow(connection, run.tableName, run.table);
    if (!table) return tl::make_unexpected(table.error());
    const std::string uid = QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    const auto id = connection.insert(
        QStringLiteral("INSERT INTO drill_runs(uid, drill_key, drill, mirrored, table_id, player_id, session_id, "
                       "started_ms, source) VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?)"),
        {bound(std::string_view(uid)), bound(std::string_view(run.drillKey)), bound(std::string_view(run.drill)),
         bound(std::string_view(run.mirrored)), bound(*table), boundId(run.player), boundId(run.session),
         bound(run.started), bound(toText(run.source))});
    if (!id) return tl::make_unexpected(id.error());
    return DrillRunId{*id};
  });
}

Result<void> Record::appendTrial(DrillRunId run, const TrialEntry& trial) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    const auto known = connection.row(QStringLiteral("SELECT 1 FROM drill_runs WHERE id = ?"), {bound(run.value)});
    if (!known) return tl::make_unexpected(known.error());
    if (!*known) return impl_->notFound("run", run.value);
    const auto id = connection.insert(
        QStringLiteral(
            "INSERT INTO trials(run_id, number, station, leave_x_m, leave_y_m, miss_side, set_up_error_m, "
            "shot_id) SELECT ?, coalesce(max(number), 0) + 1, ?, ?, ?, ?, ?, ? FROM trials WHERE run_id = ?"),
        {bound(run.value), bound(trial.station), trial.leave ? bound(trial.leave->x) : QVariant(),
         trial.leave ? bound(trial.leave->y) : QVariant(), trial.missSide ? bound(toText(*trial.missSide)) : QVariant(),
         bound(trial.setUpError_m), boundId(trial.shot), bound(run.value)});
    if (!id) return tl::make_unexpected(id.error());
    int number = 0;
    for (const TrialGoalEntry& goal : trial.goals) {
      auto done =
          connection.run(QStringLiteral("INSERT INTO trial_goals(trial_id, number, met, figure) VALUES(?, ?, ?, ?)"),
                         {bound(*id), bound(++number), bound(goal.met), bound(goal.figure)});
      if (!done) return done;
    }
    return {};
  });
}

Result<void> Record::removeLastTrial(DrillRunId run) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    auto done = connection.run(
        QStringLiteral("DELETE FROM trials WHERE run_id = ? AND number = (SELECT max(number) FROM trials WHERE run_id "
                       "= ?)"),
        {bound(run.value), bound(run.value)});
    if (done && connection.changedRows() == 0) return impl_->notFound("trial of run", run.value);
    return done;
  });
}

Result<void> Record::endDrillRun(DrillRunId run, UtcMilliseconds when) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    auto done = connection.run(QStringLiteral("UPDATE drill_runs SET ended_ms = ? WHERE id = ?"),
                               {bound(when), bound(run.value)});
    if (done && connection.changedRows() == 0) return impl_->notFound("run", run.value);
    return done;
  });
}

Result<void> Record::removeDrillRun(DrillRunId run) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    auto done = connection.run(QStringLiteral("DELETE FROM drill_runs WHERE id = ?"), {bound(run.value)});
    if (done && connection.changedRows() == 0) return impl_->notFound("run", run.value);
    return done;
  });
}

Result<std::vector<DrillRunEntry>> Record::drillRuns(const std::optional<std::string>& key) {
  if (!key) return runsWhere(*impl_, {}, {});
  return runsWhere(*impl_, QStringLiteral("WHERE r.drill_key = ? "), {bound(std::string_view(*key))});
}

Result<std::vector<DrillRunEntry>> Record::drillRunsOf(PlayerId player) {
  return runsWhere(*impl_, QStringLiteral("WHERE r.player_id = ? "), {bound(player.value)});
}

}  // namespace ferrule
