// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/planner/judge.h"
#include "core/planner/planner.h"

namespace ferrule {

/// The shot that was taken, as a film measured it.
struct TakenShot {
  /// What was meant: called by a person, or read from the tracks. Nothing for a safety.
  std::optional<PocketedBall> meant;
  /// The target was sent straight at the pocket, whatever it then met: no bank, combination or carom was meant.
  bool straight = false;
  std::optional<BallName> firstContact;
  /// The delivery; what was not observed stays at the value of a plain strike. aim_rad is the cue's direction.
  Strike delivered;
  std::vector<ShotEvent> events;  ///< in time order
  Position after;                 ///< balls that were on the table when all rested
  /// What the referee made of it; nothing: it is judged from the events.
  std::optional<Judgement> ruled = {};
};

/// Suggested against taken: was it the right shot, and was it struck as meant? Different faults, different cures.
///
/// Values are chances of winning the frame, or points in games of points.
struct ShotReview {
  RankedPlan suggested;
  RankedPlan taken;              ///< rank 0 where it was not in the list
  double cameOutValue = 0.0;     ///< of what the table looked like afterwards
  double choiceLoss = 0.0;       ///< value(suggested) - value(taken); below 0 when the taken plan was better
  double choiceLossError = 0.0;  ///< Monte-Carlo standard error
  double deliveryLoss = 0.0;     ///< value(taken) - value(what came out)
  /// The two plans differ by less than what is known: call it a tie.
  bool tie = false;

  bool operator==(const ShotReview&) const = default;
};

/// The plan that means this pot with the delivered speed and tip point: its faultless play pots it, and its aim is what
/// the player should have delivered. Of several ways to the pocket the one whose aim lies nearest, within 0.2 rad; a
/// straight one wherever there is one when straight is said. Nothing where there is none.
[[nodiscard]] std::optional<Plan> meantPlan(const Planner& planner, const Situation& before, const PocketedBall& meant,
                                            bool straight, const Strike& delivered, const Scatter& scatter);

/// Matches the taken plan to the plans as they stood before the shot. What was asked is not measured: the plan is taken
/// to be the one whose faultless play pots the meant ball with the delivered speed and tip point, so that choosing too
/// hard a shot counts as choice and missing the aim as delivery. The same errors value both plans.
/// Errors: NotFound (subject "plan") for an empty list; as Planner::chances().
[[nodiscard]] Result<ShotReview> reviewShot(const Planner& planner, const Situation& before,
                                            const Suggestion& suggestion, const TakenShot& taken,
                                            const std::array<Scatter, 2>& players, std::uint64_t seed = 1);

}  // namespace ferrule
