// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "core/geometry/intersections.h"

namespace ferrule {

/// The six cushions: the long rails are halved by the side pockets. A jaw counts as part of its cushion.
enum class CushionName { Head, Foot, LeftHead, LeftFoot, RightHead, RightFoot };

inline constexpr std::array kCushionNames{CushionName::Head,     CushionName::Foot,      CushionName::LeftHead,
                                          CushionName::LeftFoot, CushionName::RightHead, CushionName::RightFoot};

[[nodiscard]] std::string_view toText(CushionName cushion);
[[nodiscard]] std::optional<CushionName> cushionFromText(std::string_view text);

/// One cushion of one table.
struct Cushion {
  CushionName name = CushionName::Head;
  TableSegment nose;   ///< from nose point to nose point
  TableVector inward;  ///< unit vector from the nose onto the playing surface

  bool operator==(const Cushion&) const = default;
};

}  // namespace ferrule
