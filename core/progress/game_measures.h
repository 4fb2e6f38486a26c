// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>

#include "core/progress/difficulty.h"
#include "core/progress/played_shot.h"
#include "core/progress/sample.h"

/// What a player does with a game: breaks, innings, safeties, fouls, choices, time. All of it depends on opponents,
/// rules of break and rack and is compared with care.
namespace ferrule {

struct BreakMeasure {
  int breaks = 0;
  Answer<Estimate> success = shortOf(ShortageKind::Shots);  ///< a ball fell and it was no foul
  Answer<Estimate> balls = shortOf(ShortageKind::Shots);    ///< object balls that fell, mean
  Answer<Estimate> fouls = shortOf(ShortageKind::Shots);
  /// Of the resting cue ball from the middle of the table, mean, m; scratches are left out.
  Answer<Estimate> cueBallFromMiddle_m = shortOf(ShortageKind::Shots);
};
[[nodiscard]] BreakMeasure breakMeasure(const PlayerHistory& history, const Resampling& resampling);

/// An inning: shots of one frame with numbers in a row, up to and with the first that pots nothing legally.
struct InningMeasure {
  int innings = 0;
  Answer<Estimate> balls = shortOf(ShortageKind::Shots);  ///< object balls in an inning, mean; Estimate::shots: innings
  /// Innings of the player in a frame of a game, mean; Estimate::shots: frames. Fewer are better, and the opponent's
  /// play has its part in them.
  Answer<Estimate> inFrame = shortOf(ShortageKind::NoValues);
  /// Frames that an inning of kRunOutBalls or more won, of the frames that the player won.
  Answer<Estimate> runOuts = shortOf(ShortageKind::NoValues);
};
/// A visit that clears at least this many is a run-out. Common practice, no source.
inline constexpr int kRunOutBalls = 5;
[[nodiscard]] InningMeasure inningMeasure(const PlayerHistory& history, const Resampling& resampling);

enum class ReplyKind { Potted, Missed, Safety, Fouled };
[[nodiscard]] ReplyKind replyOf(const Reply& reply);

struct SafetyMeasure {
  int tried = 0;
  /// The next player had no direct pot among all that the planner tried beside that shot, of the safeties where plans
  /// stand. Older suggestions know of their listed plans alone.
  Answer<Estimate> success = shortOf(ShortageKind::NoValues);
  /// What the next player did, of the safeties that are followed by a shot.
  int answered = 0;
  int potted = 0;
  int missed = 0;
  int safeties = 0;
  int fouled = 0;
};
[[nodiscard]] SafetyMeasure safetyMeasure(const PlayerHistory& history);

/// Shots with a foul, of all shots, breaks too: what a referee or a person called, and every scratch. Where no referee
/// watched, other fouls went unseen, so this is a least value.
[[nodiscard]] Answer<Estimate> foulShare(const PlayerHistory& history);

/// Misses and fouls on pots that this player makes at least kUnforced of the time, of such attempts.
inline constexpr double kUnforced = 0.8;
[[nodiscard]] Answer<Estimate> unforcedShare(const PlayerHistory& history, const std::optional<Difficulty>& difficulty);

/// Seconds from the rest of the shot before to the strike: over kLongestPreparation_s (a pause, a rack) and below zero
/// (a clock that went back) are left out. Hard shots take longer and are missed more often: that the time before misses
/// is the longer one is no fault by itself.
struct TimeMeasure {
  Answer<Estimate> all = shortOf(ShortageKind::NoTimes);
  Answer<Estimate> beforeMakes = shortOf(ShortageKind::NoTimes);
  Answer<Estimate> beforeMisses = shortOf(ShortageKind::NoTimes);
};
inline constexpr double kLongestPreparation_s = 180.0;
[[nodiscard]] TimeMeasure timeMeasure(const PlayerHistory& history, const Resampling& resampling);

/// Choice and delivery are different faults. A loss below kTie is a tie and counts as good. Where suggestions were
/// shown before the shot, the choice was not the player's alone and does not count.
struct ChoiceMeasure {
  Answer<Estimate> choiceLoss = shortOf(ShortageKind::NoValues);    ///< value(suggested) - value(taken), mean
  Answer<Estimate> deliveryLoss = shortOf(ShortageKind::NoValues);  ///< value(taken) - value(what came out), mean
  /// [good choice 0, poor 1][well struck 0, badly 1]
  std::array<std::array<int, 2>, 2> boxes{};
};
/// Options closer than this in value cannot be told apart. Ours, until the planner states its uncertainty.
inline constexpr double kTie = 0.03;
[[nodiscard]] ChoiceMeasure choiceMeasure(const PlayerHistory& history, const Resampling& resampling);

/// Frames that the player did not win and in which his choices cost more than his deliveries, kTie at least: marks in
/// each the shot whose choice cost most. Shots with a shown suggestion do not count, since the choice was not his
/// alone.
void markLostByChoice(PlayerHistory& history);

}  // namespace ferrule
