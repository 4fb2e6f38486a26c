// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/base/error.h"

namespace ferrule {

/// A whole file. Errors: FileMissing, FileEmpty, FileUnreadable.
[[nodiscard]] Result<std::string> readTextFile(const std::string& path);
/// Writes beside the target and renames, so that a failure leaves the old file whole. Errors: FileNotWritable.
[[nodiscard]] Result<void> writeTextFile(const std::string& path, std::string_view content);

}  // namespace ferrule
