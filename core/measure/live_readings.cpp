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
  newest_ = image->picture;
  return follower_.feed(image->picture, image->number, image->time_s);
}

std::optional<Glimpse> LiveReadings::glimpse() {
  constexpr long kAtWork = 1;  // the next image often waits already; that is no delay
  const bool behind = images_.counts().waiting > kAtWork;
  if (finished_ || (behind && progress_.time_s < glimpsed_s_ + kSeldom_s)) return std::nullopt;
  auto reading = follower_.newest();
  if (!reading) return std::nullopt;
  glimpsed_s_ = progress_.time_s;
  return Glimpse{std::move(*reading), follower_.keptOf(newest_)};
}

}  // namespace ferrule
