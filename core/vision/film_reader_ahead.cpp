// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/film_reader_ahead.h"

#include <condition_variable>
#include <deque>
#include <mutex>
#include <stop_token>
#include <thread>
#include <utility>
#include <vector>

namespace ferrule {

class FilmReaderAhead::Impl {
 public:
  explicit Impl(FilmSource source)
      : source_(std::move(source)), info_(source_.info()), thread_([this](std::stop_token stop) { read(stop); }) {}

  const FilmInfo& info() const { return info_; }

  bool next(FilmImage& image) {
    // A picture that somebody else still looks at must not be written to by the other thread.
    if (image.picture.u != nullptr && image.picture.u->refcount > 1) image.picture.release();
    {
      std::unique_lock lock(mutex_);
      imageReady_.wait(lock, [this] { return !ready_.empty() || ended_; });
      if (ready_.empty()) return false;
      if (!image.picture.empty()) spare_.push_back(std::move(image.picture));
      image = std::move(ready_.front());
      ready_.pop_front();
    }
    roomMade_.notify_one();
    return true;
  }

  bool endedEarly() const {
    const std::scoped_lock lock(mutex_);
    return ended_ && ready_.empty() && endedEarly_;
  }

 private:
  void read(const std::stop_token& stop) {
    while (true) {
      FilmImage image;
      {
        std::unique_lock lock(mutex_);
        if (!roomMade_.wait(lock, stop, [this] { return ready_.size() < kAhead; })) return;
        if (!spare_.empty()) {
          image.picture = std::move(spare_.back());
          spare_.pop_back();
        }
      }
      const bool more = !stop.stop_requested() && source_.next(image);
      {
        const std::scoped_lock lock(mutex_);
        if (more) {
          ready_.push_back(std::move(image));
        } else {
          ended_ = true;
          endedEarly_ = source_.endedEarly();
        }
      }
      imageReady_.notify_one();
      if (!more) return;
    }
  }

  FilmSource source_;  ///< touched by the thread only, once it runs
  const FilmInfo info_;
  mutable std::mutex mutex_;
  std::condition_variable imageReady_;
  std::condition_variable_any roomMade_;
  std::deque<FilmImage> ready_;
  std::vector<cv::Mat> spare_;
  bool ended_ = false;
  bool endedEarly_ = false;
  std::jthread thread_;  ///< last: it starts when all else is there, and ends before all else goes
};

FilmReaderAhead::FilmReaderAhead(FilmSource source) : impl_(std::make_unique<Impl>(std::move(source))) {}
FilmReaderAhead::~FilmReaderAhead() = default;
FilmReaderAhead::FilmReaderAhead(FilmReaderAhead&&) noexcept = default;
FilmReaderAhead& FilmReaderAhead::operator=(FilmReaderAhead&&) noexcept = default;

const FilmInfo& FilmReaderAhead::info() const {
  return impl_->info();
}
bool FilmReaderAhead::next(FilmImage& image) {
  return impl_->next(image);
}
bool FilmReaderAhead::endedEarly() const {
  return impl_->endedEarly();
}

}  // namespace ferrule
