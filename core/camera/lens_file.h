// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/error.h"
#include "core/camera/lens.h"

namespace ferrule {

/// Lens files, "ferrule-lens/1": JSON with camera, image_size, model, focal_px, centre_px, coefficients by name, date,
/// board, rms_px. Further fields are the report of the calibration and are not read back.
/// Errors: FileMissing, FileEmpty, FileUnreadable, FileMalformed, FieldMissing, FieldInvalid, LensNotUsable.
[[nodiscard]] Result<Lens> readLensFile(const std::string& path);
/// A lens file's content; name stands for the file in errors.
[[nodiscard]] Result<Lens> parseLens(const std::string& text, const std::string& name);
/// The content of a lens file without a report.
[[nodiscard]] std::string lensText(const Lens& lens);

}  // namespace ferrule
