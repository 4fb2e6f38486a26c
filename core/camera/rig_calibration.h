// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/camera/rig.h"
#include "core/camera/tag_observation.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// What a rig's verdict can be; the last is stronger than the one before it.
inline constexpr const char* kFits = "fits";
inline constexpr const char* kTagsDisagree = "tags disagree";
inline constexpr const char* kNosesBent = "noses bent";

/// A tag averaged over several images of a film whose camera stands still.
struct AveragedTag {
  TagObservation tag;
  double scatter_px = 0.0;  ///< standard deviation of one corner coordinate from image to image
  int images = 0;           ///< how many images it was seen in

  bool operator==(const AveragedTag&) const = default;
};

/// Standard uncertainty of one coordinate of a tag's corner, px: finding it in the picture and measuring its place with
/// a rule together. onTable: the tag's corners in the table file.
[[nodiscard]] double cornerUncertainty_px(const AveragedTag& seen, const std::array<TablePoint3, 4>& onTable);

/// Everything a rig is made of, with the names that errors and the chain speak of.
struct RigEvidence {
  Lens lens;  ///< as calibrated
  LensUncertainty lensUncertainty;
  std::string lensSource;    ///< its file
  ImageSize filmSize;        ///< upright, after the film's rotation flag
  int filmRotation_deg = 0;  ///< clockwise turn that the reader applied
  std::string film;          ///< its name
  std::vector<AveragedTag> tags;
  std::string date;  ///< ISO 8601, of the film or of today
};

/// The lens as it applies to this film, and the corrections so far (rotation, image size, lens), without a pose.
/// Errors: ImageSizeMismatch.
[[nodiscard]] Result<Rig> rigWithoutPose(const RigEvidence& evidence);

/// A rig from the table's tags: pose by PnP refined on all corners at their heights.
///
/// Errors: ImageSizeMismatch; TagsTooFew (fewer than three of the table's tags);
/// TagsInconsistent, detail and numbers: "swapped" {id, id}, "turned" {id, degrees clockwise},
/// "misplaced" {id, distance in mm}, "no-pose" {}.
[[nodiscard]] Result<Rig> calibrateRig(const RigEvidence& evidence, const MeasuredTable& measured);

/// Puts the noses' straightness into a rig; the verdict becomes kNosesBent when they are bent more than a table's own
/// cushions, whatever the tags say: then the lens is another camera's, or was applied twice or not at all.
void addNoses(Rig& rig, std::vector<NoseStraightness> noses);

}  // namespace ferrule
