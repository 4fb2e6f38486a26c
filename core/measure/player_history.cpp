// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/player_history.h"

#include <algorithm>
#include <map>

#include "core/drills/drill_score.h"
#include "core/measure/player_drills.h"
#include "core/progress/game_measures.h"

namespace ferrule {

namespace {

Occasion occasionOf(const SessionSummary& session) {
  switch (session.kind) {
    case SessionKind::Practice:
      return Occasion::Practice;
    case SessionKind::Match:
      return Occasion::Match;
    case SessionKind::Lesson:
      return Occasion::Lesson;
    case SessionKind::Unknown:
      break;
  }
  return session.players.size() > 1 ? Occasion::Match : Occasion::Practice;
}

class Gathering {
 public:
  Gathering(Record& record, std::string player, PlayerDrills drills) : record_(record), drills_(std::move(drills)) {
    history_.player = std::move(player);
  }

  Result<PlayerHistory> from(const std::vector<RecordedShot>& shots) {
    const auto all = record_.sessions();
    if (!all) return tl::make_unexpected(all.error());
    for (const SessionSummary& session : *all)
      sessions_[session.id] = &session;
    for (std::size_t i = 0; i < shots.size(); ++i) {
      if (i == 0 || shots[i].session != shots[i - 1].session) {
        if (auto begun = beginSession(shots, i); !begun) return tl::make_unexpected(begun.error());
      }
      add(shots[i]);
    }
    addRuns();
    markLostByChoice(history_);
    return std::move(history_);
  }

 private:
  Result<void> beginSession(const std::vector<RecordedShot>& shots, std::size_t first) {
    const SessionSummary& summary = *sessions_.at(shots[first].session);
    const auto measured = record_.tableOf(summary.id);
    if (!measured) return tl::make_unexpected(measured.error());
    const std::size_t place = placeOf({summary.tableName, measured->table, measured->balls.radius_m()});
    history_.sessions.push_back({summary.id.value, summary.name, summary.started, place, occasionOf(summary), {}});
    std::ranges::copy_if(summary.players, std::back_inserter(history_.sessions.back().opponents),
                         [&](const std::string& name) { return !name.empty() && name != history_.player; });
    first_ = &shots[first];
    return {};
  }

  void add(const RecordedShot& recorded) {
    const PlayedSession& session = history_.sessions.back();
    PlayedShot shot = playedShot(recorded.reading, history_.tables[session.table]);
    shot.session = history_.sessions.size() - 1;
    shot.id = recorded.id.value;
    shot.frame = recorded.frame.value;
    shot.game = recorded.game;
    if (recorded.struckAt && first_->struckAt) {
      shot.minutes = static_cast<double>(*recorded.struckAt - *first_->struckAt) / 60'000.0;
    } else if (recorded.frame == first_->frame) {
      shot.minutes = (recorded.reading.strike_s - first_->reading.strike_s) / 60.0;
    }
    if (recorded.restBefore_s) shot.preparation_s = recorded.reading.strike_s - *recorded.restBefore_s;
    shot.corrected = recorded.corrected;
    shot.intent = recorded.targetByPerson ? Intent::Called : Intent::Inferred;
    shot.ruled = recorded.ruled;
    shot.foul = shot.foul || recorded.fouled;
    shot.wonFrame = recorded.wonFrame;
    const SuggestionFigures& figures = recorded.suggestion;
    shot.suggestionShown = figures.shown;
    shot.choiceLoss = figures.choiceLoss;
    shot.deliveryLoss = figures.deliveryLoss;
    shot.potChance = figures.potChance;
    shot.nextBall = recorded.nextBallAt;
    shot.cushionMet = recorded.cushionMet;
    shot.meant = {figures.askedSpeed_mps, figures.askedSide, figures.askedHeight, figures.leave,
                  figures.leave.has_value() && !figures.askedSpeed_mps};
    if (recorded.reply) {
      shot.reply = Reply{recorded.reply->outcome, recorded.reply->fouled};
      if (recorded.reply->directChance) shot.safeLeave = !(*recorded.reply->directChance > 0.0);
    }
    if (const auto ask = drills_.asks.find(recorded.id); ask != drills_.asks.end()) {
      shot.drill = ask->second.drill;
      shot.meant = ask->second.meant;
    }
    shot.tags = recorded.tags;
    history_.shots.push_back(std::move(shot));
  }

  void addRuns() {
    for (const KeptRun& run : drills_.runs) {
      const MetShare met = scoreOf(run.terms.drill, run.trials).all;
      history_.runs.push_back({run.terms.drill.key, run.terms.drill.title, run.started,
                               placeOf({run.terms.tableName, run.terms.table.table, run.terms.table.balls.radius_m()}),
                               met.met, met.known});
    }
  }

  /// The table's place among the history's.
  std::size_t placeOf(PlayedTable table) {
    const auto known = std::ranges::find(history_.tables, table);
    const auto place = static_cast<std::size_t>(known - history_.tables.begin());
    if (known == history_.tables.end()) history_.tables.push_back(std::move(table));
    return place;
  }

  Record& record_;
  PlayerDrills drills_;
  PlayerHistory history_;
  std::map<SessionId, const SessionSummary*> sessions_;
  const RecordedShot* first_ = nullptr;
};

}  // namespace

Result<PlayerHistory> playerHistory(Record& record, const std::string& player, const SessionPeriod& period) {
  const auto known = record.playerNamed(player);
  if (!known) return tl::make_unexpected(known.error());
  if (!*known) return failure(ErrorCode::NotFound, player, record.path());
  const auto shots = record.shotsOf((*known)->id, period);
  if (!shots) return tl::make_unexpected(shots.error());
  auto drills = playerDrills(record, (*known)->id, period);
  if (!drills) return tl::make_unexpected(drills.error());
  return Gathering(record, player, std::move(*drills)).from(*shots);
}

}  // namespace ferrule
