// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdio>
#include <string>
#include <vector>

#include "core/table/track.h"
#include "tests/bench/accuracy/statistics.h"
#include "tests/bench/accuracy/truth.h"

namespace ferrule::bench {

/// What the readings of a film's images are worth.
///
/// A ball-image counts when the ball is in play, not in a hand, on the cloth and at least half visible.
/// - found: the nearest seen sample lies within 20 mm; its distance is the position's error. Otherwise missed.
/// - wrong name: that nearest sample carries another ball's name.
/// - false: a seen sample that is not in a hand, with no ball (seen from the camera) within 30 mm.
/// - covered: of the two coordinates of each found ball, those with the truth within 1.96 standard uncertainties.
struct ImageScore {
  std::vector<double> slowErrors_m;    ///< balls slower than 0.2 m/s
  std::vector<double> movingErrors_m;  ///< the others
  Tally wrongNames;
  Tally missed;
  Tally falseSamples;
  Tally slowCovered;
  Tally movingCovered;

  void add(const ImageScore& other);
};

/// Writes one line a ball-image for diagnosis, as CSV; does nothing without a file.
class ImageLog {
 public:
  explicit ImageLog(const std::string& path);
  ~ImageLog();
  ImageLog(const ImageLog&) = delete;
  ImageLog& operator=(const ImageLog&) = delete;

  void ball(const std::string& clip, const ImageReading& reading, const TrueBall& truth, const BallSample* nearest,
            const char* verdict);
  void falseSample(const std::string& clip, const ImageReading& reading, const BallSample& sample);

 private:
  std::FILE* file_ = nullptr;
};

/// Compares one image; reading.image counts the film's images from 0.
void compareImage(const std::string& clip, const Truth& truth, const ImageReading& reading, ImageScore& score,
                  ImageLog& log);
/// Compares all images of a film. Images without a reading count as missed.
[[nodiscard]] ImageScore compareImages(const std::string& clip, const Truth& truth,
                                       const std::vector<ImageReading>& readings, ImageLog& log);

}  // namespace ferrule::bench
