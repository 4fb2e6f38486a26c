// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <condition_variable>
#include <deque>
#include <memory>
#include <mutex>
#include <opencv2/core/mat.hpp>
#include <string>
#include <thread>

#include "core/base/error.h"

namespace ferrule {

/// Keeps what a camera sees in a film file, beside the measuring and without holding it up: images wait in a queue of
/// its own, and one that finds it full is dropped and counted. The file, which its owner alone may read, can be played
/// up to the last written image even when the program ends in the middle.
///
/// The file has one constant rate, that of the first images. Where images are missing the last one is shown again, so
/// that each stands within the spacing of two images from the time at which it was taken; with a steady camera within
/// half of it.
class FilmKeeper {
 public:
  static constexpr std::size_t kMostWaiting = 48;  ///< pictures are shared with who measures, not copied
  /// With less free space the film ends, so that the record still has room.
  static constexpr std::uintmax_t kLeastFree_bytes = 512ULL << 20U;

  /// Makes the file, and its folder. Its ending says which form: .mkv. Errors: FileNotWritable.
  [[nodiscard]] static Result<std::unique_ptr<FilmKeeper>> make(const std::string& path,
                                                                std::uintmax_t leastFree_bytes = kLeastFree_bytes);
  /// As finish().
  ~FilmKeeper();
  FilmKeeper(const FilmKeeper&) = delete;
  FilmKeeper& operator=(const FilmKeeper&) = delete;

  [[nodiscard]] const std::string& path() const { return path_; }
  /// picture: 8-bit BGR, written to by nobody from now on. time_s: from the first image, rising. Never waits.
  void offer(cv::Mat picture, double time_s);
  /// Whether another image would be kept now; also once none is kept any more, since waiting would not help.
  [[nodiscard]] bool hasRoom() const;

  struct Counts {
    long came = 0;
    long dropped = 0;         ///< of them, that are not in the film
    bool outOfSpace = false;  ///< it ended early for want of free space, or the file could not be written any more

    bool operator==(const Counts&) const = default;
  };
  [[nodiscard]] Counts counts() const;

  /// Writes what waits and closes the file. False where no image came into it; the empty file is gone then.
  bool finish();
  /// Ends it and takes the file away.
  void discard();

 private:
  struct Image {
    cv::Mat picture;
    double time_s = 0.0;
  };

  FilmKeeper(std::string path, std::uintmax_t leastFree_bytes);
  void write();
  [[nodiscard]] bool hasSpace() const;

  const std::string path_;
  const std::uintmax_t leastFree_bytes_;
  mutable std::mutex mutex_;
  std::condition_variable came_;
  std::deque<Image> waiting_;
  Counts counts_;
  bool closed_ = false;
  long written_ = 0;  ///< images of the file; for the writing thread until it ended
  std::jthread thread_;
};

}  // namespace ferrule
