// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/rules/ruling.h"

/// What people put right: the facts of a shot, after which the rules are applied anew, or the ruling itself.
namespace ferrule {

enum class TestimonyKind {
  FirstContact,  ///< ball was met first
  Called,        ///< call was made, a safety among them
  PushOut,       ///< holds: it was announced
  Foul,          ///< foul, of ball where it matters; holds: it was one
  RailAfter,     ///< holds: a ball met a rail after the first contact; none did otherwise
  Fell,          ///< ball fell into pocket; holds false: it did not fall
  LeftTable,     ///< ball left the table; holds false: it did not
  Frozen,        ///< ball was frozen to cushion; holds false: it was not
  DrivenToRail,  ///< number object balls met a rail on the break
  PastString,    ///< number object balls reached the head string on the break
  Shooter,       ///< seat struck
  Settled,       ///< the doubt was looked at, the shot stands as read
  RailContact,   ///< ball met a rail; holds false: it did not
  ShooterGroup,  ///< who struck has the group, in eight-ball
  ToldOfFouls,   ///< holds: who struck was told of two fouls in a row
};

/// One fact as a person saw it. Which fields count depends on the kind.
struct Testimony {
  TestimonyKind kind = TestimonyKind::Settled;
  bool holds = true;
  BallName ball{};
  PocketName pocket = PocketName::HeadLeft;
  CushionName cushion = CushionName::Head;
  FoulKind foul = FoulKind::TouchedBall;
  Call call{};
  int number = 0;
  Seat seat = Seat::First;
  DoubtKind doubt = DoubtKind::Unfinished;
  Group group = Group::Solids;

  bool operator==(const Testimony&) const = default;
};

/// The shot with what people said about it, in the order in which they said it; the doubts they settled are gone.
[[nodiscard]] ShotEvents witnessed(ShotEvents shot, const std::vector<Testimony>& testimonies);

/// The words used in files, such as "first-contact".
[[nodiscard]] std::string_view toText(TestimonyKind kind);
[[nodiscard]] std::optional<TestimonyKind> testimonyKindFromText(std::string_view text);

/// A ruling that a person replaced in part. What is absent stays as the referee ruled.
struct Overrule {
  std::optional<bool> foul;  ///< false: no foul is on the books; true: one is, of the kind below
  FoulKind foulKind = FoulKind::Unsportsmanlike;
  std::optional<Seat> next;
  std::optional<CueBallPlace> cueBall;
  std::optional<Group> shooterGroup;
  std::optional<std::array<int, 2>> points;      ///< by seat, instead of those of the ruling
  std::optional<std::vector<BallName>> onTable;  ///< object balls
  std::optional<std::optional<Seat>> winner;     ///< the frame's; nothing inside: it goes on
  std::string reason;
  std::string who;  ///< not empty

  bool operator==(const Overrule&) const = default;
};

/// The ruling after an overrule: certain, without questions, and named after who made it. Options that no longer fit a
/// replaced turn or place of the cue ball are gone.
[[nodiscard]] Ruling overruled(Ruling ruling, const Overrule& overrule);

}  // namespace ferrule
