// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/not_cloth.h"

#include <QtTest>
#include <array>

#include "tests/support/ball_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;
const Eigen::Vector3f kCloth(120.0F, 85.0F, 35.0F);
const cv::Vec3d kBlueCloth{120.0, 85.0, 35.0};
const cv::Vec3d kBlueBall{130.0, 50.0, 30.0};

}  // namespace

class NotClothTest : public QObject {
  Q_OBJECT
 private slots:
  void clothInShadowIsStillCloth();
  void otherColoursAreNoCloth();
  void anOutlineOnTheBallHasTheMostContrast();
  void bareClothHasNoContrast();
};

void NotClothTest::clothInShadowIsStillCloth() {
  const ClothDistance distance(kCloth);
  for (const float shade : {0.65F, 0.8F, 1.0F, 1.2F})
    QVERIFY2(distance(shade * kCloth) < 0.01F, qPrintable(QString::number(shade)));
}

void NotClothTest::otherColoursAreNoCloth() {
  const ClothDistance distance(kCloth);
  QVERIFY(distance({230.0F, 235.0F, 240.0F}) > 100.0F);  // white
  QVERIFY(distance({130.0F, 50.0F, 30.0F}) > 25.0F);     // a blue ball on blue cloth
  QVERIFY(distance({20.0F, 20.0F, 20.0F}) > 25.0F);      // black, though on the line from black to the cloth's colour
  // White's distance from this cloth by hand: off the cloth's direction by |w - (w.c/|c|)c/|c||, along it 370.3 where a
  // lamp's light on cloth ends at 1.25 |c| = 188.9.
  const Eigen::Vector3f white(230.0F, 235.0F, 240.0F);
  const float along = white.dot(kCloth) / kCloth.norm();
  const float off = std::sqrt(white.squaredNorm() - along * along);
  QVERIFY(std::abs(distance(white) - std::hypot(off, along - 1.25F * kCloth.norm())) < 0.05F);
}

void NotClothTest::anOutlineOnTheBallHasTheMostContrast() {
  const Rig rig = overheadRig();
  const DrawnBall ball{{0.11, -0.07}, kBlueBall, 0.3, {}, 0.3};
  const cv::Mat picture = drawBalls(rig, kBlueCloth, std::array{ball}, kRadius_m);
  const NotCloth notCloth(picture, ClothDistance(kCloth));
  const Silhouette outline = *silhouetteOf(rig, ball.position, kRadius_m);
  const double best = notCloth.contrast(outline, {});
  QVERIFY2(best > 0.9, qPrintable(QString::number(best)));
  for (const ImageVector off :
       {ImageVector{4.0, 0.0}, ImageVector{-4.0, 0.0}, ImageVector{0.0, 4.0}, ImageVector{3.0, -3.0}}) {
    Silhouette beside = outline;
    beside.centre = beside.centre + off;
    QVERIFY(notCloth.contrast(beside, {}) < best - 0.1);
  }
}

void NotClothTest::bareClothHasNoContrast() {
  const Rig rig = overheadRig();
  const cv::Mat picture = drawBalls(rig, kBlueCloth, {}, kRadius_m);
  const NotCloth notCloth(picture, ClothDistance(kCloth));
  QVERIFY(std::abs(notCloth.contrast(*silhouetteOf(rig, {0.2, 0.1}, kRadius_m), {})) < 0.02);
}

FERRULE_TEST(NotClothTest)
#include "not_cloth_test.moc"
