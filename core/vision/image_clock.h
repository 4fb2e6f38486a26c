// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ferrule {

/// Turns the times that a film's reader claims into true presentation times: from the film's first image, strictly
/// rising, in seconds.
///
/// Two faults of readers and containers are mended:
/// - The last images of a film with B-frames come with time 0 (OpenCV issue 22141). A time that does not rise goes on
/// by
///   the last interval.
/// - Matroska rounds to whole milliseconds, which moves a fast ball by millimetres. While every time so far was a whole
///   millisecond that belongs to its image at the film's constant rate, the exact time of that rate is given.
class ImageClock {
 public:
  /// nominalRate_hz: the film's claimed rate, images a second; 0 when unknown.
  explicit ImageClock(double nominalRate_hz) : rate_hz_(nominalRate_hz) {}

  /// The time of the next image, s. claimed_ms: as its reader gives it, on any zero.
  double next(double claimed_ms);

 private:
  double rate_hz_;
  double first_ms_ = 0.0;
  double last_s_ = 0.0;
  double interval_s_ = 0.0;
  long count_ = 0;
  bool roundedToRate_ = true;
};

}  // namespace ferrule
