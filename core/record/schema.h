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

/// "Frrl" in the file's header (PRAGMA application_id) tells a record from other programs' databases.
inline constexpr int kRecordApplicationId = 0x4672726c;

}  // namespace ferrule
