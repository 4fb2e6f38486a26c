// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/ball.h"

#include <charconv>

#include "core/base/contract.h"

namespace ferrule {

BallName::BallName(int number) : number_(number) {
  FERRULE_REQUIRE(number >= 0 && number < kCount);
}

std::string toText(BallName ball) {
  return ball.isCueBall() ? "cue" : std::to_string(ball.number());
}

std::optional<BallName> ballFromText(std::string_view text) {
  if (text == "cue") return kCueBall;
  int number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  if (number < 1 || number >= BallName::kCount) return std::nullopt;
  return BallName(number);
}

}  // namespace ferrule
