// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/reading_run.h"

namespace ferrule {

Result<MeasureReport> measureReadings(ReadingSource& source, const MeasuredTable& measured, const MeasureSinks& sinks,
                                      const JobControl& job, const MeasureObserver& observer) {
  ReadingRun run(source, measured, sinks, observer);
  while (auto readings = source.next()) {
    if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
    if (auto done = run.take(*readings); !done) return tl::make_unexpected(done.error());
    job.reportShare(source.progress().share, "measuring");
  }
  if (auto done = run.finish(); !done) return tl::make_unexpected(done.error());
  return run.report();
}

}  // namespace ferrule
