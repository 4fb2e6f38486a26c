// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/camera/projector.h"
#include "core/camera/tag_observation.h"

namespace ferrule {

/// The picture of tags that is sent to the projector: {"projector_size": [w, h], "dictionary", "tags": [{"id",
/// "corners":
/// [[u, v] four times]}]}, pixel centres at whole numbers, corners top-left, top-right, bottom-right, bottom-left.
struct ProjectorGrid {
  ImageSize size;
  std::string dictionary;
  std::vector<TagObservation> tags;

  bool operator==(const ProjectorGrid&) const = default;
};

/// Errors: those of readTextFile(); FileMalformed, FieldMissing, FieldInvalid.
[[nodiscard]] Result<ProjectorGrid> readProjectorGrid(const std::string& path);
[[nodiscard]] Result<void> writeProjectorGrid(const std::string& path, const ProjectorGrid& grid);

/// "ferrule-projector/1" (DEVELOPERS.md, file formats). Errors as above.
[[nodiscard]] Result<Projector> readProjectorFile(const std::string& path);
[[nodiscard]] Result<void> writeProjectorFile(const std::string& path, const Projector& projector);

}  // namespace ferrule
