// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ferrule::bench {

/// Fits fingerprints to small sets of simulated shots on tables with planted coefficients and prints how many of the 95
/// % intervals hold what was planted, how wide they are, and how often a coefficient counts as determined.
void printFingerprints(int sets);

}  // namespace ferrule::bench
