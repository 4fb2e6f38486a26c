// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "core/camera/rig.h"
#include "core/camera/tag_observation.h"
#include "core/cue/cue_model.h"
#include "core/table/shot.h"

namespace ferrule {

/// The cue in one image: the tags that were read and what a sensor said then, in the film's time.
struct SeenCue {
  double time_s = 0.0;
  std::vector<TagObservation> tags;
  std::optional<Measured> pitch_rad;  ///< with the sensor's constant error
};

/// How much a player's address and an owner's measuring leave open, as standard deviations.
struct AddressPriors {
  double corner_px = 0.1;  ///< of a corner's coordinate, before the corners themselves tell
  /// The bridge is a hand: it gives a little, and a shaft that tapers lifts the axis as it slides. From memory.
  double bridgeGives_m = 0.0010;
  double bridgeHeight_m = 0.0005;  ///< a rule read to half a millimetre
  double bridgeUnknown_m = 0.020;  ///< where nobody measured it
  /// From ball to bridge 150 to 250 mm are usual. Common practice, no source.
  double bridgeDistance_m = 0.060;
  double tagAlong_m = 0.0004;  ///< a rule read to half a millimetre
  double tagAbove_m = 0.0005;
  double tagTwist_rad = 0.035;  ///< stuck on by eye
  double growth_px = 0.05;      ///< a square's sides seem farther out, or in: blur, sharpening, compression
  double sensorBias_rad = 0.1;
  double sensorWander_rad = 0.0005;  ///< of a constant error that is not quite constant
  double roll_rad = 0.2;             ///< tags up, by eye
  double elevation_rad = 0.2;
};

/// Unknowns that all images of one address share, in this order: the bridge's point (x, y, z), the growth of the
/// squares, the tags' height above the axis, how much more the squares seem grown along the cue; then along and twist
/// of each tag; then the sensor's constant error.
class AddressProblem {
 public:
  static constexpr int kPose = 6;  ///< heading, elevation, roll, middle
  using PoseVector = Eigen::Matrix<double, kPose, 1>;

  /// seen: images with at least one tag of the model. bridge: where the bridge may be, at its measured height. aim_rad:
  /// about the way the cue points. quarterTurns: one for each tag.
  AddressProblem(const Rig& rig, const CueModel& model, std::vector<SeenCue> seen, const Eigen::Vector3d& bridge,
                 double aim_rad, std::vector<int> quarterTurns, const AddressPriors& priors);

  [[nodiscard]] const std::vector<SeenCue>& seen() const { return seen_; }
  [[nodiscard]] int sharedCount() const;
  [[nodiscard]] Eigen::VectorXd sharedStart() const;
  [[nodiscard]] int biasIndex() const { return sharedCount() - 1; }

  /// Residuals of one image over their standard deviations, robust (square roots of Huber's loss): corners, then what
  /// is known of a cue's turn, then the sensor, then the axis passing the bridge. alone: without the last one.
  /// Source: Huber, Ann. Math. Stat. 35 (1964) 73.
  [[nodiscard]] Eigen::VectorXd residuals(std::size_t image, const PoseVector& pose, const Eigen::VectorXd& shared,
                                          bool alone) const;
  /// What was measured or is usual, over its standard deviation.
  [[nodiscard]] Eigen::VectorXd sharedResiduals(const Eigen::VectorXd& shared) const;
  /// Of the corners, px, without any weight.
  [[nodiscard]] std::vector<double> cornerMisses_px(std::size_t image, const PoseVector& pose,
                                                    const Eigen::VectorXd& shared) const;
  void setCornerNoise(double corner_px) { priors_.corner_px = corner_px; }

  [[nodiscard]] static CuePose poseOf(const PoseVector& vector);
  [[nodiscard]] static PoseVector vectorOf(const CuePose& pose);

 private:
  [[nodiscard]] TagSlip slipOf(std::size_t tag, const Eigen::VectorXd& shared) const;

  Rig rig_;
  CueModel model_;
  std::vector<SeenCue> seen_;
  Eigen::Vector3d bridge_;
  double aim_rad_;
  std::vector<int> quarterTurns_;
  AddressPriors priors_;
};

}  // namespace ferrule
