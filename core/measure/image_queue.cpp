// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/image_queue.h"

#include <utility>

namespace ferrule {

bool ImageQueue::offer(cv::Mat picture, double time_s) {
  bool taken = false;
  double since_s = 0.0;
  {
    const std::scoped_lock lock(mutex_);
    const long number = came_++;
    const bool rises = !first_s_ || time_s > last_s_;
    if (closed_ || !rises) {
      ++dropped_;
      return false;
    }
    if (!first_s_) first_s_ = time_s;
    last_s_ = time_s;
    since_s = time_s - *first_s_;
    taken = waiting_.size() < mostWaiting_;
    if (taken) {
      waiting_.push_back({number, since_s, picture});
    } else {
      ++dropped_;
    }
  }
  if (taken) changed_.notify_one();
  if (witness_.show) witness_.show(picture, since_s);
  return taken;
}

bool ImageQueue::hasRoom() const {
  if (witness_.hasRoom && !witness_.hasRoom()) return false;
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
