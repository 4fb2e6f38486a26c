// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/film_rig.h"

#include <utility>
#include <vector>

#include "core/camera/lens_file.h"
#include "core/camera/rig_calibration.h"
#include "core/camera/rig_from_lines.h"
#include "core/vision/cloth_outline.h"
#include "core/vision/edge_strip.h"
#include "core/vision/film_source.h"
#include "core/vision/nose_survey.h"
#include "core/vision/tag_survey.h"

namespace ferrule {

namespace {

/// Every so many images one is looked at: neighbours show the same noise of the film's coding.
constexpr long kStride = 3;
/// A film whose tags stay hidden so long will not show them later.
constexpr long kMostImages = 900;
/// The noses are looked at in the median of a few images, a tenth of a second or more apart.
constexpr long kNoseStride = 12;
constexpr long kMostNoseImages = 7;

Result<RigEvidence> evidenceOf(const RigWanted& wanted, const FilmInfo& film) {
  RigEvidence evidence;
  if (!wanted.lensFile.empty()) {
    auto lens = readLensFile(wanted.lensFile);
    if (!lens) return tl::make_unexpected(lens.error());
    auto uncertainty = readLensUncertainty(wanted.lensFile);
    if (!uncertainty) return tl::make_unexpected(uncertainty.error());
    evidence.lens = std::move(*lens);
    evidence.lensUncertainty = std::move(*uncertainty);
    evidence.lensSource = wanted.lensFile;
  }
  evidence.film = wanted.film;
  evidence.date = wanted.date;
  evidence.filmSize = film.size;
  evidence.filmRotation_deg = film.rotation_deg;
  return evidence;
}

Result<SeenLines> linesIn(FilmSource& film, const RigWanted& wanted, const RigEvidence& evidence, NoseSurvey* noses,
                          const JobControl& job) {
  std::vector<cv::Mat> pictures;
  FilmImage image;
  while (image.number < kMostNoseImages * kNoseStride && film.next(image)) {
    if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
    if (image.number % kNoseStride != 0) continue;
    pictures.push_back(image.picture.clone());
    if (noses != nullptr) noses->add(image.picture);
    job.reportShare(-1.0, "looking for cushions");
  }
  SeenLines seen;
  if (!pictures.empty()) {
    seen.picture = medianPicture(pictures);
    if (const auto outline = ClothOutline::find(seen.picture)) {
      seen.lines = traceLines(seen.picture, *outline, wayWithHead(*outline, wanted.head), wanted.measured.table);
    }
  }
  // Where a nose was placed by hand, marks may be found that were not before.
  if (!seen.picture.empty()) {
    seen.marks = marksByLines(seen.picture, evidence, wanted.measured, withHandLines(seen.lines, wanted.handLines));
  }
  if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
  return seen;
}

Result<Rig> fromCushions(const RigWanted& wanted, const RigEvidence& evidence, FilmSource& film,
                         const JobControl& job) {
  NoseSurvey noses;
  const auto seen = linesIn(film, wanted, evidence, &noses, job);
  if (!seen) return tl::make_unexpected(seen.error());
  auto rig = rigFromLines(evidence, wanted.measured, withHandLines(seen->lines, wanted.handLines),
                          withHandMarks(seen->marks, wanted.handMarks));
  if (rig) addNoses(*rig, noses.result(*rig, wanted.measured.table));
  return rig;
}

Result<Rig> fromTags(const RigWanted& wanted, RigEvidence evidence, FilmSource& film, const JobControl& job) {
  auto survey = TagSurvey::of(wanted.measured, wanted.table);
  if (!survey) return tl::make_unexpected(survey.error());
  // A lens for another picture is refused before the long look.
  if (const auto fitting = rigWithoutPose(evidence); !fitting) return tl::make_unexpected(fitting.error());
  NoseSurvey noses;
  FilmImage image;
  while (image.number < kMostImages && !survey->enough() && film.next(image)) {
    if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
    if (image.number % kStride == 0) survey->add(image.picture);
    if (image.number % kNoseStride == 0 && image.number < kMostNoseImages * kNoseStride) noses.add(image.picture);
    job.reportShare(-1.0, "looking for tags");
  }
  auto tags = survey->result(wanted.film);
  if (!tags) return tl::make_unexpected(tags.error());
  evidence.tags = std::move(*tags);
  auto rig = calibrateRig(evidence, wanted.measured);
  if (rig) addNoses(*rig, noses.result(*rig, wanted.measured.table));
  return rig;
}

}  // namespace

Result<SeenLines> linesOfFilm(const RigWanted& wanted, const JobControl& job) {
  auto film = FilmSource::open(wanted.film);
  if (!film) return tl::make_unexpected(film.error());
  const auto evidence = evidenceOf(wanted, film->info());
  if (!evidence) return tl::make_unexpected(evidence.error());
  auto seen = linesIn(*film, wanted, *evidence, nullptr, job);
  if (seen && seen->picture.empty()) return failure(ErrorCode::FilmTruncated, wanted.film);
  return seen;
}

Result<LinesFit> fitOfLines(const RigWanted& wanted, const std::vector<LineTrace>& lines,
                            const std::vector<MarkSighting>& marks) {
  const auto film = FilmSource::open(wanted.film);
  if (!film) return tl::make_unexpected(film.error());
  const auto evidence = evidenceOf(wanted, film->info());
  if (!evidence) return tl::make_unexpected(evidence.error());
  return fitRigFromLines(*evidence, wanted.measured, lines, marks);
}

Result<Rig> rigFromFilm(const RigWanted& wanted, const JobControl& job) {
  auto film = FilmSource::open(wanted.film);
  if (!film) return tl::make_unexpected(film.error());
  auto evidence = evidenceOf(wanted, film->info());
  if (!evidence) return tl::make_unexpected(evidence.error());
  return wanted.withoutTags ? fromCushions(wanted, *evidence, *film, job)
                            : fromTags(wanted, std::move(*evidence), *film, job);
}

}  // namespace ferrule
