// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/reading_source.h"
#include "core/vision/ball_tracker.h"
#include "core/vision/film_reader_ahead.h"

namespace ferrule {

/// The balls of a film, image by image; decoding goes on beside the search for balls.
class FilmReadings : public ReadingSource {
 public:
  /// film: freshly opened, of the rig's image size.
  FilmReadings(FilmSource film, const Rig& rig, const MeasuredTable& measured);

  [[nodiscard]] std::optional<std::vector<ImageReading>> next() override;
  [[nodiscard]] SourceProgress progress() const override { return progress_; }
  [[nodiscard]] bool endedEarly() const { return film_.endedEarly(); }

 private:
  FilmReaderAhead film_;
  FilmImage image_;
  BallTracker tracker_;
  SourceProgress progress_;
  bool finished_ = false;
};

}  // namespace ferrule
