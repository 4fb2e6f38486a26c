// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/shot.h"

#include <algorithm>
#include <array>

namespace ferrule {

namespace {

constexpr std::array<std::string_view, 4> kEventKinds{"ball", "cushion", "pocket", "off-table"};
constexpr std::array<std::string_view, 6> kOutcomes{"pot", "miss", "safety", "scratch", "foul", "break"};
constexpr std::array<std::string_view, 2> kMissSides{"over", "under"};
constexpr std::array<std::string_view, 3> kVerdicts{"certain", "proposed", "ask"};

template <class Enum, std::size_t N>
std::optional<Enum> fromText(const std::array<std::string_view, N>& texts, std::string_view text) {
  const auto* found = std::ranges::find(texts, text);
  if (found == texts.end()) return std::nullopt;
  return static_cast<Enum>(found - texts.begin());
}

}  // namespace

std::string_view toText(EventKind kind) {
  return kEventKinds[static_cast<std::size_t>(kind)];
}
std::string_view toText(Outcome outcome) {
  return kOutcomes[static_cast<std::size_t>(outcome)];
}
std::string_view toText(MissSide side) {
  return kMissSides[static_cast<std::size_t>(side)];
}
std::string_view toText(Verdict verdict) {
  return kVerdicts[static_cast<std::size_t>(verdict)];
}
std::optional<EventKind> eventKindFromText(std::string_view text) {
  return fromText<EventKind>(kEventKinds, text);
}
std::optional<Outcome> outcomeFromText(std::string_view text) {
  return fromText<Outcome>(kOutcomes, text);
}
std::optional<MissSide> missSideFromText(std::string_view text) {
  return fromText<MissSide>(kMissSides, text);
}
std::optional<Verdict> verdictFromText(std::string_view text) {
  return fromText<Verdict>(kVerdicts, text);
}

}  // namespace ferrule
