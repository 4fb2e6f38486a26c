// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/measure.h"

namespace ferrule {

/// What happens to the readings of a film or a camera, one handful after another: they are cut into shots, read, ruled
/// and handed to the sinks.
class ReadingRun {
 public:
  /// All are kept by reference, source too where it keeps pictures for the observer.
  ReadingRun(ReadingSource& source, const MeasuredTable& measured, const MeasureSinks& sinks,
             const MeasureObserver& observer);

  /// The readings that source handed out last. Errors: those of Record.
  [[nodiscard]] Result<void> take(const std::vector<ImageReading>& readings);
  /// After the last ones. Errors: the same.
  [[nodiscard]] Result<void> finish();

  [[nodiscard]] const MeasureReport& report() const { return report_; }

 private:
  [[nodiscard]] Result<void> drain();
  [[nodiscard]] Result<void> keep(const ReadShot& shot);
  [[nodiscard]] Result<void> hear();
  [[nodiscard]] Result<void> heed(const SaidOfRecorded& heard);

  /// A shot of the referee's that stands in the record.
  struct Kept {
    ShotId id;
    std::string content;  ///< of its ruling
    std::optional<PlayerId> player;
    SaidOfRuling said;
    ShotReading read;      ///< from the film
    ShotReading answered;  ///< with what people answered
  };

  ReadingSource& source_;
  const MeasureSinks& sinks_;
  const MeasureObserver& observer_;
  ShotReader reader_;
  std::vector<Kept> kept_;  ///< in the order in which the referee saw them
  MeasureReport report_;
};

/// Whose shot it was, as far as anyone knows.
[[nodiscard]] std::optional<PlayerId> playerOf(const MeasureSinks& sinks, const std::optional<FilmRuling>& ruling);

}  // namespace ferrule
