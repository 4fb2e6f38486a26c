// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/rig.h"

#include <QtTest>
#include <cmath>

#include "core/table/ball_set.h"
#include "tests/camera/camera_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class RigTest : public QObject {
  Q_OBJECT
 private slots:
  void aPointComesBackFromItsPixelAtItsHeight();
  void aBallOnTheClothPlaneIsOffByMoreThanTenMillimetres();
  void nothingIsSeenBehindTheCamera();
  void theCameraKnowsItsOwnPlace();
  void theChainRefusesTwoOfAKind();
  void theChainKeepsItsOrder();
};

void RigTest::aPointComesBackFromItsPixelAtItsHeight() {
  const Rig rig = invented9ftRig();
  for (double x = -1.2; x <= 1.2; x += 0.3) {
    for (double y = -0.6; y <= 0.6; y += 0.15) {
      for (const double z : {0.0, 0.028575, 0.0384}) {
        const ImagePoint pixel = imageFromTable(rig, {x, y, z}).value();
        const TablePoint back = tableFromImage(rig, pixel, z).value();
        QVERIFY(distance(back, TablePoint{x, y}) < 1e-9);
      }
    }
  }
}

/// A camera 2.5 m above a 9 ft table: 16.6 mm in the corner when the ball's centre is taken for a point of the cloth.
/// Source: similar triangles, R r / (H - R) for a point at distance r from the foot of the camera.
void RigTest::aBallOnTheClothPlaneIsOffByMoreThanTenMillimetres() {
  Rig rig = invented9ftRig();
  rig.pose = poseAbove({0.0, 0.0, 2.5}, 0.0, 0.0);
  constexpr double radius_m = 0.028575;
  const TablePoint corner{1.27 - radius_m, 0.635 - radius_m};
  const ImagePoint pixel = imageFromTable(rig, {corner.x, corner.y, radius_m}).value();
  QVERIFY(distance(tableFromImage(rig, pixel, radius_m).value(), corner) < 1e-9);
  const double error_m = distance(tableFromImage(rig, pixel, 0.0).value(), corner);
  const double expected_m = radius_m * std::hypot(corner.x, corner.y) / (2.5 - radius_m);
  QVERIFY(std::abs(error_m - expected_m) < 1e-9);
  QVERIFY(error_m > 0.010);
}

void RigTest::nothingIsSeenBehindTheCamera() {
  const Rig rig = invented9ftRig();
  QVERIFY(!imageFromTable(rig, {0.0, 0.0, 3.0}).has_value());
  QVERIFY(!tableFromImage(rig, {900.0, 500.0}, 3.0).has_value());
}

void RigTest::theCameraKnowsItsOwnPlace() {
  const TablePoint3 eye = cameraPosition(invented9ftRig());
  QVERIFY(std::abs(eye.x - 0.05) < 1e-12 && std::abs(eye.y + 0.08) < 1e-12 && std::abs(eye.z - 2.1) < 1e-12);
}

void RigTest::theChainRefusesTwoOfAKind() {
  CorrectionChain chain;
  QVERIFY(chain.add({CorrectionKind::Lens, "a.json", "", ""}).has_value());
  const auto twice = chain.add({CorrectionKind::Lens, "b.json", "", ""});
  QVERIFY(!twice.has_value());
  QVERIFY(twice.error().code == ErrorCode::CorrectionTwice);
  QCOMPARE(twice.error().detail, std::string("lens"));
  QCOMPARE(chain.corrections().size(), std::size_t{1});
}

void RigTest::theChainKeepsItsOrder() {
  CorrectionChain chain;
  for (const auto kind :
       {CorrectionKind::Pose, CorrectionKind::Rotation, CorrectionKind::Lens, CorrectionKind::ImageScale}) {
    QVERIFY(chain.add({kind, "", "", ""}).has_value());
  }
  QVERIFY(chain.corrections()[0].kind == CorrectionKind::Rotation);
  QVERIFY(chain.corrections()[1].kind == CorrectionKind::ImageScale);
  QVERIFY(chain.corrections()[2].kind == CorrectionKind::Lens);
  QVERIFY(chain.corrections()[3].kind == CorrectionKind::Pose);
}

FERRULE_TEST(RigTest)
#include "rig_test.moc"
