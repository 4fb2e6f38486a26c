// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/measure_live.h"

#include "core/camera/image_size_mismatch.h"
#include "core/camera/rig_file.h"
#include "core/measure/live_readings.h"
#include "core/measure/measured_frame.h"
#include "core/measure/reading_run.h"
#include "core/record/film_file.h"

namespace ferrule {

namespace {

/// The suggestions that were seen, until a shot comes that they may have changed.
class ShownBefore {
 public:
  explicit ShownBefore(LiveInbox& inbox) : inbox_(inbox) {}

  /// Keeps the last one that was seen before this strike with the shot; what is older has had its shot.
  [[nodiscard]] Result<void> keepWith(const ShotReading& shot, ShotId id, Record& record) {
    for (SuggestionShown& shown : inbox_.takeShown())
      waiting_.push_back(std::move(shown));
    std::optional<SuggestionEntry> last;
    std::erase_if(waiting_, [&](const SuggestionShown& shown) {
      if (shown.time_s > shot.strike_s) return false;
      last = shown.suggestion;
      return true;
    });
    if (!last) return {};
    last->shown = true;
    return record.keepSuggestion(id, *last);
  }

 private:
  LiveInbox& inbox_;
  std::vector<SuggestionShown> waiting_;
};

Result<MeasuredFrame> openLive(const MeasureOptions& options, const Rig& rig, const MeasuredTable& measured,
                               const LiveInput& input) {
  auto record = Record::open(options.record);
  if (!record) return tl::make_unexpected(record.error());
  FilmEntry film;
  film.size = rig.lens.size;
  film.firstImage = input.now();
  if (input.film != nullptr) film.path = input.film->path();
  return addMeasuredFrame(std::move(*record), options, {options.session, std::move(film), true}, rig, measured);
}

/// A film whose session never came into the record is not kept.
class FilmOfSession {
 public:
  explicit FilmOfSession(FilmKeeper* film) : film_(film) {}
  FilmOfSession(const FilmOfSession&) = delete;
  FilmOfSession& operator=(const FilmOfSession&) = delete;
  ~FilmOfSession() {
    if (film_ != nullptr) film_->discard();
  }
  void stays() { film_ = nullptr; }

 private:
  FilmKeeper* film_;
};

/// The hash of a film that was kept, or no film where none came into the file.
Result<void> closeFilm(FilmKeeper& film, MeasuredFrame& frame) {
  if (film.finish()) {
    const auto hash = fileSha256(film.path());
    if (!hash) return tl::make_unexpected(hash.error());
    frame.film.sha256 = *hash;
  } else {
    frame.film.path.clear();
  }
  return keepFilmFile(frame.record, frame.frame, frame.film.path, frame.film.sha256);
}

}  // namespace

Result<MeasureReport> measureLive(const MeasureOptions& options, const LiveInput& input, const JobControl& job,
                                  const LiveObserver& observer) {
  const auto rig = readRigFile(options.rig);
  if (!rig) return tl::make_unexpected(rig.error());
  const auto measured = measuredTableFrom(options.table);
  if (!measured) return tl::make_unexpected(measured.error());

  FilmOfSession film(input.film);
  LiveReadings source(input.images, *rig, *measured, job.stop);
  if (observer.measured.picture) source.keepPictures();
  const auto first = source.next();
  if (source.misfit())
    return tl::make_unexpected(imageSizeMismatch(options.film, *source.misfit(), options.rig, rig->lens.size));
  if (source.progress().images == 0) return MeasureReport{};

  auto frame = openLive(options, *rig, *measured, input);
  if (!frame) return tl::make_unexpected(frame.error());
  film.stays();
  if (observer.measured.opened) observer.measured.opened(frame->session, frame->sessionName);
  MeasureSinks sinks = sinksInto(*frame);
  std::optional<FilmReferee> referee;
  if (const auto game = gameFromText(options.game)) {
    referee.emplace(worldRules(*game), *measured);
    sinks.referee = &*referee;
  }
  ShownBefore shown(input.inbox);
  Result<void> kept;
  MeasureObserver told = observer.measured;
  told.recorded = [&](const ReadShot& shot, ShotId id) {
    if (auto done = shown.keepWith(shot.reading, id, frame->record); !done) kept = done;
    if (observer.measured.recorded) observer.measured.recorded(shot, id);
    if (referee && observer.standing) observer.standing({referee->state(), referee->score()});
  };

  told.said = [&] { return input.inbox.takeSaid(); };
  told.ruledAgain = [&](const std::vector<RuledAgain>& ruled) {
    if (observer.measured.ruledAgain) observer.measured.ruledAgain(ruled);
    if (referee && observer.standing) observer.standing({referee->state(), referee->score()});
  };

  ReadingRun run(source, *measured, sinks, told);
  for (auto readings = first; readings; readings = source.next()) {
    // First, since a shot takes its time to be read.
    if (observer.glimpse) {
      if (const auto seen = source.glimpse()) observer.glimpse(seen->reading, seen->kept);
    }
    if (auto done = run.take(*readings); !done) return tl::make_unexpected(done.error());
    if (!kept) return tl::make_unexpected(kept.error());
  }
  if (auto done = run.finish(); !done) return tl::make_unexpected(done.error());
  if (!kept) return tl::make_unexpected(kept.error());
  if (input.film != nullptr) {
    if (auto done = closeFilm(*input.film, *frame); !done) return tl::make_unexpected(done.error());
  }
  MeasureReport report = run.report();
  report.moves = source.moves();
  report.table = frame->table;
  report.session = frame->session;
  report.sessionName = frame->sessionName;
  if (auto done = completeFrame(*frame, report); !done) return tl::make_unexpected(done.error());
  return report;
}

}  // namespace ferrule
