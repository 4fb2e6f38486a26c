// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ferrule {

/// One field by RFC 4180: quoted when it holds a comma, a quote or a line's end.
[[nodiscard]] std::string csvField(const std::string& value);

}  // namespace ferrule
