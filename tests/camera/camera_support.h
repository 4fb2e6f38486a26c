// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Geometry>
#include <vector>

#include "core/base/random.h"
#include "core/camera/board.h"
#include "core/camera/rig.h"
#include "core/camera/rig_calibration.h"
#include "core/table/measured_table.h"

/// Invented cameras and tables with known answers.
namespace ferrule::testing {

inline Lens brownLens() {
  Lens lens;
  lens.camera = "invented";
  lens.size = {1920, 1080};
  lens.model = LensModel::Brown5;
  lens.focalX_px = 1400.0;
  lens.focalY_px = 1397.0;
  lens.centre = {951.0, 548.0};
  lens.coefficients = {-0.28, 0.08, 0.0004, -0.0003, -0.006};
  return lens;
}

inline Lens rationalLens() {
  Lens lens = brownLens();
  lens.model = LensModel::Brown8;
  lens.coefficients = {0.45, 0.12, 0.0004, -0.0003, 0.01, 0.75, 0.28, 0.03};
  return lens;
}

inline Lens fisheyeLens() {
  Lens lens = brownLens();
  lens.model = LensModel::Fisheye;
  lens.focalX_px = 700.0;
  lens.focalY_px = 699.0;
  lens.coefficients = {0.03, -0.012, 0.004, -0.001};
  return lens;
}

/// Looks down from height_m, tilted a little about both axes.
inline CameraFromTable poseAbove(TablePoint3 eye, double tiltX_rad, double tiltY_rad) {
  Eigen::Matrix3d down;
  down << 1, 0, 0, 0, -1, 0, 0, 0, -1;
  CameraFromTable pose;
  pose.rotation = Eigen::AngleAxisd(tiltX_rad, Eigen::Vector3d::UnitX()).toRotationMatrix() *
                  Eigen::AngleAxisd(tiltY_rad, Eigen::Vector3d::UnitY()).toRotationMatrix() * down;
  pose.translation_m = -(pose.rotation * Eigen::Vector3d(eye.x, eye.y, eye.z));
  return pose;
}

inline Rig invented9ftRig() {
  Rig rig;
  rig.lens = brownLens();
  rig.lens.focalX_px = 1100.0;
  rig.lens.focalY_px = 1098.0;
  rig.lens.coefficients = {-0.12, 0.03, -0.0005, 0.0007, -0.002};
  rig.pose = poseAbove({0.05, -0.08, 2.1}, 0.04, -0.02);
  return rig;
}

/// A 9 ft table with a tag of 80 mm on each corner of its rails.
inline MeasuredTable taggedTable(double height_m = 0.0384) {
  MeasuredTable measured;
  const double half = 0.040;
  const TablePoint centres[4] = {{-1.12, -0.74}, {1.11, -0.745}, {1.115, 0.74}, {-1.118, 0.742}};
  for (int id = 0; id < 4; ++id) {
    const TablePoint c = centres[id];
    RailTag tag;
    tag.id = id;
    tag.corners = {TablePoint3{c.x - half, c.y + half, height_m},
                   {c.x + half, c.y + half, height_m},
                   {c.x + half, c.y - half, height_m},
                   {c.x - half, c.y - half, height_m}};
    measured.tags.push_back(tag);
  }
  return measured;
}

/// What the rig's camera sees of the tags, with noise.
inline std::vector<AveragedTag> seenTags(const Rig& rig, const MeasuredTable& measured, double noise_px = 0.0) {
  Random random(5);
  std::vector<AveragedTag> tags;
  for (const RailTag& tag : measured.tags) {
    AveragedTag seen;
    seen.tag.id = tag.id;
    seen.images = 20;
    seen.scatter_px = noise_px;
    for (std::size_t i = 0; i < 4; ++i) {
      const ImagePoint pixel = imageFromTable(rig, tag.corners[i]).value();
      seen.tag.corners[i] = {pixel.x + noise_px * random.normal(), pixel.y + noise_px * random.normal()};
    }
    tags.push_back(seen);
  }
  return tags;
}

inline RigEvidence evidenceFor(const Rig& rig, const MeasuredTable& measured, double noise_px = 0.0) {
  RigEvidence evidence;
  evidence.lens = rig.lens;
  evidence.lensSource = "lens.json";
  evidence.filmSize = rig.lens.size;
  evidence.film = "film.mp4";
  evidence.tags = seenTags(rig, measured, noise_px);
  return evidence;
}

/// Views of a board that wander over the picture; centre (0 to 1 each way) and spread say where they fall.
/// Corners outside the picture or beyond the lens are left out.
inline std::vector<BoardView> inventedViews(const Lens& lens, const Board& board, int count, double noise_px,
                                            double spread = 0.85, ImagePoint middle = {0.5, 0.5}) {
  Random random(11);
  std::vector<BoardView> views;
  const double width_m = board.square_m * (board.columns - 1);
  const double height_m = board.square_m * (board.rows - 1);
  for (int v = 0; v < count; ++v) {
    const double u = middle.x + spread * ((v % 5) / 4.0 - 0.5);
    const double w = middle.y + spread * ((v / 5 % 4) / 3.0 - 0.5);
    const ImagePoint aim{u * lens.size.width, w * lens.size.height};
    const auto ray = rayFromImage(lens, aim);
    if (!ray) continue;
    const double distance_m = width_m * lens.focalX_px / (0.33 * lens.size.width);
    Eigen::Matrix3d turn =
        Eigen::AngleAxisd(0.9 * (random.uniform() - 0.5) + 0.1, Eigen::Vector3d::UnitX()).toRotationMatrix() *
        Eigen::AngleAxisd(0.9 * (random.uniform() - 0.5), Eigen::Vector3d::UnitY()).toRotationMatrix() *
        Eigen::AngleAxisd(0.6 * (random.uniform() - 0.5), Eigen::Vector3d::UnitZ()).toRotationMatrix();
    CameraFromTable pose;
    pose.rotation = turn;
    pose.translation_m =
        distance_m * Eigen::Vector3d(ray->x, ray->y, 1.0) - turn * Eigen::Vector3d(0.5 * width_m, 0.5 * height_m, 0.0);
    BoardView view;
    view.still = "still-" + std::to_string(v + 1) + ".jpg";
    view.size = lens.size;
    for (int index = 0; index < board.cornerCount(); ++index) {
      const TablePoint3 p = board.corner(index);
      const Eigen::Vector3d seen = pose.rotation * Eigen::Vector3d(p.x, p.y, p.z) + pose.translation_m;
      const auto pixel = imageFromRay(lens, {seen.x() / seen.z(), seen.y() / seen.z()});
      if (!pixel) continue;
      const ImagePoint noisy{pixel->x + noise_px * random.normal(), pixel->y + noise_px * random.normal()};
      if (noisy.x < 2 || noisy.y < 2 || noisy.x > lens.size.width - 3 || noisy.y > lens.size.height - 3) continue;
      view.corners.push_back({index, noisy});
    }
    views.push_back(view);
  }
  return views;
}

}  // namespace ferrule::testing
