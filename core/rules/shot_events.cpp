// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/shot_events.h"

#include "core/base/word_list.h"

namespace ferrule {

namespace {

constexpr WordList<2> kSeatWords{"first", "second"};
constexpr WordList<18> kFoulWords{
    "scratch",      "wrong-ball-first", "no-contact", "no-rail",       "no-foot",         "ball-off-table",
    "touched-ball", "double-hit",       "push-shot",  "balls-moving",  "bad-placement",   "bad-play-from-behind",
    "cue-on-table", "out-of-turn",      "slow-play",  "rack-template", "unsportsmanlike", "break-requirement"};
constexpr WordList<21> kDoubtWords{
    "split-hit",    "near-rail",       "pocket-unsure",  "ball-lost",    "jumped-back",      "moved-by-hand",
    "small-gap",    "frozen-to-rail",  "name-unsure",    "balls-moving", "placement",        "target-at-string",
    "unfinished",   "call-unknown",    "groups-unknown", "past-string",  "push-out-unknown", "warned",
    "balls-differ", "not-spelled-out", "frame-over"};

}  // namespace

const std::vector<FoulKind>& foulsUnseenFromAbove() {
  static const std::vector<FoulKind> kUnseen{FoulKind::NoFoot,       FoulKind::TouchedBall,    FoulKind::DoubleHit,
                                             FoulKind::PushShot,     FoulKind::CueOnTable,     FoulKind::SlowPlay,
                                             FoulKind::RackTemplate, FoulKind::Unsportsmanlike};
  return kUnseen;
}

std::string_view toText(FoulKind kind) {
  return wordOf(kFoulWords, kind);
}
std::string_view toText(DoubtKind kind) {
  return wordOf(kDoubtWords, kind);
}
std::string_view toText(Seat seat) {
  return wordOf(kSeatWords, seat);
}
std::optional<FoulKind> foulKindFromText(std::string_view text) {
  return valueOf<FoulKind>(kFoulWords, text);
}
std::optional<DoubtKind> doubtKindFromText(std::string_view text) {
  return valueOf<DoubtKind>(kDoubtWords, text);
}
std::optional<Seat> seatFromText(std::string_view text) {
  return valueOf<Seat>(kSeatWords, text);
}

}  // namespace ferrule
