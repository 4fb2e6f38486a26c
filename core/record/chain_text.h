// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/camera/correction_chain.h"

namespace ferrule {

/// The chain as a JSON array of {"kind", "source", "purpose", "date"}, in the order of its application.
[[nodiscard]] std::string chainText(const CorrectionChain& chain);

}  // namespace ferrule
