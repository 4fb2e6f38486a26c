// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <optional>
#include <stop_token>
#include <utility>

#include "core/vision/film_source.h"

namespace ferrule {

/// Who sees the images of a queue too.
struct ImageWitness {
  /// time from the first one. Called on the thread that offers, and must not hold it up.
  std::function<void(const cv::Mat& picture, double time_s)> show;
  /// Whether another image would be taken now. Left empty: always.
  std::function<bool()> hasRoom;
};

/// Images on their way from a camera to the thread that measures them. At most so many wait; one that comes while the
/// queue is full is dropped and counted, so that measuring never falls further behind than the queue is long.
///
/// One thread puts images in, another takes them out; anyone may count.
class ImageQueue {
 public:
  static constexpr std::size_t kMostWaiting = 24;  ///< nearly a second of a usual camera; 66 MB at 1280x720

  explicit ImageQueue(std::size_t mostWaiting = kMostWaiting) : mostWaiting_(mostWaiting) {}

  /// picture: 8-bit BGR, written to by nobody from now on. time_s: of the camera's clock, whatever it counts from.
  /// False where it was dropped: the queue is full or closed, or the time does not rise.
  bool offer(cv::Mat picture, double time_s);
  /// Whether another image would be taken now, by the witness too. A camera does not ask; a source that can wait does.
  [[nodiscard]] bool hasRoom() const;
  /// Shows every image to somebody else too, also those that find the queue full. To be set before the first image.
  void setWitness(ImageWitness witness) { witness_ = std::move(witness); }
  /// Images that were lost on their way here.
  void countLost(long images);
  /// No more images come. Those that wait are still handed out.
  void close();

  /// The next image, numbered through all that came, its time counted from the first one. Waits for it; nothing once
  /// the queue is closed and empty, or a stop is asked for.
  [[nodiscard]] std::optional<FilmImage> next(const std::stop_token& stop);

  struct Counts {
    long came = 0;     ///< all images, dropped ones among them
    long dropped = 0;  ///< lost ones among them
    long waiting = 0;  ///< how far measuring is behind

    bool operator==(const Counts&) const = default;
  };
  [[nodiscard]] Counts counts() const;

 private:
  const std::size_t mostWaiting_;
  ImageWitness witness_;
  mutable std::mutex mutex_;
  std::condition_variable_any changed_;
  std::deque<FilmImage> waiting_;
  std::optional<double> first_s_;  ///< of the camera's clock
  double last_s_ = 0.0;
  long came_ = 0;
  long dropped_ = 0;
  bool closed_ = false;
};

}  // namespace ferrule
