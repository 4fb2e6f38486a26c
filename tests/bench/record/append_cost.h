// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ferrule::bench {

/// Appends shots to a record in a folder, and beside each inserts a blob of the same length into a bare database with
/// the same guarantee (write-ahead log, synchronous FULL, one transaction each), turn by turn in one run. Prints the
/// median and mean of both, the bytes of a shot and the ratio.
void printAppendCost(const std::string& folder, int shots);

}  // namespace ferrule::bench
