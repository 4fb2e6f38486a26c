// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/image_follower.h"
#include "core/vision/film_reader_ahead.h"

namespace ferrule {

/// The balls of a film, image by image; decoding goes on beside the search for balls.
class FilmReadings : public ReadingSource {
 public:
  /// film: freshly opened, of the rig's image size.
  /// kit: where the cue carries tags; nothing for a plain cue.
  FilmReadings(FilmSource film, const Rig& rig, const MeasuredTable& measured, const std::optional<CueKit>& kit = {});

  [[nodiscard]] std::optional<std::vector<ImageReading>> next() override;
  [[nodiscard]] SourceProgress progress() const override { return progress_; }
  [[nodiscard]] std::optional<TablePoint3> camera() const override { return follower_.camera(); }
  void keepPictures() override { follower_.keepPictures(); }
  [[nodiscard]] std::optional<KeptPicture> picture(long image) const override { return follower_.picture(image); }
  [[nodiscard]] std::optional<CueReading> cueOf(const ReadShot& shot) override { return follower_.cueOf(shot); }
  [[nodiscard]] bool endedEarly() const { return film_.endedEarly(); }
  /// Every move of the camera so far, in order.
  [[nodiscard]] const std::vector<CameraMove>& moves() const { return follower_.moves(); }

 private:
  FilmReaderAhead film_;
  FilmImage image_;
  ImageFollower follower_;
  SourceProgress progress_;
  bool finished_ = false;
};

}  // namespace ferrule
