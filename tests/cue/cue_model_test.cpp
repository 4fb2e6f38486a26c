// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/cue_model.h"

#include <QtTest>
#include <cmath>
#include <numbers>

#include "core/cue/cue_pose.h"
#include "tests/cue/address_film.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class CueModelTest : public QObject {
  Q_OBJECT
 private slots:
  void theTipLiesAheadAndBelow();
  void aLevelCuesTagStandsWhereTheCameraLooks();
  void aQuarterTurnMovesTheCornersByOne();
  void aGrownSquareReachesFartherOut();
  void howTagsWereStuckOnIsFound();
};

namespace {

CuePose level() {
  CuePose pose;
  pose.middle_m = {0.0, 0.0, 0.1};
  return pose;
}

}  // namespace

void CueModelTest::theTipLiesAheadAndBelow() {
  CuePose pose = level();
  pose.elevation_rad = 0.1;
  const CueModel model(taggedCue());
  const Eigen::Vector3d tip = model.tipOf(pose);
  QVERIFY(std::abs(tip.x() - 0.3925 * std::cos(0.1)) < 1e-12);
  QVERIFY(std::abs(tip.z() - (0.1 - 0.3925 * std::sin(0.1))) < 1e-12);
}

/// Closed form: a pinhole two metres up, a square at the height of axis, radius and paper.
void CueModelTest::aLevelCuesTagStandsWhereTheCameraLooks() {
  const CueModel model(taggedCue());
  const auto corners = model.imageOf(cameraAbove(), level(), 0, 0);
  QVERIFY(corners.has_value());
  const double perMetre = 1270.0 / (2.0 - 0.1 - 0.0082 - 0.0006);
  // Tip to +x: the print's upper left is ahead and to the left, which is up in the picture.
  const double ahead_m = 0.3925 - 0.330;
  QVERIFY(std::abs((*corners)[0].x - (960.0 + perMetre * (ahead_m + 0.020))) < 1e-9);
  QVERIFY(std::abs((*corners)[0].y - (540.0 - perMetre * 0.020)) < 1e-9);
  QVERIFY(std::abs((*corners)[2].x - (960.0 + perMetre * (ahead_m - 0.020))) < 1e-9);
  QVERIFY(std::abs((*corners)[2].y - (540.0 + perMetre * 0.020)) < 1e-9);
}

void CueModelTest::aQuarterTurnMovesTheCornersByOne() {
  const CueModel model(taggedCue());
  const auto straight = model.imageOf(cameraAbove(), level(), 1, 0);
  const auto turned = model.imageOf(cameraAbove(), level(), 1, 1);
  for (std::size_t i = 0; i < 4; ++i)
    QVERIFY(distance((*turned)[i], (*straight)[(i + 1) % 4]) < 1e-9);
}

void CueModelTest::aGrownSquareReachesFartherOut() {
  const CueModel model(taggedCue());
  const auto plain = model.imageOf(cameraAbove(), level(), 0, 0);
  const auto grown = model.imageOf(cameraAbove(), level(), 0, 0, {0.0, 0.0, 0.0, 0.5});
  QVERIFY(std::abs(distance((*grown)[0], (*grown)[1]) - distance((*plain)[0], (*plain)[1]) - 1.0) < 1e-6);
}

void CueModelTest::howTagsWereStuckOnIsFound() {
  const Rig rig = cameraAbove();
  const CueModel model(taggedCue());
  CuePose pose = level();
  pose.heading_rad = 2.5;
  for (int turns = 0; turns < 4; ++turns) {
    const std::vector<CueSighting> sightings{
        {0, 0.0, {{10, *model.imageOf(rig, pose, 0, turns)}, {11, *model.imageOf(rig, pose, 1, (turns + 2) % 4)}}}};
    const Eigen::Vector3d tip = model.tipOf(pose);
    QCOMPARE(quarterTurnsOf(rig, model, sightings, {tip.x(), tip.y()}), (std::vector<int>{turns, (turns + 2) % 4}));
  }
}

FERRULE_TEST(CueModelTest)
#include "cue_model_test.moc"
