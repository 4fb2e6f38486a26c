// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/judge_session.h"

#include <algorithm>
#include <map>
#include <string>

#include "core/measure/delivered_strike.h"
#include "core/measure/frame_follower.h"
#include "core/measure/plan_situation.h"
#include "core/measure/player_scatter.h"
#include "core/measure/record_entries.h"
#include "core/measure/situation_mark.h"
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
                           const std::string& mark, const std::stop_token& stop) {
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
    if (auto kept = keep(shot, judged, players->front(), mark); !kept) return tl::make_unexpected(kept.error());
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

  Result<void> keep(const StoredShot& shot, const JudgedShot& judged, const Scatter& player, const std::string& mark) {
    SuggestionEntry entry;
    entry.planner = plannerName();
    entry.shown = shot.suggestion && shot.suggestion->shown;
    if (judged.review) {
      entry.choiceLoss = judged.review->choiceLoss;
      entry.deliveryLoss = judged.review->deliveryLoss;
    }
    entry.content = suggestionText(judged.suggestion, player, {}, judged.review, mark);
    return record_.replaceSuggestion(shot.id, entry, entry.planner, options_.now);
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

/// The mark that was kept with the plans beside a shot; empty where there is none.
std::string suggestionMark(const StoredShot& shot) {
  const auto kept = shot.suggestion ? suggestionFromText(shot.suggestion->content) : std::nullopt;
  return kept ? kept->situation : std::string();
}

/// Whether the plans beside a shot were worked out for something else than what is known of it now. Those without a
/// mark are from before there were marks: right as long as nothing in the frame stands corrected.
bool isOutOfDate(const StoredShot& shot, const std::string& mark, bool corrected) {
  if (!shot.suggestion) return true;
  const std::string was = suggestionMark(shot);
  return was.empty() ? corrected : was != mark;
}

Result<SessionSummary> summaryOf(Record& record, SessionId id) {
  const auto sessions = record.sessions();
  if (!sessions) return tl::make_unexpected(sessions.error());
  for (const SessionSummary& session : *sessions) {
    if (session.id == id) return session;
  }
  return failure(ErrorCode::NotFound, "session " + std::to_string(id.value), record.path());
}

/// A shot of a frame with what is known before it.
struct ShotInFrame {
  ShotSummary summary;
  StoredShot shot;
  std::optional<GameState> before;
  std::string mark;
};

Result<std::vector<ShotInFrame>> shotsIn(Record& record, FrameId frame, const MeasuredTable& measured) {
  FrameFollower follower(measured);
  SituationMark marks;
  const auto rows = record.shots(frame);
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<ShotInFrame> shots;
  for (const ShotSummary& row : *rows) {
    auto shot = record.shot(row.id);
    if (!shot) return tl::make_unexpected(shot.error());
    shot->tracks.clear();  // a frame's are many and nobody asks for them here
    auto before = follower.before(*shot);
    auto mark = marks.of(*shot);
    shots.push_back({row, std::move(*shot), std::move(before), std::move(mark)});
  }
  return shots;
}

/// What judging needs of a session, made once.
struct Bench {
  SessionSummary session;
  MeasuredTable measured;
  SessionJudge judge;
};

Result<Bench> benchOf(Record& record, SessionId id, const JudgeOptions& options) {
  const auto session = summaryOf(record, id);
  if (!session) return tl::make_unexpected(session.error());
  const auto measured = record.tableOf(id);
  if (!measured) return tl::make_unexpected(measured.error());
  const auto parameters = tableParameters(record, id);
  if (!parameters) return tl::make_unexpected(parameters.error());
  auto planner = Planner::create(measured->table, *parameters);
  if (!planner) return tl::make_unexpected(planner.error());
  return Bench{*session, *measured, SessionJudge(record, *session, *measured, std::move(*planner), options)};
}

/// Judges one shot, counts it and tells of it.
Result<void> judgeInto(JudgeReport& report, Bench& bench, const ShotInFrame& in, const JobControl& job,
                       const std::function<void(const JudgedShot&)>& observer) {
  const auto judged = bench.judge.judge(in.summary, in.shot, in.before, in.mark, job.stop);
  if (!judged) return tl::make_unexpected(judged.error());
  ++(judged->why ? report.without : report.judged);
  if (observer) observer(*judged);
  return {};
}

}  // namespace

Result<JudgeReport> judgeSession(Record& record, SessionId id, const JudgeOptions& options, const JobControl& job,
                                 const std::function<void(const JudgedShot&)>& observer) {
  auto bench = benchOf(record, id, options);
  if (!bench) return tl::make_unexpected(bench.error());
  const auto frames = record.frames(id);
  if (!frames) return tl::make_unexpected(frames.error());

  JudgeReport report;
  int seen = 0;
  for (const FrameSummary& frame : *frames) {
    const auto shots = shotsIn(record, frame.id, bench->measured);
    if (!shots) return tl::make_unexpected(shots.error());
    for (const ShotInFrame& in : *shots) {
      if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
      job.reportShare(static_cast<double>(seen++) / std::max(1, bench->session.shots), "judging");
      if (isKnown(in.shot, options) && !isOutOfDate(in.shot, in.mark, false)) {
        ++report.known;
        continue;
      }
      if (const auto done = judgeInto(report, *bench, in, job, observer); !done)
        return tl::make_unexpected(done.error());
    }
  }
  job.reportShare(1.0, "judging");
  return report;
}

Result<JudgeReport> judgeAnew(Record& record, SessionId session, FrameId frame, const JudgeOptions& options,
                              const JobControl& job, const std::function<void(const JudgedShot&)>& observer) {
  const auto measured = record.tableOf(session);
  if (!measured) return tl::make_unexpected(measured.error());
  const auto corrections = record.correctionsIn(frame);
  if (!corrections) return tl::make_unexpected(corrections.error());
  auto shots = shotsIn(record, frame, *measured);
  if (!shots) return tl::make_unexpected(shots.error());
  JudgeReport report;
  const auto hasPlans = [](const ShotInFrame& in) { return in.shot.suggestion.has_value(); };
  if (std::ranges::none_of(*shots, hasPlans)) return report;
  const bool corrected = !corrections->empty();
  report.known = static_cast<int>(
      std::erase_if(*shots, [&](const ShotInFrame& in) { return !isOutOfDate(in.shot, in.mark, corrected); }));
  if (shots->empty()) return report;
  auto bench = benchOf(record, session, options);
  if (!bench) return tl::make_unexpected(bench.error());
  for (std::size_t i = 0; i < shots->size(); ++i) {
    if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
    job.reportShare(static_cast<double>(i) / static_cast<double>(shots->size()), "judging");
    const ShotInFrame& in = (*shots)[i];
    if (const auto done = judgeInto(report, *bench, in, job, observer); !done) return tl::make_unexpected(done.error());
  }
  job.reportShare(1.0, "judging");
  return report;
}

}  // namespace ferrule
