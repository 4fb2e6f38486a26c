// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "core/table/rack.h"

namespace ferrule {

enum class Game { EightBall, NineBall, TenBall, StraightPool };

inline constexpr std::array kGames{Game::EightBall, Game::NineBall, Game::TenBall, Game::StraightPool};

/// Which text of the rules is in force.
enum class Edition {
  Before2008,  ///< handbook rules up to 2007; house rules still echo them. From memory where no copy was read
  World2008,   ///< world standardized rules of play, effective 1 January 2008
  World2016,   ///< the same, effective 15 March 2016
  World2025,   ///< reported effective 23 June 2025; official text not seen, so it is cited by the numbers of 2016
};

inline constexpr std::array kEditions{Edition::Before2008, Edition::World2008, Edition::World2016, Edition::World2025};

/// Which shots need a called ball and pocket, in the games that are called.
enum class CallRule { Every, EightOnly, None };

/// What an event or a house settles for itself. The defaults are the world rules.
struct HouseRules {
  CallRule calls = CallRule::Every;  ///< eight-ball only; ten-ball and straight pool are always called
  bool threeFoulsLose = true;        ///< three fouls in a row: the rack (nine- and ten-ball), 15 points (straight pool)
  bool cueBallFoulsOnly = false;     ///< touching an object ball is no foul; the 2016 regulations allow it unrefereed
  bool inHandOnlyAfterScratch = false;       ///< after any other foul the cue ball stays where it lies
  bool scratchAlwaysBehindString = false;    ///< ball in hand is behind the head string on every shot
  bool breakScratchBehindString = true;      ///< eight-ball: ball in hand after a scratch on the break
  bool eightOnBreakWins = false;             ///< the 8 on a break without a foul wins the rack
  bool eightAndScratchOnBreakLoses = false;  ///< the 8 and the cue ball on the break lose it
  bool scratchOnEightLoses = false;          ///< a scratch while the 8 is the ball on loses the rack
  int ballsToRailOnBreak = 4;                ///< object balls, where none is pocketed
  bool pushOut = true;                       ///< nine- and ten-ball: on the shot after the break
  bool threePointBreak = false;              ///< three balls pocketed or past the head string on the break
  bool pushOutAfterIllegalBreak = false;     ///< after a break that misses the three points; events differ

  bool operator==(const HouseRules&) const = default;
};

/// A game as it is played here and now.
struct RuleSet {
  Game game = Game::EightBall;
  Edition edition = Edition::World2016;
  HouseRules house;
  int pointsToWin = 0;  ///< straight pool; 0: play on without end

  bool operator==(const RuleSet&) const = default;
};

/// The world rules of a game. Three fouls in a row cost nothing in eight-ball. Source: world rules of play, 6.14.
[[nodiscard]] RuleSet worldRules(Game game, Edition edition = Edition::World2016);

/// What is racked for the first break of a game. Source: world rules of play, rack diagrams.
[[nodiscard]] RackKind rackOf(Game game);

/// "eight-ball", "nine-ball", "ten-ball", "straight-pool".
[[nodiscard]] std::string_view toText(Game game);
[[nodiscard]] std::optional<Game> gameFromText(std::string_view text);
/// "before-2008", "world-2008", "world-2016", "world-2025".
[[nodiscard]] std::string_view toText(Edition edition);
[[nodiscard]] std::optional<Edition> editionFromText(std::string_view text);

}  // namespace ferrule
