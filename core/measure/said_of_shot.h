// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <variant>

#include "core/measure/film_referee.h"
#include "core/record/record_values.h"
#include "core/table/told_values.h"

/// What people say of a recorded shot. It stands whatever is read of the shot again.
namespace ferrule {

struct OutcomeSaid {
  Outcome outcome = Outcome::Pot;
  std::optional<FoulKind> foul;  ///< outcome Foul

  bool operator==(const OutcomeSaid&) const = default;
};

/// The pot that was meant; nothing: none was.
struct TargetSaid {
  std::optional<PocketedBall> target;

  bool operator==(const TargetSaid&) const = default;
};

struct FirstContactSaid {
  BallName ball;

  bool operator==(const FirstContactSaid&) const = default;
};

/// Who played; nothing: nobody knows.
struct PlayerSaid {
  std::optional<std::string> name;

  bool operator==(const PlayerSaid&) const = default;
};

/// What replaces the referee's ruling, all of it.
struct RulingSaid {
  SaidOfRuling said;

  bool operator==(const RulingSaid&) const = default;
};

struct NamesSaid {
  SwappedNames names;

  bool operator==(const NamesSaid&) const = default;
};

enum class ShotEnd { Before, After };

/// Where a ball lay before the shot, or came to rest after it.
struct PlaceSaid {
  ShotEnd end = ShotEnd::Before;
  BallAt at;

  bool operator==(const PlaceSaid&) const = default;
};

struct TimesSaid {
  ShotTimes times;

  bool operator==(const TimesSaid&) const = default;
};

/// Two shots were read as one: from this film time on it is another one.
struct SplitSaid {
  double from_s = 0.0;

  bool operator==(const SplitSaid&) const = default;
};

/// The shot and the one behind it are one: no second strike was there.
struct JoinSaid {
  bool operator==(const JoinSaid&) const = default;
};

/// A ball that was put down before the shot: another ball, another place, or nobody put it down (no now); or somebody
/// did and it was not seen (no was).
struct PlacementSaid {
  std::optional<Placement> was;
  std::optional<Placement> now;

  bool operator==(const PlacementSaid&) const = default;
};

using ShotSaying = std::variant<OutcomeSaid, TargetSaid, FirstContactSaid, PlayerSaid, RulingSaid, NamesSaid, PlaceSaid,
                                TimesSaid, SplitSaid, JoinSaid, PlacementSaid>;

/// All that people said of one shot, as its corrections hold it.
struct ShotSayings {
  std::optional<Outcome> outcome;
  std::optional<TargetSaid> target;
  std::optional<BallName> firstContact;
  std::optional<PlayerSaid> player;
  std::vector<PlaceSaid> places;  ///< each ball at most once at each end
  SaidOfRuling ruling;

  bool operator==(const ShotSayings&) const = default;
};

/// A value that was corrected counts as it stands now.
[[nodiscard]] ShotSayings sayingsOf(const StoredShot& shot);

/// What a correction says, so that it can be said again. correction: the last one of shot, which stands as it left it.
/// Nothing for one that no saying makes.
[[nodiscard]] std::optional<ShotSaying> sayingOf(const StoredShot& shot, const ValueCorrection& correction);

/// Whether an answer to the referee tells what a shot did, not only how it is ruled: what fell or left the table, or
/// was met first.
[[nodiscard]] bool tellsWhatHappened(const Testimony& answer);

/// The reading with what people said in it: what they answered the referee, and the outcome that follows; the outcome
/// and what must then have fallen or not, the first contact, the places. next: the balls before the next shot, where a
/// ball is found again that is said not to have fallen; may be empty.
[[nodiscard]] ShotReading withSayings(ShotReading reading, const ShotSayings& sayings, const Position& next);

/// What a referee makes of it. seat: who played, where a person said so and it is known which seat that is.
[[nodiscard]] SaidOfShot refereeSayings(const ShotSayings& sayings, const ShotReading& reading,
                                        std::optional<Seat> seat);

}  // namespace ferrule
