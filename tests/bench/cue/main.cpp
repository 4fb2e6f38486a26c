// SPDX-License-Identifier: GPL-3.0-or-later
// bench_cue [FOLDER]: measures every film of FOLDER that has a truth.json beside it, with its table.json and, where it
// is there, pitch.csv alone, and prints how far the cue's line, elevation and tip point are from the truth. Without
// tags on the cue the line comes from the shaft. It checks nothing.
#include <CLI/CLI.hpp>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "core/base/text_file.h"
#include "core/geometry/units.h"
#include "core/measure/cue_watch.h"
#include "core/measure/film_readings.h"
#include "core/measure/measure.h"
#include "tests/bench/accuracy/clip_rig.h"
#include "tests/bench/accuracy/truth.h"

namespace {

namespace fs = std::filesystem;
using namespace ferrule;
using namespace ferrule::bench;

/// What a film's truth says of the cue at one strike; times in s, angles in rad, the tip point in ball radii.
struct TrueStrike {
  double strike_s = 0.0;
  double aim_rad = 0.0;
  double elevation_rad = 0.0;
  double side = 0.0;
  double height = 0.0;
};

/// And image by image, where the film has such a truth.
struct TrueCue {
  std::vector<TrueStrike> strikes;
  struct At {
    double time_s = 0.0;
    double heading_rad = 0.0;
    double pitch_rad = 0.0;
    double tipX_m = 0.0;
    double tipY_m = 0.0;
  };
  std::vector<At> course;
};

Result<nlohmann::json> jsonOf(const fs::path& path) {
  const auto text = readTextFile(path.string());
  if (!text) return tl::unexpected(text.error());
  auto json = nlohmann::json::parse(*text, nullptr, false);
  if (json.is_discarded()) return failure(ErrorCode::FileMalformed, path.string());
  return json;
}

Result<TrueCue> trueCue(const fs::path& clip) {
  const auto truth = jsonOf(clip / "truth.json");
  if (!truth) return tl::unexpected(truth.error());
  TrueCue all;
  for (const auto& shot : truth->at("shots")) {
    all.strikes.push_back({shot.at("strike_time"), shot.at("aim_direction"), shot.at("cue_elevation"),
                           shot.at("tip_offset_side"), shot.at("tip_offset_vertical")});
  }
  if (!fs::exists(clip / "cue-truth.json")) return all;
  const auto cue = jsonOf(clip / "cue-truth.json");
  if (!cue) return tl::unexpected(cue.error());
  for (const auto& frame : cue->at("frames")) {
    all.course.push_back({frame.at("t"), frame.at("heading"), frame.at("pitch"),
                          metresFromMillimetres(frame.at("tip").at(0).get<double>()),
                          metresFromMillimetres(frame.at("tip").at(1).get<double>())});
  }
  return all;
}

/// Of the tip at a time, m/s: from its places in the images about it, drawn on in a straight line.
double trueSpeed(const TrueCue& truth, double strike_s) {
  double before_mps = 0.0;
  double last_mps = 0.0;
  double middle_s = 0.0;
  double step_s = 1.0;
  for (std::size_t i = 1; i < truth.course.size() && truth.course[i - 1].time_s < strike_s; ++i) {
    const auto& a = truth.course[i - 1];
    const auto& b = truth.course[i];
    step_s = b.time_s - a.time_s;
    middle_s = 0.5 * (a.time_s + b.time_s);
    before_mps = last_mps;
    last_mps = std::hypot(b.tipX_m - a.tipX_m, b.tipY_m - a.tipY_m) / step_s;
  }
  return last_mps + (last_mps - before_mps) * (strike_s - middle_s) / step_s;
}

void line(const char* what, const std::optional<Measured>& value, double truth, double perUnit, const char* unit) {
  if (!value) {
    std::printf("  %-34s not seen\n", what);
    return;
  }
  const double error = (value->value - truth) * perUnit;
  const double u = value->standardUncertainty * perUnit;
  std::printf("  %-34s error %+8.3f  u %7.3f  %-4s (%.1f u)\n", what, error, u, unit, std::abs(error) / u);
}

void print(const CueReading& reading, const TrueCue& truth, const TrueStrike& strike) {
  const double degrees = degreesFromRadians(1.0);
  std::printf("  images %d, source %s, pitch log %s", reading.images, toText(reading.source).data(),
              toText(reading.log).data());
  if (reading.log == LogUse::Shifted) std::printf(" by %.2f s", reading.logMinusFilm_s);
  if (reading.tags) {
    std::printf("; module %.2f px, %.0f %% of the tags read", reading.tags->module_px, 100.0 * reading.tags->readShare);
    if (reading.tags->sideNeeded_m) {
      std::printf(", needs %.0f mm", millimetresFromMetres(*reading.tags->sideNeeded_m));
    }
  }
  std::printf("\n");
  auto aim = reading.aim_rad;
  if (aim) aim->value = strike.aim_rad + wrapAngle(aim->value - strike.aim_rad);
  line("cue line", aim, strike.aim_rad, degrees, "deg");
  line("elevation", reading.elevation_rad, strike.elevation_rad, degrees, "deg");
  line("tip point, side", reading.tipSide_m, strike.side * reading.ballRadius_m, 1000.0, "mm");
  line("tip point, height", reading.tipHeight_m, strike.height * reading.ballRadius_m, 1000.0, "mm");
  if (!truth.course.empty()) {
    line("tip speed", reading.tipSpeed_mps, trueSpeed(truth, strike.strike_s), 1.0, "m/s");
  }
  if (reading.steadiness_rad) {
    std::printf("  steadiness %.3f deg, u %.3f\n", reading.steadiness_rad->value * degrees,
                reading.steadiness_rad->standardUncertainty * degrees);
  }
  if (reading.sensorBias_rad) {
    std::printf("  sensor's error %.3f deg, u %.3f\n", reading.sensorBias_rad->value * degrees,
                reading.sensorBias_rad->standardUncertainty * degrees);
  }
  if (reading.aimBeforeMinusAfter_rad) {
    std::printf("  aim before minus after %.3f deg, u %.3f\n", reading.aimBeforeMinusAfter_rad->value * degrees,
                reading.aimBeforeMinusAfter_rad->standardUncertainty * degrees);
  }
  double n = 0.0, aims = 0.0, pitches = 0.0, inside = 0.0;
  for (const CueAt& at : reading.course) {
    if (truth.course.empty()) break;
    const auto nearest = std::ranges::min_element(truth.course, {},
                                                  [&](const TrueCue::At& t) { return std::abs(t.time_s - at.time_s); });
    const double aimError = wrapAngle(at.aim_rad.value - nearest->heading_rad);
    const double pitchError = at.elevation_rad ? at.elevation_rad->value - nearest->pitch_rad : 0.0;
    n += 1.0;
    aims += aimError * aimError;
    pitches += pitchError * pitchError;
    if (std::abs(aimError) <= 1.96 * at.aim_rad.standardUncertainty) inside += 1.0;
  }
  if (n > 0.0) {
    std::printf("  over the address: cue line rms %.3f deg (%.0f %% within 95 %%), elevation rms %.3f deg\n",
                std::sqrt(aims / n) * degrees, 100.0 * inside / n, std::sqrt(pitches / n) * degrees);
  }
}

struct Trial {
  bool withLog = true;
  bool withBridge = true;
  bool withTags = true;
  double shift_s = 0.0;
};

Result<void> measure(const fs::path& clip, RigMaker& rigs, const Trial& trial) {
  const std::string name = clip.filename().string();
  const std::string film = (clip / (name + ".mp4")).string();
  const auto truth = readTruth((clip / "truth.json").string());
  if (!truth) return tl::unexpected(truth.error());
  const auto cueTruth = trueCue(clip);
  if (!cueTruth) return tl::unexpected(cueTruth.error());
  auto measured = readMeasuredTable((clip / "table.json").string());
  if (!measured) return tl::unexpected(measured.error());
  if (!trial.withBridge) measured->bridgeHeight_m.reset();
  const auto rig = rigs.make(film, *truth, *measured);
  if (!rig) return tl::unexpected(rig.error());
  std::optional<CueKit> kit;
  if (const auto cue = cueOf(*measured); cue && trial.withTags) kit = CueKit{*cue, std::nullopt};
  if (kit && trial.withLog) {
    auto log = readPitchLog((clip / "pitch.csv").string());
    if (!log) return tl::unexpected(log.error());
    for (PitchSample& sample : log->samples)
      sample.time_s += trial.shift_s;
    for (LogGap& gap : log->gaps)
      gap = {gap.from_s + trial.shift_s, gap.until_s + trial.shift_s};
    kit->log = std::move(*log);
  }
  auto source = FilmSource::open(film);
  if (!source) return tl::unexpected(source.error());
  FilmReadings readings(std::move(*source), *rig, *measured, kit);
  MeasureObserver observer;
  observer.cue = [&](const ReadShot& shot, const CueReading& reading) {
    const auto strike = std::ranges::min_element(
        cueTruth->strikes, {}, [&](const TrueStrike& one) { return std::abs(one.strike_s - shot.reading.strike_s); });
    std::printf("  shot %d, strike at %.3f s (true %.3f)\n", shot.reading.number, shot.reading.strike_s,
                strike->strike_s);
    print(reading, *cueTruth, *strike);
  };
  const auto report = measureReadings(readings, *measured, {}, {}, observer);
  if (!report) return tl::unexpected(report.error());
  return {};
}

}  // namespace

int main(int argc, char** argv) {
  CLI::App app("Measures the cue in films with known truth and prints the errors.", "bench_cue");
  std::string folder = FERRULE_SOURCE_DIR "/../shared/clips";
  std::vector<std::string> chosen;
  Trial trial;
  app.add_option("FOLDER", folder, "Folder with a sub-folder for every film, and calibration/CAMERA stills")
      ->capture_default_str();
  app.add_option("--clip", chosen, "Only the film of this name; may be repeated");
  app.add_flag("!--no-log", trial.withLog, "Leave the pitch sensor's log out");
  app.add_flag("!--no-bridge", trial.withBridge, "Leave the bridge's height out");
  app.add_flag("!--no-tags", trial.withTags, "Take every cue for a plain one");
  app.add_option("--shift", trial.shift_s, "Begin the log's clock so many seconds earlier");
  CLI11_PARSE(app, argc, argv);

  RigMaker rigs(folder, false);
  std::vector<fs::path> clips;
  std::error_code none;
  for (const auto& entry : fs::directory_iterator(folder, none)) {
    const std::string name = entry.path().filename().string();
    if (!chosen.empty() && std::ranges::find(chosen, name) == chosen.end()) continue;
    if (fs::exists(entry.path() / "truth.json") && fs::exists(entry.path() / (name + ".mp4")))
      clips.push_back(entry.path());
  }
  std::ranges::sort(clips);
  int failures = clips.empty() ? 1 : 0;
  for (const fs::path& clip : clips) {
    std::printf("%s\n", clip.filename().c_str());
    if (const auto done = measure(clip, rigs, trial); !done) {
      std::printf("  code %d: %s %s\n", static_cast<int>(done.error().code), done.error().subject.c_str(),
                  done.error().detail.c_str());
      ++failures;
    }
  }
  return failures > 0 ? 1 : 0;
}
