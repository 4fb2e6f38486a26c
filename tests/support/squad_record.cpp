// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/squad_record.h"

#include <QString>
#include <cmath>
#include <optional>

#include "core/drills/drill_file.h"
#include "core/measure/drill_keeping.h"

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

/// What the record looks into, in the form of core/planner/suggestion_text.h.
std::string suggestion(const Judged& judged) {
  const auto number = [](double value) { return QString::number(value, 'g', 17).toStdString(); };
  return "{\"plans\": [{\"kind\": \"" + std::string(judged.direct > 0.0 ? "direct" : "bank") +
         "\", \"pot_chance\": " + number(judged.direct > 0.0 ? judged.direct : 0.1) +
         "}], \"review\": {\"suggested\": {}, \"taken\": {\"rank\": 0, \"pot_chance\": " + number(judged.potChance) +
         ", \"leave_x_mm\": " + number(std::round(1e4 * judged.leave.x) / 10.0) +
         ", \"leave_y_mm\": " + number(std::round(1e4 * judged.leave.y) / 10.0) + ", \"next_ball\": \"" +
         std::string(toText(judged.nextBall)) + "\"}}}";
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
    if (!shot.judged) continue;
    const Judged& judged = *shot.judged;
    if (auto said = record.keepSuggestion(
            *kept, {"invented", judged.shown, judged.choiceLoss, judged.deliveryLoss, suggestion(judged)});
        !said)
      return said;
  }
  return {};
}

/// As a person counts them: the first goal of each try was met or not.
Result<void> putRun(Record& record, const Squad& squad, const Run& run) {
  const Drill* drill = builtInDrill(kSquadDrill);
  RunTerms terms{*drill, {}, "Invented table", squad.table, squad.players[run.player].name};
  auto kept = beginRun(record, terms, run.started_ms);
  if (!kept) return tl::make_unexpected(kept.error());
  for (std::size_t trial = 0; trial < run.met.size(); ++trial) {
    DrillTrial one;
    one.station = stationOf(*drill, trial);
    one.goals = {{run.met[trial]}};
    if (auto done = keepTrial(record, kept->id, one); !done) return done;
    kept->trials.push_back(one);
  }
  return endRun(record, *kept, run.started_ms + 600'000);
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
  for (const Run& run : squad.runs) {
    if (auto done = putRun(record, squad, run); !done) return done;
  }
  return {};
}

}  // namespace ferrule::invented
