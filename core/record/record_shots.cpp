// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/record_impl.h"
#include "core/record/track_blob.h"
#include "core/table/shot_explanation.h"

namespace ferrule {

namespace {

/// Reads a shot row column by column and remembers whether every word was known.
class ShotColumns {
 public:
  explicit ShotColumns(const Row& row) : row_(row) {}

  const QVariant& next() { return row_[column_++]; }

  /// A word that must be there.
  template <class Value, class FromText>
  Value word(FromText&& fromText) {
    const auto value = fromText(textOf(next()));
    if (!value) sound_ = false;
    return value.value_or(Value{});
  }
  /// A word that may be absent.
  template <class Value, class FromText>
  std::optional<Value> optionalWord(FromText&& fromText) {
    const QVariant& value = next();
    if (value.isNull()) return std::nullopt;
    const auto known = fromText(textOf(value));
    if (!known) sound_ = false;
    return known;
  }
  std::optional<Measured> measured() {
    const auto value = optionalRealOf(next());
    const auto uncertainty = optionalRealOf(next());
    if (!value || !uncertainty) return std::nullopt;
    return Measured{*value, *uncertainty};
  }
  [[nodiscard]] bool sound() const { return sound_; }

 private:
  const Row& row_;
  std::size_t column_ = 0;
  bool sound_ = true;
};

Result<std::vector<PocketedBall>> pocketedIn(Connection& connection, std::int64_t shot) {
  const auto rows = connection.rows(
      QStringLiteral("SELECT ball, pocket FROM pocketed WHERE shot_id = ? ORDER BY number"), {bound(shot)});
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<PocketedBall> pocketed;
  for (const Row& row : *rows) {
    const auto ball = ballFromText(textOf(row[0]));
    const auto pocket = pocketFromText(textOf(row[1]));
    if (!ball || !pocket) return failure(ErrorCode::RecordBroken, connection.path(), "pocketed");
    pocketed.push_back({*ball, *pocket});
  }
  return pocketed;
}

Result<void> readPositions(Connection& connection, std::int64_t shot, ShotReading& reading) {
  const auto rows = connection.rows(
      QStringLiteral("SELECT ball, before_x_m, before_y_m, after_x_m, after_y_m FROM positions WHERE shot_id = ? "
                     "ORDER BY CASE ball WHEN 'cue' THEN 0 ELSE CAST(ball AS INTEGER) END"),
      {bound(shot)});
  if (!rows) return tl::make_unexpected(rows.error());
  for (const Row& row : *rows) {
    const auto ball = ballFromText(textOf(row[0]));
    if (!ball) return failure(ErrorCode::RecordBroken, connection.path(), "positions.ball");
    if (!row[1].isNull()) reading.before.push_back({*ball, {row[1].toDouble(), row[2].toDouble()}});
    if (!row[3].isNull()) reading.after.push_back({*ball, {row[3].toDouble(), row[4].toDouble()}});
  }
  return {};
}

Result<void> readEvents(Connection& connection, std::int64_t shot, ShotReading& reading) {
  const auto rows = connection.rows(
      QStringLiteral("SELECT time_s, kind, ball, other, cushion, pocket, x_m, y_m FROM events WHERE shot_id = ? "
                     "ORDER BY number"),
      {bound(shot)});
  if (!rows) return tl::make_unexpected(rows.error());
  for (const Row& row : *rows) {
    ShotColumns columns(row);
    ShotEvent event;
    event.time_s = columns.next().toDouble();
    event.kind = columns.word<EventKind>(eventKindFromText);
    event.ball = columns.word<BallName>(ballFromText);
    event.other = columns.optionalWord<BallName>(ballFromText);
    event.cushion = columns.optionalWord<CushionName>(cushionFromText);
    event.pocket = columns.optionalWord<PocketName>(pocketFromText);
    event.position.x = columns.next().toDouble();
    event.position.y = columns.next().toDouble();
    if (!columns.sound()) return failure(ErrorCode::RecordBroken, connection.path(), "events");
    reading.events.push_back(event);
  }
  return {};
}

Result<std::vector<Note>> notesOf(Connection& connection, ShotId shot) {
  const auto rows = connection.rows(
      QStringLiteral("SELECT id, note, who, when_ms FROM notes WHERE entity = 'shot' AND entity_id = ? ORDER BY id"),
      {bound(shot.value)});
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<Note> notes;
  for (const Row& row : *rows) {
    notes.push_back({NoteId{row[0].toLongLong()}, textOf(row[1]), textOf(row[2]), row[3].toLongLong()});
  }
  return notes;
}

Result<std::vector<std::string>> tagsOf(Connection& connection, ShotId shot) {
  const auto rows = connection.rows(
      QStringLiteral("SELECT tag FROM tags WHERE entity = 'shot' AND entity_id = ? ORDER BY tag"), {bound(shot.value)});
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<std::string> tags;
  for (const Row& row : *rows)
    tags.push_back(textOf(row[0]));
  return tags;
}

Result<std::optional<RulingEntry>> rulingOf(Connection& connection, ShotId shot) {
  const auto row = connection.row(QStringLiteral("SELECT sureness, fouls, content FROM rulings WHERE shot_id = ?"),
                                  {bound(shot.value)});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return std::optional<RulingEntry>();
  RulingEntry ruling;
  const auto sureness = verdictFromText(textOf((**row)[0]));
  if (!sureness) return failure(ErrorCode::RecordBroken, connection.path(), "rulings.sureness");
  ruling.sureness = *sureness;
  for (const QString& foul : (**row)[1].toString().split(' ', Qt::SkipEmptyParts))
    ruling.fouls.push_back(foul.toStdString());
  ruling.content = textOf((**row)[2]);
  return std::optional(std::move(ruling));
}

}  // namespace

Result<std::vector<Track>> tracksOf(Connection& connection, std::int64_t shot) {
  const auto rows =
      connection.rows(QStringLiteral("SELECT ball, packed FROM tracks WHERE shot_id = ? "
                                     "ORDER BY CASE ball WHEN 'cue' THEN 0 ELSE CAST(ball AS INTEGER) END"),
                      {bound(shot)});
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<Track> tracks;
  for (const Row& row : *rows) {
    const auto ball = ballFromText(textOf(row[0]));
    auto track = ball ? unpackTrack(*ball, row[1].toByteArray()) : std::nullopt;
    if (!track) return failure(ErrorCode::RecordBroken, connection.path(), "tracks.packed");
    tracks.push_back(std::move(*track));
  }
  return tracks;
}

Result<std::vector<ShotRow>> shotRows(Connection& connection, const QString& condition,
                                      const std::vector<QVariant>& values) {
  const auto rows = connection.rows(
      QStringLiteral(
          "SELECT shots.id, shots.frame_id, frames.session_id, shots.number, shots.player_id, players.name, "
          "shots.strike_s, shots.rest_s, shots.strike_ms, shots.outcome, shots.verdict, shots.first_contact, "
          "shots.scratch, shots.target_ball, shots.target_pocket, shots.target_cut_rad, shots.target_line_error_rad, "
          "shots.target_miss_side, d.aim_rad, d.aim_u_rad, d.speed_mps, d.speed_u_mps, d.side, d.side_u, d.height, "
          "d.height_u, d.elevation_rad, d.elevation_u_rad, "
          "EXISTS(SELECT 1 FROM corrections WHERE entity = 'shot' AND entity_id = shots.id AND cause_id IS NULL) "
          "FROM shots JOIN frames ON frames.id = shots.frame_id "
          "LEFT JOIN players ON players.id = shots.player_id "
          "LEFT JOIN deliveries d ON d.shot_id = shots.id WHERE %1 "
          "ORDER BY frames.session_id, frames.number, shots.number")
          .arg(condition),
      values);
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<ShotRow> shots;
  for (const Row& row : *rows) {
    ShotColumns columns(row);
    ShotRow shot;
    ShotSummary& summary = shot.summary;
    summary.id = ShotId{columns.next().toLongLong()};
    summary.frame = FrameId{columns.next().toLongLong()};
    shot.session = SessionId{columns.next().toLongLong()};
    summary.number = columns.next().toInt();
    if (const auto player = optionalIntegerOf(columns.next())) summary.player = PlayerId{*player};
    summary.playerName = textOf(columns.next());
    summary.strike_s = columns.next().toDouble();
    summary.rest_s = columns.next().toDouble();
    summary.struckAt = optionalIntegerOf(columns.next());
    summary.outcome = columns.word<Outcome>(outcomeFromText);
    summary.verdict = columns.word<Verdict>(verdictFromText);
    summary.firstContact = columns.optionalWord<BallName>(ballFromText);
    summary.scratch = columns.next().toBool();
    const auto targetBall = columns.optionalWord<BallName>(ballFromText);
    const auto targetPocket = columns.optionalWord<PocketName>(pocketFromText);
    const auto cut = optionalRealOf(columns.next());
    const auto lineError = optionalRealOf(columns.next());
    const auto missSide = columns.optionalWord<MissSide>(missSideFromText);
    if (targetBall && targetPocket) summary.target = Target{*targetBall, *targetPocket, cut, lineError, missSide};
    summary.delivery.aim_rad = columns.measured();
    summary.delivery.speed_mps = columns.measured();
    summary.delivery.side = columns.measured();
    summary.delivery.height = columns.measured();
    summary.delivery.elevation_rad = columns.measured();
    summary.corrected = columns.next().toBool();
    if (!columns.sound()) return failure(ErrorCode::RecordBroken, connection.path(), "shots");
    auto pocketed = pocketedIn(connection, summary.id.value);
    if (!pocketed) return tl::make_unexpected(pocketed.error());
    summary.pocketed = std::move(*pocketed);
    shots.push_back(std::move(shot));
  }
  return shots;
}

namespace {

Result<std::vector<ShotSummary>> summariesOf(Connection& connection, FrameId frame, const QString& which) {
  auto rows = shotRows(connection, QStringLiteral("shots.frame_id = ? AND ") + which, {bound(frame.value)});
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<ShotSummary> shots;
  for (ShotRow& row : *rows)
    shots.push_back(std::move(row.summary));
  return shots;
}

}  // namespace

Result<std::vector<ShotSummary>> Record::shots(FrameId frame) {
  return summariesOf(impl_->connection, frame, QStringLiteral("shots.number > 0"));
}

Result<std::vector<ShotSummary>> Record::shotsPutAside(FrameId frame) {
  return summariesOf(impl_->connection, frame, QStringLiteral("shots.number < 0"));
}

Result<ShotReading> readingOf(Connection& connection, const ShotSummary& summary) {
  ShotReading reading;
  reading.number = summary.number;
  reading.strike_s = summary.strike_s;
  reading.rest_s = summary.rest_s;
  reading.delivery = summary.delivery;
  reading.firstContact = summary.firstContact;
  reading.pocketed = summary.pocketed;
  reading.scratch = summary.scratch;
  reading.target = summary.target;
  reading.outcome = summary.outcome;
  reading.outcomeVerdict = summary.verdict;
  const std::int64_t shot = summary.id.value;
  if (auto done = readPositions(connection, shot, reading); !done) return tl::make_unexpected(done.error());
  if (auto done = readEvents(connection, shot, reading); !done) return tl::make_unexpected(done.error());
  const auto explanation = explanationOf(connection, summary.id);
  if (!explanation) return tl::make_unexpected(explanation.error());
  if (*explanation && !explain(reading, **explanation)) {
    return failure(ErrorCode::RecordBroken, connection.path(), "explanations");
  }
  return reading;
}

Result<StoredShot> Record::shot(ShotId id) {
  Connection& connection = impl_->connection;
  auto rows = shotRows(connection, QStringLiteral("shots.id = ?"), {bound(id.value)});
  if (!rows) return tl::make_unexpected(rows.error());
  if (rows->empty()) return impl_->notFound("shot", id.value);
  const ShotSummary& summary = rows->front().summary;
  StoredShot shot;
  shot.id = id;
  shot.frame = summary.frame;
  shot.session = rows->front().session;
  shot.player = summary.player;
  shot.playerName = summary.playerName;
  auto reading = readingOf(connection, summary);
  if (!reading) return tl::make_unexpected(reading.error());
  shot.reading = std::move(*reading);
  auto tracks = tracksOf(connection, id.value);
  if (!tracks) return tl::make_unexpected(tracks.error());
  shot.tracks = std::move(*tracks);
  const auto film =
      connection.row(QStringLiteral("SELECT %1 FROM frames JOIN films ON films.id = frames.film_id WHERE frames.id = ?")
                         .arg(kFilmColumns),
                     {bound(summary.frame.value)});
  if (!film) return tl::make_unexpected(film.error());
  if (*film) shot.film = filmOf(**film, 0);
  auto corrections = correctionsOf(connection, id);
  if (!corrections) return tl::make_unexpected(corrections.error());
  shot.corrections = std::move(*corrections);
  auto notes = notesOf(connection, id);
  if (!notes) return tl::make_unexpected(notes.error());
  shot.notes = std::move(*notes);
  auto tags = tagsOf(connection, id);
  if (!tags) return tl::make_unexpected(tags.error());
  shot.tags = std::move(*tags);
  auto ruling = rulingOf(connection, id);
  if (!ruling) return tl::make_unexpected(ruling.error());
  shot.ruling = std::move(*ruling);
  auto suggestion = suggestionOf(connection, id);
  if (!suggestion) return tl::make_unexpected(suggestion.error());
  shot.suggestion = std::move(*suggestion);
  auto explanation = explanationOf(connection, id);
  if (!explanation) return tl::make_unexpected(explanation.error());
  shot.explanation = std::move(*explanation);
  return shot;
}

}  // namespace ferrule
