// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/film_check.h"

#include "core/vision/film_source.h"

namespace ferrule {

namespace {

/// Looks are so far apart: neighbouring images show the same noise of the film's coding.
constexpr double kBetweenLooks_s = 0.1;
constexpr double kLooked_s = 3.0;
constexpr std::size_t kEnough = 3;

}  // namespace

Result<FilmCheck> checkFilm(const std::string& film, const Rig& rig, const MeasuredTable& measured,
                            const std::string& tableName, const JobControl& job) {
  auto source = FilmSource::open(film);
  if (!source) return tl::make_unexpected(source.error());
  auto survey = CheckSurvey::of(measured, tableName);
  if (!survey) return tl::make_unexpected(survey.error());
  FilmCheck result;
  result.evidence.filmSize = source->info().size;
  if (source->info().size != rig.lens.size) {
    result.check = checkRig(rig, measured, result.evidence);
    return result;
  }
  FilmImage image;
  double next_s = 0.0;
  while (image.time_s < kLooked_s && source->next(image)) {
    if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
    if (image.time_s < next_s) continue;
    survey->add(image.picture);
    next_s = image.time_s + kBetweenLooks_s;
    job.reportShare(0.8 * image.time_s / kLooked_s, "looking");
  }
  auto checked = checkPictures(*survey, film, rig, measured, job);
  if (checked) checked->looked_s = image.time_s;
  return checked;
}

Result<FilmCheck> checkPictures(const CheckSurvey& survey, const std::string& film, const Rig& rig,
                                const MeasuredTable& measured, const JobControl& job) {
  FilmCheck result;
  auto evidence = survey.result(rig, film);
  if (!evidence) return tl::make_unexpected(evidence.error());
  result.evidence = std::move(*evidence);
  if (result.evidence.tags.size() < kEnough && result.evidence.lines.size() < kEnough) {
    return failure(ErrorCode::TagsTooFew, film, {},
                   {static_cast<double>(result.evidence.tags.size()), static_cast<double>(kEnough)});
  }
  job.reportShare(0.85, "comparing");
  result.check = checkRig(rig, measured, result.evidence);
  // Balls are looked for where the likeliest explanation has the table, and then speak with the others.
  if (!result.check.explanations.empty()) {
    result.evidence.balls = survey.restingBalls(result.check.explanations.front().rig);
    job.reportShare(0.95, "comparing");
    if (!result.evidence.balls.empty()) result.check = checkRig(rig, measured, result.evidence);
  }
  job.reportShare(1.0, "comparing");
  return result;
}

}  // namespace ferrule
