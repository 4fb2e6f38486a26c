// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/film_readings.h"

#include <algorithm>
#include <utility>

namespace ferrule {

FilmReadings::FilmReadings(FilmSource film, const Rig& rig, const MeasuredTable& measured)
    : film_(std::move(film)),
      measured_(measured),
      tracker_(rig, measured),
      camera_(cameraPosition(rig)),
      movedTo_(camera_),
      watch_(TagWatch::of(rig, measured)) {}

std::optional<std::vector<ImageReading>> FilmReadings::next() {
  if (finished_) return std::nullopt;
  camera_ = movedTo_;
  std::vector<ImageReading> final;
  bool moved = false;
  if (film_.next(image_)) {
    if (auto move = watch_ ? watch_->look(image_.picture, image_.number, image_.time_s) : std::nullopt) {
      tracker_.finish();
      final = tracker_.take();
      moved = true;
      tracker_ = BallTracker(move->rig, measured_);
      movedTo_ = cameraPosition(move->rig);
      moves_.push_back(std::move(*move));
    }
    tracker_.feed(image_.picture, image_.number, image_.time_s);
    ++progress_.images;
    progress_.time_s = image_.time_s;
    const double claimed_s = film_.info().duration_s;
    if (claimed_s > 0.0) progress_.share = std::min(1.0, image_.time_s / claimed_s);
  } else {
    finished_ = true;
    tracker_.finish();
  }
  // What was seen from the old place is handed on by itself.
  if (!moved) final = tracker_.take();
  return final;
}

}  // namespace ferrule
