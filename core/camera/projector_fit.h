// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/base/error.h"
#include "core/camera/projector.h"

namespace ferrule {

/// One corner of a projected tag: which pixel was sent, and where on the cloth its light was seen.
struct ProjectedCorner {
  int tag = 0;
  ImagePoint pixel;
  TablePoint place;

  bool operator==(const ProjectedCorner&) const = default;
};

/// The least tags on the cloth that a calibration needs, and how far over the table they must reach.
inline constexpr int kLeastProjectedTags = 6;

/// Fits where the projector's light falls. Whether the projector's lens bends is decided by held-out tags, not by the
/// fit's own error. Robust against single corners that lie on something.
///
/// name stands for the picture in errors. Errors: TagsTooFew (numbers: tags on the cloth, tags needed),
/// TagsInconsistent (detail "projected"; numbers: rms in mm): the corners do not come from one projector on a flat
/// cloth.
[[nodiscard]] Result<Projector> fitProjector(ImageSize size, std::span<const ProjectedCorner> corners,
                                             const std::string& name);

}  // namespace ferrule
