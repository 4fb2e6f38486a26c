// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/error.h"
#include "core/camera/lens.h"

namespace ferrule {

/// The same glass at another image size of the same aspect: the whole picture shrunk or enlarged. A difference of one
/// pixel is taken for rounding. Pixel centres are integers, so the centre moves as (c + 1/2) s - 1/2.
/// Errors: ImageSizeMismatch (subject: film, detail: lensName) for another aspect, where part of the sensor was cut
/// off.
[[nodiscard]] Result<Lens> scaledLens(const Lens& lens, ImageSize size, const std::string& film,
                                      const std::string& lensName);

/// The lens of a picture that was turned clockwise by 0, 90, 180 or 270 degrees.
[[nodiscard]] Lens turnedLens(const Lens& lens, int clockwise_deg);

}  // namespace ferrule
