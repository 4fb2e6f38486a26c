// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/clip_rig.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <vector>

#include "core/camera/lens_calibration.h"
#include "core/camera/rig_calibration.h"
#include "core/geometry/units.h"
#include "core/vision/board_stills.h"
#include "core/vision/film_source.h"
#include "core/vision/tag_survey.h"

namespace ferrule::bench {

namespace {

namespace fs = std::filesystem;

/// The boards that the cameras' stills show, tried in turn.
constexpr std::array kBoards{"charuco:8x6:40:30:DICT_5X5_100", "chessboard:9x6:25"};

std::vector<std::string> stillsIn(const fs::path& folder) {
  std::vector<std::string> stills;
  std::error_code error;
  for (const auto& entry : fs::directory_iterator(folder, error)) {
    const std::string extension = entry.path().extension().string();
    if (extension == ".jpg" || extension == ".png") stills.push_back(entry.path().string());
  }
  std::sort(stills.begin(), stills.end());
  return stills;
}

}  // namespace

RigDifference differenceOf(const Rig& rig, const Rig& truth, const MeasuredTable& measured) {
  RigDifference difference;
  double sum = 0.0;
  const double height_m = measured.balls.radius_m();
  for (double x = -0.48; x <= 0.481; x += 0.12) {
    for (double y = -0.48; y <= 0.481; y += 0.12) {
      const TablePoint place{x * measured.table.length_m, y * measured.table.width_m};
      const auto seen = imageFromTable(truth, {place.x, place.y, height_m});
      const auto back = seen ? tableFromImage(rig, *seen, height_m) : std::nullopt;
      if (!back) continue;
      const double apart_m = distance(*back, place);
      sum += apart_m * apart_m;
      difference.max_m = std::max(difference.max_m, apart_m);
      ++difference.points;
      difference.places.emplace_back(place, *back);
    }
  }
  difference.rms_m = std::sqrt(sum / std::max(difference.points, 1));
  return difference;
}

Result<Lens> RigMaker::lensOf(const std::string& camera) {
  if (const auto known = lenses_.find(camera); known != lenses_.end()) return known->second;
  const std::vector<std::string> stills = stillsIn(fs::path(folder_) / "calibration" / camera);
  Result<Lens> lens = failure(ErrorCode::NotFound, camera, "calibration stills");
  for (const char* text : kBoards) {
    const auto board = parseBoard(text);
    if (!board) return tl::unexpected(board.error());
    const auto survey = surveyStills(*board, stills);
    if (!survey) return tl::make_unexpected(survey.error());
    auto views = viewsOfBoard(*board, *survey);
    if (!views) {
      lens = tl::unexpected(views.error());
      continue;
    }
    const auto calibration = calibrateLens(*board, std::move(*views));
    if (!calibration) return tl::unexpected(calibration.error());
    std::fprintf(stderr, "  lens of %s: rms %.3f px\n", camera.c_str(), calibration->lens.rms_px);
    lens = calibration->lens;
    lenses_[camera] = *lens;
    uncertainties_[camera] = calibration->uncertainty;
    break;
  }
  return lens;
}

Result<Rig> RigMaker::make(const std::string& film, const Truth& truth, const MeasuredTable& measured,
                           std::optional<Worsening> worse) {
  if (trueRig_) return truth.rig;
  const auto lens = lensOf(truth.camera);
  if (!lens) return tl::unexpected(lens.error());
  auto survey = TagSurvey::of(measured, film);
  if (!survey) return tl::unexpected(survey.error());
  auto source = FilmSource::open(film);
  if (!source) return tl::unexpected(source.error());
  FilmImage image;
  while (!survey->enough() && source->next(image))
    survey->add(image.picture);
  auto tags = survey->result(film);
  if (!tags) return tl::unexpected(tags.error());
  RigEvidence evidence;
  evidence.lens = worse ? worsenLens(*lens, *worse) : *lens;
  evidence.lensUncertainty = uncertainties_[truth.camera];
  evidence.lensSource = "calibration/" + truth.camera;
  evidence.film = film;
  evidence.filmSize = source->info().size;
  evidence.filmRotation_deg = source->info().rotation_deg;
  evidence.tags = std::move(*tags);
  auto rig = calibrateRig(evidence, measured);
  if (rig) {
    const RigDifference difference = differenceOf(*rig, truth.rig, measured);
    std::fprintf(stderr, "  rig against truth over the table: rms %.2f mm, max %.2f mm (%d points); tags rms %.3f px\n",
                 millimetresFromMetres(difference.rms_m), millimetresFromMetres(difference.max_m), difference.points,
                 rig->poseRms_px);
  }
  return rig;
}

}  // namespace ferrule::bench
