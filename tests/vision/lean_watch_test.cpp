// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/lean_watch.h"

#include <QtTest>
#include <opencv2/imgproc.hpp>

#include "tests/support/ball_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Pictures of cloth and balls, with things laid over them in the table's own measures.
class LeanWatchTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void anArmOverTheCushionIsSomebody();
  void ballsACueAndLinesOfLightAreNobody();
  void ballsAgainstACushionAreNobody();
  void whoeverStepsBackIsToldOnce();
  void aDarkerLampIsNobody();

 private:
  [[nodiscard]] cv::Mat withBar(TablePoint from, TablePoint to, double width_m, cv::Scalar colour) const;

  std::shared_ptr<const Rig> rig_;
  MeasuredTable measured_;
  std::optional<LeanWatch> watch_;
  cv::Mat bare_;
};

namespace {

constexpr double kRadius_m = 0.028575;
const cv::Vec3d kCloth{70.0, 110.0, 40.0};
const cv::Scalar kSkin{140.0, 170.0, 220.0};

DrawnBall ballAt(TablePoint place, cv::Vec3d colour) {
  DrawnBall ball;
  ball.position = place;
  ball.colour = colour;
  return ball;
}

}  // namespace

void LeanWatchTest::init() {
  rig_ = std::make_shared<const Rig>(overheadRig());
  // So small that the camera of the pictures sees all of it.
  measured_.table.length_m = 1.20;
  measured_.table.width_m = 0.60;
  const std::vector<DrawnBall> balls{ballAt({0.3, 0.1}, {40.0, 40.0, 200.0}),
                                     ballAt({-0.4, -0.2}, {230.0, 230.0, 230.0})};
  bare_ = drawBalls(*rig_, kCloth, balls, kRadius_m);
  watch_.emplace(rig_, measured_);
  // At the start nobody is there, which is told once.
  QCOMPARE(watch_->look(bare_), std::optional(false));
}

cv::Mat LeanWatchTest::withBar(TablePoint from, TablePoint to, double width_m, cv::Scalar colour) const {
  cv::Mat picture = bare_.clone();
  const auto at = [&](TablePoint p) {
    const ImagePoint pixel = imageFromTable(*rig_, {p.x, p.y, 0.0}).value();
    return cv::Point(static_cast<int>(pixel.x), static_cast<int>(pixel.y));
  };
  const double px_per_m =
      distance(*imageFromTable(*rig_, {0.0, 0.0, 0.0}), *imageFromTable(*rig_, {0.1, 0.0, 0.0})) / 0.1;
  cv::line(picture, at(from), at(to), colour, std::max(1, static_cast<int>(width_m * px_per_m)), cv::LINE_AA);
  return picture;
}

void LeanWatchTest::anArmOverTheCushionIsSomebody() {
  const double edge_m = measured_.table.width_m / 2.0;
  QCOMPARE(watch_->look(withBar({0.2, -edge_m - 0.2}, {0.15, -edge_m + 0.35}, 0.09, kSkin)), std::optional(true));
  // A dark sleeve too.
  init();
  QCOMPARE(watch_->look(withBar({0.2, -edge_m - 0.2}, {0.15, -edge_m + 0.35}, 0.10, {25.0, 20.0, 20.0})),
           std::optional(true));
}

void LeanWatchTest::ballsACueAndLinesOfLightAreNobody() {
  const double edge_m = measured_.table.width_m / 2.0;
  const double end_m = measured_.table.length_m / 2.0;
  QCOMPARE(watch_->look(withBar({-end_m - 0.3, -0.2}, {-0.45, -0.2}, 0.02, {120.0, 180.0, 220.0})), std::nullopt);
  QCOMPARE(watch_->look(withBar({-0.4, -edge_m}, {0.6, edge_m}, 0.004, {255.0, 255.0, 255.0})), std::nullopt);
}

void LeanWatchTest::ballsAgainstACushionAreNobody() {
  std::vector<DrawnBall> balls;
  for (int i = 0; i < 4; ++i)
    balls.push_back(
        ballAt({0.1 + 2.0 * kRadius_m * i, measured_.table.width_m / 2.0 - kRadius_m}, {200.0, 60.0, 40.0}));
  QCOMPARE(watch_->look(drawBalls(*rig_, kCloth, balls, kRadius_m)), std::nullopt);
}

void LeanWatchTest::whoeverStepsBackIsToldOnce() {
  const double edge_m = measured_.table.width_m / 2.0;
  const cv::Mat arm = withBar({0.2, -edge_m - 0.2}, {0.15, -edge_m + 0.35}, 0.09, kSkin);
  QCOMPARE(watch_->look(arm), std::optional(true));
  QCOMPARE(watch_->look(arm), std::nullopt);
  QCOMPARE(watch_->look(bare_), std::optional(false));
  QCOMPARE(watch_->look(bare_), std::nullopt);
}

void LeanWatchTest::aDarkerLampIsNobody() {
  for (const double light : {0.97, 0.94, 0.91, 0.88, 0.85}) {
    cv::Mat dim;
    bare_.convertTo(dim, -1, light);
    QCOMPARE(watch_->look(dim), std::nullopt);
  }
}

FERRULE_TEST(LeanWatchTest)
#include "lean_watch_test.moc"
