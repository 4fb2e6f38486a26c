// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

namespace ferrule {

/// How often a file holds these bytes; overlapping places count each. Nothing for a file that cannot be read. Empty
/// bytes are in no file.
[[nodiscard]] std::optional<long> timesInFile(const std::string& path, const std::string& bytes);

}  // namespace ferrule
