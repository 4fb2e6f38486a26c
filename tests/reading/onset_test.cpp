// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/onset.h"

#include <QtTest>
#include <cmath>
#include <functional>

#include "core/base/random.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kNoise_m = 0.0005;
constexpr double kInterval_s = 1.0 / 60.0;
constexpr RestingPlace kPlace{{0.1, -0.2}, 0.0002};

/// What a camera sees of a ball that leaves its place at start_s: way_m gives the distance gone since then.
OnsetJudgement judged(const std::function<double(double)>& way_m, double seen_s, double start_s = 0.004,
                      double interval_s = kInterval_s) {
  Random random(3);
  std::vector<PathPoint> points;
  for (double t = interval_s; t <= seen_s + 1e-9; t += interval_s) {
    const double gone_m = t > start_s ? way_m(t - start_s) : 0.0;
    const TableVector noise{kNoise_m * random.normal(), kNoise_m * random.normal()};
    points.push_back({t, kPlace.position + TableVector{gone_m, 0.0} + noise, kNoise_m});
  }
  return judgeOnset(kPlace, 0.0, points, interval_s);
}

std::function<double(double)> even(double speed_mps) {
  return [=](double t) { return speed_mps * t; };
}

std::function<double(double)> gathering(double acceleration_mps2) {
  return [=](double t) { return 0.5 * acceleration_mps2 * t * t; };
}

}  // namespace

class OnsetTest : public QObject {
  Q_OBJECT
 private slots:
  void oneImageIsTooFewToTell();
  void aBallAtFullSpeedAtOnceWasStruck();
  void aFollowStrokeThatGathersSpeedFromItsSpinWasStruck();
  void aHandThatGathersSpeedPushed();
  void aBallThatOnlyTremblesWasNotStruck();
  void theStartIsDrawnBackFromTheFirstPoints();
};

void OnsetTest::oneImageIsTooFewToTell() {
  QVERIFY(judgeOnset(kPlace, 0.0, {}, kInterval_s).onset == Onset::Waiting);
  QVERIFY(judged(even(2.0), kInterval_s).onset == Onset::Waiting);
}

void OnsetTest::aBallAtFullSpeedAtOnceWasStruck() {
  for (const double speed_mps : {0.3, 1.0, 3.0, 7.0}) {
    QVERIFY2(judged(even(speed_mps), 0.35).onset == Onset::Struck, qPrintable(QString::number(speed_mps)));
  }
  QVERIFY(judged(even(1.5), 0.2, 0.002, 1.0 / 240.0).onset == Onset::Struck);
}

/// Tip at 0.5 R above the centre: spin 1.25 times that of a roll, v rises to 5/7 v0 + 2/7 * 1.25 v0 = 1.0714 v0.
void OnsetTest::aFollowStrokeThatGathersSpeedFromItsSpinWasStruck() {
  const auto follow = [](double t) {
    const double v0 = 1.0;
    const double until_s = (0.0714 * v0) / (0.2 * 9.81);
    const double slid_s = std::min(t, until_s);
    return v0 * slid_s + 0.5 * 0.2 * 9.81 * slid_s * slid_s + std::max(0.0, t - until_s) * 1.0714 * v0;
  };
  QVERIFY(judged(follow, 0.35).onset == Onset::Struck);
}

void OnsetTest::aHandThatGathersSpeedPushed() {
  for (const double acceleration_mps2 : {1.0, 2.0, 4.0}) {
    QVERIFY2(judged(gathering(acceleration_mps2), 0.4).onset == Onset::Pushed,
             qPrintable(QString::number(acceleration_mps2)));
  }
}

void OnsetTest::aBallThatOnlyTremblesWasNotStruck() {
  QVERIFY(judged([](double) { return 0.003; }, 0.1).onset == Onset::Waiting);
  QVERIFY(judged([](double) { return 0.003; }, 0.5).onset == Onset::Pushed);
}

void OnsetTest::theStartIsDrawnBackFromTheFirstPoints() {
  const OnsetJudgement judgement = judged(even(2.0), 0.2, 0.010);
  // One image may hide half of its interval; the noise of a place adds 0.5 mm at 2 m/s.
  QVERIFY2(std::abs(judgement.start_s - 0.010) < 0.002, qPrintable(QString::number(judgement.start_s)));
  QVERIFY(std::abs(judgement.speed_mps - 2.0) < 0.1);
}

FERRULE_TEST(OnsetTest)
#include "onset_test.moc"
