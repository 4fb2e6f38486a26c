// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/cue_reading.h"

#include "core/base/word_list.h"

namespace ferrule {

namespace {

constexpr WordList<2> kSources{"tags", "shaft"};
constexpr WordList<5> kUses{"none", "used", "shifted", "gap", "no-match"};

}  // namespace

std::string_view toText(CueSource source) {
  return wordOf(kSources, source);
}
std::string_view toText(LogUse use) {
  return wordOf(kUses, use);
}
std::optional<CueSource> cueSourceFromText(std::string_view text) {
  return valueOf<CueSource>(kSources, text);
}
std::optional<LogUse> logUseFromText(std::string_view text) {
  return valueOf<LogUse>(kUses, text);
}

}  // namespace ferrule
