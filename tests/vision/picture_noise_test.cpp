// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/picture_noise.h"

#include <QtTest>
#include <array>
#include <opencv2/core.hpp>

#include "tests/support/ball_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;

cv::Mat table() {
  const std::array balls{DrawnBall{{0.2, 0.1}, {40.0, 35.0, 200.0}, 0.3, {}, 0.4},
                         DrawnBall{{-0.3, -0.1}, {225.0, 232.0, 235.0}, 0.0, {}, 0.4}};
  return drawBalls(overheadRig(), {70.0, 100.0, 33.0}, balls, kRadius_m);
}

cv::Mat noisy(const cv::Mat& picture, double deviation) {
  cv::RNG random(7);
  cv::Mat noise(picture.size(), CV_16SC3);
  random.fill(noise, cv::RNG::NORMAL, cv::Scalar::all(0.0), cv::Scalar::all(deviation));
  cv::Mat result;
  cv::add(picture, noise, result, cv::noArray(), CV_8UC3);
  return result;
}

}  // namespace

class PictureNoiseTest : public QObject {
  Q_OBJECT
 private slots:
  void theNoiseThatWasAddedIsFound();
  void aQuietFilmIsLeftAsItIs();
  void aNoisyFilmIsSmoothed();
};

void PictureNoiseTest::theNoiseThatWasAddedIsFound() {
  QVERIFY(sensorNoiseOf(table()) < 0.5);
  for (const double deviation : {3.0, 5.0, 8.0}) {
    const double found = sensorNoiseOf(noisy(table(), deviation));
    QVERIFY2(std::abs(found - deviation) < 0.12 * deviation, qPrintable(QString::number(found)));
  }
}

void PictureNoiseTest::aQuietFilmIsLeftAsItIs() {
  NoiseSmoother smoother;
  for (int i = 0; i < 20; ++i)
    QCOMPARE(cv::norm(smoother.quiet(noisy(table(), 1.0)), noisy(table(), 1.0), cv::NORM_INF), 0.0);
}

void PictureNoiseTest::aNoisyFilmIsSmoothed() {
  NoiseSmoother smoother;
  const cv::Rect bare(20, 20, 120, 120);
  cv::Scalar mean;
  cv::Scalar deviation;
  cv::meanStdDev(smoother.quiet(noisy(table(), 7.0))(bare), mean, deviation);
  QVERIFY(deviation[0] < 2.5 && deviation[1] < 2.5 && deviation[2] < 2.5);
  QVERIFY(std::abs(mean[1] - 100.0) < 0.5);
}

FERRULE_TEST(PictureNoiseTest)
#include "picture_noise_test.moc"
