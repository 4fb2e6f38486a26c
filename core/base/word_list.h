// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

namespace ferrule {

/// The words of an enum's values, in their order.
template <std::size_t N>
using WordList = std::array<std::string_view, N>;

template <class Enum, std::size_t N>
[[nodiscard]] std::string_view wordOf(const WordList<N>& words, Enum value) {
  return words.at(static_cast<std::size_t>(value));
}

/// Nothing for a word that is not in the list.
template <class Enum, std::size_t N>
[[nodiscard]] std::optional<Enum> valueOf(const WordList<N>& words, std::string_view word) {
  const auto* found = std::ranges::find(words, word);
  if (found == words.end()) return std::nullopt;
  return static_cast<Enum>(found - words.begin());
}

}  // namespace ferrule
