// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/projector_fit.h"

#include <QTemporaryDir>
#include <QtTest>
#include <cmath>

#include "core/base/random.h"
#include "core/base/text_file.h"
#include "core/camera/projector_file.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// A projector with keystone and a bending lens, made up here, seen by a camera with some noise.
class ProjectorTest : public QObject {
  Q_OBJECT
 private slots:
  void thereAndBackIsTheSamePlace();
  void thePlantedProjectorIsFound();
  void aProjectorWithoutBendingGetsNone();
  void aCornerOnSomethingDoesNotPullTheRest();
  void tooFewTagsAreRefused();
  void cornersOfNoProjectorAreRefused();
  void aFileComesBackAsItWas();
  void aBrokenFileIsNamed();
};

namespace {

constexpr ImageSize kSize{1280, 800};

Projector planted(double k1) {
  Projector projector;
  projector.size = kSize;
  projector.straightFromTable << 0.38, 0.02, 0.01, -0.015, -0.37, 0.02, 0.03, -0.02, 1.0;
  projector.bending = {k1, -0.3 * k1, 0.0006, -0.0004};
  if (k1 == 0.0) projector.bending = {};
  return projector;
}

/// Tags of 100 mm on a grid over the cloth, seen to noise_m.
std::vector<ProjectedCorner> cornersOf(const Projector& projector, double noise_m, int tags = 24) {
  Random random(3);
  std::vector<ProjectedCorner> corners;
  for (int tag = 0; tag < tags; ++tag) {
    const TablePoint middle{-1.0 + 0.4 * (tag % 6), -0.45 + 0.3 * (tag / 6)};
    for (const TableVector& to : {TableVector{-0.05, 0.05}, {0.05, 0.05}, {0.05, -0.05}, {-0.05, -0.05}}) {
      const TablePoint place = middle + to;
      corners.push_back({100 + tag, *projectorFromTable(projector, place),
                         place + TableVector{noise_m * random.normal(), noise_m * random.normal()}});
    }
  }
  return corners;
}

/// The largest error of a fitted projector over the cloth, m.
double worstOf(const Projector& fitted, const Projector& truth) {
  double worst = 0.0;
  for (double x = -1.1; x <= 1.1; x += 0.2) {
    for (double y = -0.5; y <= 0.5; y += 0.2) {
      const auto pixel = projectorFromTable(truth, {x, y});
      worst = std::max(worst, distance(*tableFromProjector(fitted, *pixel), {x, y}));
    }
  }
  return worst;
}

}  // namespace

void ProjectorTest::thereAndBackIsTheSamePlace() {
  const Projector projector = planted(0.05);
  for (const TablePoint place : {TablePoint{0.0, 0.0}, {1.2, 0.6}, {-1.2, -0.6}, {0.3, -0.5}}) {
    const auto back = tableFromProjector(projector, *projectorFromTable(projector, place));
    QVERIFY(distance(*back, place) < 1e-9);
  }
}

void ProjectorTest::thePlantedProjectorIsFound() {
  const Projector truth = planted(0.05);
  const auto fitted = fitProjector(kSize, cornersOf(truth, 0.0005), "grid.png");
  QVERIFY(fitted.has_value());
  QVERIFY2(worstOf(*fitted, truth) < 0.001, qPrintable(QString::number(worstOf(*fitted, truth))));
  // Two coordinates of 0.5 mm each.
  QVERIFY(fitted->rms_m > 0.0005 && fitted->rms_m < 0.0008);
  QVERIFY(fitted->heldOutRms_m > fitted->rms_m && fitted->heldOutRms_m < 0.0012);
  QCOMPARE(fitted->tags, 24);
}

void ProjectorTest::aProjectorWithoutBendingGetsNone() {
  const auto fitted = fitProjector(kSize, cornersOf(planted(0.0), 0.0005), "grid.png");
  QVERIFY(fitted.has_value());
  QCOMPARE(fitted->bending, (std::array<double, 4>{}));
}

void ProjectorTest::aCornerOnSomethingDoesNotPullTheRest() {
  const Projector truth = planted(0.05);
  auto corners = cornersOf(truth, 0.0003);
  // A piece of chalk that nobody took away.
  corners[41].place = corners[41].place + TableVector{0.02, -0.015};
  const auto fitted = fitProjector(kSize, corners, "grid.png");
  QVERIFY(fitted.has_value());
  QVERIFY2(worstOf(*fitted, truth) < 0.002, qPrintable(QString::number(worstOf(*fitted, truth))));
}

void ProjectorTest::tooFewTagsAreRefused() {
  const auto fitted = fitProjector(kSize, cornersOf(planted(0.05), 0.0, 5), "grid.png");
  QVERIFY(!fitted.has_value());
  QCOMPARE(fitted.error().code, ErrorCode::TagsTooFew);
  QCOMPARE(fitted.error().numbers, (std::vector<double>{5.0, 6.0}));
}

void ProjectorTest::cornersOfNoProjectorAreRefused() {
  Random random(8);
  auto corners = cornersOf(planted(0.05), 0.0);
  for (ProjectedCorner& corner : corners)
    corner.place = {2.0 * random.uniform() - 1.0, random.uniform() - 0.5};
  const auto fitted = fitProjector(kSize, corners, "grid.png");
  QVERIFY(!fitted.has_value());
  QCOMPARE(fitted.error().code, ErrorCode::TagsInconsistent);
}

void ProjectorTest::aFileComesBackAsItWas() {
  const QTemporaryDir folder;
  Projector projector = planted(0.05);
  projector.tags = 24;
  projector.date = "2026-11-01";
  const std::string path = folder.filePath("projector.json").toStdString();
  QVERIFY(writeProjectorFile(path, projector).has_value());
  QCOMPARE(*readProjectorFile(path), projector);
  ProjectorGrid grid{kSize, "DICT_4X4_250", {}};
  grid.tags.push_back({100, {ImagePoint{75.5, 142.5}, {177.5, 142.5}, {177.5, 244.5}, {75.5, 244.5}}});
  const std::string gridPath = folder.filePath("grid.json").toStdString();
  QVERIFY(writeProjectorGrid(gridPath, grid).has_value());
  QCOMPARE(*readProjectorGrid(gridPath), grid);
}

void ProjectorTest::aBrokenFileIsNamed() {
  const QTemporaryDir folder;
  const std::string path = folder.filePath("p.json").toStdString();
  QCOMPARE(readProjectorFile(path).error().code, ErrorCode::FileMissing);
  QVERIFY(writeTextFile(path, "{\"format\": \"ferrule-projector/1\", \"projector_size\": [0, 800]}").has_value());
  QCOMPARE(readProjectorFile(path).error().code, ErrorCode::FieldInvalid);
  QVERIFY(writeTextFile(path, "{\"projector_size\": [1280, 800], \"dictionary\": \"D\", \"tags\": [{}]}").has_value());
  QCOMPARE(readProjectorGrid(path).error().code, ErrorCode::FieldInvalid);
}

FERRULE_TEST(ProjectorTest)
#include "projector_test.moc"
