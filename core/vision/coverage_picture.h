// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/error.h"
#include "core/camera/lens_calibration.h"

namespace ferrule {

/// Draws where the board's corners fell on the picture, cell by cell, and writes it. Cells without a corner are
/// hatched, so that the gaps show without colour. Errors: FileNotWritable.
[[nodiscard]] Result<void> writeCoveragePicture(const std::string& path, const LensCalibration& calibration);

}  // namespace ferrule
