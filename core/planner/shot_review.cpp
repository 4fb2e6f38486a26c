// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/shot_review.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/units.h"
#include "core/planner/judge.h"
#include "core/planner/shot_trials.h"

namespace ferrule {

namespace {

constexpr std::size_t kSamples = 800;
/// Closer than this many standard errors is a tie; so is less than a hundredth.
constexpr double kTie = 2.0;
constexpr double kLeastDifference = 0.01;
/// An aim farther off than this was meant for something else.
constexpr double kFarthestAim_rad = 0.2;

Simulation outcomeOf(const Situation& before, const TakenShot& taken) {
  Simulation played;
  played.events = taken.events;
  for (const BallAt& ball : before.balls) {
    FinalBall last{ball.ball, BallFate::OffTable, ball.position, {}};
    if (const BallAt* rests = ballIn(taken.after, ball.ball)) {
      last.fate = BallFate::OnTable;
      last.position = rests->position;
    }
    for (const ShotEvent& event : taken.events) {
      if (event.kind != EventKind::Pocket || event.ball != ball.ball) continue;
      last.fate = BallFate::Pocketed;
      last.pocket = event.pocket;
    }
    played.after.push_back(last);
  }
  return played;
}

double valueAfter(const Planner& planner, const Judgement& judged, const std::array<Scatter, 2>& players) {
  const FrameValue value(planner.simulator(), planner.windows(), players);
  switch (judged.ending) {
    case ShotEnding::Win:
      return 1.0;
    case ShotEnding::Loss:
      return 0.0;
    case ShotEnding::KeepsTurn:
      return judged.points + value.glance(judged.next, 0).value;
    case ShotEnding::PassesTurn:
    case ShotEnding::Foul:
      break;
  }
  return judged.points + FrameValue::toOther(judged.next, value.glance(judged.next, 1).value);
}

}  // namespace

std::optional<Plan> meantPlan(const Planner& planner, const Situation& s, const PocketedBall& meant, bool straight,
                              const Strike& delivered, const Scatter& scatter) {
  const PlanningTable table{planner.simulator(), planner.windows()};
  const FrameValue value(planner.simulator(), planner.windows(), {scatter, scatter});
  const TrialContext context{table, value, scatter, 0.0};
  std::optional<Plan> best;
  double nearest_rad = kFarthestAim_rad;
  for (auto* kind : {&directCandidates, &combinationCandidates, &caromCandidates, &bankCandidates}) {
    if (straight && best) break;
    for (Candidate& candidate : kind(table, s, scatter)) {
      if (callOf(candidate.plan) != meant) continue;
      candidate.plan.strike.elevation_rad = delivered.elevation_rad;
      const auto shared = std::make_shared<const Candidate>(std::move(candidate));
      const auto entry = solveTrial(context, {shared, delivered.speed_mps, delivered.side, delivered.height});
      if (!entry) continue;
      // Of several ways to the same pocket the one whose aim lies nearest.
      const double off_rad = std::abs(wrapAngle(entry->shot.plan.strike.aim_rad - delivered.aim_rad));
      if (off_rad >= nearest_rad) continue;
      nearest_rad = off_rad;
      best = entry->shot.plan;
    }
  }
  return best;
}

Result<ShotReview> reviewShot(const Planner& planner, const Situation& before, const Suggestion& suggestion,
                              const TakenShot& taken, const std::array<Scatter, 2>& players, std::uint64_t seed) {
  if (suggestion.plans.empty()) return failure(ErrorCode::NotFound, "plan", "suggestion");
  ShotReview review;
  review.suggested = suggestion.plans.front();
  Plan plan;
  plan.kind = before.breakShot ? PlanKind::Break : PlanKind::Safety;
  plan.strike = taken.delivered;
  plan.first = plan.ball = taken.firstContact.value_or(kCueBall);
  if (taken.meant) {
    if (const auto meant = meantPlan(planner, before, *taken.meant, taken.straight, taken.delivered, players[0])) {
      plan = *meant;
    } else {
      // Meant, but no faultless play with this speed and tip pots it: what was delivered is what was chosen.
      plan.kind = PlanKind::Direct;
      plan.ball = taken.meant->ball;
      plan.pocket = taken.meant->pocket;
    }
  }
  const auto chances = planner.chances(before, plan, players, kSamples, seed);
  if (!chances) return tl::make_unexpected(chances.error());
  const auto best = planner.chances(before, review.suggested.plan, players, kSamples, seed);
  if (!best) return tl::make_unexpected(best.error());
  review.taken.plan = plan;
  review.taken.chances = *chances;
  const auto listed =
      std::ranges::find_if(suggestion.plans, [&](const RankedPlan& ranked) { return sameIdea(ranked.plan, plan); });
  if (listed != suggestion.plans.end()) review.taken.rank = listed->rank;
  // The list's own value of the first plan may hold a deeper look that the taken plan had not.
  review.suggested.chances = *best;
  review.choiceLoss = best->value - chances->value;
  review.choiceLossError = std::hypot(best->valueError, chances->valueError);
  review.tie = std::abs(review.choiceLoss) < std::max(kLeastDifference, kTie * review.choiceLossError);
  const Judgement judged = taken.ruled ? *taken.ruled : judge(before, taken.meant, outcomeOf(before, taken));
  review.cameOutValue = valueAfter(planner, judged, players);
  review.deliveryLoss = chances->value - review.cameOutValue;
  return review;
}

}  // namespace ferrule
