// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/rules/game_state.h"
#include "core/rules/rule_number.h"
#include "core/rules/shot_events.h"

namespace ferrule {

/// What a decision rests on.
struct Evidence {
  RuleNumber rule;
  std::vector<int> events;  ///< places in the events of the shot that was ruled on, from 0; empty when it rests on what
                            ///< did not happen
  Verdict sureness = Verdict::Certain;

  bool operator==(const Evidence&) const = default;
};

/// A decision with what it rests on.
template <class T>
struct Ruled {
  T value{};
  Evidence evidence;

  bool operator==(const Ruled&) const = default;
};

struct Foul {
  FoulKind kind = FoulKind::Scratch;
  std::optional<BallName> ball;  ///< the one it is about
  Evidence evidence;

  bool operator==(const Foul&) const = default;
};

/// Something that only a person can settle.
struct Question {
  Doubt doubt;
  Evidence evidence;

  bool operator==(const Question&) const = default;
};

enum class OptionKind {
  Accept,          ///< the table as it lies
  TakeInHand,      ///< the cue ball in hand, where the option says
  RackAgain,       ///< the chooser breaks a new rack
  OpponentBreaks,  ///< the other one breaks again
  SpotAndPlay,     ///< the eight is spotted, the rest stays
  HandBack,        ///< the other one must play on
};

/// What may be chosen, with what follows from it.
struct Option {
  OptionKind kind = OptionKind::Accept;
  Seat atTable = Seat::First;  ///< who plays then
  CueBallPlace cueBall = CueBallPlace::AsItLies;
  bool rack = false;  ///< all balls are racked for a new break

  bool operator==(const Option&) const = default;
};

enum class SpotPlace { FootSpot, CentreSpot, HeadSpot };

/// A ball that comes back: on the spot, or as near behind it on the long string as others allow.
struct Spotting {
  BallName ball;
  SpotPlace place = SpotPlace::FootSpot;

  bool operator==(const Spotting&) const = default;
};

enum class Racking {
  None,
  Rest,  ///< straight pool: 14 balls without the apex
  Full,  ///< all balls
};

/// What a referee says after a shot. Values only; nothing here asks anybody.
struct Ruling {
  Verdict sureness = Verdict::Certain;  ///< the least sure of all that follows
  Seat shooter = Seat::First;
  std::vector<Foul> fouls;  ///< most serious first; only the first is punished (world rules of play, section 6)
  std::optional<Ruled<PocketedBall>> pot;  ///< the legally pocketed ball: the called one where balls are called
  std::vector<BallName> pocketed;          ///< object balls that fell, in time order
  std::vector<BallName> off;               ///< object balls that left the table
  std::vector<BallName> restored;          ///< to be put back where they lay
  std::vector<Ruled<Spotting>> spotted;
  std::optional<Ruled<Group>> shooterGroup;  ///< decided by this shot
  bool illegalBreak = false;                 ///< too weak a break that is not a foul
  bool pushOut = false;                      ///< the shot was one
  Ruled<Seat> next;                          ///< who is at the table
  Ruled<CueBallPlace> cueBall;
  std::vector<Option> options;       ///< empty, or two or more; the first is taken while nobody chose
  Seat chooser = Seat::First;        ///< of options
  Ruled<std::array<int, 2>> points;  ///< to be added, by seat
  std::optional<Ruled<FrameResult>> result;
  std::vector<Question> questions;
  std::vector<FoulKind> unseen;  ///< fouls that the witness could not have seen and nobody spoke of

  // How the frame stands then, before any option.
  Phase phase = Phase::Play;
  Racking racking = Racking::None;
  std::vector<BallName> onTable;
  bool pushOutAllowed = false;
  std::array<int, 2> foulsInARow{};
  std::array<bool, 2> warned{};

  std::string overruledBy;  ///< who changed it; empty: nobody
  std::string reason;       ///< as that person gave it

  bool operator==(const Ruling&) const = default;
};

/// Whether two rulings have the same consequences, whatever they rest on.
[[nodiscard]] bool sameConsequences(const Ruling& a, const Ruling& b);

[[nodiscard]] std::string_view toText(OptionKind kind);
/// "foot-spot", "centre-spot", "head-spot".
[[nodiscard]] std::string_view toText(SpotPlace place);
/// "none", "rest", "full".
[[nodiscard]] std::string_view toText(Racking racking);
[[nodiscard]] std::optional<OptionKind> optionKindFromText(std::string_view text);
[[nodiscard]] std::optional<SpotPlace> spotPlaceFromText(std::string_view text);
[[nodiscard]] std::optional<Racking> rackingFromText(std::string_view text);

}  // namespace ferrule
