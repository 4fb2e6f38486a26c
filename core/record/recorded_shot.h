// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>
#include <optional>
#include <string>
#include <vector>

#include "core/record/record_values.h"

/// One player's shots for statistics: many at once, without tracks and events.
namespace ferrule {

/// Sessions that started within it; a session belongs to a period as a whole.
struct SessionPeriod {
  UtcMilliseconds from = std::numeric_limits<UtcMilliseconds>::min();
  UtcMilliseconds until = std::numeric_limits<UtcMilliseconds>::max();  ///< no longer in it

  bool operator==(const SessionPeriod&) const = default;
};

/// What a kept suggestion says of the shot that was taken (suggestionFigures in schema.h).
struct SuggestionFigures {
  bool shown = false;  ///< before the shot
  std::optional<double> choiceLoss;
  std::optional<double> deliveryLoss;
  std::optional<double> potChance;       ///< of the plan that was taken
  std::optional<TablePoint> leave;       ///< where that plan leaves the cue ball
  std::optional<BallName> nextBall;      ///< that it goes on with
  std::optional<double> askedSpeed_mps;  ///< of the plan that was shown and played
  std::optional<double> askedSide;
  std::optional<double> askedHeight;

  bool operator==(const SuggestionFigures&) const = default;
};

/// The shot of somebody else that came after a safety.
struct RecordedReply {
  Outcome outcome = Outcome::Miss;
  bool fouled = false;
  /// The best chance of a direct pot among all that was tried for the plans beside it, in older suggestions among those
  /// that are listed; 0: none was direct. Nothing without plans.
  std::optional<double> directChance;

  bool operator==(const RecordedReply&) const = default;
};

/// A shot as far as statistics need it. Values are the corrected ones where a person corrected them.
struct RecordedShot {
  ShotId id;
  SessionId session;
  FrameId frame;
  std::string game;  ///< of the frame: "eight-ball", ...; empty when unknown
  std::optional<UtcMilliseconds> struckAt;
  std::optional<double> restBefore_s;  ///< film time at which the frame's shot before came to rest
  /// Without events and elevation; before and after hold the cue ball and, before, the target alone.
  ShotReading reading;
  bool corrected = false;
  bool targetByPerson = false;  ///< a person named the target
  bool ruled = false;
  bool fouled = false;    ///< the ruling names a foul
  bool wonFrame = false;  ///< the ruling ends the frame in favour of the shooter
  SuggestionFigures suggestion;
  std::optional<TablePoint> nextBallAt;  ///< where suggestion.nextBall lay after the shot
  std::optional<bool> cushionMet;        ///< of a pot: by the cue ball; nothing where no event was kept
  std::optional<RecordedReply> reply;    ///< to a safety
  std::vector<std::string> tags;         ///< in the order of their bytes

  bool operator==(const RecordedShot&) const = default;
};

}  // namespace ferrule
