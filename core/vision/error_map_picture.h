// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <string>

#include "core/base/error.h"
#include "core/camera/error_map.h"
#include "core/table/table.h"

namespace ferrule {

/// The table from above, head to the left, coloured by how far a ball may lie from where it is said to be (95 %), with
/// the millimetres written in, a scale, and the budget at the middle and at the worst place. 8-bit BGR.
[[nodiscard]] cv::Mat errorMapPicture(const ErrorMap& map, const Table& table);

/// The same as a PNG file. Errors: FileNotWritable.
[[nodiscard]] Result<void> writeErrorMapPicture(const std::string& path, const ErrorMap& map, const Table& table);

}  // namespace ferrule
