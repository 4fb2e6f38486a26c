// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/film_in_record.h"

namespace ferrule {

Result<std::optional<FilmInRecord>> filmInRecord(Record& record, const std::string& film) {
  const auto hash = fileSha256(film);
  if (!hash) return tl::make_unexpected(hash.error());
  const auto known = record.filmWithHash(*hash);
  if (!known) return tl::make_unexpected(known.error());
  if (!*known) return std::nullopt;
  const auto sessions = record.sessionsOfFilm((*known)->id);
  if (!sessions) return tl::make_unexpected(sessions.error());
  std::optional<FilmInRecord> found;
  for (const SessionSummary& session : *sessions) {
    const auto frames = record.frames(session.id);
    if (!frames) return tl::make_unexpected(frames.error());
    for (const FrameSummary& frame : *frames) {
      if (!frame.film || frame.film->id != (*known)->id) continue;
      if (found && found->complete && !frame.complete) continue;
      found = FilmInRecord{session, frame.shots, frame.complete};
    }
  }
  return found;
}

}  // namespace ferrule
