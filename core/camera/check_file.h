// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/camera/self_check.h"

namespace ferrule {

/// What a check was about, for its file.
struct CheckNames {
  std::string film;
  std::string rig;
  std::string table;
};

/// The content of a check file, "ferrule-check/1": JSON with the verdict, its confidence and cost, the findings in mm
/// and every hypothesis with its misfit and probability. Written, never read back.
[[nodiscard]] std::string checkText(const SelfCheck& check, const CheckNames& names);

}  // namespace ferrule
