// SPDX-License-Identifier: GPL-3.0-or-later
// The ledger of consents in the record.
#include "core/record/consent.h"

#include <algorithm>

#include "core/record/record_people.h"

namespace ferrule {

namespace {

Result<bool> hasPlayer(Connection& connection, PlayerId player) {
  const auto row = connection.row(QStringLiteral("SELECT 1 FROM players WHERE id = ?"), {bound(player.value)});
  if (!row) return tl::make_unexpected(row.error());
  return row->has_value();
}

}  // namespace

ConsentEntry strikeOf(ConsentEntry entry, const std::string& who, UtcMilliseconds when) {
  entry.struckUid = entry.uid;
  entry.uid = freshUid();
  entry.event = ConsentEvent::Struck;
  entry.notedBy = who;
  entry.noted = std::max(when, entry.noted);
  return entry;
}

Result<void> insertConsent(Connection& connection, const ConsentEntry& entry) {
  return connection.run(
      QStringLiteral("INSERT INTO consents(uid, player_id, event, scope, struck_uid, from_ms, until_ms, by_whom, "
                     "guardian, noted_by, noted_ms) VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
      {bound(std::string_view(entry.uid)), bound(entry.player.value), bound(toText(entry.event)),
       bound(toText(entry.scope)),
       entry.event == ConsentEvent::Struck ? bound(std::string_view(entry.struckUid)) : QVariant(), bound(entry.from),
       bound(entry.until), bound(std::string_view(entry.by)), bound(entry.byGuardian),
       bound(std::string_view(entry.notedBy)), bound(entry.noted)});
}

Result<std::vector<ConsentEntry>> consentRows(Connection& connection, const QString& condition,
                                              const std::vector<QVariant>& values) {
  const auto rows = connection.rows(
      QStringLiteral("SELECT uid, player_id, event, scope, struck_uid, from_ms, until_ms, by_whom, guardian, "
                     "noted_by, noted_ms FROM consents %1 ORDER BY noted_ms, id")
          .arg(condition),
      values);
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<ConsentEntry> entries;
  for (const Row& row : *rows) {
    const auto event = consentEventFromText(textOf(row[2]));
    const auto scope = consentScopeFromText(textOf(row[3]));
    if (!event || !scope) return failure(ErrorCode::RecordBroken, connection.path(), "consents");
    entries.push_back({textOf(row[0]), PlayerId{row[1].toLongLong()}, *event, *scope, textOf(row[4]),
                       row[5].toLongLong(), optionalIntegerOf(row[6]), textOf(row[7]), row[8].toBool(), textOf(row[9]),
                       row[10].toLongLong()});
  }
  return entries;
}

Result<std::vector<ConsentEntry>> consents(Record& record, PlayerId player) {
  return consentRows(RecordInside::of(record).connection, QStringLiteral("WHERE player_id = ?"), {bound(player.value)});
}

Result<std::string> addConsent(Record& record, const ConsentEntry& entry) {
  if (entry.until && *entry.until <= entry.from) {
    return failure(ErrorCode::FieldInvalid, record.path(), "until");
  }
  RecordInside::Impl& inside = RecordInside::of(record);
  return inside.connection.transaction([&]() -> Result<std::string> {
    const auto known = hasPlayer(inside.connection, entry.player);
    if (!known) return tl::make_unexpected(known.error());
    if (!*known) return inside.notFound("player", entry.player.value);
    ConsentEntry line = entry;
    line.uid = freshUid();
    if (auto done = insertConsent(inside.connection, line); !done) return tl::make_unexpected(done.error());
    return line.uid;
  });
}

Result<std::string> strikeConsent(Record& record, const std::string& uid, const std::string& who,
                                  UtcMilliseconds when) {
  RecordInside::Impl& inside = RecordInside::of(record);
  return inside.connection.transaction([&]() -> Result<std::string> {
    const auto known = consentRows(inside.connection, QStringLiteral("WHERE uid = ?"), {bound(std::string_view(uid))});
    if (!known) return tl::make_unexpected(known.error());
    if (known->empty()) return failure(ErrorCode::NotFound, "consent " + uid, record.path());
    const ConsentEntry line = strikeOf(known->front(), who, when);
    if (auto done = insertConsent(inside.connection, line); !done) return tl::make_unexpected(done.error());
    return line.uid;
  });
}

Result<ConsentState> consentOf(Record& record, PlayerId player, ConsentScope scope, UtcMilliseconds at) {
  RecordInside::Impl& inside = RecordInside::of(record);
  const auto known =
      inside.connection.row(QStringLiteral("SELECT minor FROM players WHERE id = ?"), {bound(player.value)});
  if (!known) return tl::make_unexpected(known.error());
  if (!*known) return inside.notFound("player", player.value);
  const auto ledger = consents(record, player);
  if (!ledger) return tl::make_unexpected(ledger.error());
  return consentState(*ledger, (**known)[0].toBool(), scope, at);
}

Result<std::vector<FilmObstacle>> filmObstacles(Record& record, std::span<const PlayerId> players, UtcMilliseconds at) {
  const auto all = record.players();
  if (!all) return tl::make_unexpected(all.error());
  std::vector<FilmObstacle> obstacles;
  for (const PlayerId id : players) {
    const auto player = std::ranges::find(*all, id, &Player::id);
    if (player == all->end()) return RecordInside::of(record).notFound("player", id.value);
    const auto state = consentOf(record, id, filmScopeOf(*player), at);
    if (!state) return tl::make_unexpected(state.error());
    if (!state->holds()) obstacles.push_back({*player, *state});
  }
  return obstacles;
}

}  // namespace ferrule
