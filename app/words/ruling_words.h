// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <span>

#include "core/rules/ruling.h"

/// The pieces of a ruling in the user's language.
namespace ferrule {

/// Who sits where.
struct SeatNames {
  QString first;   ///< empty: "the first player"
  QString second;  ///< empty: "the second player"

  [[nodiscard]] QString of(Seat seat) const;
};

/// The fouls that a person calls without more being said, the usual ones first.
[[nodiscard]] std::span<const FoulKind> calledFouls();
/// "the 10 was met first".
[[nodiscard]] QString foulWords(FoulKind kind, std::optional<BallName> ball);
/// A question to a person: "Which ball was met first, the 2 or the 10?"
[[nodiscard]] QString questionWords(const Doubt& doubt);
/// "to play from here", "to have Ada break again".
[[nodiscard]] QString optionWords(const Option& option, const Ruling& ruling, const SeatNames& names);
/// Why a frame was won: "the 8 was potted as called".
[[nodiscard]] QString winWords(WinReason reason);
/// "solids", "stripes".
[[nodiscard]] QString groupWords(Group group);
/// "in hand behind the head string"; empty where the cue ball stays as it lies.
[[nodiscard]] QString cueBallWords(CueBallPlace place);
/// "world rules 2016, 3.8(b)", or "house rule".
[[nodiscard]] QString ruleNumberWords(const RuleNumber& rule);

}  // namespace ferrule
