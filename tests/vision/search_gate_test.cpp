// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/search_gate.h"

#include <QtTest>
#include <array>

#include "core/vision/track_matching.h"
#include "tests/support/ball_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;
constexpr double kInterval_s = 1.0 / 60.0;

BallTrack movingBall(int id, TablePoint at, TableVector velocity_mps) {
  BallTrack track;
  track.id = id;
  track.state = TrackState::Moving;
  track.position = at;
  track.velocity_mps = velocity_mps;
  track.fixes = {{-kInterval_s, at}, {0.0, at}};
  return track;
}

}  // namespace

class SearchGateTest : public QObject {
  Q_OBJECT
 private slots:
  void aBallMayBeAsFarAsItsSpeedLeads();
  void aFastBallThatCouldHitItWidensItsGate();
  void aLostBallMayHaveAnySpeed();
  void gatesThatOverlapBecomeOne();
  void aGateKeepsWithinThePicture();
};

void SearchGateTest::aBallMayBeAsFarAsItsSpeedLeads() {
  const std::array slow{movingBall(1, {0.0, 0.0}, {0.5, 0.0})};
  const std::array fast{movingBall(1, {0.0, 0.0}, {3.0, 0.0})};
  const double slow_m = reachSinceSeen_m(slow[0], slow, kInterval_s, kRadius_m);
  const double fast_m = reachSinceSeen_m(fast[0], fast, kInterval_s, kRadius_m);
  QVERIFY(slow_m > 0.5 * kInterval_s + kRadius_m);
  QVERIFY(fast_m > 3.0 * kInterval_s + kRadius_m);
  QVERIFY(fast_m > slow_m + 2.5 * kInterval_s);
}

void SearchGateTest::aFastBallThatCouldHitItWidensItsGate() {
  const BallTrack ball = movingBall(1, {0.0, 0.0}, {0.1, 0.0});
  const std::array alone{ball, movingBall(2, {0.9, 0.0}, {-6.0, 0.0})};
  const std::array threatened{ball, movingBall(2, {0.12, 0.0}, {-6.0, 0.0})};
  QVERIFY(reachSinceSeen_m(ball, threatened, kInterval_s, kRadius_m) >
          reachSinceSeen_m(ball, alone, kInterval_s, kRadius_m) + 5.0 * kInterval_s);
}

void SearchGateTest::aLostBallMayHaveAnySpeed() {
  std::array lost{movingBall(1, {0.0, 0.0}, {0.1, 0.0})};
  lost[0].missed = 1;
  QVERIFY(reachSinceSeen_m(lost[0], lost, kInterval_s, kRadius_m) > kHighestSpeed_mps * kInterval_s);
}

void SearchGateTest::gatesThatOverlapBecomeOne() {
  std::vector<cv::Rect> gates;
  addGate(gates, {0, 0, 10, 10});
  addGate(gates, {20, 0, 10, 10});
  addGate(gates, {});
  QCOMPARE(gates.size(), std::size_t{2});
  // It bridges both, and the whole then reaches the third.
  addGate(gates, {5, 20, 5, 5});
  addGate(gates, {8, 5, 15, 2});
  QCOMPARE(gates.size(), std::size_t{2});
  addGate(gates, {0, 8, 30, 14});
  QCOMPARE(gates.size(), std::size_t{1});
  QVERIFY(gates.front() == cv::Rect(0, 0, 30, 25));
}

void SearchGateTest::aGateKeepsWithinThePicture() {
  const Rig rig = overheadRig();
  const cv::Size picture(320, 180);
  const auto outline = silhouetteOf(rig, {0.0, 0.0}, kRadius_m);
  const cv::Rect gate = gateAround(*outline, 2.0, {2}, picture);
  QVERIFY(std::abs(gate.width - 2.0 * outline->radius_px()) < 2.0);
  QVERIFY(gate.contains({160, 90}));
  const auto atEdge = silhouetteOf(rig, {0.66, 0.0}, kRadius_m);
  const cv::Rect cut = gateAround(*atEdge, 4.0, {2}, picture);
  QVERIFY(!cut.empty() && (cut & cv::Rect({0, 0}, picture)) == cut);
}

FERRULE_TEST(SearchGateTest)
#include "search_gate_test.moc"
