// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ferrule {

/// Half axes of the 95 % ellipse in standard deviations: the root of chi-squared with two degrees of freedom.
/// Source: NIST/SEMATECH e-handbook, table of chi-squared, 5.991.
inline constexpr double kEllipse95 = 2.4477;

}  // namespace ferrule
