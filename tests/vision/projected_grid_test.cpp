// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/projected_grid.h"

#include <QtTest>
#include <opencv2/imgproc.hpp>

#include "core/vision/projection_picture.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// A grid thrown by a made-up projector on a made-up table, seen by a camera straight above: the whole way there and
/// back.
class ProjectedGridTest : public QObject {
  Q_OBJECT
 private slots:
  void theGridIsFoundWhereItFalls();
  void aMirroredGridIsNamed();
  void aSecondProjectorIsNamed();
  void withoutAGridNothingIsMadeUp();
  void aRingIsDrawnWhereTheBallBelongs();
};

namespace {

constexpr ImageSize kCamera{1600, 900};
constexpr double kPixels_m = 600.0;  // camera pixels for a metre of cloth
constexpr double kHeight_m = 2.5;

Rig above() {
  Rig rig;
  rig.lens.size = kCamera;
  rig.lens.focalX_px = rig.lens.focalY_px = kPixels_m * kHeight_m;
  rig.lens.centre = {0.5 * (kCamera.width - 1), 0.5 * (kCamera.height - 1)};
  // Looking down: the picture's y runs against the table's.
  rig.pose.rotation << 1, 0, 0, 0, -1, 0, 0, 0, -1;
  rig.pose.translation_m = {0.0, 0.0, kHeight_m};
  return rig;
}

Projector oblique() {
  Projector projector;
  projector.size = {1280, 800};
  projector.straightFromTable << 0.40, 0.01, 0.01, -0.01, -0.40, 0.01, 0.02, 0.01, 1.0;
  return projector;
}

/// What the camera sees of a sent picture on cloth of a middling green.
cv::Mat seen(const Projector& projector, const cv::Mat& sent) {
  cv::Mat mapX(kCamera.height, kCamera.width, CV_32F);
  cv::Mat mapY(kCamera.height, kCamera.width, CV_32F);
  const Rig rig = above();
  for (int y = 0; y < kCamera.height; ++y) {
    for (int x = 0; x < kCamera.width; ++x) {
      const auto place = tableFromImage(rig, {static_cast<double>(x), static_cast<double>(y)}, 0.0);
      const auto pixel = projectorFromTable(projector, *place);
      mapX.at<float>(y, x) = static_cast<float>(pixel->x);
      mapY.at<float>(y, x) = static_cast<float>(pixel->y);
    }
  }
  cv::Mat light;
  cv::remap(sent, light, mapX, mapY, cv::INTER_LINEAR);
  return 0.6 * light + cv::Scalar(40, 60, 40);
}

const Table kTable;
const std::string kName = "grid.png";

Result<std::vector<ProjectedCorner>> cornersIn(const cv::Mat& picture, const ProjectorGrid& grid) {
  return findProjectedGrid(picture, {}, grid, above(), kTable, kName, "grid.json");
}

}  // namespace

void ProjectedGridTest::theGridIsFoundWhereItFalls() {
  const ProjectorGrid grid = projectorGridFor({1280, 800});
  const Projector truth = oblique();
  const auto corners = cornersIn(seen(truth, gridPicture(grid)), grid);
  QVERIFY(corners.has_value());
  QVERIFY(corners->size() > 60);
  const auto fitted = fitProjector(grid.size, *corners, kName);
  QVERIFY(fitted.has_value());
  for (const TablePoint place : {TablePoint{0.0, 0.0}, {0.9, 0.4}, {-0.9, -0.4}, {0.5, -0.5}}) {
    const auto back = tableFromProjector(*fitted, *projectorFromTable(truth, place));
    QVERIFY2(distance(*back, place) < 0.001, qPrintable(QString::number(distance(*back, place))));
  }
}

void ProjectedGridTest::aMirroredGridIsNamed() {
  const ProjectorGrid grid = projectorGridFor({1280, 800});
  cv::Mat mirrored;
  cv::flip(gridPicture(grid), mirrored, 1);
  const auto corners = cornersIn(seen(oblique(), mirrored), grid);
  QVERIFY(!corners.has_value());
  QCOMPARE(corners.error().code, ErrorCode::ImageMirrored);
  QCOMPARE(corners.error().detail, std::string("projected"));
}

void ProjectedGridTest::aSecondProjectorIsNamed() {
  const ProjectorGrid grid = projectorGridFor({1280, 800});
  const cv::Mat sent = gridPicture(grid);
  // Each throws its half of the table full.
  cv::Mat left;
  cv::resize(sent, left, {640, 800}, 0, 0, cv::INTER_AREA);
  cv::Mat both;
  cv::hconcat(left, left, both);
  const auto corners = cornersIn(seen(oblique(), both), grid);
  QVERIFY(!corners.has_value());
  QCOMPARE(corners.error().code, ErrorCode::TagsInconsistent);
  QCOMPARE(corners.error().detail, std::string("projected-twice"));
}

void ProjectedGridTest::withoutAGridNothingIsMadeUp() {
  const ProjectorGrid grid = projectorGridFor({1280, 800});
  const auto corners = cornersIn(cv::Mat(kCamera.height, kCamera.width, CV_8UC3, cv::Scalar(40, 60, 40)), grid);
  QVERIFY(!corners.has_value());
  QCOMPARE(corners.error().code, ErrorCode::TagsTooFew);
  const auto small = cornersIn(cv::Mat(100, 100, CV_8UC3, cv::Scalar::all(0)), grid);
  QCOMPARE(small.error().code, ErrorCode::ImageSizeMismatch);
}

void ProjectedGridTest::aRingIsDrawnWhereTheBallBelongs() {
  const Projector projector = oblique();
  const TablePoint place{0.4, -0.2};
  const double radius_m = 0.028575;
  const cv::Mat picture = projectionPicture(projector, {{ringAround(place, radius_m)}, {}});
  QCOMPARE(picture.cols, 1280);
  QCOMPARE(picture.rows, 800);
  // On the cloth, every lit pixel lies on the ring: half the line's two pixels, one that is smoothed, half of itself;
  // a pixel is 2 mm here.
  int lit = 0;
  for (int y = 0; y < picture.rows; ++y) {
    for (int x = 0; x < picture.cols; ++x) {
      if (picture.at<cv::Vec3b>(y, x)[0] < 128) continue;
      ++lit;
      const auto on = tableFromProjector(projector, {static_cast<double>(x), static_cast<double>(y)});
      QVERIFY(std::abs(distance(*on, place) - radius_m) < 0.005);
    }
  }
  QVERIFY(lit > 50);
}

FERRULE_TEST(ProjectedGridTest)
#include "projected_grid_test.moc"
