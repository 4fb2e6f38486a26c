// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/error.h"

namespace ferrule {

/// Makes an empty file that only its owner can read and write. A file that is there stays as it is.
/// Errors: FileNotWritable.
[[nodiscard]] Result<void> makeOwnerFile(const std::string& path);

/// Whether this process may write the file (with its effective user).
[[nodiscard]] bool mayWrite(const std::string& path);

/// A record that may only be read, in a folder where no log can be made beside it.
[[nodiscard]] bool lastsUnchanged(const std::string& path);

}  // namespace ferrule
