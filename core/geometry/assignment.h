// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <vector>

namespace ferrule {

/// The cheapest way to give each row at most one column of its own. costs: rows x columns, finite.
/// Returns each row's column, -1 where there are more rows than columns and the row goes without.
/// Ties are broken by the lower index. O(n^3). Source: Kuhn 1955, Munkres 1957, in the shortest-path form of Jonker and
/// Volgenant 1987.
[[nodiscard]] std::vector<int> assignCheapest(const Eigen::MatrixXd& costs);

}  // namespace ferrule
