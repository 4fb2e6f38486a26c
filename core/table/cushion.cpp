// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/cushion.h"

#include <algorithm>

namespace ferrule {

namespace {

constexpr std::array<std::string_view, 6> kTexts{"head", "foot", "left-head", "left-foot", "right-head", "right-foot"};

}  // namespace

std::string_view toText(CushionName cushion) {
  return kTexts[static_cast<std::size_t>(cushion)];
}

std::optional<CushionName> cushionFromText(std::string_view text) {
  const auto* found = std::ranges::find(kTexts, text);
  if (found == kTexts.end()) return std::nullopt;
  return static_cast<CushionName>(found - kTexts.begin());
}

}  // namespace ferrule
