// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/pocket_entry.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

double pocketEntry_rad(const Pocket& pocket, TablePoint from) {
  return std::acos(std::clamp(dot(unit(pocket.mouth - from), pocket.inward), -1.0, 1.0));
}

}  // namespace ferrule
