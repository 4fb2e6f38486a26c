// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/cushion.h"

#include "core/base/word_list.h"

namespace ferrule {

namespace {

constexpr WordList<6> kTexts{"head", "foot", "left-head", "left-foot", "right-head", "right-foot"};

}  // namespace

std::string_view toText(CushionName cushion) {
  return wordOf(kTexts, cushion);
}

std::optional<CushionName> cushionFromText(std::string_view text) {
  return valueOf<CushionName>(kTexts, text);
}

}  // namespace ferrule
