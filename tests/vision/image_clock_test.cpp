// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/image_clock.h"

#include <QtTest>
#include <cmath>
#include <vector>

#include "tests/support/test_registry.h"

using namespace ferrule;

class ImageClockTest : public QObject {
  Q_OBJECT
 private slots:
  void timesStartAtTheFirstImage();
  void lastImagesWithoutATimeGoOnByTheLastInterval();
  void aTimeThatGoesBackStillRises();
  void wholeMillisecondsAtAConstantRateBecomeExact();
  void wholeMillisecondsAtNoConstantRateStay();
  void aPauseEndsTheConstantRate();
};

namespace {

std::vector<double> timesOf(double rate_hz, const std::vector<double>& claimed_ms) {
  ImageClock clock(rate_hz);
  std::vector<double> times;
  for (const double claimed : claimed_ms)
    times.push_back(clock.next(claimed));
  return times;
}

bool near(double a, double b) {
  return std::abs(a - b) < 1e-9;
}

}  // namespace

void ImageClockTest::timesStartAtTheFirstImage() {
  const auto times = timesOf(25.0, {1400.25, 1440.25});
  QCOMPARE(times[0], 0.0);
  QVERIFY(near(times[1], 0.040));
}

void ImageClockTest::lastImagesWithoutATimeGoOnByTheLastInterval() {
  const auto times = timesOf(20.0, {0.0, 33.25, 99.75, 0.0, 0.0});
  QVERIFY(near(times[3], 0.16625));
  QVERIFY(near(times[4], 0.23275));
}

void ImageClockTest::aTimeThatGoesBackStillRises() {
  const auto times = timesOf(30.0, {0.0, 40.5, 20.5, 40.5, 130.5});
  for (std::size_t i = 1; i < times.size(); ++i)
    QVERIFY(times[i] > times[i - 1]);
}

void ImageClockTest::wholeMillisecondsAtAConstantRateBecomeExact() {
  const auto times = timesOf(60.0, {0.0, 17.0, 33.0, 50.0, 67.0, 0.0});
  for (std::size_t i = 0; i < times.size(); ++i)
    QVERIFY(near(times[i], static_cast<double>(i) / 60.0));
}

void ImageClockTest::wholeMillisecondsAtNoConstantRateStay() {
  const auto times = timesOf(20.3, {0.0, 33.0, 67.0, 134.0});
  QVERIFY(near(times[1], 0.033));
  QVERIFY(near(times[3], 0.134));
}

void ImageClockTest::aPauseEndsTheConstantRate() {
  const auto times = timesOf(60.0, {0.0, 17.0, 2017.0, 2033.0});
  QVERIFY(near(times[1], 1.0 / 60.0));
  QVERIFY(near(times[2], 2.017));
  QVERIFY(near(times[3], 2.033));
}

FERRULE_TEST(ImageClockTest)
#include "image_clock_test.moc"
