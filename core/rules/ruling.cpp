// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/ruling.h"

#include "core/base/word_list.h"

namespace ferrule {

namespace {

constexpr WordList<6> kOptionWords{"accept",          "take-in-hand",  "rack-again",
                                   "opponent-breaks", "spot-and-play", "hand-back"};
constexpr WordList<3> kSpotWords{"foot-spot", "centre-spot", "head-spot"};
constexpr WordList<3> kRackingWords{"none", "rest", "full"};

/// Everything but evidence and questions, with the evidence blanked.
Ruling consequences(Ruling ruling) {
  ruling.sureness = Verdict::Certain;
  const bool fouled = !ruling.fouls.empty();
  ruling.fouls.clear();
  if (fouled) ruling.fouls.emplace_back();
  if (ruling.pot) ruling.pot->evidence = {};
  for (auto& spotting : ruling.spotted)
    spotting.evidence = {};
  if (ruling.shooterGroup) ruling.shooterGroup->evidence = {};
  ruling.next.evidence = {};
  ruling.cueBall.evidence = {};
  ruling.points.evidence = {};
  if (ruling.result) ruling.result->evidence = {};
  ruling.questions.clear();
  ruling.unseen.clear();
  return ruling;
}

}  // namespace

bool sameConsequences(const Ruling& a, const Ruling& b) {
  return consequences(a) == consequences(b);
}

std::string_view toText(OptionKind kind) {
  return wordOf(kOptionWords, kind);
}
std::string_view toText(SpotPlace place) {
  return wordOf(kSpotWords, place);
}
std::string_view toText(Racking racking) {
  return wordOf(kRackingWords, racking);
}
std::optional<OptionKind> optionKindFromText(std::string_view text) {
  return valueOf<OptionKind>(kOptionWords, text);
}
std::optional<SpotPlace> spotPlaceFromText(std::string_view text) {
  return valueOf<SpotPlace>(kSpotWords, text);
}
std::optional<Racking> rackingFromText(std::string_view text) {
  return valueOf<Racking>(kRackingWords, text);
}

}  // namespace ferrule
