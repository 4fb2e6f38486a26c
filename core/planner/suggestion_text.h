// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/planner/shot_review.h"

namespace ferrule {

/// A suggestion in the form of the files: lengths in mm, angles in degrees.
///
///     {"format": "ferrule-suggested/1", "planner", "simulations", "settled",
///      "scatter": {"aim_deg", "speed", "side", "height", "elevation_deg"},
///      "plans": [{"rank", "ball", "pocket", "kind", "first", "cushions", "aim_deg", "speed_m_s", "side", "height",
///         "elevation_deg", "cue_x_mm", "cue_y_mm", "pot_chance", "pot_chance_u", "foul_chance", "scratch_chance",
///         "keeps_chance", "value", "value_u", "leave_x_mm", "leave_y_mm", "leave_along_mm", "leave_across_mm",
///         "leave_deg", "next_ball", "next_open", "opponent_open", "why"}],
///      "review": {"suggested": a plan, "taken": a plan, "came_out_value", "choice_loss", "choice_loss_u",
///         "delivery_loss", "tie"},
///      "situation"}
///
/// aim_deg is the cue's direction, as simulate reads it, with the digits that play the same shot again. pocket is null
/// where nothing is meant to fall; pot_chance is then null too. cue_x_mm and cue_y_mm are null unless the cue ball is
/// in hand. Fields ending in _u are Monte-Carlo standard errors. why: one sentence for each plan; none where nobody put
/// it into words. review is there beside a shot that was taken: both plans valued with the same errors. situation: a
/// mark of all that the plans were worked out from; where the shot's is another one now, they are out of date. May be
/// absent.
[[nodiscard]] std::string suggestionText(const Suggestion& suggestion, const Scatter& scatter,
                                         const std::vector<std::string>& why,
                                         const std::optional<ShotReview>& review = std::nullopt,
                                         const std::string& situation = {});

/// What was kept beside a shot.
struct KeptSuggestion {
  int plannerVersion = 0;
  Suggestion suggestion;  ///< with the digits that are written; Chances::samples is not kept
  Scatter scatter;
  std::optional<ShotReview> review;
  std::string situation = {};  ///< empty where none was written

  bool operator==(const KeptSuggestion&) const = default;
};

/// Nothing for anything that suggestionText did not write.
[[nodiscard]] std::optional<KeptSuggestion> suggestionFromText(std::string_view text);

}  // namespace ferrule
