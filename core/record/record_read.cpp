// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/rig_file.h"
#include "core/record/record_impl.h"
#include "core/table/measured_table.h"

namespace ferrule {

namespace {

Player playerOf(const Row& row) {
  Player player;
  player.id = PlayerId{row[0].toLongLong()};
  player.name = textOf(row[1]);
  player.handedness = handednessFromText(textOf(row[2])).value_or(Handedness::Unknown);
  player.minor = row[3].toBool();
  player.guest = row[4].toBool();
  return player;
}

constexpr const char* kPlayerColumns = "id, name, handedness, minor, guest";

/// Sessions selected by a condition, in an order.
Result<std::vector<SessionSummary>> sessionRows(Connection& connection, const QString& condition,
                                                const std::vector<QVariant>& values) {
  const auto rows = connection.rows(
      QStringLiteral("SELECT sessions.id, sessions.name, sessions.started_ms, sessions.kind, tables.name, "
                     "(SELECT count(*) FROM frames WHERE session_id = sessions.id), "
                     "(SELECT count(*) FROM frames JOIN shots ON shots.frame_id = frames.id "
                     " WHERE frames.session_id = sessions.id AND shots.number > 0) "
                     "FROM sessions JOIN tables ON tables.id = sessions.table_id ") +
          condition,
      values);
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<SessionSummary> sessions;
  for (const Row& row : *rows) {
    SessionSummary session;
    session.id = SessionId{row[0].toLongLong()};
    session.name = textOf(row[1]);
    session.started = row[2].toLongLong();
    session.kind = sessionKindFromText(textOf(row[3])).value_or(SessionKind::Unknown);
    session.tableName = textOf(row[4]);
    session.frames = row[5].toInt();
    session.shots = row[6].toInt();
    const auto players = connection.rows(
        QStringLiteral("SELECT players.name, seat FROM session_players JOIN players ON players.id = player_id "
                       "WHERE session_id = ? ORDER BY seat"),
        {row[0]});
    if (!players) return tl::make_unexpected(players.error());
    for (const Row& player : *players) {
      // A seat whose player was erased stays, so that the others keep theirs.
      const auto seat = static_cast<std::size_t>(player[1].toInt());
      if (seat > session.players.size() + 1) session.players.resize(seat - 1);
      session.players.push_back(textOf(player[0]));
    }
    sessions.push_back(std::move(session));
  }
  return sessions;
}

}  // namespace

FilmEntry filmOf(const Row& row, std::size_t first) {
  FilmEntry film;
  film.id = FilmId{row[first].toLongLong()};
  film.path = textOf(row[first + 1]);
  film.sha256 = textOf(row[first + 2]);
  film.size = {row[first + 3].toInt(), row[first + 4].toInt()};
  film.images = static_cast<long>(row[first + 5].toLongLong());
  film.duration_s = row[first + 6].toDouble();
  film.firstImage = optionalIntegerOf(row[first + 7]);
  return film;
}

Result<std::vector<Player>> Record::players() {
  const auto rows = impl_->connection.rows(QStringLiteral("SELECT %1 FROM players ORDER BY name").arg(kPlayerColumns));
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<Player> players;
  for (const Row& row : *rows)
    players.push_back(playerOf(row));
  return players;
}

Result<std::optional<Player>> Record::playerNamed(const std::string& name) {
  const auto row = impl_->connection.row(QStringLiteral("SELECT %1 FROM players WHERE name = ?").arg(kPlayerColumns),
                                         {bound(std::string_view(name))});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return std::optional<Player>();
  return std::optional<Player>(playerOf(**row));
}

Result<std::vector<SessionSummary>> Record::sessions() {
  return sessionRows(impl_->connection, QStringLiteral("ORDER BY sessions.started_ms DESC, sessions.id DESC"), {});
}

Result<std::vector<SessionSummary>> Record::sessionsOfFilm(FilmId film) {
  return sessionRows(impl_->connection,
                     QStringLiteral("WHERE EXISTS(SELECT 1 FROM frames WHERE session_id = sessions.id AND film_id = ?) "
                                    "ORDER BY sessions.id"),
                     {bound(film.value)});
}

Result<std::vector<FrameSummary>> Record::frames(SessionId session) {
  const auto rows = impl_->connection.rows(
      QStringLiteral("SELECT frames.id, frames.number, frames.game, frames.complete, "
                     "(SELECT count(*) FROM shots WHERE frame_id = frames.id AND number > 0), %1 "
                     "FROM frames LEFT JOIN films ON films.id = frames.film_id WHERE session_id = ? "
                     "ORDER BY frames.number")
          .arg(kFilmColumns),
      {bound(session.value)});
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<FrameSummary> frames;
  for (const Row& row : *rows) {
    FrameSummary frame;
    frame.id = FrameId{row[0].toLongLong()};
    frame.session = session;
    frame.number = row[1].toInt();
    frame.game = textOf(row[2]);
    frame.complete = row[3].toBool();
    frame.shots = row[4].toInt();
    if (!row[5].isNull()) frame.film = filmOf(row, 5);
    frames.push_back(std::move(frame));
  }
  return frames;
}

Result<std::vector<Placement>> Record::placements(FrameId frame) {
  const auto rows = impl_->connection.rows(
      QStringLiteral("SELECT ball, time_s, x_m, y_m FROM placements WHERE frame_id = ? ORDER BY time_s, id"),
      {bound(frame.value)});
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<Placement> placements;
  for (const Row& row : *rows) {
    const auto ball = ballFromText(textOf(row[0]));
    if (!ball) return impl_->senseless("placements.ball");
    placements.push_back({*ball, row[1].toDouble(), {row[2].toDouble(), row[3].toDouble()}});
  }
  return placements;
}

Result<MeasuredTable> Record::tableOf(SessionId session) {
  const auto row = impl_->connection.row(
      QStringLiteral("SELECT tables.measured FROM sessions JOIN tables ON tables.id = sessions.table_id "
                     "WHERE sessions.id = ?"),
      {bound(session.value)});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return impl_->notFound("session", session.value);
  return parseMeasuredTable(textOf((**row)[0]), path());
}

Result<std::optional<Rig>> Record::rigOf(FrameId frame) {
  const auto row = impl_->connection.row(
      QStringLiteral("SELECT rigs.content FROM frames LEFT JOIN rigs ON rigs.id = frames.rig_id WHERE frames.id = ?"),
      {bound(frame.value)});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return impl_->notFound("frame", frame.value);
  const auto text = optionalTextOf((**row)[0]);
  if (!text) return std::optional<Rig>();
  auto rig = parseRig(*text, path());
  if (!rig) return tl::make_unexpected(rig.error());
  return std::optional<Rig>(std::move(*rig));
}

Result<std::optional<FilmEntry>> Record::filmWithHash(const std::string& sha256) {
  const auto row = impl_->connection.row(QStringLiteral("SELECT %1 FROM films WHERE sha256 = ?").arg(kFilmColumns),
                                         {bound(std::string_view(sha256))});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return std::optional<FilmEntry>();
  return std::optional<FilmEntry>(filmOf(**row, 0));
}

Result<std::string> Record::uidOf(SessionId session) {
  const auto row =
      impl_->connection.row(QStringLiteral("SELECT uid FROM sessions WHERE id = ?"), {bound(session.value)});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return impl_->notFound("session", session.value);
  return textOf((**row)[0]);
}

Result<std::string> Record::uidOf(PlayerId player) {
  const auto row = impl_->connection.row(QStringLiteral("SELECT uid FROM players WHERE id = ?"), {bound(player.value)});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return impl_->notFound("player", player.value);
  return textOf((**row)[0]);
}

}  // namespace ferrule
