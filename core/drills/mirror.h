// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "core/drills/drill.h"

namespace ferrule {

/// Which mirror image of a drill is played: every drill goes to both sides, most to both ends.
struct Mirroring {
  bool sides = false;  ///< left and right exchanged
  bool ends = false;   ///< head and foot exchanged

  bool operator==(const Mirroring&) const = default;
};

/// Places, cushions, pockets and the side of the tip point; mirrored twice it is the same drill again. ends only of a
/// drill that turns round.
[[nodiscard]] Drill mirrored(const Drill& drill, Mirroring mirroring);

/// The words of files: "", "sides", "ends", "both".
[[nodiscard]] std::string_view toText(Mirroring mirroring);
[[nodiscard]] std::optional<Mirroring> mirroringFromText(std::string_view text);

}  // namespace ferrule
