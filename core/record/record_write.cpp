// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCryptographicHash>
#include <QUuid>
#include <map>

#include "core/base/contract.h"
#include "core/camera/lens_file.h"
#include "core/camera/rig_file.h"
#include "core/geometry/units.h"
#include "core/record/chain_text.h"
#include "core/record/record_impl.h"
#include "core/record/track_blob.h"
#include "core/table/measured_table.h"
#include "core/table/shot_explanation.h"

namespace ferrule {

std::string sha256Of(const std::string& content) {
  return QCryptographicHash::hash(QByteArray::fromStdString(content), QCryptographicHash::Sha256).toHex().toStdString();
}

namespace {

Result<std::optional<std::int64_t>> idOf(Connection& connection, const QString& sql,
                                         const std::vector<QVariant>& values) {
  const auto row = connection.row(sql, values);
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return std::optional<std::int64_t>();
  return optionalIntegerOf((**row)[0]);
}

Result<std::int64_t> lensId(Connection& connection, const Lens& lens) {
  const std::string text = lensText(lens);
  const std::string hash = sha256Of(text);
  const auto known =
      idOf(connection, QStringLiteral("SELECT id FROM lenses WHERE sha256 = ?"), {bound(std::string_view(hash))});
  if (!known) return tl::make_unexpected(known.error());
  if (*known) return **known;
  return connection.insert(
      QStringLiteral("INSERT INTO lenses(sha256, camera, content) VALUES(?, ?, ?)"),
      {bound(std::string_view(hash)), bound(std::string_view(lens.camera)), bound(std::string_view(text))});
}

Result<std::int64_t> rigId(Connection& connection, const Rig& rig) {
  const std::string text = rigText(rig);
  const std::string hash = sha256Of(text);
  const auto known =
      idOf(connection, QStringLiteral("SELECT id FROM rigs WHERE sha256 = ?"), {bound(std::string_view(hash))});
  if (!known) return tl::make_unexpected(known.error());
  if (*known) return **known;
  const auto lens = lensId(connection, rig.lens);
  if (!lens) return lens;
  return connection.insert(
      QStringLiteral("INSERT INTO rigs(sha256, lens_id, content, chain, pose_rms_px, tag_rms_mm, verdict) "
                     "VALUES(?, ?, ?, ?, ?, ?, ?)"),
      {bound(std::string_view(hash)), bound(*lens), bound(std::string_view(text)),
       bound(std::string_view(chainText(rig.chain))), bound(rig.poseRms_px), bound(millimetresFromMetres(rig.tagRms_m)),
       bound(std::string_view(rig.verdict))});
}

template <class Value>
QVariant boundText(const std::optional<Value>& value) {
  return value ? bound(std::string_view(toText(*value))) : QVariant();
}

/// A value with its uncertainty, or the reason why there is none.
void putMeasured(std::vector<QVariant>& values, const std::optional<Measured>& measured) {
  values.push_back(measured ? bound(measured->value) : QVariant());
  values.push_back(measured ? bound(measured->standardUncertainty) : QVariant());
  values.push_back(measured ? QVariant() : bound(std::string_view("not observable")));
}

Result<void> insertDelivery(Connection& connection, std::int64_t shot, const Delivery& delivery) {
  std::vector<QVariant> values{bound(shot)};
  putMeasured(values, delivery.aim_rad);
  putMeasured(values, delivery.speed_mps);
  putMeasured(values, delivery.side);
  putMeasured(values, delivery.height);
  putMeasured(values, delivery.elevation_rad);
  return connection.run(
      QStringLiteral("INSERT INTO deliveries(shot_id, aim_rad, aim_u_rad, aim_reason, speed_mps, speed_u_mps, "
                     "speed_reason, side, side_u, side_reason, height, height_u, height_reason, elevation_rad, "
                     "elevation_u_rad, elevation_reason) VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
      values);
}

Result<void> insertPositions(Connection& connection, std::int64_t shot, const ShotReading& reading) {
  struct BeforeAndAfter {
    std::optional<TablePoint> before;
    std::optional<TablePoint> after;
  };
  std::map<BallName, BeforeAndAfter> balls;
  for (const BallAt& ball : reading.before)
    balls[ball.ball].before = ball.position;
  for (const BallAt& ball : reading.after)
    balls[ball.ball].after = ball.position;
  const auto x = [](const std::optional<TablePoint>& point) { return point ? bound(point->x) : QVariant(); };
  const auto y = [](const std::optional<TablePoint>& point) { return point ? bound(point->y) : QVariant(); };
  for (const auto& [ball, places] : balls) {
    auto done = connection.run(
        QStringLiteral("INSERT INTO positions(shot_id, ball, before_x_m, before_y_m, after_x_m, after_y_m) "
                       "VALUES(?, ?, ?, ?, ?, ?)"),
        {bound(shot), bound(std::string_view(toText(ball))), x(places.before), y(places.before), x(places.after),
         y(places.after)});
    if (!done) return done;
  }
  return {};
}

Result<void> insertEvents(Connection& connection, std::int64_t shot, const ShotReading& reading) {
  int number = 0;
  for (const ShotEvent& event : reading.events) {
    auto done = connection.run(
        QStringLiteral("INSERT INTO events(shot_id, number, time_s, kind, ball, other, cushion, pocket, x_m, y_m) "
                       "VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
        {bound(shot), bound(++number), bound(event.time_s), bound(toText(event.kind)),
         bound(std::string_view(toText(event.ball))), boundText(event.other), boundText(event.cushion),
         boundText(event.pocket), bound(event.position.x), bound(event.position.y)});
    if (!done) return done;
  }
  number = 0;
  for (const PocketedBall& ball : reading.pocketed) {
    auto done = connection.run(
        QStringLiteral("INSERT INTO pocketed(shot_id, number, ball, pocket) VALUES(?, ?, ?, ?)"),
        {bound(shot), bound(++number), bound(std::string_view(toText(ball.ball))), bound(toText(ball.pocket))});
    if (!done) return done;
  }
  return {};
}

Result<void> insertTracks(Connection& connection, std::int64_t shot, std::span<const Track> tracks) {
  for (const Track& track : tracks) {
    auto done = connection.run(QStringLiteral("INSERT INTO tracks(shot_id, ball, packed) VALUES(?, ?, ?)"),
                               {bound(shot), bound(std::string_view(toText(track.ball))), packTrack(track)});
    if (!done) return done;
  }
  return {};
}

}  // namespace

Result<std::int64_t> tableRow(Connection& connection, const std::string& name, const MeasuredTable& table) {
  const std::string text = measuredTableText(table);
  const auto known = idOf(connection, QStringLiteral("SELECT id FROM tables WHERE name = ? AND measured = ?"),
                          {bound(std::string_view(name)), bound(std::string_view(text))});
  if (!known) return tl::make_unexpected(known.error());
  if (*known) return **known;
  return connection.insert(
      QStringLiteral("INSERT INTO tables(uid, name, measured) VALUES(?, ?, ?)"),
      {bound(std::string_view(freshUid())), bound(std::string_view(name)), bound(std::string_view(text))});
}

std::string freshUid() {
  return QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
}

Result<void> insertRuling(Connection& connection, std::int64_t shot, const RulingEntry& ruling) {
  std::string fouls;
  for (const std::string& foul : ruling.fouls)
    fouls += (fouls.empty() ? "" : " ") + foul;
  return connection.run(QStringLiteral("INSERT INTO rulings(shot_id, sureness, fouls, content) VALUES(?, ?, ?, ?)"),
                        {bound(shot), bound(toText(ruling.sureness)), bound(std::string_view(fouls)),
                         bound(std::string_view(ruling.content))});
}

Result<void> insertExplanation(Connection& connection, std::int64_t shot, const std::string& content) {
  return connection.run(QStringLiteral("INSERT INTO explanations(shot_id, content) VALUES(?, ?)"),
                        {bound(shot), bound(std::string_view(content))});
}

Result<void> replaceReading(Connection& connection, std::int64_t shot, const ShotReading& reading) {
  const auto before = connection.row(QStringLiteral("SELECT strike_s FROM shots WHERE id = ?"), {bound(shot)});
  if (!before) return tl::make_unexpected(before.error());
  if (!*before) return failure(ErrorCode::NotFound, "shot " + std::to_string(shot), connection.path());
  // Both rounded, so that a change that is taken back gives the same moment again.
  const std::int64_t later_ms =
      std::llround(reading.strike_s * 1000.0) - std::llround((**before)[0].toDouble() * 1000.0);
  const std::optional<Target>& target = reading.target;
  auto done = connection.run(
      QStringLiteral("UPDATE shots SET strike_s = ?, rest_s = ?, strike_ms = strike_ms + ?, outcome = ?, verdict = ?, "
                     "first_contact = ?, scratch = ?, target_ball = ?, target_pocket = ?, target_cut_rad = ?, "
                     "target_line_error_rad = ?, target_miss_side = ? WHERE id = ?"),
      {bound(reading.strike_s), bound(reading.rest_s), bound(later_ms), bound(toText(reading.outcome)),
       bound(toText(reading.outcomeVerdict)), boundText(reading.firstContact), bound(reading.scratch),
       target ? bound(std::string_view(toText(target->ball))) : QVariant(),
       target ? bound(toText(target->pocket)) : QVariant(), target ? bound(target->cut_rad) : QVariant(),
       target ? bound(target->lineError_rad) : QVariant(), target ? boundText(target->missSide) : QVariant(),
       bound(shot)});
  if (!done) return done;
  const auto explained = explanationOf(connection, ShotId{shot});
  if (!explained) return tl::make_unexpected(explained.error());
  for (const char* table : {"positions", "events", "pocketed", "deliveries", "explanations"}) {
    done = connection.run(QStringLiteral("DELETE FROM %1 WHERE shot_id = ?").arg(QLatin1String(table)), {bound(shot)});
    if (!done) return done;
  }
  if (done = insertPositions(connection, shot, reading); !done) return done;
  if (done = insertDelivery(connection, shot, reading.delivery); !done) return done;
  if (done = insertEvents(connection, shot, reading); !done) return done;
  const auto explanation = explanationAnew(reading, *explained);
  if (!explanation) return {};
  return insertExplanation(connection, shot, *explanation);
}

Result<void> replaceTracks(Connection& connection, std::int64_t shot, std::span<const Track> tracks) {
  auto done = connection.run(QStringLiteral("DELETE FROM tracks WHERE shot_id = ?"), {bound(shot)});
  if (!done) return done;
  return insertTracks(connection, shot, tracks);
}

Result<PlayerId> Record::addPlayer(const Player& player) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<PlayerId> {
    const auto known = idOf(connection, QStringLiteral("SELECT id FROM players WHERE name = ?"),
                            {bound(std::string_view(player.name))});
    if (!known) return tl::make_unexpected(known.error());
    if (*known) return failure(ErrorCode::AlreadyRecorded, player.name);
    const auto id = connection.insert(
        QStringLiteral("INSERT INTO players(uid, name, handedness, minor, guest) VALUES(?, ?, ?, ?, ?)"),
        {bound(std::string_view(freshUid())), bound(std::string_view(player.name)), bound(toText(player.handedness)),
         bound(player.minor), bound(player.guest)});
    if (!id) return tl::make_unexpected(id.error());
    return PlayerId{*id};
  });
}

Result<bool> updatePlayerRow(Connection& connection, const Player& player) {
  // Corrections name the player too, and are withdrawn by that name.
  for (const char* side : {"measured", "corrected"}) {
    auto renamed =
        connection.run(QStringLiteral("UPDATE corrections SET %1 = ? WHERE entity = 'shot' AND field = 'player' AND "
                                      "%1 = (SELECT name FROM players WHERE id = ?)")
                           .arg(QLatin1String(side)),
                       {bound(std::string_view(player.name)), bound(player.id.value)});
    if (!renamed) return tl::make_unexpected(renamed.error());
  }
  auto done =
      connection.run(QStringLiteral("UPDATE players SET name = ?, handedness = ?, minor = ?, guest = ? WHERE id = ?"),
                     {bound(std::string_view(player.name)), bound(toText(player.handedness)), bound(player.minor),
                      bound(player.guest), bound(player.id.value)});
  if (!done) return tl::make_unexpected(done.error());
  return connection.changedRows() > 0;
}

Result<void> Record::updatePlayer(const Player& player) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    const auto known = idOf(connection, QStringLiteral("SELECT id FROM players WHERE name = ? AND id <> ?"),
                            {bound(std::string_view(player.name)), bound(player.id.value)});
    if (!known) return tl::make_unexpected(known.error());
    if (*known) return failure(ErrorCode::AlreadyRecorded, player.name);
    const auto updated = updatePlayerRow(connection, player);
    if (!updated) return tl::make_unexpected(updated.error());
    if (!*updated) return impl_->notFound("player", player.id.value);
    return {};
  });
}

Result<SessionId> Record::addSession(const NewSession& session) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<SessionId> {
    const auto table = tableRow(connection, session.tableName, session.table);
    if (!table) return tl::make_unexpected(table.error());
    const auto id = connection.insert(QStringLiteral("INSERT INTO sessions(uid, name, started_ms, kind, table_id) "
                                                     "VALUES(?, ?, ?, ?, ?)"),
                                      {bound(std::string_view(freshUid())), bound(std::string_view(session.name)),
                                       bound(session.started), bound(toText(session.kind)), bound(*table)});
    if (!id) return tl::make_unexpected(id.error());
    int seat = 0;
    for (const PlayerId player : session.players) {
      const auto known = idOf(connection, QStringLiteral("SELECT id FROM players WHERE id = ?"), {bound(player.value)});
      if (!known) return tl::make_unexpected(known.error());
      if (!*known) return impl_->notFound("player", player.value);
      auto done =
          connection.run(QStringLiteral("INSERT INTO session_players(session_id, seat, player_id) VALUES(?, ?, ?)"),
                         {bound(*id), bound(++seat), bound(player.value)});
      if (!done) return tl::make_unexpected(done.error());
    }
    return SessionId{*id};
  });
}

Result<FilmId> Record::addFilm(const FilmEntry& film) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<FilmId> {
    const auto known = idOf(connection, QStringLiteral("SELECT id FROM films WHERE sha256 = ?"),
                            {bound(std::string_view(film.sha256))});
    if (!known) return tl::make_unexpected(known.error());
    if (*known) {
      auto done = connection.run(
          QStringLiteral("UPDATE films SET path = ?, images = max(images, ?), duration_s = max(duration_s, ?), "
                         "first_image_ms = coalesce(first_image_ms, ?) WHERE id = ?"),
          {bound(std::string_view(film.path)), bound(static_cast<std::int64_t>(film.images)), bound(film.duration_s),
           bound(film.firstImage), bound(**known)});
      if (!done) return tl::make_unexpected(done.error());
      return FilmId{**known};
    }
    const auto id = connection.insert(
        QStringLiteral("INSERT INTO films(sha256, path, width_px, height_px, images, duration_s, first_image_ms) "
                       "VALUES(?, ?, ?, ?, ?, ?, ?)"),
        {bound(std::string_view(film.sha256)), bound(std::string_view(film.path)), bound(film.size.width),
         bound(film.size.height), bound(static_cast<std::int64_t>(film.images)), bound(film.duration_s),
         bound(film.firstImage)});
    if (!id) return tl::make_unexpected(id.error());
    return FilmId{*id};
  });
}

Result<FrameId> Record::addFrame(const NewFrame& frame) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<FrameId> {
    const auto session =
        idOf(connection, QStringLiteral("SELECT id FROM sessions WHERE id = ?"), {bound(frame.session.value)});
    if (!session) return tl::make_unexpected(session.error());
    if (!*session) return impl_->notFound("session", frame.session.value);
    if (frame.film) {
      const auto film =
          idOf(connection, QStringLiteral("SELECT id FROM films WHERE id = ?"), {bound(frame.film->value)});
      if (!film) return tl::make_unexpected(film.error());
      if (!*film) return impl_->notFound("film", frame.film->value);
    }
    std::optional<std::int64_t> rig;
    if (frame.rig) {
      const auto id = rigId(connection, *frame.rig);
      if (!id) return tl::make_unexpected(id.error());
      rig = *id;
    }
    const auto id = connection.insert(
        QStringLiteral("INSERT INTO frames(uid, session_id, number, game, film_id, rig_id, complete) "
                       "SELECT ?, ?, coalesce(max(number), 0) + 1, ?, ?, ?, 0 FROM frames WHERE session_id = ?"),
        {bound(std::string_view(freshUid())), bound(frame.session.value), bound(std::string_view(frame.game)),
         frame.film ? bound(frame.film->value) : QVariant(), bound(rig), bound(frame.session.value)});
    if (!id) return tl::make_unexpected(id.error());
    return FrameId{*id};
  });
}

Result<ShotId> Record::appendShot(FrameId frame, const ShotReading& reading, std::span<const Track> tracks,
                                  std::optional<PlayerId> player, const std::optional<RulingEntry>& ruling) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<ShotId> {
    const auto film = connection.row(
        QStringLiteral("SELECT films.first_image_ms, EXISTS(SELECT 1 FROM shots WHERE frame_id = frames.id "
                       "AND number = ?) FROM frames LEFT JOIN films ON films.id = frames.film_id WHERE frames.id = ?"),
        {bound(reading.number), bound(frame.value)});
    if (!film) return tl::make_unexpected(film.error());
    if (!*film) return impl_->notFound("frame", frame.value);
    if ((**film)[1].toInt() != 0) {
      return failure(ErrorCode::AlreadyRecorded, "shot " + std::to_string(reading.number));
    }
    std::optional<UtcMilliseconds> struckAt = optionalIntegerOf((**film)[0]);
    if (struckAt) *struckAt += std::llround(reading.strike_s * 1000.0);
    const std::optional<Target>& target = reading.target;
    const auto id = connection.insert(
        QStringLiteral("INSERT INTO shots(frame_id, number, player_id, strike_s, rest_s, strike_ms, outcome, verdict, "
                       "first_contact, scratch, target_ball, target_pocket, target_cut_rad, target_line_error_rad, "
                       "target_miss_side) VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
        {bound(frame.value), bound(reading.number), player ? bound(player->value) : QVariant(), bound(reading.strike_s),
         bound(reading.rest_s), bound(struckAt), bound(toText(reading.outcome)), bound(toText(reading.outcomeVerdict)),
         boundText(reading.firstContact), bound(reading.scratch),
         target ? bound(std::string_view(toText(target->ball))) : QVariant(),
         target ? bound(toText(target->pocket)) : QVariant(), target ? bound(target->cut_rad) : QVariant(),
         target ? bound(target->lineError_rad) : QVariant(), target ? boundText(target->missSide) : QVariant()});
    if (!id) return tl::make_unexpected(id.error());
    if (auto done = insertPositions(connection, *id, reading); !done) return tl::make_unexpected(done.error());
    if (auto done = insertDelivery(connection, *id, reading.delivery); !done) return tl::make_unexpected(done.error());
    if (auto done = insertEvents(connection, *id, reading); !done) return tl::make_unexpected(done.error());
    if (auto done = insertTracks(connection, *id, tracks); !done) return tl::make_unexpected(done.error());
    if (const auto explanation = explanationText(reading)) {
      if (auto done = insertExplanation(connection, *id, *explanation); !done) return tl::make_unexpected(done.error());
    }
    if (ruling) {
      if (auto done = insertRuling(connection, *id, *ruling); !done) return tl::make_unexpected(done.error());
    }
    return ShotId{*id};
  });
}

Result<void> Record::addPlacement(FrameId frame, const Placement& placement) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    const auto known = idOf(connection, QStringLiteral("SELECT id FROM frames WHERE id = ?"), {bound(frame.value)});
    if (!known) return tl::make_unexpected(known.error());
    if (!*known) return impl_->notFound("frame", frame.value);
    return connection.run(
        QStringLiteral("INSERT INTO placements(frame_id, ball, time_s, x_m, y_m) VALUES(?, ?, ?, ?, ?)"),
        {bound(frame.value), bound(std::string_view(toText(placement.ball))), bound(placement.time_s),
         bound(placement.position.x), bound(placement.position.y)});
  });
}

Result<void> Record::completeFrame(FrameId frame) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    auto done = connection.run(QStringLiteral("UPDATE frames SET complete = 1 WHERE id = ?"), {bound(frame.value)});
    if (done && connection.changedRows() == 0) return impl_->notFound("frame", frame.value);
    return done;
  });
}

}  // namespace ferrule
