// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/history_filter.h"

#include <algorithm>
#include <vector>

#include "core/progress/game_measures.h"
#include "core/progress/position_play.h"

namespace ferrule {

namespace {

template <class T>
bool isWithin(const std::optional<T>& value, const std::optional<T>& least, const std::optional<T>& most) {
  if (!least && !most) return true;
  return value && (!least || *value >= *least) && (!most || *value <= *most);
}

bool isIn(const PlayedShot& shot, const PlayedTable& table, ShotGroup group) {
  switch (group) {
    case ShotGroup::Missed:
      return isPotAttempt(shot) && !shot.made;
    case ShotGroup::PositionLost:
      return isPotAttempt(shot) && shot.made && !shot.foul && shot.deliveryLoss && *shot.deliveryLoss >= kTie;
    case ShotGroup::WrongSide:
      return isOnWrongSide(shot, table) == true;
    case ShotGroup::PoorChoice:
      return shot.choiceLoss && *shot.choiceLoss >= kTie;
    case ShotGroup::LostByChoice:
      return shot.lostByChoice;
    case ShotGroup::Fouls:
      return shot.foul;
    case ShotGroup::Safeties:
      return shot.outcome == Outcome::Safety;
    case ShotGroup::Breaks:
      return shot.outcome == Outcome::Break;
    case ShotGroup::Corrected:
      return shot.corrected;
    case ShotGroup::Unsure:
      return shot.verdict != Verdict::Certain;
    case ShotGroup::Untracked:
      return !shot.tracked;
  }
  return false;
}

}  // namespace

std::optional<double> distanceProduct(const PlayedShot& shot, const PlayedTable& table) {
  if (!shot.cueToGhost_m || !shot.objectToPocket_m) return std::nullopt;
  const double diamond_m = table.table.length_m / 8.0;
  return *shot.cueToGhost_m * *shot.objectToPocket_m / (diamond_m * diamond_m);
}

bool passes(const PlayedShot& shot, const PlayedSession& session, const PlayedTable& table,
            const HistoryFilter& filter) {
  if (filter.from_ms && session.started_ms < *filter.from_ms) return false;
  if (filter.until_ms && session.started_ms >= *filter.until_ms) return false;
  if (filter.occasion && session.occasion != *filter.occasion) return false;
  if (filter.table && table.name != *filter.table) return false;
  if (filter.opponent && std::ranges::find(session.opponents, *filter.opponent) == session.opponents.end())
    return false;
  if (filter.game && shot.game != *filter.game) return false;
  if (filter.drill && shot.drill != *filter.drill) return false;
  if (filter.group && !isIn(shot, table, *filter.group)) return false;
  if (filter.tag && std::ranges::find(shot.tags, *filter.tag) == shot.tags.end()) return false;
  if (filter.leastMinutes && !isWithin(shot.minutes, filter.leastMinutes, {})) return false;
  const bool ofWay = filter.leastCueWay_widths || filter.mostCueWay_widths;
  const bool ofPots =
      filter.missSide || filter.cutSide || filter.leastCut_rad || filter.mostCut_rad || filter.mostProduct || ofWay;
  if (ofPots && !isPotAttempt(shot)) return false;
  if (filter.missSide && shot.made) return false;
  if (filter.cutSide && shot.cutSide != filter.cutSide) return false;
  if (filter.missSide && shot.missSide != filter.missSide) return false;
  if (filter.pocket && shot.pocket != filter.pocket) return false;
  if (ofWay) {
    const double way_widths = shot.cueToGhost_m.value_or(0.0) / table.table.width_m;
    if (filter.leastCueWay_widths && way_widths < *filter.leastCueWay_widths) return false;
    if (filter.mostCueWay_widths && way_widths >= *filter.mostCueWay_widths) return false;
  }
  if (filter.mostProduct && !isWithin(distanceProduct(shot, table), {}, filter.mostProduct)) return false;
  return isWithin(shot.cut_rad, filter.leastCut_rad, filter.mostCut_rad) &&
         isWithin(shot.speed_mps, filter.leastSpeed_mps, filter.mostSpeed_mps);
}

bool passes(const PlayedRun& run, const PlayedTable& table, const HistoryFilter& filter) {
  if (filter.from_ms && run.started_ms < *filter.from_ms) return false;
  if (filter.until_ms && run.started_ms >= *filter.until_ms) return false;
  if (filter.table && table.name != *filter.table) return false;
  return !filter.drill || run.drill == *filter.drill;
}

PlayerHistory filtered(const PlayerHistory& history, const HistoryFilter& filter) {
  PlayerHistory left;
  left.player = history.player;
  std::vector<std::optional<std::size_t>> sessions(history.sessions.size());
  std::vector<std::optional<std::size_t>> tables(history.tables.size());
  const auto keepTable = [&](std::size_t table) {
    if (!tables[table]) {
      tables[table] = left.tables.size();
      left.tables.push_back(history.tables[table]);
    }
    return *tables[table];
  };
  for (const PlayedShot& shot : history.shots) {
    const PlayedSession& session = history.sessions[shot.session];
    if (!passes(shot, session, history.tables[session.table], filter)) continue;
    if (!sessions[shot.session]) {
      sessions[shot.session] = left.sessions.size();
      left.sessions.push_back(session);
      left.sessions.back().table = keepTable(session.table);
    }
    left.shots.push_back(shot);
    left.shots.back().session = *sessions[shot.session];
  }
  for (const PlayedRun& run : history.runs) {
    if (!passes(run, history.tables[run.table], filter)) continue;
    left.runs.push_back(run);
    left.runs.back().table = keepTable(run.table);
  }
  return left;
}

}  // namespace ferrule
