// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/self_check.h"

#include <QtTest>
#include <algorithm>
#include <cmath>

#include "core/camera/check_file.h"
#include "core/camera/check_hypotheses.h"
#include "core/camera/pose_fit.h"
#include "core/camera/silhouette.h"
#include "tests/camera/camera_support.h"
#include "tests/camera/line_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class SelfCheckTest : public QObject {
  Q_OBJECT
 private slots:
  void soundRigsFit();
  void aMovedCameraIsNamed();
  void aRigIsHeldToNoMoreThanItClaims();
  void anotherLensIsNamed();
  void aFilmThatWasStraightenedBeforeIsNamed();
  void aRigThatStraightensNothingIsNamed();
  void aCropOfThePictureIsNamed();
  void aFilmOfAnotherSizeIsNamed();
  void tagsAtAnotherHeightAreNamedWhetherTheRigWasMadeBeforeOrAfter();
  void aMisplacedTagIsNamedWithItsDistance();
  void swappedTagsAreNamed();
  void aTurnedTagIsNamed();
  void anotherSizeOfTableIsNamed();
  void twoFaultsAtOnceAreNotPassedAsOne();
  void withoutTagsTheLinesStillTell();
  void tooLittleEvidenceGivesNoVerdict();
  void theFileSaysWhatTheCheckSays();
};

namespace {

/// What a film shows of a table that is as measured says, with the tolerances of a real one.
CheckEvidence evidenceOf(const Rig& rig, const MeasuredTable& measured, unsigned seed = 1) {
  Random random(seed);
  CheckEvidence evidence;
  evidence.filmSize = rig.lens.size;
  for (AveragedTag tag : seenTags(rig, measured)) {
    for (ImagePoint& corner : tag.tag.corners)
      corner = {corner.x + 0.1 * random.normal(), corner.y + 0.1 * random.normal()};
    tag.scatter_px = 0.05;
    evidence.tags.push_back(tag);
  }
  for (const Cushion& cushion : cushions(measured.table)) {
    evidence.lines.push_back(
        traceOf(rig, measured.table, cushion, LineTrace::Kind::Nose, 0.0008 * random.normal(), random));
    evidence.lines.push_back(
        traceOf(rig, measured.table, cushion, LineTrace::Kind::Back, 0.0020 * random.normal(), random));
  }
  for (const TablePoint place : {TablePoint{-0.9, 0.3}, {0.1, -0.4}, {0.8, 0.1}}) {
    const auto outline = silhouetteOf(rig, place, measured.balls.radius_m());
    if (outline) evidence.balls.push_back({outline->centre, outline->radius_px() * 1.01, 0.05, 5});
  }
  return evidence;
}

/// The rig that an owner makes with this lens and table file from tags as they are seen.
Rig rigMade(const Lens& lens, const MeasuredTable& measured, const CheckEvidence& evidence) {
  std::vector<Sighting> sightings;
  for (const AveragedTag& tag : evidence.tags) {
    const auto known = std::ranges::find(measured.tags, tag.tag.id, &RailTag::id);
    for (std::size_t i = 0; i < 4; ++i)
      sightings.push_back({known->corners[i], tag.tag.corners[i], 0.3});
  }
  Rig rig;
  rig.lens = lens;
  rig.pose = fitPose(lens, sightings).value().pose;
  return rig;
}

QString said(const SelfCheck& check) {
  QString text = QString::fromUtf8(toText(check.verdict).data());
  for (const Explanation& each : check.explanations) {
    text += QStringLiteral("; %1 misfit %2 p %3")
                .arg(QString::fromUtf8(toText(each.fault).data()))
                .arg(each.misfit)
                .arg(each.probability);
  }
  return text;
}

#define COMPARE_VERDICT(check, fault) QVERIFY2((check).verdict == (fault), qPrintable(said(check)))

}  // namespace

void SelfCheckTest::soundRigsFit() {
  const MeasuredTable measured = taggedTable();
  for (unsigned seed = 1; seed <= 8; ++seed) {
    Random random(100 + seed);
    Rig truth = invented9ftRig();
    truth.pose =
        poseAbove({0.3 * random.normal(), 0.2 * random.normal(), 2.1}, 0.05 * random.normal(), 0.05 * random.normal());
    truth.lens.coefficients[0] = -0.05 - 0.1 * random.uniform();
    const CheckEvidence evidence = evidenceOf(truth, measured, seed);
    const SelfCheck check = checkRig(rigMade(truth.lens, measured, evidence), measured, evidence);
    COMPARE_VERDICT(check, RigFault::None);
    QVERIFY(check.confidence > 0.9);
  }
}

void SelfCheckTest::aMovedCameraIsNamed() {
  const MeasuredTable measured = taggedTable();
  const Rig before = invented9ftRig();
  Rig after = before;
  Eigen::Matrix<double, 6, 1> step;
  step << 0.002, -0.003, 0.001, 0.004, 0.0, -0.002;
  after.pose = movedPose(before.pose, step);
  const SelfCheck check = checkRig(before, measured, evidenceOf(after, measured));
  COMPARE_VERDICT(check, RigFault::CameraMoved);
  const TablePoint3 a = cameraPosition(before);
  const TablePoint3 b = cameraPosition(after);
  QVERIFY(std::abs(check.amounts[0] - std::hypot(a.x - b.x, a.y - b.y, a.z - b.z)) < 0.002);
  QVERIFY(std::abs(check.amounts[1] - step.head<3>().norm()) < 0.0005);
  QVERIFY(check.costMax_m > 0.003);
}

/// The same millimetres are a moved camera under a rig that is sure of itself, and nothing under one that is not.
void SelfCheckTest::aRigIsHeldToNoMoreThanItClaims() {
  const MeasuredTable measured = taggedTable();
  const Rig truth = invented9ftRig();
  const CheckEvidence evidence = evidenceOf(truth, measured);
  Eigen::Matrix<double, 6, 1> step;
  step << 0.0008, -0.0006, 0.0005, 0.001, -0.001, 0.001;
  Rig rig = truth;
  rig.pose = movedPose(truth.pose, step);
  COMPARE_VERDICT(checkRig(rig, measured, evidence), RigFault::CameraMoved);
  rig.poseCovariance = step.cwiseAbs2().asDiagonal();
  COMPARE_VERDICT(checkRig(rig, measured, evidence), RigFault::None);
}

void SelfCheckTest::anotherLensIsNamed() {
  const MeasuredTable measured = taggedTable();
  const Rig truth = invented9ftRig();
  const CheckEvidence evidence = evidenceOf(truth, measured);
  Lens other = truth.lens;
  other.focalX_px *= 1.08;
  other.focalY_px *= 1.08;
  other.coefficients[0] = -0.20;
  other.coefficients[1] = 0.02;
  COMPARE_VERDICT(checkRig(rigMade(other, measured, evidence), measured, evidence), RigFault::WrongLens);
}

void SelfCheckTest::aFilmThatWasStraightenedBeforeIsNamed() {
  const MeasuredTable measured = taggedTable();
  Rig straight = invented9ftRig();
  straight.lens.model = LensModel::None;
  straight.lens.coefficients = {};
  const CheckEvidence evidence = evidenceOf(straight, measured);
  COMPARE_VERDICT(checkRig(rigMade(invented9ftRig().lens, measured, evidence), measured, evidence),
                  RigFault::CorrectedTwice);
}

void SelfCheckTest::aRigThatStraightensNothingIsNamed() {
  const MeasuredTable measured = taggedTable();
  const Rig truth = invented9ftRig();
  const CheckEvidence evidence = evidenceOf(truth, measured);
  Lens none = truth.lens;
  none.model = LensModel::None;
  none.coefficients = {};
  QVERIFY(!bends(none));
  QVERIFY(bends(truth.lens));
  COMPARE_VERDICT(checkRig(rigMade(none, measured, evidence), measured, evidence), RigFault::NotCorrected);
}

void SelfCheckTest::aCropOfThePictureIsNamed() {
  const MeasuredTable measured = taggedTable();
  Rig truth = invented9ftRig();
  const Lens asCalibrated = truth.lens;
  // The middle of the sensor, blown up: a stabilised film.
  const double scale = 1.12;
  const ImagePoint middle{959.5, 539.5};
  truth.lens.focalX_px *= scale;
  truth.lens.focalY_px *= scale;
  truth.lens.centre = middle + scale * (asCalibrated.centre - middle);
  const CheckEvidence evidence = evidenceOf(truth, measured);
  const SelfCheck check = checkRig(rigMade(asCalibrated, measured, evidence), measured, evidence);
  COMPARE_VERDICT(check, RigFault::WrongImageSize);
  QVERIFY2(std::abs(check.amounts[0] - scale) < 0.03, qPrintable(QString::number(check.amounts[0])));
}

void SelfCheckTest::aFilmOfAnotherSizeIsNamed() {
  const MeasuredTable measured = taggedTable();
  CheckEvidence evidence;
  evidence.filmSize = {1280, 720};
  const SelfCheck check = checkRig(invented9ftRig(), measured, evidence);
  COMPARE_VERDICT(check, RigFault::WrongImageSize);
  QCOMPARE(check.amounts[0], 1280.0 / 1920.0);
}

void SelfCheckTest::tagsAtAnotherHeightAreNamedWhetherTheRigWasMadeBeforeOrAfter() {
  const Rig truth = invented9ftRig();
  const CheckEvidence evidence = evidenceOf(truth, taggedTable(0.0384));
  for (const double written_m : {0.0, 0.026, 0.050}) {
    const MeasuredTable wrong = taggedTable(written_m);
    for (const Rig& rig : {truth, rigMade(truth.lens, wrong, evidence)}) {
      const SelfCheck check = checkRig(rig, wrong, evidence);
      COMPARE_VERDICT(check, RigFault::TagHeight);
      QVERIFY2(std::abs(check.amounts[0] - (0.0384 - written_m)) < 0.003,
               qPrintable(QString::number(check.amounts[0])));
    }
  }
}

void SelfCheckTest::aMisplacedTagIsNamedWithItsDistance() {
  const Rig truth = invented9ftRig();
  const CheckEvidence evidence = evidenceOf(truth, taggedTable());
  MeasuredTable wrong = taggedTable();
  for (TablePoint3& corner : wrong.tags[2].corners) {
    corner.x += 0.012;
    corner.y -= 0.009;
  }
  for (const Rig& rig : {truth, rigMade(truth.lens, wrong, evidence)}) {
    const SelfCheck check = checkRig(rig, wrong, evidence);
    COMPARE_VERDICT(check, RigFault::TagMisplaced);
    QCOMPARE(check.tags, std::vector<int>{2});
    QVERIFY(std::abs(check.amounts[0] - 0.015) < 0.002);
  }
}

void SelfCheckTest::swappedTagsAreNamed() {
  const Rig truth = invented9ftRig();
  const CheckEvidence evidence = evidenceOf(truth, taggedTable());
  MeasuredTable wrong = taggedTable();
  std::swap(wrong.tags[0].corners, wrong.tags[3].corners);
  const SelfCheck check = checkRig(truth, wrong, evidence);
  COMPARE_VERDICT(check, RigFault::TagsSwapped);
  QCOMPARE(check.tags, (std::vector<int>{0, 3}));
}

void SelfCheckTest::aTurnedTagIsNamed() {
  const Rig truth = invented9ftRig();
  const CheckEvidence evidence = evidenceOf(truth, taggedTable());
  MeasuredTable wrong = taggedTable();
  auto& corners = wrong.tags[1].corners;
  std::rotate(corners.begin(), corners.begin() + 1, corners.end());
  const SelfCheck check = checkRig(truth, wrong, evidence);
  COMPARE_VERDICT(check, RigFault::TagTurned);
  QCOMPARE(check.tags, std::vector<int>{1});
}

void SelfCheckTest::anotherSizeOfTableIsNamed() {
  const Rig truth = invented9ftRig();
  const CheckEvidence evidence = evidenceOf(truth, taggedTable());
  MeasuredTable wrong = taggedTable();
  wrong.table.length_m = 2.235;
  wrong.table.width_m = 1.118;
  SelfCheck check = checkRig(truth, wrong, evidence);
  COMPARE_VERDICT(check, RigFault::TableSize);
  QVERIFY(std::abs(check.amounts[0] - 0.305) < 0.004);
  QVERIFY(std::abs(check.amounts[1] - 0.152) < 0.004);
  // A slip of the rule along one side only.
  wrong = taggedTable();
  wrong.table.length_m += 0.015;
  check = checkRig(truth, wrong, evidence);
  COMPARE_VERDICT(check, RigFault::TableSize);
  QVERIFY(std::abs(check.amounts[0] + 0.015) < 0.004);
}

/// The lens of another camera and a tag put elsewhere: whatever is named, it is not "fits".
void SelfCheckTest::twoFaultsAtOnceAreNotPassedAsOne() {
  const Rig truth = invented9ftRig();
  const CheckEvidence evidence = evidenceOf(truth, taggedTable());
  MeasuredTable wrong = taggedTable();
  for (TablePoint3& corner : wrong.tags[0].corners)
    corner.x += 0.040;
  Lens other = truth.lens;
  other.coefficients[0] = -0.25;
  const SelfCheck check = checkRig(rigMade(other, wrong, evidence), wrong, evidence);
  COMPARE_VERDICT(check, RigFault::Unexplained);
}

void SelfCheckTest::withoutTagsTheLinesStillTell() {
  const MeasuredTable measured = taggedTable();
  const Rig truth = invented9ftRig();
  CheckEvidence evidence = evidenceOf(truth, measured);
  evidence.tags.clear();
  COMPARE_VERDICT(checkRig(truth, measured, evidence), RigFault::None);
  Rig moved = truth;
  Eigen::Matrix<double, 6, 1> step;
  step << 0.004, -0.004, 0.003, 0.0, 0.0, 0.0;
  moved.pose = movedPose(truth.pose, step);
  COMPARE_VERDICT(checkRig(moved, measured, evidence), RigFault::CameraMoved);
}

void SelfCheckTest::tooLittleEvidenceGivesNoVerdict() {
  const MeasuredTable measured = taggedTable();
  const Rig truth = invented9ftRig();
  CheckEvidence evidence = evidenceOf(truth, measured);
  evidence.tags.resize(2);
  evidence.lines.resize(2);
  const SelfCheck check = checkRig(truth, measured, evidence);
  COMPARE_VERDICT(check, RigFault::Unexplained);
  QCOMPARE(check.confidence, 0.0);
}

void SelfCheckTest::theFileSaysWhatTheCheckSays() {
  SelfCheck check;
  check.verdict = RigFault::TagHeight;
  check.amounts = {0.0125};
  check.confidence = 0.98;
  check.findings.push_back({CheckFinding::Kind::NosePlace, "head", 0.0042, 0.003});
  const QString text = QString::fromStdString(checkText(check, {"film.mp4", "rig.json", "table.json"}));
  for (const char* part : {"\"ferrule-check/1\"", "\"verdict\": \"tag height wrong\"", "\"tags_higher_mm\": 12.5",
                           "\"kind\": \"nose-place\"", "\"found_mm\": 4.2"}) {
    QVERIFY2(text.contains(part), qPrintable(text));
  }
}

FERRULE_TEST(SelfCheckTest)
#include "self_check_test.moc"
