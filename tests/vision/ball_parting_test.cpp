// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_parting.h"

#include <QtTest>
#include <array>
#include <cmath>

#include "core/base/random.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;

BallSample ballAt(int number, TablePoint at, double u_m = 0.001) {
  return {BallName(number), at, u_m, true, false};
}

}  // namespace

class BallPartingTest : public QObject {
  Q_OBJECT
 private slots:
  void ballsThatDoNotOverlapStay();
  void theUncertainBallGivesWay();
  void aRackReadWithNoiseComesNearerToTheTruth();
  void aBallInFlightPushesNone();
};

void BallPartingTest::ballsThatDoNotOverlapStay() {
  std::array balls{ballAt(1, {0.0, 0.0}), ballAt(2, {2.0 * kRadius_m, 0.0}), ballAt(3, {0.3, 0.2})};
  const auto before = balls;
  partBalls(balls, kRadius_m);
  QVERIFY(balls == before);
}

void BallPartingTest::theUncertainBallGivesWay() {
  std::array balls{ballAt(1, {0.0, 0.0}, 0.001), ballAt(2, {2.0 * kRadius_m - 0.005, 0.0}, 0.002)};
  partBalls(balls, kRadius_m);
  // In proportion to the variances, 1 to 4.
  QVERIFY(std::abs(balls[0].position.x + 0.001) < 2e-6);
  QVERIFY(std::abs(balls[1].position.x - (2.0 * kRadius_m - 0.001)) < 2e-6);
  QCOMPARE(balls[0].position.y, 0.0);
}

void BallPartingTest::aRackReadWithNoiseComesNearerToTheTruth() {
  Random random(7);
  double before = 0.0;
  double after = 0.0;
  for (int trial = 0; trial < 50; ++trial) {
    std::vector<BallSample> balls;
    std::vector<TablePoint> truth;
    for (int row = 0; row < 5; ++row) {
      for (int place = 0; place <= row; ++place) {
        truth.push_back({std::sqrt(3.0) * kRadius_m * row, kRadius_m * (2.0 * place - row)});
        const TableVector noise{0.001 * random.normal(), 0.001 * random.normal()};
        balls.push_back(ballAt(static_cast<int>(balls.size()) + 1, truth.back() + noise, 0.001));
      }
    }
    const auto squares = [&] {
      double sum = 0.0;
      for (std::size_t i = 0; i < balls.size(); ++i)
        sum += std::pow(distance(balls[i].position, truth[i]), 2);
      return sum;
    };
    before += squares();
    partBalls(balls, kRadius_m);
    after += squares();
    for (std::size_t i = 0; i < balls.size(); ++i) {
      for (std::size_t j = 0; j < i; ++j)
        QVERIFY(distance(balls[i].position, balls[j].position) > 2.0 * kRadius_m - 2e-5);
    }
  }
  QVERIFY(after < 0.9 * before);
}

void BallPartingTest::aBallInFlightPushesNone() {
  std::array balls{ballAt(1, {0.0, 0.0}), ballAt(2, {1.2 * kRadius_m, 0.0})};
  const auto before = balls;
  partBalls(balls, kRadius_m);
  QVERIFY(balls == before);
}

FERRULE_TEST(BallPartingTest)
#include "ball_parting_test.moc"
