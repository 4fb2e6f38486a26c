// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "core/base/error.h"

namespace ferrule {

/// More than any file of ours holds; a larger one is somebody's mistake and would only fill the memory.
inline constexpr std::size_t kLargestTextFile_bytes = std::size_t{1} << 30;

/// A whole file. Errors: FileMissing, FileEmpty, FileUnreadable (also for a folder and for a file larger than
/// most_bytes).
[[nodiscard]] Result<std::string> readTextFile(const std::string& path,
                                               std::size_t most_bytes = kLargestTextFile_bytes);

/// Writes beside the target, flushes to the disk and renames, so that a failure or a power cut leaves the old file or
/// the new one whole. A link is followed; what is no plain file (a pipe, /dev/stdout) is written straight to.
/// Errors: FileNotWritable.
[[nodiscard]] Result<void> writeTextFile(const std::string& path, std::string_view content);

}  // namespace ferrule
