// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_candidates.h"

#include <QtTest>
#include <algorithm>
#include <array>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "tests/support/ball_picture.h"
#include "tests/support/small_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;
const cv::Vec3d kCloth{70.0, 100.0, 33.0};
const cv::Vec3d kRed{40.0, 35.0, 200.0};
const cv::Vec3d kWhite{225.0, 232.0, 235.0};
const cv::Vec3d kSkin{120.0, 150.0, 205.0};

DrawnBall at(TablePoint place, cv::Vec3d colour = kRed) {
  return {place, colour, 0.0, {}, 0.0};
}

/// Looks at a picture on a cloth that was seen empty before. arm: also draws a forearm across these places.
std::vector<BallCandidate> found(std::span<const DrawnBall> balls, bool clusters, std::span<const cv::Point> arm = {}) {
  const Rig rig = overheadRig();
  const SmallScale scale = smallScaleFor(rig, kRadius_m);
  ClothModel cloth(rig, Table{}, scale);
  cloth.start(shrunk(drawBalls(rig, kCloth, {}, kRadius_m), scale));
  cv::Mat picture = drawBalls(rig, kCloth, balls, kRadius_m);
  for (std::size_t i = 0; i + 1 < arm.size(); ++i)
    cv::line(picture, arm[i], arm[i + 1], cv::Scalar(kSkin[0], kSkin[1], kSkin[2]), 34, cv::LINE_AA);
  const cv::Mat small = shrunk(picture, scale);
  const CandidateFinder finder(rig, MeasuredTable{}, scale, cloth);
  return finder.find(picture, small, cloth.difference(small), {0, 0, small.cols, small.rows}, {}, {}, clusters);
}

const BallCandidate* nearest(const std::vector<BallCandidate>& candidates, TablePoint place) {
  const auto best = std::ranges::min_element(
      candidates, {}, [&](const BallCandidate& candidate) { return distance(candidate.position, place); });
  return best == candidates.end() || distance(best->position, place) > 0.003 ? nullptr : &*best;
}

}  // namespace

class BallCandidatesTest : public QObject {
  Q_OBJECT
 private slots:
  void bareClothHoldsNone();
  void ballsApartAreFoundToHalfAMillimetre();
  void ballsThatTouchAreToldApart();
  void anArmIsNoBall();
  void aFastStreakLiesAtMidExposure();
  void aKnownOutlineIsNotFoundAgain();
};

void BallCandidatesTest::bareClothHoldsNone() {
  QVERIFY(found({}, true).empty());
}

void BallCandidatesTest::ballsApartAreFoundToHalfAMillimetre() {
  const std::array balls{at({0.2, 0.1}), at({-0.3, -0.2}, kWhite), at({-0.1, 0.25})};
  const auto candidates = found(balls, false);
  QCOMPARE(candidates.size(), balls.size());
  for (const DrawnBall& ball : balls) {
    const BallCandidate* candidate = nearest(candidates, ball.position);
    QVERIFY(candidate != nullptr);
    QVERIFY2(distance(candidate->position, ball.position) < 0.0005,
             qPrintable(QString::number(1e3 * distance(candidate->position, ball.position))));
    QVERIFY(candidate->alone);
    QVERIFY(candidate->belief() > 0.8);
  }
  QVERIFY(nearest(candidates, balls[1].position)->colours.white > 0.8);
  QVERIFY(nearest(candidates, balls[0].position)->colours.coloured > 0.8);
}

void BallCandidatesTest::ballsThatTouchAreToldApart() {
  std::vector<DrawnBall> rack;
  for (int row = 0; row < 3; ++row) {
    for (int i = 0; i <= row; ++i)
      rack.push_back(at({0.1 + row * kRadius_m * 1.7320508, (2.0 * i - row) * kRadius_m}, i % 2 ? kWhite : kRed));
  }
  const auto candidates = found(rack, true);
  int right = 0;
  for (const DrawnBall& ball : rack)
    right += nearest(candidates, ball.position) != nullptr ? 1 : 0;
  QCOMPARE(right, 6);
}

void BallCandidatesTest::anArmIsNoBall() {
  const std::array arm{cv::Point(320, 400), cv::Point(350, 150)};
  const std::array balls{at({-0.3, 0.1})};
  const auto candidates = found(balls, false, arm);
  QVERIFY(nearest(candidates, balls[0].position) != nullptr);
  for (const BallCandidate& candidate : candidates) {
    if (distance(candidate.position, balls[0].position) < 0.003) continue;
    QVERIFY2(candidate.belief() < 0.5, qPrintable(QString::number(candidate.belief())));
  }
}

void BallCandidatesTest::aFastStreakLiesAtMidExposure() {
  DrawnBall ball = at({0.05, 0.05});
  ball.streak = {0.06, 0.03};
  const auto candidates = found(std::array{ball}, false);
  QVERIFY(!candidates.empty());
  const auto& best = *std::ranges::min_element(
      candidates, {}, [&](const BallCandidate& candidate) { return distance(candidate.position, ball.position); });
  QVERIFY2(distance(best.position, ball.position) < 0.003,
           qPrintable(QString::number(1e3 * distance(best.position, ball.position))));
}

void BallCandidatesTest::aKnownOutlineIsNotFoundAgain() {
  const Rig rig = overheadRig();
  const SmallScale scale = smallScaleFor(rig, kRadius_m);
  ClothModel cloth(rig, Table{}, scale);
  cloth.start(shrunk(drawBalls(rig, kCloth, {}, kRadius_m), scale));
  const DrawnBall ball = at({0.1, 0.0});
  const cv::Mat picture = drawBalls(rig, kCloth, std::array{ball}, kRadius_m);
  const cv::Mat small = shrunk(picture, scale);
  const CandidateFinder finder(rig, MeasuredTable{}, scale, cloth);
  const auto candidate = finder.fitNear(picture, ball.position + TableVector{0.004, -0.003}, {}, {}, {});
  QVERIFY(candidate.has_value());
  QVERIFY(distance(candidate->position, ball.position) < 0.0005);
  // What is explained is 0 in the difference.
  cv::Mat away = cloth.difference(small);
  const ImagePoint there = scale.toSmall(candidate->outline.centre);
  cv::circle(away, {static_cast<int>(std::lround(there.x)), static_cast<int>(std::lround(there.y))}, 12, cv::Scalar(0),
             cv::FILLED);
  const std::array known{candidate->outline};
  QVERIFY(finder.find(picture, small, away, {0, 0, small.cols, small.rows}, known, {}, false).empty());
}

FERRULE_TEST(BallCandidatesTest)
#include "ball_candidates_test.moc"
