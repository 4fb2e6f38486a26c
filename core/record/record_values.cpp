// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/record_values.h"

#include "core/base/word_list.h"

namespace ferrule {

namespace {

constexpr WordList<4> kHandedness{"unknown", "right", "left", "both"};
constexpr WordList<4> kSessionKinds{"unknown", "practice", "match", "lesson"};
constexpr WordList<16> kShotFields{"player", "outcome", "first_contact", "scratch",     "target_ball", "target_pocket",
                                   "ruling", "reading", "ball_names",    "ball_before", "ball_after",  "times",
                                   "split",  "joined",  "placement",     "suggestion"};

}  // namespace

std::string_view toText(Handedness handedness) {
  return wordOf(kHandedness, handedness);
}
std::optional<Handedness> handednessFromText(std::string_view text) {
  return valueOf<Handedness>(kHandedness, text);
}

std::string_view toText(SessionKind kind) {
  return wordOf(kSessionKinds, kind);
}
std::optional<SessionKind> sessionKindFromText(std::string_view text) {
  return valueOf<SessionKind>(kSessionKinds, text);
}

std::string_view toText(ShotField field) {
  return wordOf(kShotFields, field);
}
std::optional<ShotField> shotFieldFromText(std::string_view text) {
  return valueOf<ShotField>(kShotFields, text);
}

}  // namespace ferrule
