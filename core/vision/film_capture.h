// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <opencv2/videoio.hpp>
#include <string>

#include "core/base/error.h"
#include "core/camera/lens.h"
#include "core/vision/film_container.h"
#include "core/vision/film_source.h"

namespace ferrule {

/// OpenCV's FFmpeg reader with the picture turned upright by us (OpenCV 4.6.0 turns by 180 degrees too much: its issue
/// 22088). One owner thread. The first image is decoded on opening, so that an open capture has a picture.
class FilmCapture {
 public:
  /// path: a film whose container was read. turn_deg: clockwise, 0, 90, 180, 270.
  /// Errors: NotAFilm (no decoder), FilmTruncated (not one whole image).
  [[nodiscard]] static Result<FilmCapture> open(const std::string& path, int turn_deg);

  [[nodiscard]] ImageSize size() const { return size_; }  ///< after the turn

  /// Goes on to the next image without making its picture; false at the end.
  bool grab();
  /// The picture of the grabbed image: 8-bit BGR, upright. picture's memory is reused where it fits.
  bool retrieve(cv::Mat& picture);
  /// The reader's time of the grabbed image, ms; 0 for the last images of films with B-frames.
  [[nodiscard]] double claimedTime_ms() const { return time_ms_; }
  /// Goes to a place at or before a time on the reader's zero, as far as the reader can; grab() and look where it is.
  void seek(double time_ms);

 private:
  FilmCapture(cv::VideoCapture capture, int turn_deg);

  cv::VideoCapture capture_;
  cv::Mat unturned_;
  ImageSize size_;
  int turn_deg_ = 0;
  double time_ms_ = 0.0;
  bool firstIsGrabbed_ = false;
};

/// What a film says of itself, put together.
[[nodiscard]] FilmInfo filmInfo(const std::string& path, const FilmContainer& container, const FilmCapture& capture);

}  // namespace ferrule
