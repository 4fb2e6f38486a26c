// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/film_capture.h"

extern "C" {
#include <libavutil/log.h>
}

#include <utility>

namespace ferrule {

namespace {

cv::RotateFlags rotateFlag(int turn_deg) {
  if (turn_deg == 90) return cv::ROTATE_90_CLOCKWISE;
  return turn_deg == 180 ? cv::ROTATE_180 : cv::ROTATE_90_COUNTERCLOCKWISE;
}

}  // namespace

FilmCapture::FilmCapture(cv::VideoCapture capture, int turn_deg) : capture_(std::move(capture)), turn_deg_(turn_deg) {}

Result<FilmCapture> FilmCapture::open(const std::string& path, int turn_deg) {
  try {
    cv::VideoCapture reader("file:" + path, cv::CAP_FFMPEG);
    // Opening makes libav talk on standard error, among our sentences.
    av_log_set_level(AV_LOG_QUIET);
    if (!reader.isOpened()) return failure(ErrorCode::NotAFilm, path);
    reader.set(cv::CAP_PROP_ORIENTATION_AUTO, 0.0);
    FilmCapture capture(std::move(reader), turn_deg);
    if (!capture.grab()) return failure(ErrorCode::FilmTruncated, path);
    cv::Mat first;
    if (!capture.retrieve(first)) return failure(ErrorCode::FilmTruncated, path);
    capture.size_ = {first.cols, first.rows};
    capture.firstIsGrabbed_ = true;
    return capture;
  } catch (const cv::Exception&) {
    return failure(ErrorCode::NotAFilm, path);
  }
}

bool FilmCapture::grab() {
  if (std::exchange(firstIsGrabbed_, false)) return true;
  if (!capture_.grab()) return false;
  time_ms_ = capture_.get(cv::CAP_PROP_POS_MSEC);
  return true;
}

bool FilmCapture::retrieve(cv::Mat& picture) {
  if (turn_deg_ == 0) return capture_.retrieve(picture);
  if (!capture_.retrieve(unturned_)) return false;
  cv::rotate(unturned_, picture, rotateFlag(turn_deg_));
  return true;
}

void FilmCapture::seek(double time_ms) {
  firstIsGrabbed_ = false;
  capture_.set(cv::CAP_PROP_POS_MSEC, time_ms);
}

FilmInfo filmInfo(const std::string& path, const FilmContainer& container, const FilmCapture& capture) {
  FilmInfo info;
  info.path = path;
  info.size = capture.size();
  info.rotation_deg = container.turn_deg;
  info.nominalRate_hz = container.rate_hz;
  info.duration_s = container.duration_s;
  info.images = container.images;
  info.created_ms = container.created_ms;
  return info;
}

}  // namespace ferrule
