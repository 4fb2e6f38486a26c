// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/match.h"

#include "core/base/word_list.h"

namespace ferrule {

namespace {

constexpr WordList<3> kBreakWords{"alternate", "winner", "loser"};

}  // namespace

Match::Match(const MatchTerms& terms) : terms_(terms) {
  frames_.emplace_back(newFrame(terms_.rules, terms_.firstBreak, terms_.lines));
}

std::array<int, 2> Match::score() const {
  std::array<int, 2> won{};
  for (const FrameLog& frame : frames_) {
    if (const auto& result = frame.state().result) ++won.at(indexOf(result->winner));
  }
  return won;
}

std::optional<Seat> Match::winner() const {
  if (terms_.raceTo <= 0) return std::nullopt;
  const auto won = score();
  for (const Seat seat : {Seat::First, Seat::Second}) {
    if (won.at(indexOf(seat)) >= terms_.raceTo) return seat;
  }
  return std::nullopt;
}

Seat Match::nextBreaker() const {
  const GameState& last = frames_.back().state();
  if (!last.result) return last.breaker;
  switch (terms_.breaks) {
    case BreakOrder::Winner:
      return last.result->winner;
    case BreakOrder::Loser:
      return otherSeat(last.result->winner);
    case BreakOrder::Alternate:
      break;
  }
  return otherSeat(last.breaker);
}

void Match::nextFrame() {
  frames_.emplace_back(newFrame(terms_.rules, nextBreaker(), terms_.lines));
}

void Match::nextFrame(GameState start) {
  frames_.emplace_back(std::move(start));
}

std::string_view toText(BreakOrder order) {
  return wordOf(kBreakWords, order);
}
std::optional<BreakOrder> breakOrderFromText(std::string_view text) {
  return valueOf<BreakOrder>(kBreakWords, text);
}

}  // namespace ferrule
