// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/table_size.h"

#include <algorithm>
#include <array>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr std::string_view kWorld = "world standardized table and equipment specifications, playing surface";
constexpr std::string_view kTrade = "public copies of older United States equipment specifications; trade practice";

constexpr double kTolerance_m = metresFromMillimetres(3.175);

constexpr std::array kSizes{
    TableSize{"9ft", metresFromMillimetres(2540.0), metresFromMillimetres(1270.0), kTolerance_m, kWorld},
    TableSize{"8ft-tournament", metresFromMillimetres(2336.8), metresFromMillimetres(1168.4), kTolerance_m, kWorld},
    TableSize{"8ft", metresFromMillimetres(2235.2), metresFromMillimetres(1117.6), kTolerance_m, kTrade},
    TableSize{"7ft-large", metresFromMillimetres(1981.2), metresFromMillimetres(990.6), 0.0, kTrade},
    TableSize{"7ft", metresFromMillimetres(1930.4), metresFromMillimetres(965.2), 0.0, kTrade},
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
