// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <vector>

#include "core/rules/rule_set.h"
#include "core/rules/shot_events.h"
#include "core/table/ball_set.h"
#include "core/table/table.h"

namespace ferrule {

enum class Phase { Break, Play, Over };

/// Where the next player finds the cue ball.
enum class CueBallPlace {
  AsItLies,
  InHandBehindString,
  InHandAnywhere,
  OnHeadSpot,    ///< straight pool, when it lay in the rack's area
  OnCentreSpot,  ///< the same, with the head spot taken
};

enum class WinReason {
  EightPocketed,
  EightOnFoul,
  EightEarly,
  EightWrongPocket,
  EightOffTable,
  EightOnBreak,
  EightAndScratchOnBreak,
  ScratchOnEight,
  NinePocketed,
  TenPocketed,
  PointsReached,
  ThreeFouls,
  Concession,
  Person,  ///< a person said so
};

struct FrameResult {
  Seat winner = Seat::First;
  WinReason why = WinReason::Person;

  bool operator==(const FrameResult&) const = default;
};

/// The lines of the table that rulings depend on, m in the table's axes.
struct SurfaceLines {
  double headString_m = -0.635;
  double ballRadius_m = 0.028575;

  bool operator==(const SurfaceLines&) const = default;
};

[[nodiscard]] SurfaceLines surfaceLines(const Table& table, const BallSet& balls);

/// How a frame stands before a shot.
struct GameState {
  RuleSet rules;
  SurfaceLines lines;
  Phase phase = Phase::Break;
  Seat breaker = Seat::First;  ///< who opened the frame
  Seat atTable = Seat::First;
  CueBallPlace cueBall = CueBallPlace::InHandBehindString;
  std::vector<BallName> onTable;      ///< object balls, in the order of their names
  std::optional<Group> groupOfFirst;  ///< eight-ball: of the first seat; nothing while the table is open
  bool groupsKnown = true;            ///< false: the frame was joined in the middle
  bool pushOutAllowed = false;        ///< on this shot
  std::array<int, 2> foulsInARow{};   ///< by seat
  std::array<bool, 2> warned{};       ///< by seat: told of two fouls in a row
  std::array<int, 2> points{};        ///< by seat: straight pool
  std::optional<FrameResult> result;  ///< in phase Over
  bool unsettled = false;             ///< an earlier ruling still waits for a person

  bool operator==(const GameState&) const = default;
};

/// A racked table before the break.
[[nodiscard]] GameState newFrame(const RuleSet& rules, Seat breaker = Seat::First, const SurfaceLines& lines = {});
/// A frame that is joined after its break: nobody knows the groups or earlier fouls.
/// onTable: object balls; the cue ball and balls that the game does not use are left out.
[[nodiscard]] GameState joinedFrame(const RuleSet& rules, const std::vector<BallName>& onTable,
                                    Seat atTable = Seat::First, const SurfaceLines& lines = {});

/// All object balls of a game, in the order of their names.
[[nodiscard]] std::vector<BallName> ballsOfGame(Game game);
[[nodiscard]] bool isOnTable(const GameState& state, BallName ball);
/// Solids 1 to 7, stripes 9 to 15; the 8 and the cue ball belong to none.
[[nodiscard]] std::optional<Group> groupOf(BallName ball);
/// Eight-ball: nothing while the table is open.
[[nodiscard]] std::optional<Group> groupOf(const GameState& state, Seat seat);
/// Eight-ball: the seat has a group and none of it is left.
[[nodiscard]] bool isOnEight(const GameState& state, Seat seat);
/// The ball that must be met first in nine- and ten-ball. Nothing when no object ball is left.
[[nodiscard]] std::optional<BallName> lowestBall(const GameState& state);
/// The balls that the player at the table may meet first, in the order of their names.
/// Source: world rules of play, 2.7, 3.4, 6.2.
[[nodiscard]] std::vector<BallName> ballsAllowedFirst(const GameState& state);
/// The balls that the player at the table may call, in the order of their names; in nine-ball those that may fall.
[[nodiscard]] std::vector<BallName> ballsToPot(const GameState& state);

/// "solids", "stripes".
[[nodiscard]] std::string_view toText(Group group);
/// "break", "play", "over".
[[nodiscard]] std::string_view toText(Phase phase);
/// "as-it-lies", "in-hand-behind-string", "in-hand", "on-head-spot", "on-centre-spot".
[[nodiscard]] std::string_view toText(CueBallPlace place);
[[nodiscard]] std::string_view toText(WinReason reason);
[[nodiscard]] std::optional<Group> groupFromText(std::string_view text);
[[nodiscard]] std::optional<Phase> phaseFromText(std::string_view text);
[[nodiscard]] std::optional<CueBallPlace> cueBallPlaceFromText(std::string_view text);
[[nodiscard]] std::optional<WinReason> winReasonFromText(std::string_view text);

}  // namespace ferrule
