// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <deque>
#include <map>
#include <optional>
#include <span>
#include <vector>

#include "core/table/track.h"
#include "core/vision/ball_track.h"

namespace ferrule {

/// Holds back readings until the balls' names are settled.
class ReadingQueue {
 public:
  void begin(long image, double time_s) { pending_.push_back({image, time_s, {}}); }
  /// Adds a ball to the newest image.
  void add(int track, TablePoint position, double standardUncertainty_m, bool seen) {
    pending_.back().samples.push_back({track, position, standardUncertainty_m, seen});
  }
  /// Takes back what was said of a track after a time.
  void forgetAfter(int track, double time_s);
  /// Moves the images older than lag_s before now_s to ready, named with all that the tracks know; lag_s < 0: all.
  void release(std::span<BallTrack> tracks, double now_s, double lag_s, std::vector<ImageReading>& ready);
  /// The newest image that still waits, named with what the tracks know by now; a name may yet change.
  [[nodiscard]] std::optional<ImageReading> newest(std::span<const BallTrack> tracks) const;

 private:
  struct Sample {
    int track = 0;
    TablePoint position;
    double standardUncertainty_m = 0.0;
    bool seen = false;
  };
  struct Image {
    long number = 0;
    double time_s = 0.0;
    std::vector<Sample> samples;
  };
  [[nodiscard]] static ImageReading named(const Image& image, const std::map<int, BallName>& nameOf);

  std::deque<Image> pending_;
};

}  // namespace ferrule
