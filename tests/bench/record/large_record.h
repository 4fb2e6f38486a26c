// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ferrule::bench {

/// Makes a record of many shots: sessions of ten frames of ten.
void fillLargeRecord(const std::string& path, int shots);

/// Makes such a record unless the file is there, and prints how long opening
/// it, listing it and reading one shot take. fillFolder: where it is filled before it is moved to path; a folder in
/// memory makes that quick.
void printLargeRecord(const std::string& path, const std::string& fillFolder, int shots);

}  // namespace ferrule::bench
