// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/game_state.h"

#include <algorithm>

#include "core/base/word_list.h"

namespace ferrule {

namespace {

constexpr WordList<2> kGroupWords{"solids", "stripes"};
constexpr WordList<3> kPhaseWords{"break", "play", "over"};
constexpr WordList<5> kCueBallWords{"as-it-lies", "in-hand-behind-string", "in-hand", "on-head-spot", "on-centre-spot"};
constexpr WordList<14> kWinWords{"eight-pocketed",
                                 "eight-on-foul",
                                 "eight-early",
                                 "eight-wrong-pocket",
                                 "eight-off-table",
                                 "eight-on-break",
                                 "eight-and-scratch-on-break",
                                 "scratch-on-eight",
                                 "nine-pocketed",
                                 "ten-pocketed",
                                 "points-reached",
                                 "three-fouls",
                                 "concession",
                                 "person"};

const BallName kEight{8};

template <class Keep>
std::vector<BallName> onTableWhere(const GameState& state, Keep&& keep) {
  std::vector<BallName> kept;
  std::ranges::copy_if(state.onTable, std::back_inserter(kept), keep);
  return kept;
}

std::vector<BallName> eightBallsAllowed(const GameState& state) {
  if (!state.groupsKnown) return state.onTable;
  const auto group = groupOf(state, state.atTable);
  if (group && isOnEight(state, state.atTable)) return onTableWhere(state, [](BallName b) { return b == kEight; });
  if (group) return onTableWhere(state, [&](BallName ball) { return groupOf(ball) == group; });
  auto allowed = onTableWhere(state, [](BallName ball) { return ball != kEight; });
  return allowed.empty() ? state.onTable : allowed;
}

}  // namespace

SurfaceLines surfaceLines(const Table& table, const BallSet& balls) {
  return {headString_m(table), balls.radius_m()};
}

GameState newFrame(const RuleSet& rules, Seat breaker, const SurfaceLines& lines) {
  GameState state;
  state.rules = rules;
  state.lines = lines;
  state.breaker = breaker;
  state.atTable = breaker;
  state.onTable = ballsOfGame(rules.game);
  return state;
}

GameState joinedFrame(const RuleSet& rules, const std::vector<BallName>& onTable, Seat atTable,
                      const SurfaceLines& lines) {
  GameState state = newFrame(rules, atTable, lines);
  state.phase = Phase::Play;
  state.cueBall = CueBallPlace::AsItLies;
  state.groupsKnown = rules.game != Game::EightBall;
  std::erase_if(state.onTable, [&](BallName ball) { return std::ranges::find(onTable, ball) == onTable.end(); });
  return state;
}

std::vector<BallName> ballsOfGame(Game game) {
  const int last = game == Game::NineBall ? 9 : game == Game::TenBall ? 10 : 15;
  std::vector<BallName> balls;
  for (int number = 1; number <= last; ++number)
    balls.emplace_back(number);
  return balls;
}

bool isOnTable(const GameState& state, BallName ball) {
  return std::ranges::find(state.onTable, ball) != state.onTable.end();
}

std::optional<Group> groupOf(BallName ball) {
  if (ball.isSolid()) return Group::Solids;
  if (ball.isStripe()) return Group::Stripes;
  return std::nullopt;
}

std::optional<Group> groupOf(const GameState& state, Seat seat) {
  if (!state.groupOfFirst) return std::nullopt;
  return seat == Seat::First ? *state.groupOfFirst : otherGroup(*state.groupOfFirst);
}

bool isOnEight(const GameState& state, Seat seat) {
  const auto group = groupOf(state, seat);
  return group && std::ranges::none_of(state.onTable, [&](BallName ball) { return groupOf(ball) == group; });
}

std::optional<BallName> lowestBall(const GameState& state) {
  if (state.onTable.empty()) return std::nullopt;
  return *std::ranges::min_element(state.onTable);
}

std::vector<BallName> ballsAllowedFirst(const GameState& state) {
  switch (state.rules.game) {
    case Game::EightBall:
      return state.phase == Phase::Break ? state.onTable : eightBallsAllowed(state);
    case Game::NineBall:
    case Game::TenBall:
      if (const auto lowest = lowestBall(state)) return {*lowest};
      return {};
    case Game::StraightPool:
      break;
  }
  return state.onTable;
}

std::vector<BallName> ballsToPot(const GameState& state) {
  if (state.rules.game == Game::EightBall && state.phase == Phase::Play) return eightBallsAllowed(state);
  return state.onTable;
}

std::string_view toText(Group group) {
  return wordOf(kGroupWords, group);
}
std::string_view toText(Phase phase) {
  return wordOf(kPhaseWords, phase);
}
std::string_view toText(CueBallPlace place) {
  return wordOf(kCueBallWords, place);
}
std::string_view toText(WinReason reason) {
  return wordOf(kWinWords, reason);
}
std::optional<Group> groupFromText(std::string_view text) {
  return valueOf<Group>(kGroupWords, text);
}
std::optional<Phase> phaseFromText(std::string_view text) {
  return valueOf<Phase>(kPhaseWords, text);
}
std::optional<CueBallPlace> cueBallPlaceFromText(std::string_view text) {
  return valueOf<CueBallPlace>(kCueBallWords, text);
}
std::optional<WinReason> winReasonFromText(std::string_view text) {
  return valueOf<WinReason>(kWinWords, text);
}

}  // namespace ferrule
