// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/rig.h"

#include <QtTest>
#include <array>
#include <cmath>

#include "core/camera/rig_file.h"
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
  void noKindOfCorrectionCanStandTwiceInAFileEither();
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

/// Added by hand or written into a rig file: no kind of correction stands twice.
void RigTest::noKindOfCorrectionCanStandTwiceInAFileEither() {
  constexpr std::array kKinds{CorrectionKind::Rotation, CorrectionKind::ImageScale, CorrectionKind::Lens,
                              CorrectionKind::Pose};
  for (const CorrectionKind kind : kKinds) {
    Rig rig = invented9ftRig();
    for (const CorrectionKind each : kKinds)
      QVERIFY(rig.chain.add({each, "a.json", "", ""}).has_value());
    QVERIFY(!rig.chain.add({kind, "b.json", "", ""}).has_value());
    QCOMPARE(rig.chain.corrections().size(), kKinds.size());
    const QString sound = QString::fromStdString(rigText(rig));
    QVERIFY(parseRig(sound.toStdString(), "rig.json").has_value());
    const QString entry = QStringLiteral("{\"kind\": \"%1\", \"source\": \"b.json\"}, ").arg(toText(kind).data());
    QString twice = sound;
    const auto own = twice.indexOf(QStringLiteral("\"kind\": \"%1\"").arg(toText(kind).data()));
    QVERIFY(own > 0);
    twice.insert(twice.lastIndexOf('{', own), entry);
    const auto read = parseRig(twice.toStdString(), "rig.json");
    QVERIFY(!read.has_value());
    QVERIFY(read.error().code == ErrorCode::CorrectionTwice);
    QCOMPARE(read.error().detail, std::string(toText(kind)));
  }
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
