// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <memory>
#include <opencv2/core/mat.hpp>
#include <optional>
#include <string>

#include "core/base/error.h"
#include "core/camera/lens.h"

namespace ferrule {

/// What a film says of itself before it is read. Counts from headers are guesses.
struct FilmInfo {
  std::string path;
  ImageSize size;        ///< after its rotation flag
  int rotation_deg = 0;  ///< clockwise turn that was applied: 0, 90, 180, 270
  double nominalRate_hz = 0.0;
  double duration_s = 0.0;                 ///< as claimed; 0 when unknown
  long images = 0;                         ///< as claimed; 0 when unknown
  std::optional<std::int64_t> created_ms;  ///< by the camera's clock, UTC, ms since 1970
};

/// One image of a film with its true presentation time.
struct FilmImage {
  long number = 0;      ///< from 0
  double time_s = 0.0;  ///< from the film's first image; strictly rising
  cv::Mat picture;      ///< 8-bit BGR, turned upright
};

/// Reads a film front to back, one owner thread.
class FilmSource {
 public:
  /// Errors: FileMissing, FileEmpty, FileUnreadable, NotAFilm, FilmWithoutPicture, FilmTruncated (not one whole image).
  [[nodiscard]] static Result<FilmSource> open(const std::string& path);
  ~FilmSource();
  FilmSource(FilmSource&&) noexcept;
  FilmSource& operator=(FilmSource&&) noexcept;

  [[nodiscard]] const FilmInfo& info() const;
  /// The next image; nothing at the end. image.picture's memory is reused where it fits.
  bool next(FilmImage& image);
  /// After the end: whether the film's header promised clearly more images than there were.
  [[nodiscard]] bool endedEarly() const;

 private:
  class Impl;
  explicit FilmSource(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace ferrule
