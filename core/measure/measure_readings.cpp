// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/measure.h"
#include "core/measure/record_entries.h"

namespace ferrule {

namespace {

std::optional<PlayerId> playerOf(const MeasureSinks& sinks, const std::optional<FilmRuling>& ruling) {
  if (sinks.player || !ruling || !ruling->shooter || sinks.seats.size() != 2) return sinks.player;
  return sinks.seats[indexOf(*ruling->shooter)];
}

/// Hands shots and placements on as they become final.
Result<void> drain(ShotReader& reader, const MeasureSinks& sinks, const MeasureObserver& observer,
                   MeasureReport& report) {
  for (const Placement& placement : reader.takePlacements()) {
    ++report.placements;
    if (sinks.record != nullptr) {
      if (auto done = sinks.record->addPlacement(sinks.frame, placement); !done) return done;
    }
    if (sinks.file != nullptr) sinks.file->add(placement);
    if (observer.placement) observer.placement(placement);
  }
  for (const ReadShot& shot : reader.takeShots()) {
    ++report.shots;
    std::optional<FilmRuling> ruling;
    std::optional<RulingEntry> entry;
    if (sinks.referee != nullptr) {
      ruling = sinks.referee->judge(shot);
      entry = entryOf(ruling->ruled);
    }
    if (sinks.record != nullptr) {
      const auto id = sinks.record->appendShot(sinks.frame, shot.reading, shot.tracks, playerOf(sinks, ruling), entry);
      if (!id) return tl::make_unexpected(id.error());
    }
    if (sinks.file != nullptr) sinks.file->add(shot.reading, entry ? entry->content : std::string());
    if (observer.shot) observer.shot(shot);
    if (observer.ruling && ruling) observer.ruling(shot, *ruling);
  }
  return {};
}

}  // namespace

Result<MeasureReport> measureReadings(ReadingSource& source, const MeasuredTable& measured, const MeasureSinks& sinks,
                                      const JobControl& job, const MeasureObserver& observer) {
  MeasureReport report;
  ShotReader reader(measured, source.camera());
  if (sinks.table != nullptr) reader.setTable(*sinks.table);
  while (auto readings = source.next()) {
    if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
    reader.setCamera(source.camera());
    for (const ImageReading& reading : *readings) {
      if (sinks.file != nullptr) sinks.file->add(reading);
      reader.feed(reading);
      if (observer.image) observer.image(reading);
    }
    if (auto done = drain(reader, sinks, observer, report); !done) return tl::make_unexpected(done.error());
    job.reportShare(source.progress().share, "measuring");
  }
  reader.finish();
  if (auto done = drain(reader, sinks, observer, report); !done) return tl::make_unexpected(done.error());
  report.images = source.progress().images;
  report.duration_s = source.progress().time_s;
  return report;
}

}  // namespace ferrule
