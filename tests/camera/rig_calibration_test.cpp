// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/rig_calibration.h"

#include <QtTest>
#include <algorithm>
#include <cmath>

#include "tests/camera/camera_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class RigCalibrationTest : public QObject {
  Q_OBJECT
 private slots:
  void aPlantedPoseIsFound();
  void theCovarianceCoversThePlantedNoise();
  void threeTagsAreEnoughAndTwoAreRefused();
  void tagsAtAWrongHeightShowInTheResidual();
  void bentNosesOverruleTagsThatAgree();
  void swappedTagsAreNamed();
  void aTurnedTagIsNamed();
  void aTagThatLiesElsewhereIsNamed();
  void aSmallerFilmIsScaledOnceAndInTheChain();
  void aCroppedFilmIsRefused();
  void aFilmHungUpsideDownIsTurnedInTheChain();
};

namespace {

/// Largest error of a ball's centre over the table, m.
double worstBallError(const Rig& rig, const Rig& truth) {
  double worst = 0.0;
  for (double x = -1.2; x <= 1.2; x += 0.2) {
    for (double y = -0.6; y <= 0.6; y += 0.2) {
      const ImagePoint pixel = imageFromTable(truth, {x, y, 0.028575}).value();
      worst = std::max(worst, distance(tableFromImage(rig, pixel, 0.028575).value(), TablePoint{x, y}));
    }
  }
  return worst;
}

void expectRefusal(const Result<Rig>& rig, const std::string& detail, const std::vector<double>& numbers) {
  QVERIFY(!rig.has_value());
  QVERIFY(rig.error().code == ErrorCode::TagsInconsistent);
  QCOMPARE(rig.error().subject, std::string("film.mp4"));
  QCOMPARE(rig.error().detail, detail);
  for (std::size_t i = 0; i < numbers.size(); ++i)
    QVERIFY(std::abs(rig.error().numbers.at(i) - numbers[i]) < 0.5);
}

}  // namespace

void RigCalibrationTest::aPlantedPoseIsFound() {
  const Rig truth = invented9ftRig();
  const auto rig = calibrateRig(evidenceFor(truth, taggedTable()), taggedTable());
  QVERIFY(rig.has_value());
  QVERIFY(worstBallError(*rig, truth) < 1e-7);
  QVERIFY(rig->poseRms_px < 1e-5);
  QCOMPARE(rig->verdict, std::string("fits"));
  QCOMPARE(rig->tags.size(), std::size_t{4});
  QCOMPARE(rig->chain.corrections().size(), std::size_t{2});
}

/// The pose's error, in units of its own covariance, is chi-square with six degrees of freedom: 99.9 % lie below 22.5.
void RigCalibrationTest::theCovarianceCoversThePlantedNoise() {
  const Rig truth = invented9ftRig();
  const auto rig = calibrateRig(evidenceFor(truth, taggedTable(), 0.3), taggedTable());
  QVERIFY(rig.has_value());
  const Eigen::AngleAxisd turn(rig->pose.rotation * truth.pose.rotation.transpose());
  Eigen::Matrix<double, 6, 1> error;
  error.head<3>() = turn.angle() * turn.axis();
  error.tail<3>() = rig->pose.translation_m - truth.pose.translation_m;
  const double distance2 = error.dot(rig->poseCovariance.inverse() * error);
  QVERIFY(distance2 < 22.5);
  QVERIFY(distance2 > 0.05);
  QVERIFY(worstBallError(*rig, truth) < 0.001);
}

void RigCalibrationTest::threeTagsAreEnoughAndTwoAreRefused() {
  const Rig truth = invented9ftRig();
  RigEvidence evidence = evidenceFor(truth, taggedTable());
  evidence.tags.pop_back();
  const auto three = calibrateRig(evidence, taggedTable());
  QVERIFY(three.has_value());
  QVERIFY(worstBallError(*three, truth) < 1e-6);
  evidence.tags.pop_back();
  const auto two = calibrateRig(evidence, taggedTable());
  QVERIFY(!two.has_value());
  QVERIFY(two.error().code == ErrorCode::TagsTooFew);
  QCOMPARE(two.error().numbers, (std::vector<double>{2, 3}));
}

/// One tag lies on a 60 mm block while the table file has it on the rail with the others.
void RigCalibrationTest::tagsAtAWrongHeightShowInTheResidual() {
  const Rig truth = invented9ftRig();
  MeasuredTable real = taggedTable();
  for (TablePoint3& corner : real.tags[2].corners)
    corner.z += 0.010;
  const auto rig = calibrateRig(evidenceFor(truth, real), taggedTable());
  QVERIFY(rig.has_value());
  QVERIFY(rig->tagRms_m > 0.001);
  QCOMPARE(rig->verdict, std::string("tags disagree"));
  const auto sound = calibrateRig(evidenceFor(truth, real), real);
  QVERIFY(sound->tagRms_m < 1e-7);
}

void RigCalibrationTest::bentNosesOverruleTagsThatAgree() {
  const Rig truth = invented9ftRig();
  auto rig = calibrateRig(evidenceFor(truth, taggedTable()), taggedTable());
  QVERIFY(rig.has_value());
  addNoses(*rig, {{CushionName::Head, 0.0003, 0.0009, 200}, {CushionName::Foot, 0.0004, 0.0009, 200}});
  QCOMPARE(rig->verdict, std::string("fits"));
  addNoses(*rig, {{CushionName::Head, 0.0003, 0.0009, 200}, {CushionName::Foot, 0.0030, 0.0060, 200}});
  QCOMPARE(rig->verdict, std::string("noses bent"));
  QCOMPARE(rig->noses.size(), std::size_t{2});
}

void RigCalibrationTest::swappedTagsAreNamed() {
  RigEvidence evidence = evidenceFor(invented9ftRig(), taggedTable(), 0.1);
  std::swap(evidence.tags[1].tag.id, evidence.tags[2].tag.id);
  expectRefusal(calibrateRig(evidence, taggedTable()), "swapped", {1, 2});
}

void RigCalibrationTest::aTurnedTagIsNamed() {
  RigEvidence evidence = evidenceFor(invented9ftRig(), taggedTable(), 0.1);
  auto& corners = evidence.tags[3].tag.corners;
  std::rotate(corners.begin(), corners.begin() + 1, corners.end());  // print's top-left where the top-right should be
  expectRefusal(calibrateRig(evidence, taggedTable()), "turned", {3, 90});
}

void RigCalibrationTest::aTagThatLiesElsewhereIsNamed() {
  MeasuredTable real = taggedTable();
  for (TablePoint3& corner : real.tags[0].corners)
    corner.x += 0.120;
  const auto rig = calibrateRig(evidenceFor(invented9ftRig(), real, 0.1), taggedTable());
  QVERIFY(!rig.has_value());
  QVERIFY(rig.error().code == ErrorCode::TagsInconsistent);
  QCOMPARE(rig.error().detail, std::string("misplaced"));
  QCOMPARE(rig.error().numbers.at(0), 0.0);
  QVERIFY(std::abs(rig.error().numbers.at(1) - 120.0) < 5.0);
}

/// A lens made at 1920 x 1080 on a film of 1280 x 720: same millimetres.
void RigCalibrationTest::aSmallerFilmIsScaledOnceAndInTheChain() {
  const Rig truth = invented9ftRig();
  RigEvidence evidence = evidenceFor(truth, taggedTable());
  evidence.filmSize = {1280, 720};
  for (AveragedTag& tag : evidence.tags) {
    for (ImagePoint& p : tag.tag.corners)
      p = {(p.x + 0.5) / 1.5 - 0.5, (p.y + 0.5) / 1.5 - 0.5};
  }
  const auto rig = calibrateRig(evidence, taggedTable());
  QVERIFY(rig.has_value());
  QVERIFY(rig->lens.size == evidence.filmSize);
  QCOMPARE(rig->chain.corrections().size(), std::size_t{3});
  QVERIFY(rig->chain.corrections()[0].kind == CorrectionKind::ImageScale);
  QVERIFY(rig->tagRms_m < 1e-6);
  const ImagePoint large = imageFromTable(truth, {1.0, 0.5, 0.028575}).value();
  const ImagePoint small{(large.x + 0.5) / 1.5 - 0.5, (large.y + 0.5) / 1.5 - 0.5};
  QVERIFY(distance(tableFromImage(*rig, small, 0.028575).value(), TablePoint{1.0, 0.5}) < 1e-6);
}

void RigCalibrationTest::aCroppedFilmIsRefused() {
  RigEvidence evidence = evidenceFor(invented9ftRig(), taggedTable());
  evidence.filmSize = {1440, 1080};
  const auto rig = calibrateRig(evidence, taggedTable());
  QVERIFY(!rig.has_value());
  QVERIFY(rig.error().code == ErrorCode::ImageSizeMismatch);
}

void RigCalibrationTest::aFilmHungUpsideDownIsTurnedInTheChain() {
  const Rig truth = invented9ftRig();
  RigEvidence evidence = evidenceFor(truth, taggedTable());
  evidence.filmRotation_deg = 180;
  for (AveragedTag& tag : evidence.tags) {
    for (ImagePoint& p : tag.tag.corners)
      p = {1919.0 - p.x, 1079.0 - p.y};
  }
  const auto rig = calibrateRig(evidence, taggedTable());
  QVERIFY(rig.has_value());
  QVERIFY(rig->chain.corrections()[0].kind == CorrectionKind::Rotation);
  QVERIFY(rig->tagRms_m < 1e-6);
}

FERRULE_TEST(RigCalibrationTest)
#include "rig_calibration_test.moc"
