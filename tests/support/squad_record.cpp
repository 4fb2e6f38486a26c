// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/squad_record.h"

#include <optional>

namespace ferrule::invented {

namespace {

/// What a referee writes, as far as the record looks into it.
RulingEntry ruling(bool scratch, bool won) {
  RulingEntry entry;
  entry.sureness = Verdict::Certain;
  if (scratch) entry.fouls = {"scratch"};
  entry.content = std::string("{\"sureness\": \"certain\", \"shooter\": \"first\", \"fouls\": [") +
                  (scratch ? "{\"kind\": \"scratch\"}" : "") +
                  "], \"result\": " + (won ? "{\"winner\": \"first\", \"why\": \"eight-potted\"}" : "null") + "}";
  return entry;
}

FilmEntry filmOf(std::size_t number, const Session& session) {
  FilmEntry film;
  film.path = std::string("invented/film-").append(std::to_string(number)).append(".mp4");
  const std::string digits = std::to_string(number);
  film.sha256 = std::string(64 - digits.size(), '0') + digits;
  film.size = {1280, 720};
  film.images = 1000;
  film.duration_s = session.shots.empty() ? 0.0 : session.shots.back().reading.rest_s;
  film.firstImage = session.started_ms;
  return film;
}

Result<void> putSession(Record& record, const Squad& squad, const std::vector<PlayerId>& ids, std::size_t number) {
  const Session& session = squad.sessions[number];
  NewSession added{session.name, session.started_ms, "Invented table", squad.table, {}};
  const bool match = session.players.size() > 1;
  added.kind = match ? SessionKind::Match : SessionKind::Practice;
  for (const std::size_t player : session.players)
    added.players.push_back(ids[player]);
  const auto id = record.addSession(added);
  if (!id) return tl::make_unexpected(id.error());
  const auto film = record.addFilm(filmOf(number, session));
  if (!film) return tl::make_unexpected(film.error());
  std::optional<FrameId> frame;
  int frameNumber = 0;
  for (const Shot& shot : session.shots) {
    if (shot.frame != frameNumber) {
      const auto begun = record.addFrame({*id, match ? "eight-ball" : "", *film, std::nullopt});
      if (!begun) return tl::make_unexpected(begun.error());
      frame = *begun;
      frameNumber = shot.frame;
    }
    const auto kept =
        record.appendShot(*frame, shot.reading, {}, ids[shot.player],
                          match ? std::optional(ruling(shot.reading.scratch, shot.wonFrame)) : std::nullopt);
    if (!kept) return tl::make_unexpected(kept.error());
  }
  return {};
}

}  // namespace

Result<void> putInto(Record& record, const Squad& squad) {
  std::vector<PlayerId> ids;
  for (const Habits& habits : squad.players) {
    Player player;
    player.name = habits.name;
    player.minor = true;
    const auto id = record.addPlayer(player);
    if (!id) return tl::make_unexpected(id.error());
    ids.push_back(*id);
  }
  for (std::size_t i = 0; i < squad.sessions.size(); ++i) {
    if (auto done = putSession(record, squad, ids, i); !done) return done;
  }
  return {};
}

}  // namespace ferrule::invented
