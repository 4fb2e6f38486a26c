// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/measured_frame.h"

#include <filesystem>

#include "core/measure/record_entries.h"
#include "core/record/frame_moves.h"

namespace ferrule {

namespace {

/// The session of that name on that table, or a new one.
Result<SessionId> sessionFor(Record& record, const NewSession& wanted, bool alwaysNew) {
  if (!alwaysNew) {
    const auto sessions = record.sessions();
    if (!sessions) return tl::make_unexpected(sessions.error());
    for (const SessionSummary& session : *sessions) {
      if (session.name != wanted.name) continue;
      const auto table = record.tableOf(session.id);
      if (!table) return tl::make_unexpected(table.error());
      if (*table == wanted.table) return session.id;
    }
  }
  return record.addSession(wanted);
}

}  // namespace

Result<MeasuredFrame> addMeasuredFrame(Record record, const MeasureOptions& options, const WantedFrame& wanted,
                                       const Rig& rig, const MeasuredTable& measured) {
  const auto players = playersNamed(record, options.players);
  if (!players) return tl::make_unexpected(players.error());
  const auto session =
      sessionFor(record,
                 {wanted.session, wanted.film.firstImage.value_or(0),
                  std::filesystem::path(options.table).stem().string(), measured, *players, options.kind},
                 wanted.alwaysNew);
  if (!session) return tl::make_unexpected(session.error());
  FilmEntry film = wanted.film;
  if (film.sha256.empty()) {
    const auto uid = record.uidOf(*session);
    if (!uid) return tl::make_unexpected(uid.error());
    film.sha256 = "live-" + *uid + "-" + std::to_string(film.firstImage.value_or(0));
  }
  const auto filmId = record.addFilm(film);
  if (!filmId) return tl::make_unexpected(filmId.error());
  const auto frame = record.addFrame({*session, options.game, *filmId, rig});
  if (!frame) return tl::make_unexpected(frame.error());
  auto table = fingerprintFor(record, *session);
  if (!table) return tl::make_unexpected(table.error());
  return MeasuredFrame{std::move(record), *session, wanted.session,   *frame,
                       std::move(film),   *players, std::move(*table)};
}

MeasureSinks sinksInto(MeasuredFrame& frame) {
  MeasureSinks sinks;
  sinks.record = &frame.record;
  sinks.frame = frame.frame;
  if (frame.players.size() == 1) sinks.player = frame.players.front();
  if (frame.players.size() == 2) sinks.seats = frame.players;
  if (frame.table) sinks.table = &frame.table->fingerprint;
  return sinks;
}

Result<void> completeFrame(MeasuredFrame& frame, const MeasureReport& report) {
  frame.film.images = report.images;
  frame.film.duration_s = report.duration_s;
  if (const auto updated = frame.record.addFilm(frame.film); !updated) return tl::make_unexpected(updated.error());
  if (auto kept = keepMoves(frame.record, frame.frame, report.moves); !kept) return kept;
  return frame.record.completeFrame(frame.frame);
}

}  // namespace ferrule
