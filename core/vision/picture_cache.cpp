// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/picture_cache.h"

#include <algorithm>

namespace ferrule {

namespace {

std::size_t bytesOf(const cv::Mat& picture) {
  return picture.total() * picture.elemSize();
}

}  // namespace

cv::Mat PictureCache::find(long number) {
  const auto found =
      std::find_if(entries_.begin(), entries_.end(), [&](const Entry& entry) { return entry.number == number; });
  if (found == entries_.end()) return {};
  entries_.splice(entries_.begin(), entries_, found);
  return entries_.front().picture;
}

void PictureCache::keep(long number, cv::Mat picture) {
  if (!find(number).empty()) {
    held_bytes_ -= bytesOf(entries_.front().picture);
    entries_.pop_front();
  }
  held_bytes_ += bytesOf(picture);
  entries_.push_front({number, std::move(picture)});
  while (held_bytes_ > most_bytes_ && entries_.size() > 1) {
    held_bytes_ -= bytesOf(entries_.back().picture);
    entries_.pop_back();
  }
}

bool PictureCache::holds(long number) const {
  return std::any_of(entries_.begin(), entries_.end(), [&](const Entry& entry) { return entry.number == number; });
}

}  // namespace ferrule
