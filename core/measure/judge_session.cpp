// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/judge_session.h"

#include <map>
#include <string>

#include "core/measure/delivered_strike.h"
#include "core/measure/frame_follower.h"
#include "core/measure/plan_situation.h"
#include "core/measure/player_scatter.h"
#include "core/measure/record_entries.h"
#include "core/measure/table_fingerprint.h"
#include "core/planner/suggestion_text.h"
#include "core/rules/referee.h"
#include "core/rules/ruling_text.h"

namespace ferrule {

namespace {

/// The scatter of each player, asked of the record once.
class Scatters {
 public:
  Scatters(Record& record, const PhysicsParameters& parameters, const Scatter& prior)
      : record_(record), parameters_(parameters), prior_(prior) {}

  Result<Scatter> of(const std::string& player) {
    if (player.empty()) return prior_;
    if (const auto known = known_.find(player); known != known_.end()) return known->second;
    const auto estimate = playerScatter(record_, player, prior_, parameters_);
    if (!estimate) return tl::make_unexpected(estimate.error());
    return known_.emplace(player, estimate->player).first->second;
  }

 private:
  Record& record_;
  PhysicsParameters parameters_;
  Scatter prior_;
  std::map<std::string, Scatter> known_;
};

/// The strike as it was measured; of a shot put in by hand the listed one that means the same pot.
std::optional<Strike> strikeOf(const ShotReading& reading, const std::optional<PocketedBall>& meant,
                               const Suggestion& suggestion, const PhysicsParameters& parameters) {
  if (const auto strike = deliveredStrike(reading.delivery, parameters)) return strike;
  if (!meant) return std::nullopt;
  for (const RankedPlan& ranked : suggestion.plans) {
    if (callOf(ranked.plan) == meant) return ranked.plan.strike;
  }
  return std::nullopt;
}

/// Of one session: its table, its planner, its players.
class SessionJudge {
 public:
  SessionJudge(Record& record, const SessionSummary& session, const MeasuredTable& measured, Planner planner,
               const JudgeOptions& options)
      : record_(record),
        session_(session),
        measured_(measured),
        planner_(std::move(planner)),
        options_(options),
        scatters_(record, planner_.simulator().parameters(), scatterOf(options.level)) {}

  Result<JudgedShot> judge(const ShotSummary& summary, const StoredShot& shot, const std::optional<GameState>& before,
                           const std::stop_token& stop) {
    JudgedShot judged{summary, {}, {}, {}};
    if (!before) return without(judged, NotJudged::NoRuling);
    if (before->phase == Phase::Over) return without(judged, NotJudged::FrameOver);
    const ShotReading& reading = shot.reading;
    if (ballIn(reading.before, kCueBall) == nullptr) return without(judged, NotJudged::NoCueBall);
    const auto players = scattersOf(summary);
    if (!players) return tl::make_unexpected(players.error());
    const Situation situation = situationFrom(*before, reading.before, measured_.table);
    SearchBudget budget;
    budget.mostSimulations = options_.mostSimulations;
    budget.seed = options_.seed;
    budget.stop = stop;
    auto suggestion = planner_.suggest(situation, *players, budget);
    if (stop.stop_requested()) return failure(ErrorCode::Cancelled);
    if (!suggestion || suggestion->plans.empty()) return without(judged, NotJudged::NoPlan);
    judged.suggestion = std::move(*suggestion);
    judged.review = reviewOf(shot, *before, situation, judged.suggestion, *players);
    if (auto kept = keep(shot, judged, players->front()); !kept) return tl::make_unexpected(kept.error());
    return judged;
  }

 private:
  static JudgedShot without(JudgedShot judged, NotJudged why) {
    judged.why = why;
    return judged;
  }

  /// Who struck, and whoever else plays; who is not known is of the level that stands in.
  Result<std::array<Scatter, 2>> scattersOf(const ShotSummary& shot) {
    const auto own = scatters_.of(shot.playerName);
    if (!own) return tl::make_unexpected(own.error());
    std::string opponent;
    for (const std::string& name : session_.players) {
      if (name != shot.playerName) opponent = name;
    }
    if (opponent.empty()) return std::array{*own, *own};
    const auto other = scatters_.of(opponent);
    if (!other) return tl::make_unexpected(other.error());
    return std::array{*own, *other};
  }

  std::optional<ShotReview> reviewOf(const StoredShot& shot, const GameState& before, const Situation& situation,
                                     const Suggestion& suggestion, const std::array<Scatter, 2>& players) const {
    const ShotReading& reading = shot.reading;
    std::optional<PocketedBall> meant;
    const bool aimless = reading.outcome == Outcome::Safety || situation.breakShot;
    // A pot that failed beyond recognition is no safety.
    if (!reading.target && !aimless) return std::nullopt;
    if (!aimless) meant = PocketedBall{reading.target->ball, reading.target->pocket};
    const auto strike = strikeOf(reading, meant, suggestion, planner_.simulator().parameters());
    if (!strike) return std::nullopt;
    TakenShot taken{
        meant, meant && reading.target->cut_rad, reading.firstContact, *strike, reading.events, reading.after, {}};
    if (const auto ruled = rulingFromText(shot.ruling->content)) {
      taken.ruled = judgementFrom(ruled->ruling, apply(before, ruled->ruling), reading.after, measured_.table);
    }
    auto review = reviewShot(planner_, situation, suggestion, taken, players, options_.seed);
    if (!review) return std::nullopt;  // the strike as it was read is none that can be played
    return *review;
  }

  Result<void> keep(const StoredShot& shot, const JudgedShot& judged, const Scatter& player) {
    SuggestionEntry entry;
    entry.planner = plannerName();
    entry.shown = shot.suggestion && shot.suggestion->shown;
    if (judged.review) {
      entry.choiceLoss = judged.review->choiceLoss;
      entry.deliveryLoss = judged.review->deliveryLoss;
    }
    entry.content = suggestionText(judged.suggestion, player, {}, judged.review);
    return record_.keepSuggestion(shot.id, entry);
  }

  Record& record_;
  SessionSummary session_;
  MeasuredTable measured_;
  Planner planner_;
  JudgeOptions options_;
  Scatters scatters_;
};

bool isKnown(const StoredShot& shot, const JudgeOptions& options) {
  return !options.again && shot.suggestion && shot.suggestion->planner == plannerName() &&
         shot.suggestion->choiceLoss.has_value();
}

Result<SessionSummary> summaryOf(Record& record, SessionId id) {
  const auto sessions = record.sessions();
  if (!sessions) return tl::make_unexpected(sessions.error());
  for (const SessionSummary& session : *sessions) {
    if (session.id == id) return session;
  }
  return failure(ErrorCode::NotFound, "session " + std::to_string(id.value), record.path());
}

}  // namespace

Result<JudgeReport> judgeSession(Record& record, SessionId id, const JudgeOptions& options, const JobControl& job,
                                 const std::function<void(const JudgedShot&)>& observer) {
  const auto session = summaryOf(record, id);
  if (!session) return tl::make_unexpected(session.error());
  const auto measured = record.tableOf(id);
  if (!measured) return tl::make_unexpected(measured.error());
  const auto parameters = tableParameters(record, id);
  if (!parameters) return tl::make_unexpected(parameters.error());
  auto planner = Planner::create(measured->table, *parameters);
  if (!planner) return tl::make_unexpected(planner.error());
  SessionJudge judge(record, *session, *measured, std::move(*planner), options);
  const auto frames = record.frames(id);
  if (!frames) return tl::make_unexpected(frames.error());

  JudgeReport report;
  int seen = 0;
  for (const FrameSummary& frame : *frames) {
    FrameFollower follower(*measured);
    const auto shots = record.shots(frame.id);
    if (!shots) return tl::make_unexpected(shots.error());
    for (const ShotSummary& summary : *shots) {
      if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
      const auto shot = record.shot(summary.id);
      if (!shot) return tl::make_unexpected(shot.error());
      const auto before = follower.before(*shot);
      job.reportShare(static_cast<double>(seen++) / std::max(1, session->shots), "judging");
      if (isKnown(*shot, options)) {
        ++report.known;
        continue;
      }
      const auto judged = judge.judge(summary, *shot, before, job.stop);
      if (!judged) return tl::make_unexpected(judged.error());
      ++(judged->why ? report.without : report.judged);
      if (observer) observer(*judged);
    }
  }
  job.reportShare(1.0, "judging");
  return report;
}

}  // namespace ferrule
