// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/shot.h"

#include "core/base/word_list.h"

namespace ferrule {

namespace {

constexpr WordList<4> kEventKinds{"ball", "cushion", "pocket", "off-table"};
constexpr WordList<6> kOutcomes{"pot", "miss", "safety", "scratch", "foul", "break"};
constexpr WordList<2> kMissSides{"over", "under"};
constexpr WordList<6> kNotShown{"not-followed", "not-fitted",     "no-cushion-no-curve",
                                "too-faint",    "slide-not-seen", "no-hop-no-curve"};
constexpr WordList<9> kFlags{"cut-off-at-start", "cut-off-at-end", "next-strike-came", "picked-up",    "moved-by-hand",
                             "identity-lost",    "lost-from-view", "split-hit",        "unsure-pocket"};
constexpr WordList<3> kVerdicts{"certain", "proposed", "ask"};

}  // namespace

std::string_view toText(EventKind kind) {
  return wordOf(kEventKinds, kind);
}
std::string_view toText(Outcome outcome) {
  return wordOf(kOutcomes, outcome);
}
std::string_view toText(MissSide side) {
  return wordOf(kMissSides, side);
}
std::string_view toText(NotShown reason) {
  return wordOf(kNotShown, reason);
}
std::string_view toText(ShotFlag flag) {
  return wordOf(kFlags, flag);
}
std::string_view toText(Verdict verdict) {
  return wordOf(kVerdicts, verdict);
}
std::optional<EventKind> eventKindFromText(std::string_view text) {
  return valueOf<EventKind>(kEventKinds, text);
}
std::optional<Outcome> outcomeFromText(std::string_view text) {
  return valueOf<Outcome>(kOutcomes, text);
}
std::optional<MissSide> missSideFromText(std::string_view text) {
  return valueOf<MissSide>(kMissSides, text);
}
std::optional<Verdict> verdictFromText(std::string_view text) {
  return valueOf<Verdict>(kVerdicts, text);
}

}  // namespace ferrule
