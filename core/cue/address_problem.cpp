// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/address_problem.h"

#include <cmath>
#include <utility>

namespace ferrule {

namespace {

constexpr int kGrowth = 3;
constexpr int kAbove = 4;
constexpr int kStretch = 5;
constexpr int kFirstTag = 6;
/// Beyond so many standard deviations a corner was misread and pulls no harder.
constexpr double kHuber = 3.0;
/// Behind the camera, or beyond the lens: far from any solution, and still finite.
constexpr double kUnseen = 1e3;
constexpr double kUsualElevation_rad = 0.1;

/// The square of what comes back is Huber's loss of the two residuals together.
Eigen::Vector2d robust(const Eigen::Vector2d& residual) {
  const double size = residual.norm();
  if (size <= kHuber) return residual;
  return residual * (std::sqrt(2.0 * kHuber * size - kHuber * kHuber) / size);
}

}  // namespace

AddressProblem::AddressProblem(const Rig& rig, const CueModel& model, std::vector<SeenCue> seen,
                               const Eigen::Vector3d& bridge, double aim_rad, std::vector<int> quarterTurns,
                               const AddressPriors& priors)
    : rig_(rig),
      model_(model),
      seen_(std::move(seen)),
      bridge_(bridge),
      aim_rad_(aim_rad),
      quarterTurns_(std::move(quarterTurns)),
      priors_(priors) {}

int AddressProblem::sharedCount() const {
  return kFirstTag + 2 * static_cast<int>(model_.tags()) + 1;
}

Eigen::VectorXd AddressProblem::sharedStart() const {
  Eigen::VectorXd shared = Eigen::VectorXd::Zero(sharedCount());
  shared.head<3>() = bridge_;
  return shared;
}

CuePose AddressProblem::poseOf(const PoseVector& vector) {
  return {vector[0], vector[1], vector[2], vector.tail<3>()};
}

AddressProblem::PoseVector AddressProblem::vectorOf(const CuePose& pose) {
  PoseVector vector;
  vector << pose.heading_rad, pose.elevation_rad, pose.roll_rad, pose.middle_m;
  return vector;
}

TagSlip AddressProblem::slipOf(std::size_t tag, const Eigen::VectorXd& shared) const {
  const int first = kFirstTag + 2 * static_cast<int>(tag);
  return {shared[first], shared[first + 1], shared[kAbove], shared[kGrowth], shared[kStretch]};
}

Eigen::VectorXd AddressProblem::residuals(std::size_t image, const PoseVector& vector, const Eigen::VectorXd& shared,
                                          bool alone) const {
  const SeenCue& seen = seen_[image];
  const CuePose pose = poseOf(vector);
  Eigen::VectorXd all(8 * static_cast<int>(seen.tags.size()) + 2 + (seen.pitch_rad ? 1 : 0) + (alone ? 0 : 2));
  int next = 0;
  for (const TagObservation& tag : seen.tags) {
    const std::size_t index = model_.indexOf(tag.id).value_or(0);
    const auto shown = model_.imageOf(rig_, pose, index, quarterTurns_[index], slipOf(index, shared));
    for (std::size_t i = 0; i < 4; ++i, next += 2) {
      if (!shown) {
        all.segment<2>(next).setConstant(kUnseen);
        continue;
      }
      const ImageVector miss = tag.corners[i] - (*shown)[i];
      all.segment<2>(next) = robust(Eigen::Vector2d(miss.x, miss.y) / priors_.corner_px);
    }
  }
  // All images of an address tell the same habit: together they may not count for more than one.
  const double together = alone ? 1.0 : std::sqrt(static_cast<double>(seen_.size()));
  all[next++] = pose.roll_rad / (priors_.roll_rad * together);
  all[next++] = (pose.elevation_rad - kUsualElevation_rad) / (priors_.elevation_rad * together);
  if (seen.pitch_rad) {
    const double u_rad = std::hypot(seen.pitch_rad->standardUncertainty, priors_.sensorWander_rad);
    all[next++] = (seen.pitch_rad->value - shared[biasIndex()] - pose.elevation_rad) / u_rad;
  }
  if (!alone) {
    const CueAxes axes = axesOf(pose);
    const Eigen::Vector3d off = shared.head<3>() - pose.middle_m;
    all[next++] = off.dot(axes.left) / priors_.bridgeGives_m;
    all[next++] = off.dot(axes.up) / priors_.bridgeGives_m;
  }
  return all;
}

Eigen::VectorXd AddressProblem::sharedResiduals(const Eigen::VectorXd& shared) const {
  Eigen::VectorXd all(sharedCount());
  const Eigen::Vector3d off = shared.head<3>() - bridge_;
  const double c = std::cos(aim_rad_);
  const double s = std::sin(aim_rad_);
  all[0] = (c * off.x() + s * off.y()) / priors_.bridgeDistance_m;
  all[1] = (c * off.y() - s * off.x()) / priors_.bridgeDistance_m;
  all[2] = off.z() / (model_.cue().bridgeHeight_m ? priors_.bridgeHeight_m : priors_.bridgeUnknown_m);
  all[kGrowth] = shared[kGrowth] / priors_.growth_px;
  all[kStretch] = shared[kStretch] / priors_.growth_px;
  all[kAbove] = shared[kAbove] / priors_.tagAbove_m;
  for (int tag = 0; tag < static_cast<int>(model_.tags()); ++tag) {
    all[kFirstTag + 2 * tag] = shared[kFirstTag + 2 * tag] / priors_.tagAlong_m;
    all[kFirstTag + 2 * tag + 1] = shared[kFirstTag + 2 * tag + 1] / priors_.tagTwist_rad;
  }
  all[biasIndex()] = shared[biasIndex()] / priors_.sensorBias_rad;
  return all;
}

std::vector<double> AddressProblem::cornerMisses_px(std::size_t image, const PoseVector& vector,
                                                    const Eigen::VectorXd& shared) const {
  std::vector<double> misses;
  const CuePose pose = poseOf(vector);
  for (const TagObservation& tag : seen_[image].tags) {
    const std::size_t index = model_.indexOf(tag.id).value_or(0);
    const auto shown = model_.imageOf(rig_, pose, index, quarterTurns_[index], slipOf(index, shared));
    for (std::size_t i = 0; shown && i < 4; ++i) {
      misses.push_back(tag.corners[i].x - (*shown)[i].x);
      misses.push_back(tag.corners[i].y - (*shown)[i].y);
    }
  }
  return misses;
}

}  // namespace ferrule
