// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/live_readings.h"

#include <utility>

namespace ferrule {

LiveReadings::LiveReadings(ImageQueue& images, const Rig& rig, const MeasuredTable& measured, std::stop_token stop)
    : images_(images), size_(rig.lens.size), stop_(std::move(stop)), follower_(rig, measured) {}

std::optional<std::vector<ImageReading>> LiveReadings::next() {
  if (finished_) return std::nullopt;
  const auto image = images_.next(stop_);
  if (image) {
    const ImageSize size{image->picture.cols, image->picture.rows};
    if (size != size_) misfit_ = size;
  }
  if (!image || misfit_) {
    finished_ = true;
    return follower_.finish();
  }
  ++progress_.images;
  progress_.time_s = image->time_s;
  return follower_.feed(image->picture, image->number, image->time_s);
}

}  // namespace ferrule
