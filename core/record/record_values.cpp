// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/record_values.h"

#include <algorithm>
#include <array>

namespace ferrule {

namespace {

constexpr std::array<std::string_view, 4> kHandedness{"unknown", "right", "left", "both"};
constexpr std::array<std::string_view, 7> kShotFields{"player",      "outcome",       "first_contact", "scratch",
                                                      "target_ball", "target_pocket", "ruling"};

template <class Enum, std::size_t N>
std::optional<Enum> fromText(const std::array<std::string_view, N>& texts, std::string_view text) {
  const auto* found = std::ranges::find(texts, text);
  if (found == texts.end()) return std::nullopt;
  return static_cast<Enum>(found - texts.begin());
}

}  // namespace

std::string_view toText(Handedness handedness) {
  return kHandedness[static_cast<std::size_t>(handedness)];
}
std::optional<Handedness> handednessFromText(std::string_view text) {
  return fromText<Handedness>(kHandedness, text);
}

std::string_view toText(ShotField field) {
  return kShotFields[static_cast<std::size_t>(field)];
}
std::optional<ShotField> shotFieldFromText(std::string_view text) {
  return fromText<ShotField>(kShotFields, text);
}

}  // namespace ferrule
