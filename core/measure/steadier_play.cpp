// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/steadier_play.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "core/measure/frame_follower.h"
#include "core/measure/plan_situation.h"
#include "core/measure/table_fingerprint.h"
#include "core/planner/planner.h"
#include "core/planner/suggestion_text.h"
#include "core/progress/work_items.h"

namespace ferrule {

namespace {

/// The shots that are played again, by their frame.
struct Chosen {
  std::map<std::int64_t, std::vector<PlayedShot*>> byFrame;
  std::size_t count = 0;
};

Chosen chosen(PlayerHistory& history, std::size_t most) {
  std::vector<PlayedShot*> able;
  for (PlayedShot& shot : history.shots) {
    if (shot.id != 0 && shot.frame != 0 && shot.choiceLoss) able.push_back(&shot);
  }
  Chosen some;
  some.count = std::min(most, able.size());
  for (std::size_t i = 0; i < some.count; ++i) {
    PlayedShot* shot = able[i * able.size() / some.count];
    some.byFrame[shot->frame].push_back(shot);
  }
  return some;
}

Scatter drawnIn(Scatter scatter, double Scatter::*part) {
  scatter.*part *= 1.0 - kDrawnIn;
  return scatter;
}

/// Plays the shots of one session again.
class SessionReplay {
 public:
  SessionReplay(MeasuredTable measured, Planner planner, const SteadierOptions& options)
      : measured_(std::move(measured)), planner_(std::move(planner)), options_(options) {}

  [[nodiscard]] static Result<std::unique_ptr<SessionReplay>> of(Record& record, SessionId session,
                                                                 const SteadierOptions& options) {
    auto measured = record.tableOf(session);
    if (!measured) return tl::make_unexpected(measured.error());
    const auto parameters = tableParameters(record, session);
    if (!parameters) return tl::make_unexpected(parameters.error());
    auto planner = Planner::create(measured->table, *parameters);
    if (!planner) return tl::make_unexpected(planner.error());
    return std::make_unique<SessionReplay>(std::move(*measured), std::move(*planner), options);
  }

  [[nodiscard]] const MeasuredTable& measured() const { return measured_; }

  /// Nothing where the shot's plan cannot be played, or its value is no chance of a frame.
  [[nodiscard]] std::optional<SteadierGain> gain(const StoredShot& shot, const std::optional<GameState>& before) const {
    if (!before || before->phase == Phase::Over || !shot.suggestion) return std::nullopt;
    const auto kept = suggestionFromText(shot.suggestion->content);
    if (!kept || !kept->review) return std::nullopt;
    const Situation situation = situationFrom(*before, shot.reading.before, measured_.table);
    if (situation.rules.points) return std::nullopt;
    const Plan& plan = kept->review->taken.plan;
    const Scatter& own = kept->scatter;
    const auto base = value(situation, plan, own, own);
    const auto aim = value(situation, plan, drawnIn(own, &Scatter::aim_rad), own);
    const auto speed = value(situation, plan, drawnIn(own, &Scatter::speed), own);
    const auto tip = value(situation, plan, drawnIn(drawnIn(own, &Scatter::side), &Scatter::height), own);
    if (!base || !aim || !speed || !tip) return std::nullopt;
    return SteadierGain{*aim - *base, *speed - *base, *tip - *base, own.speed, std::hypot(own.side, own.height)};
  }

 private:
  [[nodiscard]] std::optional<double> value(const Situation& situation, const Plan& plan, const Scatter& player,
                                            const Scatter& opponent) const {
    const auto chances = planner_.chances(situation, plan, {player, opponent}, options_.samples, options_.seed);
    return chances ? std::optional(chances->value) : std::nullopt;
  }

  MeasuredTable measured_;
  Planner planner_;
  SteadierOptions options_;
};

}  // namespace

Result<int> addSteadierGains(Record& record, PlayerHistory& history, const SteadierOptions& options,
                             const JobControl& job) {
  int played = 0;
  std::size_t seen = 0;
  std::optional<std::size_t> session;
  std::unique_ptr<SessionReplay> replay;
  const Chosen some = chosen(history, options.mostShots);
  for (const auto& [frame, wanted] : some.byFrame) {
    const std::size_t here = wanted.front()->session;
    if (session != here) {
      auto made = SessionReplay::of(record, SessionId{history.sessions[here].id}, options);
      if (!made) return tl::make_unexpected(made.error());
      replay = std::move(*made);
      session = here;
    }
    const auto shots = record.shots(FrameId{frame});
    if (!shots) return tl::make_unexpected(shots.error());
    FrameFollower follower(replay->measured());
    std::size_t left = wanted.size();
    for (const ShotSummary& summary : *shots) {
      if (left == 0) break;
      if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
      const auto shot = record.shot(summary.id);
      if (!shot) return tl::make_unexpected(shot.error());
      const auto before = follower.before(*shot);
      const auto place = std::ranges::find(wanted, summary.id.value, &PlayedShot::id);
      if (place == wanted.end()) continue;
      --left;
      job.reportShare(static_cast<double>(seen++) / static_cast<double>(some.count), "playing again");
      // Noted already by a run that was stopped.
      if (!(*place)->steadier) (*place)->steadier = replay->gain(*shot, before);
      played += (*place)->steadier ? 1 : 0;
    }
  }
  return played;
}

}  // namespace ferrule
