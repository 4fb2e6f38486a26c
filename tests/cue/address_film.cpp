// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cue/address_film.h"

#include <cmath>
#include <cstdio>
#include <numbers>
#include <string>

#include "core/base/random.h"
#include "core/geometry/units.h"

namespace ferrule::testing {

namespace {

constexpr double kForward_s = 0.2;

/// The butt comes down in the first second, then sinks and rises a little with the strokes, and is still at the end.
double elevationAt(const InventedStroke& stroke, double time_s) {
  const double lowered_s = time_s - 1.0;
  const double high = 0.12 * std::exp(-std::max(0.0, lowered_s) / 0.4);
  const double still = time_s > stroke.strike_s - 0.5 ? 0.0 : 0.008 * std::sin(1.7 * time_s) * std::sin(0.63 * time_s);
  return stroke.elevation_rad + (time_s > stroke.strike_s - 0.5 ? 0.0 : high) + still;
}

/// The tip's distance from the ball's face.
double backAt(const InventedStroke& stroke, double time_s) {
  const double left_s = stroke.strike_s - time_s;
  // Evenly faster over the forward stroke, from rest at its back end.
  const double gone_s = kForward_s - left_s;
  const double way_m = 0.5 * stroke.tipSpeed_mps * kForward_s;
  if (gone_s > 0.0) return way_m - 0.5 * stroke.tipSpeed_mps / kForward_s * gone_s * gone_s;
  return way_m - 0.04 + 0.04 * std::cos(2.0 * std::numbers::pi * gone_s / 0.9);
}

}  // namespace

Rig cameraAbove() {
  Rig rig;
  rig.lens.size = {1920, 1080};
  rig.lens.focalX_px = 1270.0;
  rig.lens.focalY_px = 1270.0;
  rig.lens.centre = {960.0, 540.0};
  // Looks down: x to the right, the table's y upwards in the picture.
  rig.pose.rotation << 1.0, 0.0, 0.0, 0.0, -1.0, 0.0, 0.0, 0.0, -1.0;
  rig.pose.translation_m = {0.0, 0.0, 2.0};
  return rig;
}

MeasuredCue taggedCue() {
  MeasuredCue cue;
  cue.tags = {"DICT_4X4_50", {10, 11}, 0.040, {0.330, 0.455}, {0.0082, 0.0089}};
  cue.bridgeHeight_m = 0.047;
  return cue;
}

CuePose poseAt(const InventedStroke& stroke, const CueModel& model, double time_s, double sway_rad) {
  CuePose pose;
  pose.heading_rad = stroke.aim_rad + sway_rad;
  pose.elevation_rad = elevationAt(stroke, time_s);
  pose.roll_rad = 0.05;
  // The axis passes the bridge, which lies where the axis of the strike passes the ball as planted.
  CuePose last = pose;
  last.heading_rad = stroke.aim_rad;
  last.elevation_rad = stroke.elevation_rad;
  const CueAxes struck = axesOf(last);
  const Eigen::Vector3d level(std::cos(stroke.aim_rad), std::sin(stroke.aim_rad), 0.0);
  Eigen::Vector3d bridge =
      Eigen::Vector3d(stroke.ball.x, stroke.ball.y, 0.0) - stroke.bridge_m * level - stroke.side_m * struck.left;
  bridge.z() = stroke.bridgeHeight_m;
  const CueAxes axes = axesOf(pose);
  const double tipAhead_m = stroke.bridge_m - stroke.radius_m - backAt(stroke, time_s);
  pose.middle_m = bridge + (tipAhead_m - model.middleFromTip_m()) * axes.forward;
  return pose;
}

AddressFilm filmOf(const InventedStroke& stroke, const Rig& rig, const MeasuredCue& cue, std::uint64_t seed) {
  Random random(seed);
  const CueModel model(cue);
  AddressFilm film;
  const long images = std::lround(7.0 * stroke.rate_hz);
  for (long image = 0; image < images; ++image) {
    const double time_s = static_cast<double>(image) / stroke.rate_hz;
    const double sway_rad = stroke.sway_rad * random.normal();
    if (time_s < stroke.first_s || time_s > stroke.strike_s) continue;
    const CuePose pose = poseAt(stroke, model, time_s, sway_rad);
    CueSighting sighting{image, time_s, {}};
    for (std::size_t tag = 0; tag < model.tags(); ++tag) {
      const auto corners = model.imageOf(rig, pose, tag, 1);
      if (!corners) continue;
      TagObservation seen{cue.tags.ids[tag], *corners};
      bool inside = true;
      for (ImagePoint& corner : seen.corners) {
        corner = {corner.x + stroke.corner_px * random.normal(), corner.y + stroke.corner_px * random.normal()};
        inside = inside && corner.x > 0.0 && corner.y > 0.0 && corner.x < rig.lens.size.width &&
                 corner.y < rig.lens.size.height;
      }
      if (inside) sighting.tags.push_back(seen);
    }
    if (!sighting.tags.empty()) film.sightings.push_back(sighting);
  }
  std::string text = "time_s,pitch_deg\n";
  for (double time_s = stroke.logFrom_s; time_s < stroke.logUntil_s; time_s += 0.01) {
    char line[64];
    const double pitch = elevationAt(stroke, time_s) + stroke.sensorBias_rad + stroke.sensorNoise_rad * random.normal();
    std::snprintf(line, sizeof line, "%.3f,%.3f\n", time_s + stroke.logMinusFilm_s, degreesFromRadians(pitch));
    text += line;
  }
  film.log = parsePitchLog(text, "pitch.csv").value();
  const CuePose last = poseAt(stroke, model, stroke.strike_s, 0.0);
  const Eigen::Vector3d centre(stroke.ball.x, stroke.ball.y, stroke.radius_m);
  film.tipHeight_m = (last.middle_m - centre).dot(axesOf(last).up);
  return film;
}

}  // namespace ferrule::testing
