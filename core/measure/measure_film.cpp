// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <chrono>
#include <cmath>
#include <filesystem>

#include "core/camera/image_size_mismatch.h"
#include "core/camera/rig_file.h"
#include "core/measure/film_readings.h"
#include "core/measure/measured_frame.h"
#include "core/record/frame_moves.h"

namespace ferrule {

namespace {

/// By the camera's clock; without one, the best guess: a film file is last written when its last image is.
std::optional<UtcMilliseconds> firstImageOf(const FilmInfo& film) {
  if (film.created_ms) return film.created_ms;
  std::error_code error;
  const auto written = std::filesystem::last_write_time(film.path, error);
  if (error) return std::nullopt;
  const auto utc = std::chrono::file_clock::to_sys(written).time_since_epoch();
  return std::chrono::floor<std::chrono::milliseconds>(utc).count() - std::llround(1000.0 * film.duration_s);
}

Result<MeasuredFrame> openFrame(const MeasureOptions& options, const FilmInfo& info, const Rig& rig,
                                const MeasuredTable& measured, MeasureReport& report) {
  auto record = Record::open(options.record);
  if (!record) return tl::make_unexpected(record.error());
  FilmEntry film;
  film.path = options.film;
  film.size = info.size;
  film.firstImage = firstImageOf(info);
  const auto hash = fileSha256(options.film);
  if (!hash) return tl::make_unexpected(hash.error());
  film.sha256 = *hash;

  const auto known = record->filmWithHash(film.sha256);
  if (!known) return tl::make_unexpected(known.error());
  if (*known) {
    const auto sessions = record->sessionsOfFilm((*known)->id);
    if (!sessions) return tl::make_unexpected(sessions.error());
    if (!sessions->empty() && !options.again) {
      return failure(ErrorCode::AlreadyRecorded, options.film, sessions->front().name);
    }
    for (const SessionSummary& session : *sessions)
      report.earlierSessions.push_back(session.name);
  }

  const std::string name =
      options.session.empty() ? std::filesystem::path(options.film).stem().string() : options.session;
  auto frame = addMeasuredFrame(std::move(*record), options, {name, std::move(film), options.again}, rig, measured);
  if (!frame) return tl::make_unexpected(frame.error());
  report.session = frame->session;
  report.sessionName = frame->sessionName;
  report.table = frame->table;
  return frame;
}

/// The cue's own file, or what the table's file says of one; nothing for a plain cue.
Result<std::optional<CueKit>> kitFor(const MeasureOptions& options, const MeasuredTable& measured) {
  std::optional<CueKit> kit;
  if (!options.cue.empty()) {
    auto cue = readMeasuredCue(options.cue);
    if (!cue) return tl::make_unexpected(cue.error());
    kit = CueKit{std::move(*cue), std::nullopt};
  } else if (auto cue = cueOf(measured)) {
    kit = CueKit{std::move(*cue), std::nullopt};
  }
  const std::string& source = options.cue.empty() ? options.table : options.cue;
  if (kit && !modulesAcross(kit->cue.tags.dictionary)) {
    return failure(ErrorCode::FieldInvalid, source, "cue_tags.dictionary");
  }
  // A rail's tag would be taken for the cue's.
  const bool shared = kit && kit->cue.tags.dictionary == measured.tagDictionary &&
                      std::ranges::any_of(measured.tags, [&](const RailTag& tag) {
                        return std::ranges::find(kit->cue.tags.ids, tag.id) != kit->cue.tags.ids.end();
                      });
  if (shared) return failure(ErrorCode::FieldInvalid, source, "cue_tags.ids");
  if (options.pitchLog.empty()) return kit;
  if (!kit) return failure(ErrorCode::FieldMissing, source, "cue_tags");
  auto log = readPitchLog(options.pitchLog);
  if (!log) return tl::make_unexpected(log.error());
  kit->log = std::move(*log);
  return kit;
}

}  // namespace

Result<MeasureReport> measureFilm(const MeasureOptions& options, const JobControl& job,
                                  const MeasureObserver& observer) {
  const auto rig = readRigFile(options.rig);
  if (!rig) return tl::make_unexpected(rig.error());
  const auto measured = measuredTableFrom(options.table);
  if (!measured) return tl::make_unexpected(measured.error());
  auto kit = kitFor(options, *measured);
  if (!kit) return tl::make_unexpected(kit.error());
  auto film = FilmSource::open(options.film);
  if (!film) return tl::make_unexpected(film.error());
  const FilmInfo info = film->info();
  if (info.size != rig->lens.size)
    return tl::make_unexpected(imageSizeMismatch(options.film, info.size, options.rig, rig->lens.size));

  // Everything that can refuse does so before the long work.
  std::optional<MeasuredFile> file;
  if (!options.output.empty()) {
    auto made = MeasuredFile::make(options.output);
    if (!made) return tl::make_unexpected(made.error());
    file.emplace(std::move(*made));
  }
  MeasureReport opened;
  std::optional<MeasuredFrame> frame;
  if (!options.record.empty()) {
    auto made = openFrame(options, info, *rig, *measured, opened);
    if (!made) return tl::make_unexpected(made.error());
    frame.emplace(std::move(*made));
    if (observer.opened) observer.opened(frame->session, frame->sessionName);
  }

  MeasureSinks sinks;
  if (frame) sinks = sinksInto(*frame);
  if (file) sinks.file = &*file;
  std::optional<FilmReferee> referee;
  if (const auto game = gameFromText(options.game)) {
    referee.emplace(worldRules(*game), *measured);
    sinks.referee = &*referee;
  }
  FilmReadings source(std::move(*film), *rig, *measured, *kit);
  auto report = measureReadings(source, *measured, sinks, job, observer);
  // Shots that were committed stay, so what they were seen from does too.
  if (frame) {
    if (auto kept = keepMoves(frame->record, frame->frame, source.moves()); !kept) {
      return tl::make_unexpected(kept.error());
    }
  }
  if (!report) return report;
  report->endedEarly = source.endedEarly();
  report->moves = source.moves();
  report->table = opened.table;
  report->session = opened.session;
  report->sessionName = opened.sessionName;
  report->earlierSessions = std::move(opened.earlierSessions);

  if (file) {
    const std::string name = std::filesystem::path(options.film).filename().string();
    const MeasuredFilm told{name, report->images, report->duration_s, info.size};
    if (auto kept = file->keep(told, *rig, report->moves, report->table); !kept) {
      return tl::make_unexpected(kept.error());
    }
  }
  if (frame) {
    if (auto done = completeFrame(*frame, *report); !done) return tl::make_unexpected(done.error());
  }
  job.reportShare(1.0, "measuring");
  if (frame && referee && options.judge) {
    const auto judged = judgeSession(frame->record, *report->session, {}, job, observer.judged);
    if (!judged && judged.error().code != ErrorCode::Cancelled) return tl::make_unexpected(judged.error());
    if (judged) report->judged = *judged;
  }
  return report;
}

}  // namespace ferrule
