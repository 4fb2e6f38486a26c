// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/table_size.h"

#include <algorithm>
#include <array>

namespace ferrule {

namespace {

constexpr std::string_view kWorld = "world standardized table and equipment specifications, playing surface";
constexpr std::string_view kTrade = "public copies of older United States equipment specifications; trade practice";

constexpr std::array kSizes{
    TableSize{"9ft", 2.5400, 1.2700, 0.003175, kWorld},
    TableSize{"8ft-tournament", 2.3368, 1.1684, 0.003175, kWorld},
    TableSize{"8ft", 2.2352, 1.1176, 0.003175, kTrade},
    TableSize{"7ft-large", 1.9812, 0.9906, 0.0, kTrade},
    TableSize{"7ft", 1.9304, 0.9652, 0.0, kTrade},
};

}  // namespace

std::span<const TableSize> tableSizes() {
  return kSizes;
}

std::optional<TableSize> tableSizeNamed(std::string_view name) {
  const auto* found = std::ranges::find(kSizes, name, &TableSize::name);
  if (found == kSizes.end()) return std::nullopt;
  return *found;
}

}  // namespace ferrule
