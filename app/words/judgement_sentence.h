// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/measure/judge_session.h"

namespace ferrule {

/// Suggested against taken, and what choice and delivery cost, in words; else why nothing stands beside the shot.
[[nodiscard]] QString judgementSentence(const JudgedShot& judged);

/// What was suggested where the taken shot could not be matched to a plan.
[[nodiscard]] QString unmatchedSentence(const Suggestion& suggestion);

/// "The choice cost 7 in 100; delivery cost 12 in 100": hundredths of a frame, or of a point in games of points.
[[nodiscard]] QString lossSentence(const ShotReview& review);

}  // namespace ferrule
