// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/plan.h"

#include "core/base/word_list.h"

namespace ferrule {

namespace {

constexpr WordList<7> kKindWords{"direct", "combination", "carom", "bank", "kick", "safety", "break"};

}  // namespace

std::string_view toText(PlanKind kind) {
  return wordOf(kKindWords, kind);
}

std::optional<PlanKind> planKindFromText(std::string_view text) {
  return valueOf<PlanKind>(kKindWords, text);
}

}  // namespace ferrule
