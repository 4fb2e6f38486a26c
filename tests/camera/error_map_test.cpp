// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/error_map.h"

#include <Eigen/Dense>
#include <QtTest>
#include <cmath>
#include <numbers>

#include "core/camera/pose_fit.h"
#include "core/camera/shot_worth.h"
#include "tests/camera/camera_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class ErrorMapTest : public QObject {
  Q_OBJECT
 private slots:
  void theRegionOf95PercentHoldsTheTruthInSimulation();
  void theBudgetAddsUp();
  void withoutUncertaintyThereIsNone();
  void tagsThatAreHigherThanMeasuredMoveBallsAwayFromTheCamera();
  void aMovingBallIsLessCertainFarFromTheMiddleRow();
  void aStraightShotsLineFollowsTheClosedForm();
  void aThinCutIsWorthMoreThanAStraightShot();
  void fiveMillimetresInACutFollowTheGeometry();
  void theCueBallIsPutForACut();
  void whatIsBehindTheBallCannotBePotted();
};

namespace {

constexpr double kCorner_px = 0.25;  // of a tag's corner, finding and measuring together
const ErrorSources kSources{0.15, 0.0008, 0.0002, 0.0, 0.0};

std::vector<Sighting> sightingsOf(const Rig& rig, const MeasuredTable& measured) {
  std::vector<Sighting> all;
  for (const RailTag& tag : measured.tags) {
    for (const TablePoint3& corner : tag.corners)
      all.push_back({corner, imageFromTable(rig, corner).value(), kCorner_px});
  }
  return all;
}

/// A lens that is known as a careful board calibration knows it: its parameters hang together.
Eigen::MatrixXd lensCovariance() {
  Eigen::VectorXd u(9);
  u << 0.8, 0.8, 0.9, 0.7, 0.0012, 0.0030, 0.0001, 0.0001, 0.0020;
  Eigen::MatrixXd correlation = Eigen::MatrixXd::Identity(9, 9);
  const auto set = [&](int a, int b, double value) { correlation(a, b) = correlation(b, a) = value; };
  set(0, 1, 0.95);
  set(4, 5, -0.9);
  set(5, 8, -0.8);
  set(4, 8, 0.65);
  return u.asDiagonal() * correlation * u.asDiagonal();
}

/// A rig whose stated uncertainty is that of sightingsOf.
Rig certainRig(const MeasuredTable& measured) {
  Rig rig = invented9ftRig();
  rig.poseCovariance = fitPose(rig.lens, sightingsOf(rig, measured)).value().covariance;
  rig.lensUncertainty = LensUncertainty::of(lensCovariance());
  return rig;
}

double lineOf(const ErrorAt& at, ErrorComponent component) {
  return at.budget.at(static_cast<std::size_t>(component)).u_m();
}

}  // namespace

/// Ten thousand owners: each calibrates a lens and measures tags with errors of the stated size, solves the pose from
/// them by the full nonlinear fit, and finds a ball with errors of the stated size. Expected share 95 %, three standard
/// deviations of the count 0.65 %; one to two per cent more for what is not linear.
void ErrorMapTest::theRegionOf95PercentHoldsTheTruthInSimulation() {
  const MeasuredTable measured = taggedTable();
  const Rig truth = certainRig(measured);
  const ErrorMap map(truth, measured, kSources);
  const std::vector<Sighting> seen = sightingsOf(truth, measured);
  const Eigen::MatrixXd covariance = lensCovariance();
  const Eigen::MatrixXd root = covariance.llt().matrixL();
  const std::array places{TablePoint{0.0, 0.0}, TablePoint{1.2, 0.6}, TablePoint{-1.1, 0.2}, TablePoint{0.4, -0.55}};
  std::array<int, 4> held{};
  constexpr int kDraws = 10000;
  const double radius_m = measured.balls.radius_m();
  Random random(20260101);
  for (int draw = 0; draw < kDraws; ++draw) {
    Eigen::VectorXd unit(9);
    for (double& value : unit)
      value = random.normal();
    Rig made = truth;
    made.lens = changedLens(truth.lens, root * unit);
    std::vector<Sighting> noisy = seen;
    const double higher_m = kSources.tagHeight_m * random.normal();
    for (Sighting& sighting : noisy) {
      sighting.pixel = {sighting.pixel.x + kCorner_px * random.normal(),
                        sighting.pixel.y + kCorner_px * random.normal()};
      sighting.point.z += higher_m;
    }
    made.pose = fitPose(made.lens, noisy).value().pose;
    for (std::size_t i = 0; i < places.size(); ++i) {
      const double height_m = radius_m + kSources.ballHeight_m * random.normal();
      const ImagePoint pixel = imageFromTable(truth, {places[i].x, places[i].y, height_m}).value();
      const ImagePoint found{pixel.x + kSources.finder_px * random.normal(),
                             pixel.y + kSources.finder_px * random.normal()};
      const TablePoint said = tableFromImage(made, found, radius_m).value();
      ErrorAt at = map.at(places[i]).value();
      at.place = said;
      held[i] += at.holds95(places[i]) ? 1 : 0;
    }
  }
  for (const int count : held) {
    const double share = static_cast<double>(count) / kDraws;
    QVERIFY2(share > 0.93 && share < 0.97, qPrintable(QString::number(share)));
  }
}

void ErrorMapTest::theBudgetAddsUp() {
  const MeasuredTable measured = taggedTable();
  const ErrorMap map(certainRig(measured), measured, kSources);
  const ErrorAt at = map.at({0.9, -0.4}).value();
  double sum = 0.0;
  for (const BudgetLine& line : at.budget)
    sum += line.u_m() * line.u_m();
  QVERIFY(std::abs(std::sqrt(sum) - at.u_m()) < 1e-12);
  for (const auto component :
       {ErrorComponent::Pose, ErrorComponent::Lens, ErrorComponent::TagHeight, ErrorComponent::Finder}) {
    QVERIFY(lineOf(at, component) > 0.0);
  }
  // The longer half-axis lies between those of a circle and of a line of the same spread.
  QVERIFY(at.reach95_m() >= 2.4477 * at.u_m() / std::numbers::sqrt2 - 1e-9);
  QVERIFY(at.reach95_m() <= 2.4477 * at.u_m() + 1e-6);
}

void ErrorMapTest::withoutUncertaintyThereIsNone() {
  const MeasuredTable measured = taggedTable();
  const ErrorMap map(invented9ftRig(), measured, {0.0, 0.0, 0.0, 0.0, 0.0});
  QVERIFY(map.at({0.3, 0.2}).value().u_m() < 1e-9);
}

/// A camera of height H over its foot point: tags that lie d higher put the camera d higher, so a ball r away from the
/// foot point seems r d / (H - R) nearer or further.
void ErrorMapTest::tagsThatAreHigherThanMeasuredMoveBallsAwayFromTheCamera() {
  const MeasuredTable measured = taggedTable();
  Rig rig = invented9ftRig();
  rig.pose = poseAbove({0.0, 0.0, 2.0}, 0.0, 0.0);
  constexpr double kHigher_m = 0.001;
  const ErrorMap map(rig, measured, {0.0, kHigher_m, 0.0, 0.0, 0.0});
  const double expected_m = 1.0 * kHigher_m / (2.0 - measured.balls.radius_m());
  const double found_m = lineOf(map.at({0.8, 0.6}).value(), ErrorComponent::TagHeight);
  QVERIFY2(std::abs(found_m - expected_m) < 0.02 * expected_m, qPrintable(QString::number(found_m / expected_m)));
}

void ErrorMapTest::aMovingBallIsLessCertainFarFromTheMiddleRow() {
  const MeasuredTable measured = taggedTable();
  const Rig rig = certainRig(measured);
  const ErrorMap moving(rig, measured, {0.15, 0.0, 0.0, 2.0, 0.02});
  const double middle = lineOf(moving.at({0.0, 0.0}).value(), ErrorComponent::RollingShutter);
  const double edge = lineOf(moving.at({0.0, 0.6}).value(), ErrorComponent::RollingShutter);
  QVERIFY(edge > 3.0 * middle);
  // A fifth to a half of the picture's height off the middle: 2 m/s times 20 ms times that, rectangular.
  QVERIFY(edge > 2.0 * 0.02 * 0.2 / std::sqrt(3.0) && edge < 2.0 * 0.02 * 0.5 / std::sqrt(3.0));
}

/// Straight in, with each ball's place wrong by u in each axis and nothing shared: the object ball's line turns by
/// (u_O - u_C) / (2R) for an offset across the aim (fullness), and the wanted line by u_O / D.
void ErrorMapTest::aStraightShotsLineFollowsTheClosedForm() {
  const MeasuredTable measured = taggedTable();
  Rig rig = invented9ftRig();
  rig.lens.model = LensModel::None;
  rig.lens.coefficients = {};
  rig.pose = poseAbove({0.0, 0.0, 2.0}, 0.0, 0.0);
  constexpr double kFinder_px = 0.2;
  const ErrorMap map(rig, measured, {kFinder_px, 0.0, 0.0, 0.0, 0.0});
  const Pocket pocket = pockets(measured.table).at(2);  // side-left: the mouth lies square to the y axis
  const ShotWorth worth = shotWorth(map, {0.0, -0.3}, {0.0, 0.1}, pocket).value();
  const double u_m = kFinder_px * (2.0 - measured.balls.radius_m()) / rig.lens.focalX_px;
  const double apart_m = 2.0 * measured.balls.radius_m();
  const double away_m = measured.table.width_m / 2.0 - 0.1;
  const double expected = u_m * std::hypot(1.0 / apart_m, 1.0 / apart_m + 1.0 / away_m);
  QVERIFY(worth.cut_rad < 1e-9);
  QVERIFY2(std::abs(worth.lineU_rad - expected) < 0.02 * expected,
           qPrintable(QString::number(worth.lineU_rad / expected)));
  QVERIFY(std::abs(worth.room_m - (pocket.mouth_m / 2.0 - measured.balls.radius_m())) < 1e-9);
  QCOMPARE(worth.shares.front().first, ErrorComponent::Finder);
}

void ErrorMapTest::aThinCutIsWorthMoreThanAStraightShot() {
  const MeasuredTable measured = taggedTable();
  const ErrorMap map(certainRig(measured), measured, kSources);
  const Pocket pocket = pockets(measured.table).at(4);  // foot-left
  const TablePoint object{0.6, 0.2};
  const TableVector way = unit(pocket.mouth - object);
  const ShotWorth straight = shotWorth(map, object - 0.6 * way, object, pocket).value();
  const TableVector turned{way.x * std::cos(1.2) - way.y * std::sin(1.2),
                           way.x * std::sin(1.2) + way.y * std::cos(1.2)};
  const ShotWorth thin = shotWorth(map, object - 0.6 * turned, object, pocket).value();
  QVERIFY(thin.cut_rad > 1.0);
  QVERIFY(thin.lineU_rad > 1.5 * straight.lineU_rad);
  QVERIFY(thin.chance < straight.chance || straight.chance > 0.999);
  double sum = 0.0;
  for (const auto& [component, share] : thin.shares)
    sum += share;
  QVERIFY(std::abs(sum - 1.0) < 1e-9);
}

/// Worked by hand. The cue ball goes on its line whatever happens, so the cut is asin(b / 2R) for an object ball b
/// beside it: a place that is off by u across the aim turns the way by u / (2R cos cut), and the wanted way by u / D
/// across it; between both directions lies the cut. With u in each axis for each ball
///   u_line^2 = u^2 (2 / (2R cos cut)^2 + 1 / D^2 + 2 cos cut / (2R cos cut D)).
/// For 30 degrees, D = 0.5 m, R = 28.575 mm and 5 mm (u = 3.536 mm): 1 / (2R cos cut) = 20.205 per m, 1 / D = 2 per m,
/// u_line = 3.536e-3 sqrt(816.5 + 4 + 70.0) = 0.10551 rad.
void ErrorMapTest::fiveMillimetresInACutFollowTheGeometry() {
  const Table table;
  const Pocket pocket = pockets(table).at(2);  // side-left
  const double radius_m = 0.028575;
  const TablePoint object{pocket.mouth.x, pocket.mouth.y - 0.5};
  const double cut_rad = std::numbers::pi / 6.0;
  // So small that the line's sensitivity is that of its slope.
  constexpr double kSmall = 0.01;
  const TablePoint cue = cueBallForCut(object, pocket, radius_m, cut_rad, 0.6);
  const ShotWorth worth = shotWorthOf(kSmall * 0.005, radius_m, cue, object, pocket).value();
  QVERIFY(std::abs(worth.cut_rad - cut_rad) < 1e-9);
  QVERIFY2(std::abs(worth.lineU_rad / kSmall - 0.10551) < 0.0002,
           qPrintable(QString::number(worth.lineU_rad / kSmall, 'g', 8)));
  QVERIFY(std::abs(worth.atPocketU_m - 0.5 * worth.lineU_rad) < 1e-9);
  QVERIFY(worth.shares.empty());
  // 5 mm in full: about 53 mm at the pocket, where the mouth leaves some 35 to either side.
  const ShotWorth full = shotWorthOf(0.005, radius_m, cue, object, pocket).value();
  QVERIFY(full.atPocketU_m > 0.050 && full.atPocketU_m < 0.058);
  QVERIFY(std::abs(full.chance - std::erf(full.room_m / (std::numbers::sqrt2 * full.atPocketU_m))) < 1e-12);
  QVERIFY(full.chance > 0.4 && full.chance < 0.6);
}

/// Straight in from 0.3 m, and at 90 degrees less a little from beside.
void ErrorMapTest::theCueBallIsPutForACut() {
  const Pocket pocket = pockets(Table{}).at(2);
  const TablePoint object{pocket.mouth.x, pocket.mouth.y - 0.5};
  const TablePoint behind = cueBallForCut(object, pocket, 0.03, 0.0, 0.3);
  QVERIFY(std::abs(behind.x - object.x) < 1e-12 && std::abs(behind.y - (object.y - 0.36)) < 1e-12);
  // Cut to the left: the cue ball comes from the left of the object ball's way and goes to its right.
  const TablePoint beside = cueBallForCut(object, pocket, 0.03, std::numbers::pi / 3.0, 0.2);
  QVERIFY(std::abs(beside.x - (object.x - 0.2 * std::sin(std::numbers::pi / 3.0))) < 1e-12);
  QVERIFY(std::abs(beside.y - (object.y - 0.06 - 0.1)) < 1e-12);
}

void ErrorMapTest::whatIsBehindTheBallCannotBePotted() {
  const MeasuredTable measured = taggedTable();
  const ErrorMap map(certainRig(measured), measured, kSources);
  const Pocket pocket = pockets(measured.table).at(4);
  QVERIFY(!shotWorth(map, {1.1, 0.5}, {0.6, 0.2}, pocket));
}

FERRULE_TEST(ErrorMapTest)
#include "error_map_test.moc"
