// SPDX-License-Identifier: GPL-3.0-or-later
// Films drawn here, made worse as cheap cameras and bad lamps would: what is followed must not depend on them.
#include "core/vision/ball_tracker.h"

#include <QtTest>
#include <algorithm>
#include <cmath>
#include <functional>
#include <iterator>
#include <numbers>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>
#include <string>
#include <vector>

#include "tests/support/ball_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRate_hz = 60.0;
constexpr double kRadius_m = 0.028575;
constexpr double kOpening_s = 0.5;  ///< names and places settle in it
constexpr double kStrike_s = 1.2;
constexpr double kEnd_s = 2.6;
constexpr double kWithin_m = 0.004;  ///< the most that a ball may be off on any film; two pixels of these pictures
const cv::Vec3d kCloth{70.0, 110.0, 40.0};

/// The set's own colour of a ball, B, G, R.
cv::Vec3d colourOf(int number) {
  const BallColour colour = MeasuredTable{}.balls.colours[static_cast<std::size_t>(number)];
  return {static_cast<double>(colour.blue), static_cast<double>(colour.green), static_cast<double>(colour.red)};
}

struct FilmedBall {
  int number = 0;
  TablePoint position;
};

/// Five balls; after the strike the cue ball rolls between two of them, and the red ball is hit by it and rolls on.
std::vector<FilmedBall> layAt(double time_s) {
  constexpr double kRed_s = 0.5;  // of rolling until the balls meet
  constexpr double kSpeed_mps = 0.6;
  const double rolled_s = std::max(0.0, time_s - kStrike_s);
  const double cue_s = std::min(rolled_s, kRed_s);
  const double red_s = std::max(0.0, rolled_s - kRed_s);
  const TablePoint cue{-0.4 + kSpeed_mps * cue_s, 0.0};
  const TablePoint red{-0.4 + kSpeed_mps * kRed_s + 2.0 * kRadius_m + kSpeed_mps * red_s, 0.0};
  return {{0, cue}, {3, red}, {1, {0.25, 0.20}}, {8, {-0.15, -0.16}}, {4, {0.35, -0.15}}};
}

using Spoil = std::function<cv::Mat(const cv::Mat&, double time_s)>;

cv::RNG& randomness() {
  static cv::RNG random(11);
  return random;
}

cv::Mat noisy(const cv::Mat& picture, double deviation) {
  cv::Mat noise(picture.size(), CV_16SC3);
  randomness().fill(noise, cv::RNG::NORMAL, cv::Scalar::all(0.0), cv::Scalar::all(deviation));
  cv::Mat result;
  cv::add(picture, noise, result, cv::noArray(), CV_8UC3);
  return result;
}

double flicker(double time_s, double amount) {
  constexpr double kBeat_hz = 6.7;
  return 1.0 + amount * std::sin(2.0 * std::numbers::pi * kBeat_hz * time_s);
}

cv::Mat lit(const cv::Mat& picture, double factor) {
  cv::Mat result;
  picture.convertTo(result, -1, factor);
  return result;
}

cv::Mat compressed(const cv::Mat& picture, int quality) {
  std::vector<uchar> bytes;
  cv::imencode(".jpg", picture, bytes, {cv::IMWRITE_JPEG_QUALITY, quality});
  return cv::imdecode(bytes, cv::IMREAD_COLOR);
}

/// Follows the film and says what is wrong first; empty when every image after the opening is read well.
QString faultIn(const Spoil& spoil, double within_m = kWithin_m) {
  const Rig rig = overheadRig();
  BallTracker tracker(rig, MeasuredTable{});
  std::vector<ImageReading> readings;
  const auto takeAll = [&] { std::ranges::move(tracker.take(), std::back_inserter(readings)); };
  const long images = std::lround(kEnd_s * kRate_hz);
  for (long image = 0; image < images; ++image) {
    const double time_s = static_cast<double>(image) / kRate_hz;
    std::vector<DrawnBall> drawn;
    for (const FilmedBall& ball : layAt(time_s))
      drawn.push_back({ball.position, colourOf(ball.number), 0.0, {}, 0.3});
    tracker.feed(spoil(drawBalls(rig, kCloth, drawn, kRadius_m), time_s), image, time_s);
    takeAll();
  }
  tracker.finish();
  takeAll();
  if (readings.size() != static_cast<std::size_t>(images)) return "images are missing";
  for (const ImageReading& reading : readings) {
    if (reading.time_s < kOpening_s) continue;
    const auto balls = layAt(reading.time_s);
    for (const FilmedBall& ball : balls) {
      const auto sample = std::ranges::find(reading.balls, BallName(ball.number), &BallSample::ball);
      const auto at = QStringLiteral("%1 s, ball %2: ").arg(reading.time_s).arg(ball.number);
      if (sample == reading.balls.end()) return at + "not there";
      if (!sample->seen) return at + "not seen";
      const double off_m = distance(sample->position, ball.position);
      if (off_m > within_m) return at + QStringLiteral("%1 mm off").arg(1e3 * off_m);
    }
    if (reading.balls.size() != balls.size())
      return QStringLiteral("%1 s: more balls than there are").arg(reading.time_s);
  }
  return {};
}

}  // namespace

class BallTrackerTest : public QObject {
  Q_OBJECT
 private slots:
  void aGoodFilmIsFollowed();
  void aNoisySensorIsBorne();
  void lampsThatFlickerAndFadeAreBorne();
  void aDarkRoomIsBorne();
  void aStrongCompressionIsBorne();
  void aTelephonesPictureIsBorne();
};

void BallTrackerTest::aGoodFilmIsFollowed() {
  QCOMPARE(faultIn([](const cv::Mat& picture, double) { return picture; }, 0.0015), QString());
}

void BallTrackerTest::aNoisySensorIsBorne() {
  QCOMPARE(faultIn([](const cv::Mat& picture, double) { return noisy(picture, 7.0); }), QString());
}

void BallTrackerTest::lampsThatFlickerAndFadeAreBorne() {
  const auto spoil = [](const cv::Mat& picture, double time_s) {
    return lit(picture, (1.0 - 0.25 * time_s / kEnd_s) * flicker(time_s, 0.08));
  };
  QCOMPARE(faultIn(spoil), QString());
}

void BallTrackerTest::aDarkRoomIsBorne() {
  QCOMPARE(faultIn([](const cv::Mat& picture, double) { return noisy(lit(picture, 0.45), 4.0); }), QString());
}

void BallTrackerTest::aStrongCompressionIsBorne() {
  QCOMPARE(faultIn([](const cv::Mat& picture, double) { return compressed(picture, 35); }), QString());
}

void BallTrackerTest::aTelephonesPictureIsBorne() {
  const auto spoil = [](const cv::Mat& picture, double time_s) {
    cv::Mat blurred;
    cv::GaussianBlur(picture, blurred, {}, 1.5);
    cv::Mat sharpened;
    cv::addWeighted(picture, 2.0, blurred, -1.0, 0.0, sharpened);
    return compressed(noisy(lit(sharpened, flicker(time_s, 0.05)), 3.0), 55);
  };
  QCOMPARE(faultIn(spoil), QString());
}

FERRULE_TEST(BallTrackerTest)
#include "ball_tracker_test.moc"
