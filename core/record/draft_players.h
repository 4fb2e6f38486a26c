// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/ids.h"

namespace ferrule {

/// Whether a draft of the record lists this player, by its number or by exactly this name, in any "players" list of its
/// JSON. What cannot be read is searched for the name as plain text.
[[nodiscard]] bool draftKnows(const std::string& content, PlayerId player, const std::string& name);

}  // namespace ferrule
