// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/record/sample.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>

#include "core/base/contract.h"

namespace ferrule::sample {

ShotReading shot(int number) {
  ShotReading reading;
  reading.number = number;
  reading.strike_s = 10.0 * number + 0.25;
  reading.rest_s = 10.0 * number + 4.5;
  reading.before = {{kCueBall, {-0.5, 0.125}}, {BallName(3), {0.25, -0.0625}}, {BallName(12), {0.9, 0.3}}};
  reading.after = {{kCueBall, {0.1, 0.2}}, {BallName(12), {0.9, 0.3}}};
  reading.delivery.aim_rad = Measured{0.1 + 0.001 * number, 0.0004};
  reading.delivery.speed_mps = Measured{2.5, 0.02};
  reading.delivery.side = Measured{-0.125, 0.05};
  reading.events = {
      {reading.strike_s + 0.5, EventKind::Ball, kCueBall, BallName(3), {}, {}, {0.2, -0.05}},
      {reading.strike_s + 1.0, EventKind::Cushion, kCueBall, {}, CushionName::LeftFoot, {}, {0.6, 0.5}},
      {reading.strike_s + 1.5, EventKind::Pocket, BallName(3), {}, {}, PocketName::FootRight, {1.1, -0.5}}};
  reading.firstContact = BallName(3);
  reading.pocketed = {{BallName(3), PocketName::FootRight}};
  reading.target = Target{BallName(3), PocketName::FootRight, 0.35, -0.004, MissSide::Over};
  reading.outcome = Outcome::Pot;
  reading.outcomeVerdict = Verdict::Proposed;
  return reading;
}

ShotReading explainedShot(int number) {
  ShotReading reading = shot(number);
  reading.target->lineErrorUncertainty_rad = 0.0015;
  reading.target->missAtMouth_m = -0.0031;
  reading.target->fullness = 0.66;
  reading.target->rattled = true;
  reading.missAccount = MissAccount{{-0.004, 0.0015}, {-0.011, 0.004}, {0.002, 0.001}, {-0.001, 0.0005},
                                    {0.005, 0.002},   {0.001, 0.0007}, {0.0, 0.0002},  {1e-3 / 3.0, 0.003}};
  reading.events[0].timeUncertainty_s = 0.0008;
  for (ShotEvent& event : reading.events)
    event.verdict = event.kind == EventKind::Pocket ? Verdict::Proposed : Verdict::Certain;
  reading.delivery.whyNoHeight = NotShown::SlideNotSeen;
  reading.delivery.whyNoElevation = NotShown::NoHopNoCurve;
  reading.flags = {ShotFlag::UnsurePocket};
  return reading;
}

std::vector<Track> tracks(int number, int samples) {
  Track cue{kCueBall, {}};
  Track object{BallName(3), {}};
  for (int i = 0; i < samples; ++i) {
    const double time_s = std::round((10.0 * number + i / 60.0) * 1e6) / 1e6;
    const double x_m = std::round((-0.5 + 0.02 * i) * 1e5) / 1e5;
    cue.samples.push_back({time_s, {x_m, 0.125}, 0.0004, i % 7 != 3});
    object.samples.push_back({time_s, {0.25, -0.0625}, 0.0003, true});
  }
  return {cue, object};
}

MeasuredTable table() {
  const auto measured = parseMeasuredTable(
      R"({"units": "mm", "table_length_nose_to_nose": 2235, "table_width_nose_to_nose": 1118, "ball_diameter": 57.15,
          "tag_black_side": 80, "tag_height_above_cloth": 38.4, "tags": [
          {"id": 0, "corners": [[-1007.0, -625.5], [-927.0, -623.5], [-925.0, -703.5], [-1005.0, -705.5]]}]})",
      "sample");
  FERRULE_REQUIRE(measured.has_value());
  return *measured;
}

Rig rig() {
  Rig rig;
  rig.lens.camera = "ceiling";
  rig.lens.size = {1280, 720};
  rig.lens.model = LensModel::Brown5;
  rig.lens.focalX_px = 900.0;
  rig.lens.focalY_px = 901.0;
  rig.lens.centre = {639.5, 359.5};
  rig.lens.coefficients = {-0.25, 0.08, 0.0, 0.0, 0.0};
  rig.pose.rotation << 1, 0, 0, 0, -1, 0, 0, 0, -1;
  rig.pose.translation_m = {0.0, 0.0, 2.5};
  rig.poseRms_px = 0.25;
  rig.tagRms_m = 0.0005;
  rig.verdict = "fits";
  FERRULE_REQUIRE(rig.chain.add({CorrectionKind::Lens, "lens.json", "straightens the lens", "2026-01-02"}).has_value());
  FERRULE_REQUIRE(rig.chain.add({CorrectionKind::Pose, "rig.json", "image to table", "2026-01-03"}).has_value());
  return rig;
}

FilmEntry film() {
  FilmEntry film;
  film.path = "films/evening.mp4";
  film.sha256 = std::string(64, 'a');
  film.size = {1280, 720};
  film.images = 3600;
  film.duration_s = 60.0;
  film.firstImage = 1'760'000'000'000;
  return film;
}

Player player(const std::string& name, Handedness handedness) {
  Player player;
  player.name = name;
  player.handedness = handedness;
  return player;
}

Game addGame(Record& record) {
  Game game;
  const auto must = [](auto&& result) {
    FERRULE_REQUIRE(result.has_value());
    return *result;
  };
  game.ada = must(record.addPlayer(player("Ada", Handedness::Left)));
  game.ben = must(record.addPlayer(player("Ben")));
  game.film = must(record.addFilm(film()));
  game.session = must(record.addSession({"Evening", 1'760'000'000'000, "club table 2", table(), {game.ada, game.ben}}));
  game.frame = must(record.addFrame({game.session, "eight-ball", game.film, rig()}));
  return game;
}

Record openOrDie(const std::string& path, const RecordOptions& options) {
  auto record = Record::open(path, options);
  if (!record) {
    std::fprintf(stderr, "cannot open %s: code %d, %s\n", path.c_str(), static_cast<int>(record.error().code),
                 record.error().detail.c_str());
    std::_Exit(3);
  }
  return std::move(*record);
}

}  // namespace ferrule::sample
