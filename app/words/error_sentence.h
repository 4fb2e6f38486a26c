// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/base/error.h"

namespace ferrule {

/// One sentence in the user's language that names the file, says what happened and what to do.
[[nodiscard]] QString errorSentence(const Error& error);

}  // namespace ferrule
