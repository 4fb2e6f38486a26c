// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/shot_boundaries.h"

#include <algorithm>

namespace ferrule {

namespace {

/// Two placements whose times and places differ by less are the same.
constexpr double kSame = 1e-9;
/// More shots than a frame ever has: numbers are moved there and back, since two may not be equal in between.
constexpr int kAway = 1'000'000;

struct NumberedShot {
  FrameId frame;
  int number = 0;
  std::optional<std::int64_t> player;
};

Result<NumberedShot> numbered(Connection& connection, std::int64_t shot) {
  const auto row =
      connection.row(QStringLiteral("SELECT frame_id, number, player_id FROM shots WHERE id = ?"), {bound(shot)});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return failure(ErrorCode::NotFound, "shot " + std::to_string(shot), connection.path());
  return NumberedShot{FrameId{(**row)[0].toLongLong()}, (**row)[1].toInt(), optionalIntegerOf((**row)[2])};
}

/// Gives every shot behind a number another one, by one on or back.
Result<void> moveNumbers(Connection& connection, FrameId frame, int behind, int by) {
  auto done = connection.run(QStringLiteral("UPDATE shots SET number = number + ? WHERE frame_id = ? AND number > ?"),
                             {bound(kAway), bound(frame.value), bound(behind)});
  if (!done) return done;
  return connection.run(QStringLiteral("UPDATE shots SET number = number - ? WHERE frame_id = ? AND number > ?"),
                        {bound(kAway - by), bound(frame.value), bound(kAway)});
}

Result<void> setNumber(Connection& connection, std::int64_t shot, std::int64_t number) {
  return connection.run(QStringLiteral("UPDATE shots SET number = ? WHERE id = ?"), {bound(number), bound(shot)});
}

double lastTime_s(const std::vector<Track>& tracks) {
  double last_s = 0.0;
  for (const Track& track : tracks) {
    if (!track.samples.empty()) last_s = std::max(last_s, track.samples.back().time_s);
  }
  return last_s;
}

/// The first moment of the film that is not in these tracks any more, on the record's grid of times.
double behind_s(const std::vector<Track>& tracks) {
  constexpr double kGrid_s = 1e-6;
  return lastTime_s(tracks) + kGrid_s / 2.0;
}

}  // namespace

Result<ShotId> Record::splitShot(ShotId shot, double from_s, const ShotReading& second,
                                 const std::vector<Track>& secondTracks) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<ShotId> {
    const auto place = numbered(connection, shot.value);
    if (!place) return tl::make_unexpected(place.error());
    auto tracks = tracksOf(connection, shot.value);
    if (!tracks) return tl::make_unexpected(tracks.error());
    (void)cutTracks(*tracks, from_s);
    if (auto done = replaceTracks(connection, shot.value, *tracks); !done) return tl::make_unexpected(done.error());
    if (auto done = moveNumbers(connection, place->frame, place->number, 1); !done) {
      return tl::make_unexpected(done.error());
    }
    ShotReading reading = second;
    reading.number = place->number + 1;
    const auto player = place->player ? std::optional(PlayerId{*place->player}) : std::nullopt;
    return appendShot(place->frame, reading, secondTracks, player);
  });
}

Result<std::optional<ShotBoundary>> Record::joinNextShot(ShotId shot) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<std::optional<ShotBoundary>> {
    const auto place = numbered(connection, shot.value);
    if (!place) return tl::make_unexpected(place.error());
    const auto next = connection.row(QStringLiteral("SELECT id FROM shots WHERE frame_id = ? AND number = ?"),
                                     {bound(place->frame.value), bound(place->number + 1)});
    if (!next) return tl::make_unexpected(next.error());
    if (!*next) return std::optional<ShotBoundary>();
    const std::int64_t other = (**next)[0].toLongLong();
    auto tracks = tracksOf(connection, shot.value);
    auto later = tracksOf(connection, other);
    if (!tracks) return tl::make_unexpected(tracks.error());
    if (!later) return tl::make_unexpected(later.error());
    const ShotBoundary boundary{behind_s(*tracks), other};
    appendTracks(*tracks, cutTracks(*later, boundary.time_s));
    if (auto done = replaceTracks(connection, shot.value, *tracks); !done) return tl::make_unexpected(done.error());
    if (auto done = setNumber(connection, other, -other); !done) return tl::make_unexpected(done.error());
    if (auto done = moveNumbers(connection, place->frame, place->number, -1); !done) {
      return tl::make_unexpected(done.error());
    }
    return std::optional(boundary);
  });
}

Result<void> undoSplit(Connection& connection, std::int64_t shot, const ShotBoundary& boundary) {
  const auto place = numbered(connection, shot);
  if (!place) return tl::make_unexpected(place.error());
  auto tracks = tracksOf(connection, shot);
  auto later = tracksOf(connection, boundary.shot);
  if (!tracks) return tl::make_unexpected(tracks.error());
  if (!later) return tl::make_unexpected(later.error());
  // What the second keeps of the time before it is a copy.
  appendTracks(*tracks, cutTracks(*later, boundary.time_s));
  if (auto done = replaceTracks(connection, shot, *tracks); !done) return done;
  auto done = connection.run(QStringLiteral("DELETE FROM shots WHERE id = ?"), {bound(boundary.shot)});
  if (!done) return done;
  return moveNumbers(connection, place->frame, place->number, -1);
}

Result<void> undoJoin(Connection& connection, std::int64_t shot, const ShotBoundary& boundary) {
  const auto place = numbered(connection, shot);
  if (!place) return tl::make_unexpected(place.error());
  auto tracks = tracksOf(connection, shot);
  if (!tracks) return tl::make_unexpected(tracks.error());
  (void)cutTracks(*tracks, boundary.time_s);
  if (auto done = replaceTracks(connection, shot, *tracks); !done) return done;
  if (auto done = moveNumbers(connection, place->frame, place->number, 1); !done) return done;
  return setNumber(connection, boundary.shot, place->number + 1);
}

Result<void> replacePlacement(Connection& connection, std::int64_t shot, const std::optional<std::string>& before,
                              const std::optional<std::string>& after) {
  const auto place = numbered(connection, shot);
  if (!place) return tl::make_unexpected(place.error());
  const auto old = before ? toldPlacementFromText(*before) : std::nullopt;
  const auto now = after ? toldPlacementFromText(*after) : std::nullopt;
  if ((before && !old) || (after && !now)) return failure(ErrorCode::RecordBroken, connection.path(), "placement");
  const auto bind = [](const Placement& placement) {
    return std::vector<QVariant>{bound(std::string_view(toText(placement.ball))), bound(placement.time_s),
                                 bound(placement.position.x), bound(placement.position.y)};
  };
  if (!old) {
    if (!now) return {};
    std::vector<QVariant> values = bind(*now);
    values.insert(values.begin(), bound(place->frame.value));
    return connection.run(
        QStringLiteral("INSERT INTO placements(frame_id, ball, time_s, x_m, y_m) VALUES(?, ?, ?, ?, ?)"), values);
  }
  const auto row =
      connection.row(QStringLiteral("SELECT id FROM placements WHERE frame_id = ? AND ball = ? AND "
                                    "abs(time_s - ?) < ? AND abs(x_m - ?) < ? AND abs(y_m - ?) < ?"),
                     {bound(place->frame.value), bound(std::string_view(toText(old->ball))), bound(old->time_s),
                      bound(kSame), bound(old->position.x), bound(kSame), bound(old->position.y), bound(kSame)});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return failure(ErrorCode::NotFound, "placement", connection.path());
  if (!now) return connection.run(QStringLiteral("DELETE FROM placements WHERE id = ?"), {(**row)[0]});
  std::vector<QVariant> values = bind(*now);
  values.push_back((**row)[0]);
  return connection.run(QStringLiteral("UPDATE placements SET ball = ?, time_s = ?, x_m = ?, y_m = ? WHERE id = ?"),
                        values);
}

}  // namespace ferrule
