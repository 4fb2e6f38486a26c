// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <functional>

#include "app/film/film_pictures.h"
#include "core/base/progress.h"

namespace ferrule {

/// A short film that is to be written.
struct ClipTerms {
  std::string path;     ///< of the new file, .mp4 or .avi
  double from_s = 0.0;  ///< film time
  double until_s = 0.0;
  double rate_hz =
      30.0;  ///< images a second, evenly: the clip plays at the film's own pace whatever the film's rate is
  /// The image of a film time; nothing ends the clip there.
  std::function<std::optional<QImage>(double time_s)> image;
};

struct ClipReport {
  long images = 0;
  QSize size;
};

/// Writes a clip without sound, whole or not at all: what was broken off leaves no file, and an old file of that name
/// stays until the new one is complete. Readable by its owner only. H.264 where OpenCV's FFmpeg can write it, else
/// MPEG-4 part 2; Motion JPEG in .avi. Errors: FileNotWritable, Cancelled, FilmHasNoImages (path) for a clip of none.
[[nodiscard]] Result<ClipReport> writeClip(const ClipTerms& terms, const JobControl& job = {});

/// The rate of a film around a stretch of it, from the middle of the times between its images; 0 without two.
[[nodiscard]] double clipRate_hz(const std::vector<double>& times_s, double from_s, double until_s);

}  // namespace ferrule
