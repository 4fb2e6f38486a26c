// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <functional>
#include <span>
#include <vector>

#include "core/cue/address_problem.h"

namespace ferrule {

/// A cue followed through an address: one pose an image, what they share, and how sure all of it is.
class AddressFit {
 public:
  /// starts: one for each image of the problem. The corners' noise is taken from their own misses.
  AddressFit(AddressProblem problem, const std::vector<CuePose>& starts);

  [[nodiscard]] bool converged() const { return converged_; }
  [[nodiscard]] double cornerNoise_px() const { return noise_px_; }
  [[nodiscard]] const std::vector<SeenCue>& seen() const { return problem_.seen(); }
  [[nodiscard]] CuePose pose(std::size_t image) const { return AddressProblem::poseOf(poses_[image]); }
  [[nodiscard]] const Eigen::VectorXd& shared() const { return shared_; }

  /// A weighted sum of a quantity over images, with its standard uncertainty from corners, sensor, bridge and what was
  /// measured with a rule. weights: one for each image, most of them 0.
  [[nodiscard]] Measured sum(std::span<const double> weights,
                             const std::function<double(const CuePose&)>& quantity) const;
  /// The quantity in one image.
  [[nodiscard]] Measured at(std::size_t image, const std::function<double(const CuePose&)>& quantity) const;
  /// How far the quantity's uncertainty in one image is the image's own, not shared by all.
  [[nodiscard]] double ownNoise(std::size_t image, const std::function<double(const CuePose&)>& quantity) const;
  /// What the sensor says too much.
  [[nodiscard]] Measured sensorBias_rad() const;

 private:
  using PoseVector = AddressProblem::PoseVector;
  using PoseMatrix = Eigen::Matrix<double, AddressProblem::kPose, AddressProblem::kPose>;

  bool refine();

  AddressProblem problem_;
  std::vector<PoseVector> poses_;
  Eigen::VectorXd shared_;
  std::vector<PoseMatrix> own_;         ///< inverse of each pose's normal matrix
  std::vector<Eigen::MatrixXd> joint_;  ///< normal matrix between pose and shared
  Eigen::MatrixXd sharedCovariance_;
  double noise_px_ = 0.0;
  bool converged_ = false;
};

/// One image by itself, without the bridge: the pose nearest to a start, and the sum of its squared residuals.
struct LonePose {
  CuePose pose;
  double squares = 0.0;
};
[[nodiscard]] LonePose poseAlone(const AddressProblem& problem, std::size_t image, const CuePose& start);

}  // namespace ferrule
