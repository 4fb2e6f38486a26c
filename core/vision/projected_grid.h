// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/camera/projector_file.h"
#include "core/camera/projector_fit.h"
#include "core/camera/rig.h"
#include "core/table/table.h"

namespace ferrule {

/// Where the corners of a projected grid fall on the cloth, as the camera sees them. Corners that fall on a rail or
/// into a pocket's mouth are left out: the light goes deeper or higher there.
///
/// picture: of the camera, 8-bit BGR or grey, the grid sent to the projector and the table empty. dark: the same with
/// black sent, to take the room's light out; may be empty. name stands for the picture in errors.
/// Errors: ImageSizeMismatch (the rig is of another size), FieldInvalid (subject: gridName; detail: dictionary),
/// TagsInconsistent (detail "projected-twice"; numbers: the tag): two projectors throw a grid; ImageMirrored: the
/// projector mirrors its picture; TagsTooFew (detail "projected").
[[nodiscard]] Result<std::vector<ProjectedCorner>> findProjectedGrid(const cv::Mat& picture, const cv::Mat& dark,
                                                                     const ProjectorGrid& grid, const Rig& rig,
                                                                     const Table& table, const std::string& name,
                                                                     const std::string& gridName);

}  // namespace ferrule
