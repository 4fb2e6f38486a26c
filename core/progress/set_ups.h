// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/progress/played_shot.h"
#include "core/progress/sample.h"

/// One set-up played again and again, as in a drill. Where nobody wrote down what was meant, the player's own mean over
/// the repeats stands in for it: that shows how well he repeats himself, never whether he is right.
namespace ferrule {

/// Two positions are one set-up when cue ball and object ball lie within this and the pocket is the same. A person sets
/// balls down this well. Common practice, no source.
inline constexpr double kSetUpTolerance_m = 0.015;
/// Fewer repeats say little about the mean that they are measured against.
inline constexpr int kFewestRepeats = 5;

/// For each shot the number of its set-up within its session's set-ups, or nothing where its places are unknown.
[[nodiscard]] std::vector<std::optional<std::size_t>> setUpsOf(const PlayerHistory& history);

enum class RepeatedValue { Speed, Side, Height, RestAlong, RestAcross };

/// For each shot value - mean of its set-up, times sqrt(n / (n - 1)) so that their spread is the player's own; speed as
/// a share of the mean, the tip point in ball radii, the cue ball's rest in m along and across the table. Nothing for
/// shots of set-ups with fewer than kFewestRepeats values. setUps: as setUpsOf gives them.
[[nodiscard]] std::vector<std::optional<double>> awayFromOwnMean(const PlayerHistory& history,
                                                                 const std::vector<std::optional<std::size_t>>& setUps,
                                                                 RepeatedValue value);

/// The same as a sample, without the shots that have none.
[[nodiscard]] std::vector<Observation> repeated(const PlayerHistory& history,
                                                const std::vector<std::optional<std::size_t>>& setUps,
                                                RepeatedValue value);

}  // namespace ferrule
