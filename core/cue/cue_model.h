// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>
#include <optional>
#include <vector>

#include "core/camera/rig.h"
#include "core/table/measured_cue.h"

namespace ferrule {

/// Where a cue is: its axis in the table frame, and how it is turned about it.
struct CuePose {
  double heading_rad = 0.0;                            ///< the way the tip points, seen from above
  double elevation_rad = 0.0;                          ///< butt up
  double roll_rad = 0.0;                               ///< about the axis, + clockwise as the player sees it
  Eigen::Vector3d middle_m = Eigen::Vector3d::Zero();  ///< the axis' point at CueModel::middleFromTip_m

  bool operator==(const CuePose&) const = default;
};

/// The directions of a cue, unit vectors of the table frame.
struct CueAxes {
  Eigen::Vector3d forward;  ///< from butt to tip
  Eigen::Vector3d up;       ///< at right angles to the axis, in the upright plane through it
  Eigen::Vector3d left;     ///< level
};
[[nodiscard]] CueAxes axesOf(const CuePose& pose);

/// What may be wrong with what an owner measured, and with how a camera shows a black square; 0 as measured.
struct TagSlip {
  double along_m = 0.0;     ///< towards the tip
  double twist_rad = 0.0;   ///< stuck on crookedly
  double above_m = 0.0;     ///< farther from the axis
  double growth_px = 0.0;   ///< each side of the square seems moved outwards by so much
  double stretch_px = 0.0;  ///< those that cross the axis by so much more
};

/// The tags of a measured cue in the cue's own frame.
class CueModel {
 public:
  explicit CueModel(const MeasuredCue& cue);

  [[nodiscard]] std::size_t tags() const { return cue_.tags.ids.size(); }
  /// The place of an id in the cue's list; nothing for a strange one.
  [[nodiscard]] std::optional<std::size_t> indexOf(int id) const;
  /// Middle of all tags, from the tip along the axis.
  [[nodiscard]] double middleFromTip_m() const { return middleFromTip_m_; }
  [[nodiscard]] const MeasuredCue& cue() const { return cue_; }

  /// Where a tag's corners show: top-left, top-right, bottom-right, bottom-left of a print whose upper edge is nearer
  /// to the tip, turned by quarterTurns clockwise as stuck on. Nothing behind the camera.
  [[nodiscard]] std::optional<std::array<ImagePoint, 4>> imageOf(const Rig& rig, const CuePose& pose, std::size_t tag,
                                                                 int quarterTurns, const TagSlip& slip = {}) const;
  /// Where the tip's end is.
  [[nodiscard]] Eigen::Vector3d tipOf(const CuePose& pose) const;

 private:
  MeasuredCue cue_;
  double middleFromTip_m_ = 0.0;
};

}  // namespace ferrule
