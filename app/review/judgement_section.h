// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "app/words/numbers.h"
#include "core/planner/suggestion_text.h"
#include "core/table/shot.h"

/// The choice and the reasons of a miss, as the detail panel shows them.
namespace ferrule {

/// One row of the table that sets the suggested shot beside the taken one.
struct PlanRow {
  QString name;
  QString suggested;
  QString taken;
};

/// Shot, chance of the pot, of a foul, of the frame, aim, speed, tip point. Empty where no plan matches the taken shot.
[[nodiscard]] std::vector<PlanRow> planRows(const KeptSuggestion& kept, const Numbers& numbers);
/// What stands above the table: which shot was better and why, what choice and delivery cost; whether the player had
/// been shown the suggestion.
[[nodiscard]] QString choiceWords(const KeptSuggestion& kept, bool shown);

/// One part of the object ball's line error.
struct MissPart {
  QString name;
  ShownValue shown;
};

/// The parts in the order in which they act, the whole last; + is counter-clockwise seen from above.
[[nodiscard]] std::vector<MissPart> missParts(const MissAccount& account, const Numbers& numbers);

}  // namespace ferrule
