// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/player_progress.h"

#include <utility>

namespace ferrule {

namespace {

Makes makesOf(const PlayerHistory& history, Intent intent) {
  return {makeShare(history, intent), makeGrid(history, intent, GridDistance::CueBall),
          makeGrid(history, intent, GridDistance::ObjectBall), makesByPocket(history, intent),
          makesByEntry(history, intent)};
}

Highlights highlightsOf(const PlayerHistory& history, const std::optional<Difficulty>& difficulty) {
  Highlights highlights;
  if (!difficulty) return highlights;
  for (std::size_t i = 0; i < history.shots.size(); ++i) {
    const PlayedShot& shot = history.shots[i];
    if (!isPotAttempt(shot) || shot.verdict == Verdict::Ask) continue;
    const double chance = difficulty->chance(shot, history.tableOf(shot));
    if (shot.made && !shot.foul && (!highlights.best || chance < highlights.bestChance)) {
      highlights.best = i;
      highlights.bestChance = chance;
    }
    if (!shot.made && (!highlights.instructive || chance > highlights.instructiveChance)) {
      highlights.instructive = i;
      highlights.instructiveChance = chance;
    }
  }
  return highlights;
}

}  // namespace

PlayerProgress playerProgress(PlayerHistory history, const ProgressOptions& options) {
  PlayerProgress report;
  report.history.player = history.player;
  std::vector<PlayerHistory> widths = byPocketWidth(std::move(history));
  report.quality = dataQuality(widths, options.now_ms);
  if (!widths.empty()) report.history = std::move(widths.front());
  const PlayerHistory& played = report.history;
  Resampling resampling = options.resampling;
  if (!resampling.kept) resampling.kept = std::make_shared<SessionDraws>();
  const auto difficulty = Difficulty::of(played);
  report.inferred = makesOf(played, Intent::Inferred);
  report.called = makesOf(played, Intent::Called);
  report.aim = aimMeasure(played, resampling);
  report.strikes = strikeMeasures(played, resampling);
  report.misses = missSides(played);
  report.breaks = breakMeasure(played, resampling);
  report.innings = inningMeasure(played, resampling);
  report.safeties = safetyMeasure(played);
  report.fouls = foulShare(played);
  report.unforced = unforcedShare(played, difficulty);
  report.times = timeMeasure(played, resampling);
  report.choices = choiceMeasure(played, resampling);
  report.position = positionPlay(played, resampling);
  report.reliability = reliability(played, resampling);
  report.findings = findings(played, difficulty, report.strikes, report.aim, resampling);
  report.work = workItems(played, report.findings, resampling);
  report.highlights = highlightsOf(played, difficulty);
  return report;
}

}  // namespace ferrule
