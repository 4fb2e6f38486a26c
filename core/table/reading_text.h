// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/table/shot.h"

namespace ferrule {

/// A reading whole, as a correction keeps what stood before and what stands after it: one JSON object in metres,
/// radians and seconds, every digit, so that what comes back is what went in. The number is left out: it is the
/// shot's, not the reading's.
[[nodiscard]] std::string readingText(const ShotReading& reading);
/// Nothing for anything that readingText() did not write. number: of the shot.
[[nodiscard]] std::optional<ShotReading> readingFromText(std::string_view text, int number);

}  // namespace ferrule
