// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/error.h"
#include "core/camera/lens.h"

namespace ferrule {

/// ImageSizeMismatch: what has images of one size where another is needed. needs: the lens or rig that asks for it.
[[nodiscard]] inline Error imageSizeMismatch(const std::string& what, ImageSize size, const std::string& needs,
                                             ImageSize needed) {
  return {ErrorCode::ImageSizeMismatch,
          what,
          needs,
          {static_cast<double>(size.width), static_cast<double>(size.height), static_cast<double>(needed.width),
           static_cast<double>(needed.height)}};
}

}  // namespace ferrule
