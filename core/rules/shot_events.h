// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/table/shot.h"

namespace ferrule {

/// Who takes the shots of a frame: two sides, each a player or a team.
enum class Seat { First, Second };

[[nodiscard]] constexpr Seat otherSeat(Seat seat) {
  return seat == Seat::First ? Seat::Second : Seat::First;
}
[[nodiscard]] constexpr std::size_t indexOf(Seat seat) {
  return seat == Seat::First ? 0 : 1;
}

/// Eight-ball: solids 1 to 7, stripes 9 to 15.
enum class Group { Solids, Stripes };

[[nodiscard]] constexpr Group otherGroup(Group group) {
  return group == Group::Solids ? Group::Stripes : Group::Solids;
}

enum class FoulKind {
  Scratch,  ///< the cue ball pocketed or off the table
  WrongBallFirst,
  NoContact,  ///< no ball met
  NoRail,     ///< nothing pocketed and no ball to a rail after contact
  NoFoot,
  BallOffTable,
  TouchedBall,
  DoubleHit,
  PushShot,
  BallsMoving,
  BadPlacement,
  BadPlayFromBehind,
  CueOnTable,
  OutOfTurn,
  SlowPlay,
  RackTemplate,
  Unsportsmanlike,
  BreakRequirement,  ///< too few balls driven to a rail on a break
};

/// A foul that a person saw.
struct CalledFoul {
  FoulKind kind = FoulKind::TouchedBall;
  std::optional<BallName> ball;

  bool operator==(const CalledFoul&) const = default;
};

/// What the player said before the shot.
struct Call {
  std::optional<BallName> ball;
  std::optional<PocketName> pocket;
  bool safety = false;

  bool operator==(const Call&) const = default;
};

/// A ball that was declared frozen to a cushion before the shot.
struct FrozenBall {
  BallName ball;
  CushionName cushion = CushionName::Head;

  bool operator==(const FrozenBall&) const = default;
};

/// What the witness could not see well enough. Each stands for two or more versions of the shot; where they lead to
/// the same ruling nobody is asked.
enum class DoubtKind {
  SplitHit,        ///< ball and other were met too close together to tell which was first
  NearRail,        ///< ball came near a cushion without turning clearly
  PocketUnsure,    ///< ball may or may not have fallen
  BallLost,        ///< ball was lost from view while it moved
  JumpedBack,      ///< ball may have left the table and come back
  MovedByHand,     ///< ball moved though no ball met it
  SmallGap,        ///< the cue ball lay so near to the ball it met that the tip may have struck twice
  FrozenToRail,    ///< ball may have been frozen to the only cushion it met; nobody declared it
  NameUnsure,      ///< ball and other may be each other
  BallsMoving,     ///< the shot may have begun before every ball lay still
  Placement,       ///< the cue ball's place on or behind the head string is too close to tell
  TargetAtString,  ///< so is that of the ball that was met
  // without versions: only a person knows
  Unfinished,      ///< the shot was not seen well enough, or not to its end
  CallUnknown,     ///< which ball and pocket were called
  GroupsUnknown,   ///< who plays which group
  PastString,      ///< how many balls passed the head string on the break
  PushOutUnknown,  ///< whether a push-out was announced
  Warned,          ///< whether the player was told of two fouls in a row
  BallsDiffer,     ///< other balls lie on the table than the frame so far leaves there
  NotSpelledOut,   ///< the rules do not say
  FrameOver,       ///< a shot after the frame was decided
};

struct Doubt {
  DoubtKind kind = DoubtKind::Unfinished;
  std::optional<BallName> ball;
  std::optional<BallName> other;

  bool operator==(const Doubt&) const = default;
};

/// Who saw the shot: what a camera saw can be taken back, and some fouls it cannot see at all.
enum class Witness { Camera, Person };

/// A shot as a referee needs it: what was said before, what happened, and what was not seen well enough.
struct ShotEvents {
  Witness witness = Witness::Camera;
  bool struck = true;                    ///< false: balls fell or were touched between shots
  std::optional<Seat> shooter;           ///< who struck; nothing: whoever is at the table
  Position before;                       ///< all balls, or empty when not known
  Position after;                        ///< all balls, or empty when not known
  std::vector<ShotEvent> events;         ///< in time order; "other" of a contact is the ball that was met
  std::optional<BallName> firstContact;  ///< as a person saw it; nothing: as the events have it
  std::optional<Call> call;              ///< nothing: not known
  bool pushOut = false;                  ///< announced
  std::vector<FrozenBall> frozen;        ///< declared before the shot
  std::optional<std::vector<BallName>> pastHeadString;  ///< object balls that reached it on a break; nothing: not known
  std::optional<Group> shooterGroup;  ///< eight-ball: as a person knows it; nothing: as the frame so far has it
  bool toldOfFouls = false;           ///< a person knows that the shooter was told of two fouls in a row
  std::vector<CalledFoul> calledFouls;
  std::vector<FoulKind> deniedFouls;  ///< a person saw that it was none
  std::vector<Doubt> doubts;
  std::vector<DoubtKind> settled;  ///< a person looked at it; the shot is as it stands here

  bool operator==(const ShotEvents&) const = default;
};

/// The fouls that a camera over the table cannot see: a person calls them, or nobody does.
/// Source: world rules of play, 6.4, 6.6 to 6.8, 6.12 and 6.15 to 6.17; which of them show from above: common
/// practice, no source.
[[nodiscard]] const std::vector<FoulKind>& foulsUnseenFromAbove();

/// The words used in files, such as "wrong-ball-first".
[[nodiscard]] std::string_view toText(FoulKind kind);
[[nodiscard]] std::string_view toText(DoubtKind kind);
/// "first", "second".
[[nodiscard]] std::string_view toText(Seat seat);
[[nodiscard]] std::optional<FoulKind> foulKindFromText(std::string_view text);
[[nodiscard]] std::optional<DoubtKind> doubtKindFromText(std::string_view text);
[[nodiscard]] std::optional<Seat> seatFromText(std::string_view text);

}  // namespace ferrule
