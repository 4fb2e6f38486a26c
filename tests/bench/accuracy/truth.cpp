// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/truth.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/base/text_file.h"
#include "core/geometry/units.h"

namespace ferrule::bench {

namespace {

using nlohmann::json;

constexpr double kOnCloth_m = 0.0005;

double metres(const json& value_mm) {
  return metresFromMillimetres(value_mm.get<double>());
}

/// Where the ray from the eye through a point meets the plane z = radius.
TablePoint apparentPlace(TablePoint3 eye, TablePoint3 point, double radius_m) {
  const double along = (eye.z - radius_m) / (eye.z - point.z);
  return {eye.x + along * (point.x - eye.x), eye.y + along * (point.y - eye.y)};
}

Rig trueRig(const json& camera) {
  Rig rig;
  rig.lens.camera = camera.at("name").get<std::string>();
  rig.lens.size = {camera.at("image_size").at(0).get<int>(), camera.at("image_size").at(1).get<int>()};
  rig.lens.model = LensModel::Brown5;
  rig.lens.focalX_px = camera.at("K").at(0).at(0).get<double>();
  rig.lens.focalY_px = camera.at("K").at(1).at(1).get<double>();
  rig.lens.centre = {camera.at("K").at(0).at(2).get<double>(), camera.at("K").at(1).at(2).get<double>()};
  const json& coefficients = camera.at("lens_coeffs");
  for (std::size_t i = 0; i < coefficients.size() && i < rig.lens.coefficients.size(); ++i) {
    rig.lens.coefficients[i] = coefficients[i].get<double>();
  }
  for (int row = 0; row < 3; ++row) {
    for (int column = 0; column < 3; ++column) {
      rig.pose.rotation(row, column) =
          camera.at("R").at(static_cast<std::size_t>(row)).at(static_cast<std::size_t>(column)).get<double>();
    }
    rig.pose.translation_m(row) = metres(camera.at("t").at(static_cast<std::size_t>(row)));
  }
  rig.verdict = "fits";
  return rig;
}

TrueBall trueBall(const json& entry, TablePoint3 eye, double radius_m) {
  TrueBall ball;
  ball.ball = BallName(entry.at("ball").get<int>());
  ball.position = {metres(entry.at("x")), metres(entry.at("y")), entry.contains("z") ? metres(entry["z"]) : radius_m};
  ball.apparent = apparentPlace(eye, ball.position, radius_m);
  ball.visible = entry.at("vis").get<double>();
  ball.inPlay = entry.value("in_play", false);
  ball.inHand = entry.value("in_hand", false);
  ball.onCloth = std::abs(ball.position.z - radius_m) <= kOnCloth_m;
  return ball;
}

const TrueBall* findBall(const TrueImage& image, BallName name) {
  const auto found =
      std::find_if(image.balls.begin(), image.balls.end(), [&](const TrueBall& ball) { return ball.ball == name; });
  return found == image.balls.end() ? nullptr : &*found;
}

/// The greater of the speeds from the image before and to the image after.
void fillSpeeds(std::vector<TrueImage>& images) {
  for (std::size_t i = 0; i < images.size(); ++i) {
    for (TrueBall& ball : images[i].balls) {
      for (const std::size_t other : {i == 0 ? i : i - 1, std::min(i + 1, images.size() - 1)}) {
        const double interval_s = std::abs(images[other].time_s - images[i].time_s);
        const TrueBall* there = findBall(images[other], ball.ball);
        if (interval_s <= 0.0 || there == nullptr) continue;
        const double way_m = std::hypot(there->position.x - ball.position.x, there->position.y - ball.position.y);
        ball.speed_mps = std::max(ball.speed_mps, way_m / interval_s);
      }
    }
  }
}

/// "bank-pot" is a pot.
Outcome trueOutcome(const std::string& text) {
  if (text.ends_with("pot")) return Outcome::Pot;
  return outcomeFromText(text).value_or(Outcome::Foul);
}

ShotEvent trueEvent(const json& entry) {
  ShotEvent event;
  event.time_s = entry.at("t").get<double>();
  const std::string type = entry.at("type").get<std::string>();
  if (type == "ball-ball") {
    event.kind = EventKind::Ball;
    event.ball = BallName(entry.at("i").get<int>());
    event.other = BallName(entry.at("j").get<int>());
    return event;
  }
  event.ball = BallName(entry.at("ball").get<int>());
  event.kind = eventKindFromText(type).value_or(EventKind::OffTable);
  const std::string which = entry.value("which", std::string());
  if (event.kind == EventKind::Cushion) event.cushion = cushionFromText(which);
  if (event.kind == EventKind::Pocket) event.pocket = pocketFromText(which);
  return event;
}

TrueShot trueShot(const json& entry) {
  TrueShot shot;
  shot.strike_s = entry.at("strike_time").get<double>();
  shot.rest_s = entry.at("rest_time").get<double>();
  shot.aim_rad = entry.at("departure_direction").get<double>();
  shot.speed_mps = metres(entry.at("speed_after_strike"));
  shot.side = entry.at("tip_offset_side").get<double>();
  shot.height = entry.at("tip_offset_vertical").get<double>();
  shot.elevation_rad = entry.at("cue_elevation").get<double>();
  for (const json& event : entry.at("events"))
    shot.events.push_back(trueEvent(event));
  if (!entry.at("first_contact").is_null()) shot.firstContact = BallName(entry["first_contact"].get<int>());
  for (const json& pocketed : entry.at("pocketed")) {
    const auto pocket = pocketFromText(pocketed.at("pocket").get<std::string>());
    if (pocket) shot.pocketed.push_back({BallName(pocketed.at("ball").get<int>()), *pocket});
  }
  shot.outcome = trueOutcome(entry.at("outcome").get<std::string>());
  return shot;
}

Truth truthFrom(const json& file) {
  Truth truth;
  truth.radius_m = metres(file.at("ball_radius"));
  truth.rate_hz = file.at("camera").at("fps").get<double>();
  truth.camera = file.at("camera").at("name").get<std::string>();
  truth.rig = trueRig(file.at("camera"));
  const json& eye = file.at("camera").at("position");
  const TablePoint3 position{metres(eye.at(0)), metres(eye.at(1)), metres(eye.at(2))};
  for (const json& frame : file.at("frames")) {
    TrueImage image;
    image.time_s = frame.at("t").get<double>();
    for (const json& ball : frame.at("balls"))
      image.balls.push_back(trueBall(ball, position, truth.radius_m));
    truth.images.push_back(std::move(image));
  }
  fillSpeeds(truth.images);
  for (const json& shot : file.at("shots"))
    truth.shots.push_back(trueShot(shot));
  return truth;
}

}  // namespace

Result<Truth> readTruth(const std::string& path) {
  const auto content = readTextFile(path);
  if (!content) return tl::unexpected(content.error());
  try {
    return truthFrom(json::parse(*content));
  } catch (const json::exception& fault) {
    return failure(ErrorCode::FileMalformed, path, fault.what());
  }
}

}  // namespace ferrule::bench
