// SPDX-License-Identifier: GPL-3.0-or-later
// What was found out from shots that are in the record: about their table, and about each of them.
#include "core/record/record_impl.h"
#include "core/record/schema.h"

namespace ferrule {

namespace {

constexpr const char* kFingerprintColumns =
    "fingerprints.session_id, fingerprints.fitted_ms, fingerprints.shots, "
    "fingerprints.content";

FingerprintEntry fingerprintFrom(const Row& row) {
  return {SessionId{row[0].toLongLong()}, row[1].toLongLong(), row[2].toInt(), textOf(row[3])};
}

}  // namespace

Result<std::optional<SuggestionEntry>> suggestionOf(Connection& connection, ShotId shot) {
  const auto row = connection.row(
      QStringLiteral("SELECT planner, shown, choice_loss, delivery_loss, content FROM suggestions WHERE shot_id = ?"),
      {bound(shot.value)});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return std::optional<SuggestionEntry>();
  const Row& columns = **row;
  return std::optional(SuggestionEntry{textOf(columns[0]), columns[1].toBool(), optionalRealOf(columns[2]),
                                       optionalRealOf(columns[3]), textOf(columns[4])});
}

Result<std::optional<std::string>> explanationOf(Connection& connection, ShotId shot) {
  const auto row =
      connection.row(QStringLiteral("SELECT content FROM explanations WHERE shot_id = ?"), {bound(shot.value)});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return std::optional<std::string>();
  return std::optional(textOf((**row)[0]));
}

Result<std::optional<FingerprintEntry>> Record::fingerprintOf(SessionId session) {
  const auto row =
      impl_->connection.row(QStringLiteral("SELECT %1 FROM fingerprints WHERE session_id = ?").arg(kFingerprintColumns),
                            {bound(session.value)});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return std::optional<FingerprintEntry>();
  return std::optional(fingerprintFrom(**row));
}

Result<std::vector<FingerprintEntry>> Record::fingerprintsOfTable(SessionId session) {
  const auto rows = impl_->connection.rows(
      QStringLiteral("SELECT %1 FROM fingerprints JOIN sessions ON sessions.id = fingerprints.session_id "
                     "WHERE fingerprints.table_id = (SELECT table_id FROM sessions WHERE id = ?) "
                     "ORDER BY sessions.started_ms, sessions.id")
          .arg(kFingerprintColumns),
      {bound(session.value)});
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<FingerprintEntry> fingerprints;
  for (const Row& row : *rows)
    fingerprints.push_back(fingerprintFrom(row));
  return fingerprints;
}

Result<void> Record::keepFingerprint(const FingerprintEntry& fingerprint) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    auto done = connection.run(
        QStringLiteral("INSERT OR REPLACE INTO fingerprints(session_id, table_id, fitted_ms, shots, content) "
                       "SELECT id, table_id, ?, ?, ? FROM sessions WHERE id = ?"),
        {bound(fingerprint.fitted), bound(fingerprint.shots), bound(std::string_view(fingerprint.content)),
         bound(fingerprint.session.value)});
    if (done && connection.changedRows() == 0) return impl_->notFound("session", fingerprint.session.value);
    return done;
  });
}

Result<void> Record::keepSuggestion(ShotId shot, const SuggestionEntry& suggestion) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    auto done = connection.run(
        QStringLiteral("INSERT OR REPLACE INTO suggestions(shot_id, planner, shown, choice_loss, delivery_loss, "
                       "content) SELECT id, ?, ?, ?, ?, ? FROM shots WHERE id = ?"),
        {bound(std::string_view(suggestion.planner)), bound(suggestion.shown), bound(suggestion.choiceLoss),
         bound(suggestion.deliveryLoss), bound(std::string_view(suggestion.content)), bound(shot.value)});
    if (done && connection.changedRows() == 0) return impl_->notFound("shot", shot.value);
    if (!done) return done;
    return connection.run(QLatin1String(suggestionFigures()) + QStringLiteral(" AND shot_id = ?"), {bound(shot.value)});
  });
}

Result<void> insertSuggestion(Connection& connection, std::int64_t shot, const SuggestionEntry& suggestion) {
  return connection.run(
      QStringLiteral("INSERT INTO suggestions(shot_id, planner, shown, choice_loss, delivery_loss, content) "
                     "VALUES(?, ?, ?, ?, ?, ?)"),
      {bound(shot), bound(std::string_view(suggestion.planner)), bound(suggestion.shown), bound(suggestion.choiceLoss),
       bound(suggestion.deliveryLoss), bound(std::string_view(suggestion.content))});
}

Result<void> Record::keepExplanation(ShotId shot, const std::string& content) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    auto done = connection.run(
        QStringLiteral("INSERT OR REPLACE INTO explanations(shot_id, content) SELECT id, ? FROM shots WHERE id = ?"),
        {bound(std::string_view(content)), bound(shot.value)});
    if (done && connection.changedRows() == 0) return impl_->notFound("shot", shot.value);
    return done;
  });
}

}  // namespace ferrule
