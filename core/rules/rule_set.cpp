// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/rule_set.h"

#include "core/base/word_list.h"

namespace ferrule {

namespace {

constexpr WordList<4> kGameWords{"eight-ball", "nine-ball", "ten-ball", "straight-pool"};
constexpr WordList<4> kEditionWords{"before-2008", "world-2008", "world-2016", "world-2025"};

}  // namespace

RuleSet worldRules(Game game, Edition edition) {
  RuleSet rules;
  rules.game = game;
  rules.edition = edition;
  rules.house.threeFoulsLose = game != Game::EightBall;
  return rules;
}

RackKind rackOf(Game game) {
  switch (game) {
    case Game::EightBall:
      return RackKind::EightBall;
    case Game::NineBall:
      return RackKind::NineBall;
    case Game::TenBall:
      return RackKind::TenBall;
    case Game::StraightPool:
      break;
  }
  return RackKind::StraightPool;
}

std::string_view toText(Game game) {
  return wordOf(kGameWords, game);
}
std::optional<Game> gameFromText(std::string_view text) {
  return valueOf<Game>(kGameWords, text);
}
std::string_view toText(Edition edition) {
  return wordOf(kEditionWords, edition);
}
std::optional<Edition> editionFromText(std::string_view text) {
  return valueOf<Edition>(kEditionWords, text);
}

}  // namespace ferrule
