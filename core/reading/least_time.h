// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

namespace ferrule {

/// The time in [low_s, high_s] with the least cost: a grid, then the neighbourhood of its best point, a few times over.
/// Finds the least dip of a cost with several as long as each is wider than a grid step (1/48 of the range); good to
/// 1/10^5 of the range.
[[nodiscard]] double leastTime_s(double low_s, double high_s, const std::function<double(double)>& cost);

}  // namespace ferrule
