// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/drills/zone.h"
#include "core/table/asked_delivered.h"
#include "core/table/measured_table.h"
#include "core/table/pocket.h"
#include "core/table/track.h"

/// A drill: positions that are set up again and again, and what each try is to bring about. Places are in widths of the
/// playing surface, so that a drill is the same on every table.
namespace ferrule {

/// A ball of a set-up. Which number an object ball bears does not matter: it is known by its place.
struct DrillBall {
  BallName ball;
  SurfacePlace place;
  /// It touches this cushion; its place counts along the cushion alone.
  std::optional<CushionName> frozen = {};

  bool operator==(const DrillBall&) const = default;
};

/// Object balls that lie anywhere, at least so far from each other and from the cushions.
struct LooseBalls {
  int count = 3;
  double apart_widths = 0.15;

  bool operator==(const LooseBalls&) const = default;
};

enum class DrillRack { EightBall, NineBall, TenBall };

enum class GoalKind {
  Pot,           ///< the ball falls, into the pocket if one is named; without a ball any object ball
  Rest,          ///< the ball (the cue ball without one) comes to rest in the zone
  Contact,       ///< the cue ball meets the ball first, after at least as many cushions as are named
  Hidden,        ///< no straight way is left from the cue ball to the ball
  AngleLeft,     ///< the cut that is left from the cue ball's rest to ball and pocket lies in the range
  MeetsCushion,  ///< the cue ball meets the first of the cushions that it meets in the zone
  ComesBack,     ///< off the cushion, the cue ball's way passes its own start within reach
  Clear,         ///< every object ball falls
  NoCushion,     ///< the cue ball touches no cushion
  Said           ///< what no film shows: a person says it (the shot went as it was called)
};

/// One thing that a try is to bring about. Of a try of several shots Pot, Clear and NoCushion look at all of them, the
/// other kinds at the first.
struct DrillGoal {
  GoalKind kind = GoalKind::Pot;
  std::optional<BallName> ball = {};
  std::optional<PocketName> pocket = {};
  /// Pot, Rest: the ball meets these in this order on its way. Contact: how many. MeetsCushion, ComesBack: the one.
  std::vector<CushionName> cushions = {};
  /// Rest, MeetsCushion; AngleLeft: where the cue ball must rest besides.
  std::optional<Zone> zone = {};
  double least_rad = 0.0;      ///< AngleLeft
  double most_rad = 0.0;       ///< AngleLeft
  double within_widths = 0.0;  ///< ComesBack

  bool operator==(const DrillGoal&) const = default;
};

/// One set-up of a drill with its goals. The balls are listed, loose or racked.
struct DrillStation {
  std::vector<DrillBall> balls = {};  ///< object balls
  std::optional<LooseBalls> loose = {};
  std::optional<DrillRack> rack = {};
  /// Where the cue ball lies; without it the cue ball is in hand.
  std::optional<DrillBall> cueBall = {};
  std::optional<Zone> cueBallZone = {};  ///< where a cue ball in hand may be put; anywhere without it
  std::vector<DrillGoal> goals = {};     ///< the first is what the drill is about
  int trials = 10;
  bool isRun = false;  ///< a try goes on with each ball that falls
  AskedStrike asked = {};

  bool operator==(const DrillStation&) const = default;
};

enum class DrillCaution {
  Jump,   ///< eye protection, clear space
  Break,  ///< nobody stands at the foot end
};

enum class StationOrder {
  Blocks,  ///< all trials of one station, then the next
  InTurn,  ///< one trial of each, again and again
};

struct Drill {
  std::string key;         ///< unique; a built-in one's words are found by it
  std::string title = {};  ///< of a person's own drill; empty for a built-in one
  std::string text = {};   ///< of a person's own drill
  std::vector<std::string> tags = {};
  std::vector<DrillCaution> cautions = {};
  StationOrder order = StationOrder::Blocks;
  /// Whether the drill means the same with head and foot exchanged.
  bool turnsRound = true;
  std::vector<DrillStation> stations = {};  ///< all with goals of the same kinds

  bool operator==(const Drill&) const = default;
};

/// Of all stations.
[[nodiscard]] int trialsOf(const Drill& drill);
/// Which station a trial belongs to, trial from 0; trials beyond the last go on with the last station, or in turn.
[[nodiscard]] std::size_t stationOf(const Drill& drill, std::size_t trial);

/// Where a listed ball lies on a table.
[[nodiscard]] TablePoint placeOf(const DrillBall& ball, const MeasuredTable& measured);
/// The balls to put down, in the order of their names; without a cue ball that is in hand. seed: of loose balls and of
/// what the rules leave open in a rack.
[[nodiscard]] Position setUpOf(const DrillStation& station, const MeasuredTable& measured, std::uint64_t seed = 1);

/// What can be wrong with a drill, by what a person would do about it.
enum class DrillFault {
  NoStation,
  NoGoal,          ///< a station has none
  GoalsDiffer,     ///< stations have goals of different kinds
  NoTrials,        ///< below 1 or beyond kMostTrials
  NoObjectBall,    ///< a goal speaks of a ball that does not stand there
  GoalIncomplete,  ///< a goal lacks its ball, pocket, zone, cushion or range
  BallTwice,       ///< one number stands twice
  BallOffTable,    ///< a ball does not lie on the playing surface
  BallsOverlap,
  NoRoom,        ///< loose balls do not find room so far apart
  ZoneOffTable,  ///< a zone's corner lies beyond the cushions
  CutTooThin     ///< a straight pot at kMostDrillCut_rad or more
};

struct DrillFinding {
  DrillFault fault = DrillFault::NoStation;
  std::size_t station = 0;
  std::optional<BallName> ball = {};
  std::optional<BallName> other = {};

  bool operator==(const DrillFinding&) const = default;
};

inline constexpr int kMostTrials = 500;
/// 80 degrees: no one practises thinner cuts as pots. Common practice, no source.
inline constexpr double kMostDrillCut_rad = 1.3962634016;

/// Everything that keeps a drill from being played on this table; empty for a sound one.
[[nodiscard]] std::vector<DrillFinding> faultsOf(const Drill& drill, const MeasuredTable& measured);

/// The words of files: "pot", "rest", "contact", "hidden", "angle-left", "meets-cushion", "comes-back", "clear",
/// "no-cushion", "said".
[[nodiscard]] std::string_view toText(GoalKind kind);
[[nodiscard]] std::optional<GoalKind> goalKindFromText(std::string_view text);

}  // namespace ferrule
