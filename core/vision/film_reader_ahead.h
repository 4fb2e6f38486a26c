// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include "core/vision/film_source.h"

namespace ferrule {

/// Reads a film front to back like FilmSource, but decodes the coming images on a thread of its own while the caller
/// works on this one. Holds at most kAhead finished images, so memory does not grow with the film. The film belongs to
/// that thread; the reader itself has one owner thread.
class FilmReaderAhead {
 public:
  static constexpr std::size_t kAhead = 3;

  explicit FilmReaderAhead(FilmSource source);
  /// Stops reading and waits for the image that is being decoded.
  ~FilmReaderAhead();
  FilmReaderAhead(FilmReaderAhead&&) noexcept;
  FilmReaderAhead& operator=(FilmReaderAhead&&) noexcept;

  [[nodiscard]] const FilmInfo& info() const;
  /// The next image, exactly as FilmSource::next gives it; nothing at the end. The picture that image holds on entry is
  /// given back for a later image, unless another cv::Mat shares it.
  bool next(FilmImage& image);
  /// After the end, as FilmSource::endedEarly.
  [[nodiscard]] bool endedEarly() const;

 private:
  class Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace ferrule
