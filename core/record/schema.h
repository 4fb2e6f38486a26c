// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

namespace ferrule {

/// One step of the schema: the statements that bring a record from version - 1 to version, in order. A step that was
/// published is never changed; a further step is added.
struct Migration {
  int version = 0;
  std::span<const char* const> statements;
};

/// All steps, from an empty file (version 0) to kRecordVersion.
[[nodiscard]] std::span<const Migration> migrations();

/// Takes out of a suggestion's content the figures that statistics ask for, which would otherwise read every content
/// anew: from the plan that was taken its chance, its leave and its next ball; what was asked, where the plan had been
/// shown and was played; and the best chance of a direct pot among the plans, 0 where there is none. Of all rows, or of
/// those that a condition after it names. Part of version 7: a change of it needs a step of its own.
/// Fields: core/planner/suggestion_text.h.
[[nodiscard]] const char* suggestionFigures();

/// "Frrl" in the file's header (PRAGMA application_id) tells a record from other programs' databases.
inline constexpr int kRecordApplicationId = 0x4672726c;

}  // namespace ferrule
