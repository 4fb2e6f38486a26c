// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/reading_source.h"
#include "core/vision/ball_tracker.h"
#include "core/vision/film_reader_ahead.h"
#include "core/vision/tag_watch.h"

namespace ferrule {

/// The balls of a film, image by image; decoding goes on beside the search for balls. A camera that moves is followed:
/// once the tags lie still again, the balls are followed anew under the new rig.
class FilmReadings : public ReadingSource {
 public:
  /// film: freshly opened, of the rig's image size.
  FilmReadings(FilmSource film, const Rig& rig, const MeasuredTable& measured);

  [[nodiscard]] std::optional<std::vector<ImageReading>> next() override;
  [[nodiscard]] SourceProgress progress() const override { return progress_; }
  [[nodiscard]] std::optional<TablePoint3> camera() const override { return camera_; }
  [[nodiscard]] bool endedEarly() const { return film_.endedEarly(); }
  /// Every move of the camera so far, in order.
  [[nodiscard]] const std::vector<CameraMove>& moves() const { return moves_; }

 private:
  FilmReaderAhead film_;
  FilmImage image_;
  MeasuredTable measured_;
  BallTracker tracker_;
  TablePoint3 camera_;             ///< of what next() returned last
  TablePoint3 movedTo_;            ///< of what it will return
  std::optional<TagWatch> watch_;  ///< nothing on a table without tags
  std::vector<CameraMove> moves_;
  SourceProgress progress_;
  bool finished_ = false;
};

}  // namespace ferrule
