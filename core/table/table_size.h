// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace ferrule {

/// A playing surface as it is sold, cushion nose to cushion nose.
struct TableSize {
  std::string_view name;  ///< the word used in files and on the command line
  double length_m = 0.0;
  double width_m = 0.0;
  double tolerance_m = 0.0;  ///< 0: none published
  std::string_view source;
};

/// All known sizes, largest first.
[[nodiscard]] std::span<const TableSize> tableSizes();
[[nodiscard]] std::optional<TableSize> tableSizeNamed(std::string_view name);

}  // namespace ferrule
