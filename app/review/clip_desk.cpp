// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/clip_desk.h"

#include <algorithm>

#include "app/review/moment.h"
#include "core/record/record.h"

namespace ferrule {

namespace {

/// Of the film before the strike and after the rest.
constexpr double kBefore_s = 1.0;
constexpr double kAfter_s = 0.7;
constexpr QSize kPlan_px{1280, 720};
/// Of a plan whose tracks tell no rate.
constexpr double kPlanRate_hz = 30.0;

/// What became of a clip.
struct ClipEnd {
  Result<ClipReport> report;
  std::vector<ClipObstacle> obstacles;
};

Result<ClipReport> writePlan(const ClipWish& wish, ClipTerms terms, const JobControl& job) {
  const double rate_hz = clipRate_hz(trackTimes(*wish.shot), terms.from_s, terms.until_s);
  terms.rate_hz = rate_hz > 0.0 ? rate_hz : kPlanRate_hz;
  terms.image = planImages(wish.shot, wish.table, wish.inks, kPlan_px);
  return writeClip(terms, job);
}

Result<ClipReport> writeFilm(const ClipWish& wish, const FilmOpener& opener, ClipTerms terms, const JobControl& job) {
  auto opened = opener(wish.film, job.stop);
  if (!opened) return tl::make_unexpected(opened.error());
  const std::shared_ptr<FilmPictures> film = std::move(*opened);
  if (film->times().empty()) return failure(ErrorCode::FilmWithoutPicture, wish.film);
  terms.until_s = std::min(terms.until_s, film->times().back());
  const double rate_hz = clipRate_hz(film->times(), terms.from_s, terms.until_s);
  if (rate_hz > 0.0) terms.rate_hz = rate_hz;
  terms.image = wish.kind == ClipKind::FilmWithWays && wish.rig
                    ? filmImagesWithWays(film, wish.shot, *wish.rig, wish.table.balls, wish.inks)
                    : filmImages(film);
  return writeClip(terms, job);
}

Result<std::vector<ClipObstacle>> obstaclesIn(const std::string& path, const std::vector<std::string>& players,
                                              UtcMilliseconds now) {
  auto record = Record::open(path, {RecordMode::ReadOnly});
  if (!record) return tl::make_unexpected(record.error());
  return clipObstacles(*record, players, now);
}

ClipEnd writeWished(const ClipWish& wish, const FilmOpener& opener, const JobControl& job) {
  ClipTerms terms;
  terms.path = wish.path;
  terms.from_s = std::max(0.0, wish.shot->reading.strike_s - kBefore_s);
  terms.until_s = wish.shot->reading.rest_s + kAfter_s;
  if (wish.kind == ClipKind::Plan) return {writePlan(wish, terms, job), {}};
  auto obstacles = obstaclesIn(wish.record, wish.players, wish.now);
  if (!obstacles) return {tl::make_unexpected(obstacles.error()), {}};
  if (!obstacles->empty()) return {ClipReport{}, std::move(*obstacles)};
  return {writeFilm(wish, opener, terms, job), {}};
}

}  // namespace

Result<std::vector<ClipObstacle>> clipObstacles(Record& record, const std::vector<std::string>& players,
                                                UtcMilliseconds at) {
  std::vector<ClipObstacle> obstacles;
  for (const std::string& name : players) {
    const auto player = record.playerNamed(name);
    if (!player) return tl::make_unexpected(player.error());
    if (!*player) continue;
    for (const ConsentScope scope : {filmScopeOf(**player), ConsentScope::Sharing}) {
      const auto state = consentOf(record, (*player)->id, scope, at);
      if (!state) return tl::make_unexpected(state.error());
      if (state->holds()) continue;
      obstacles.push_back({name, scope, (*player)->minor});
      break;
    }
  }
  return obstacles;
}

ClipDesk::ClipDesk(FilmOpener opener, QObject* parent) : QObject(parent), opener_(std::move(opener)) {}

void ClipDesk::whenAllowed(const std::string& record, const std::vector<std::string>& players, UtcMilliseconds now,
                           std::function<void()> then) {
  if (job_.isRunning()) return;
  using Obstacles = Result<std::vector<ClipObstacle>>;
  job_.start<Obstacles>([record, players, now](const JobControl&) { return obstaclesIn(record, players, now); },
                        [this, then = std::move(then)](const Obstacles& obstacles) {
                          if (!obstacles) {
                            emit failed(obstacles.error());
                          } else if (!obstacles->empty()) {
                            emit refused(*obstacles);
                          } else {
                            then();
                          }
                        });
}

void ClipDesk::write(const ClipWish& wish) {
  if (job_.isRunning()) return;
  job_.start<ClipEnd>([wish, opener = opener_](const JobControl& job) { return writeWished(wish, opener, job); },
                      [this, path = QString::fromStdString(wish.path)](ClipEnd end) {
                        if (!end.obstacles.empty()) {
                          emit refused(end.obstacles);
                        } else if (end.report) {
                          emit written(path, end.report->images);
                        } else if (end.report.error().code != ErrorCode::Cancelled) {
                          emit failed(end.report.error());
                        }
                      });
}

}  // namespace ferrule
