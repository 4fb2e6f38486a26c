// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/error.h"
#include "core/camera/rig.h"

namespace ferrule {

/// Rig files, "ferrule-rig/1": JSON with the whole lens, the pose (translation in mm), its covariance (rad and m), the
/// chain of corrections in order, the residuals and the verdict. A rig file needs no other file.
/// Errors: FileMissing, FileEmpty, FileUnreadable, FileMalformed, FieldMissing, FieldInvalid, CorrectionTwice.
[[nodiscard]] Result<Rig> readRigFile(const std::string& path);
/// A rig file's content; name stands for the file in errors.
[[nodiscard]] Result<Rig> parseRig(const std::string& text, const std::string& name);
[[nodiscard]] std::string rigText(const Rig& rig);
/// Errors: FileNotWritable.
[[nodiscard]] Result<void> writeRigFile(const std::string& path, const Rig& rig);

}  // namespace ferrule
