// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/film_readings.h"

#include <algorithm>
#include <utility>

namespace ferrule {

FilmReadings::FilmReadings(FilmSource film, const Rig& rig, const MeasuredTable& measured,
                           const std::optional<CueKit>& kit)
    : film_(std::move(film)), follower_(rig, measured, kit) {}

std::optional<std::vector<ImageReading>> FilmReadings::next() {
  if (finished_) return std::nullopt;
  if (!film_.next(image_)) {
    finished_ = true;
    return follower_.finish();
  }
  ++progress_.images;
  progress_.time_s = image_.time_s;
  const double claimed_s = film_.info().duration_s;
  if (claimed_s > 0.0) progress_.share = std::min(1.0, image_.time_s / claimed_s);
  return follower_.feed(image_.picture, image_.number, image_.time_s);
}

}  // namespace ferrule
