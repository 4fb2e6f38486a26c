// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/data_quality.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ferrule {

namespace {

/// A session that begins a day ahead is a time zone, not a wrong clock.
constexpr std::int64_t kDay_ms = 24LL * 3600LL * 1000LL;

bool alike(const Table& a, const Table& b) {
  return std::abs(a.corner.mouth_m - b.corner.mouth_m) < kSameMouth_m &&
         std::abs(a.side.mouth_m - b.side.mouth_m) < kSameMouth_m && std::abs(a.length_m - b.length_m) < kSameLength_m;
}

}  // namespace

std::vector<PlayerHistory> byPocketWidth(PlayerHistory history) {
  std::vector<PlayerHistory> widths;
  std::vector<std::size_t> widthOfTable;
  for (const PlayedTable& table : history.tables) {
    const auto found = std::ranges::find_if(
        widths, [&](const PlayerHistory& width) { return alike(width.tables.front().table, table.table); });
    widthOfTable.push_back(static_cast<std::size_t>(found - widths.begin()));
    if (found == widths.end()) widths.push_back({history.player, {}, {}, {}});
    widths[widthOfTable.back()].tables.push_back(table);
  }
  // As nearly always: nothing is copied.
  if (widths.size() == 1) {
    widths.front() = std::move(history);
    return widths;
  }
  std::vector<std::size_t> tablePlace(history.tables.size());
  std::vector<std::size_t> seen(widths.size(), 0);
  for (std::size_t i = 0; i < history.tables.size(); ++i)
    tablePlace[i] = seen[widthOfTable[i]]++;
  std::vector<std::size_t> sessionPlace;
  std::vector<std::size_t> widthOfSession;
  for (const PlayedSession& session : history.sessions) {
    widthOfSession.push_back(widthOfTable[session.table]);
    PlayerHistory& width = widths[widthOfSession.back()];
    sessionPlace.push_back(width.sessions.size());
    width.sessions.push_back(session);
    width.sessions.back().table = tablePlace[session.table];
  }
  for (PlayedShot& shot : history.shots) {
    PlayerHistory& width = widths[widthOfSession[shot.session]];
    shot.session = sessionPlace[shot.session];
    width.shots.push_back(std::move(shot));
  }
  for (const PlayedRun& run : history.runs) {
    PlayerHistory& width = widths[widthOfTable[run.table]];
    width.runs.push_back(run);
    width.runs.back().table = tablePlace[run.table];
  }
  std::ranges::stable_sort(widths, std::ranges::greater{},
                           [](const PlayerHistory& width) { return width.shots.size(); });
  return widths;
}

DataQuality dataQuality(const std::vector<PlayerHistory>& all, std::int64_t now_ms) {
  DataQuality quality;
  if (all.empty()) return quality;
  const PlayerHistory& history = all.front();
  quality.shots = static_cast<int>(history.shots.size());
  quality.sessions = static_cast<int>(history.sessions.size());
  for (const PlayedSession& session : history.sessions) {
    if (session.occasion == Occasion::Match) ++quality.matchSessions;
    if (session.started_ms > now_ms + kDay_ms) ++quality.futureSessions;
  }
  std::vector<double> longest_min(history.sessions.size(), 0.0);
  const PlayedShot* before = nullptr;
  for (const PlayedShot& shot : history.shots) {
    if (!shot.tracked) ++quality.untracked;
    if (shot.corrected) ++quality.corrected;
    if (shot.suggestionShown) ++quality.suggested;
    if (shot.verdict == Verdict::Ask) ++quality.asked;
    if (isPotAttempt(shot)) {
      ++quality.attempts;
      if (shot.intent == Intent::Called) ++quality.called;
    }
    if (shot.minutes) {
      longest_min[shot.session] = std::max(longest_min[shot.session], *shot.minutes);
    } else {
      ++quality.undatedShots;
    }
    const bool wentBack = before != nullptr && before->session == shot.session && before->minutes && shot.minutes &&
                          *shot.minutes < *before->minutes;
    if (wentBack) ++quality.backwardTimes;
    before = &shot;
  }
  for (const double minutes : longest_min)
    quality.hours += minutes / 60.0;
  for (std::size_t i = 1; i < all.size(); ++i) {
    const PlayedTable& table = all[i].tables.front();
    if (all[i].shots.empty()) continue;
    quality.leftOut.push_back({table.name, table.table.corner.mouth_m, static_cast<int>(all[i].shots.size()),
                               static_cast<int>(all[i].sessions.size())});
  }
  return quality;
}

}  // namespace ferrule
