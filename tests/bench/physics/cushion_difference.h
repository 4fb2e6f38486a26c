// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ferrule::bench {

/// Prints how far the fast cushion model lies from the integrated one over angle, spin and speed, with the same
/// coefficients.
void printCushionDifference();

}  // namespace ferrule::bench
