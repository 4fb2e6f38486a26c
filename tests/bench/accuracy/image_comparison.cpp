// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/image_comparison.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/units.h"

namespace ferrule::bench {

namespace {

constexpr double kVisibleShare = 0.5;
constexpr double kSlow_mps = 0.2;
constexpr double kFound_m = 0.020;
constexpr double kFalse_m = 0.030;
constexpr double kCoverage = 1.96;  ///< standard uncertainties either side of a 95 % interval

void append(std::vector<double>& to, const std::vector<double>& from) {
  to.insert(to.end(), from.begin(), from.end());
}

bool counts(const TrueBall& ball) {
  return ball.inPlay && !ball.inHand && ball.onCloth && ball.visible >= kVisibleShare;
}

TablePoint onPlane(const TrueBall& ball) {
  return {ball.position.x, ball.position.y};
}

const BallSample* nearestSeen(const ImageReading& reading, TablePoint place) {
  const BallSample* nearest = nullptr;
  for (const BallSample& sample : reading.balls) {
    if (!sample.seen || sample.inHand) continue;
    if (!nearest || distance(sample.position, place) < distance(nearest->position, place)) nearest = &sample;
  }
  return nearest && distance(nearest->position, place) <= kFound_m ? nearest : nullptr;
}

bool hasBallNear(const TrueImage& image, TablePoint place) {
  return std::any_of(image.balls.begin(), image.balls.end(), [&](const TrueBall& ball) {
    return distance(ball.apparent, place) <= kFalse_m || distance(onPlane(ball), place) <= kFalse_m;
  });
}

}  // namespace

void ImageScore::add(const ImageScore& other) {
  append(slowErrors_m, other.slowErrors_m);
  append(movingErrors_m, other.movingErrors_m);
  wrongNames.add(other.wrongNames);
  missed.add(other.missed);
  falseSamples.add(other.falseSamples);
  slowCovered.add(other.slowCovered);
  movingCovered.add(other.movingCovered);
}

ImageLog::ImageLog(const std::string& path) {
  if (path.empty()) return;
  file_ = std::fopen(path.c_str(), "w");
  if (file_ == nullptr) {
    std::fprintf(stderr, "%s cannot be written\n", path.c_str());
    return;
  }
  std::fputs("clip,image,time_s,verdict,ball,x_mm,y_mm,visible,speed_m_s,read_ball,read_x_mm,read_y_mm,error_mm,u_mm\n",
             file_);
}

ImageLog::~ImageLog() {
  if (file_ != nullptr) std::fclose(file_);
}

void ImageLog::ball(const std::string& clip, const ImageReading& reading, const TrueBall& truth,
                    const BallSample* nearest, const char* verdict) {
  if (file_ == nullptr) return;
  std::fprintf(file_, "%s,%ld,%.4f,%s,%s,%.2f,%.2f,%.2f,%.3f,", clip.c_str(), reading.image, reading.time_s, verdict,
               toText(truth.ball).c_str(), 1e3 * truth.position.x, 1e3 * truth.position.y, truth.visible,
               truth.speed_mps);
  if (nearest == nullptr) {
    std::fputs(",,,,\n", file_);
    return;
  }
  std::fprintf(file_, "%s,%.2f,%.2f,%.3f,%.3f\n", toText(nearest->ball).c_str(), 1e3 * nearest->position.x,
               1e3 * nearest->position.y, 1e3 * distance(nearest->position, onPlane(truth)),
               1e3 * nearest->standardUncertainty_m);
}

void ImageLog::falseSample(const std::string& clip, const ImageReading& reading, const BallSample& sample) {
  if (file_ == nullptr) return;
  std::fprintf(file_, "%s,%ld,%.4f,false,,,,,,%s,%.2f,%.2f,,%.3f\n", clip.c_str(), reading.image, reading.time_s,
               toText(sample.ball).c_str(), 1e3 * sample.position.x, 1e3 * sample.position.y,
               1e3 * sample.standardUncertainty_m);
}

void compareImage(const std::string& clip, const Truth& truth, const ImageReading& reading, ImageScore& score,
                  ImageLog& log) {
  if (reading.image < 0 || static_cast<std::size_t>(reading.image) >= truth.images.size()) return;
  const TrueImage& image = truth.images[static_cast<std::size_t>(reading.image)];
  for (const TrueBall& ball : image.balls) {
    if (!counts(ball)) continue;
    const TablePoint place = onPlane(ball);
    const BallSample* nearest = nearestSeen(reading, place);
    score.missed.add(nearest == nullptr);
    score.wrongNames.add(nearest != nullptr && nearest->ball != ball.ball);
    const char* verdict = nearest == nullptr ? "missed" : nearest->ball != ball.ball ? "wrong-name" : "found";
    log.ball(clip, reading, ball, nearest, verdict);
    if (nearest == nullptr) continue;
    const bool slow = ball.speed_mps < kSlow_mps;
    (slow ? score.slowErrors_m : score.movingErrors_m).push_back(distance(nearest->position, place));
    Tally& covered = slow ? score.slowCovered : score.movingCovered;
    const double half_m = kCoverage * nearest->standardUncertainty_m;
    covered.add(std::abs(nearest->position.x - place.x) <= half_m);
    covered.add(std::abs(nearest->position.y - place.y) <= half_m);
  }
  for (const BallSample& sample : reading.balls) {
    if (!sample.seen || sample.inHand) continue;
    const bool isFalse = !hasBallNear(image, sample.position);
    score.falseSamples.add(isFalse);
    if (isFalse) log.falseSample(clip, reading, sample);
  }
}

ImageScore compareImages(const std::string& clip, const Truth& truth, const std::vector<ImageReading>& readings,
                         ImageLog& log) {
  ImageScore score;
  std::vector<bool> read(truth.images.size(), false);
  for (const ImageReading& reading : readings) {
    if (reading.image >= 0 && static_cast<std::size_t>(reading.image) < read.size()) {
      read[static_cast<std::size_t>(reading.image)] = true;
    }
    compareImage(clip, truth, reading, score, log);
  }
  for (std::size_t i = 0; i < read.size(); ++i) {
    if (read[i]) continue;
    ImageReading nothing;
    nothing.image = static_cast<long>(i);
    nothing.time_s = truth.images[i].time_s;
    compareImage(clip, truth, nothing, score, log);
  }
  return score;
}

}  // namespace ferrule::bench
