// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/image_queue.h"

#include <utility>

namespace ferrule {

bool ImageQueue::offer(cv::Mat picture, double time_s) {
  {
    const std::scoped_lock lock(mutex_);
    const long number = came_++;
    const bool rises = !first_s_ || time_s > last_s_;
    if (closed_ || !rises || waiting_.size() >= mostWaiting_) {
      ++dropped_;
      return false;
    }
    if (!first_s_) first_s_ = time_s;
    last_s_ = time_s;
    waiting_.push_back({number, time_s - *first_s_, std::move(picture)});
  }
  changed_.notify_one();
  return true;
}

bool ImageQueue::hasRoom() const {
  const std::scoped_lock lock(mutex_);
  return !closed_ && waiting_.size() < mostWaiting_;
}

void ImageQueue::countLost(long images) {
  const std::scoped_lock lock(mutex_);
  came_ += images;
  dropped_ += images;
}

void ImageQueue::close() {
  {
    const std::scoped_lock lock(mutex_);
    closed_ = true;
  }
  changed_.notify_all();
}

std::optional<FilmImage> ImageQueue::next(const std::stop_token& stop) {
  std::unique_lock lock(mutex_);
  const bool ready = changed_.wait(lock, stop, [this] { return !waiting_.empty() || closed_; });
  if (!ready || stop.stop_requested() || waiting_.empty()) return std::nullopt;
  FilmImage image = std::move(waiting_.front());
  waiting_.pop_front();
  return image;
}

ImageQueue::Counts ImageQueue::counts() const {
  const std::scoped_lock lock(mutex_);
  return {came_, dropped_, static_cast<long>(waiting_.size())};
}

}  // namespace ferrule
