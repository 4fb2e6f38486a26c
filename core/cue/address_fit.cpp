// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/address_fit.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/vision/outliers.h"

namespace ferrule {

namespace {

using PoseVector = AddressProblem::PoseVector;
constexpr int kPose = AddressProblem::kPose;
/// Steps for derivatives: far below what a picture shows, far above rounding.
constexpr std::array<double, kPose> kPoseSteps{1e-5, 1e-5, 1e-5, 1e-5, 1e-5, 1e-5};
constexpr double kSharedStep = 1e-5;
constexpr int kMostSteps = 60;
constexpr int kMostLoneSteps = 60;
constexpr double kSettled = 1e-7;  ///< relative fall of the sum of squares
constexpr double kFirstDamping = 1e-3;
constexpr double kMostDamping = 1e8;
constexpr int kNoiseRounds = 3;
constexpr double kLeastNoise_px = 0.02;
constexpr double kMostNoise_px = 1.0;
/// What one image decides by itself: heading and place; its height and elevation come from all images together.
constexpr double kOwnUnknowns = 5.0;

Eigen::MatrixXd poseDerivative(const AddressProblem& problem, std::size_t image, const PoseVector& pose,
                               const Eigen::VectorXd& shared, bool alone, Eigen::Index rows) {
  Eigen::MatrixXd derivative(rows, kPose);
  for (int i = 0; i < kPose; ++i) {
    const double step = kPoseSteps[static_cast<std::size_t>(i)];
    PoseVector more = pose;
    PoseVector less = pose;
    more[i] += step;
    less[i] -= step;
    derivative.col(i) =
        (problem.residuals(image, more, shared, alone) - problem.residuals(image, less, shared, alone)) / (2.0 * step);
  }
  return derivative;
}

Eigen::MatrixXd sharedDerivative(const AddressProblem& problem, std::size_t image, const PoseVector& pose,
                                 const Eigen::VectorXd& shared, Eigen::Index rows) {
  Eigen::MatrixXd derivative(rows, shared.size());
  for (Eigen::Index i = 0; i < shared.size(); ++i) {
    Eigen::VectorXd more = shared;
    Eigen::VectorXd less = shared;
    more[i] += kSharedStep;
    less[i] -= kSharedStep;
    derivative.col(i) = (problem.residuals(image, pose, more, false) - problem.residuals(image, pose, less, false)) /
                        (2.0 * kSharedStep);
  }
  return derivative;
}

/// The normal equations, arrow-shaped: poses meet one another only in what they share.
struct Arrow {
  std::vector<Eigen::Matrix<double, kPose, kPose>> own;
  std::vector<Eigen::MatrixXd> joint;
  std::vector<PoseVector> pull;
  Eigen::MatrixXd shared;
  Eigen::VectorXd sharedPull;
  double squares = 0.0;
};

double squaresOf(const AddressProblem& problem, const std::vector<PoseVector>& poses, const Eigen::VectorXd& shared) {
  double sum = problem.sharedResiduals(shared).squaredNorm();
  for (std::size_t i = 0; i < poses.size(); ++i)
    sum += problem.residuals(i, poses[i], shared, false).squaredNorm();
  return sum;
}

Arrow linearised(const AddressProblem& problem, const std::vector<PoseVector>& poses, const Eigen::VectorXd& shared) {
  Arrow arrow;
  const Eigen::VectorXd known = problem.sharedResiduals(shared);
  Eigen::MatrixXd knownDerivative(known.size(), shared.size());
  for (Eigen::Index i = 0; i < shared.size(); ++i) {
    Eigen::VectorXd more = shared;
    more[i] += kSharedStep;
    knownDerivative.col(i) = (problem.sharedResiduals(more) - known) / kSharedStep;
  }
  arrow.shared = knownDerivative.transpose() * knownDerivative;
  arrow.sharedPull = -knownDerivative.transpose() * known;
  arrow.squares = known.squaredNorm();
  for (std::size_t i = 0; i < poses.size(); ++i) {
    const Eigen::VectorXd misses = problem.residuals(i, poses[i], shared, false);
    const Eigen::MatrixXd byPose = poseDerivative(problem, i, poses[i], shared, false, misses.size());
    const Eigen::MatrixXd byShared = sharedDerivative(problem, i, poses[i], shared, misses.size());
    arrow.own.emplace_back(byPose.transpose() * byPose);
    arrow.joint.emplace_back(byPose.transpose() * byShared);
    arrow.pull.emplace_back(-byPose.transpose() * misses);
    arrow.shared += byShared.transpose() * byShared;
    arrow.sharedPull -= byShared.transpose() * misses;
    arrow.squares += misses.squaredNorm();
  }
  return arrow;
}

}  // namespace

LonePose poseAlone(const AddressProblem& problem, std::size_t image, const CuePose& start) {
  const Eigen::VectorXd shared = problem.sharedStart();
  PoseVector pose = AddressProblem::vectorOf(start);
  Eigen::VectorXd misses = problem.residuals(image, pose, shared, true);
  double damping = kFirstDamping;
  for (int step = 0; step < kMostLoneSteps && damping < kMostDamping; ++step) {
    const Eigen::MatrixXd derivative = poseDerivative(problem, image, pose, shared, true, misses.size());
    Eigen::Matrix<double, kPose, kPose> normal = derivative.transpose() * derivative;
    normal.diagonal() *= 1.0 + damping;
    const PoseVector next = pose - PoseVector(normal.ldlt().solve(derivative.transpose() * misses));
    const Eigen::VectorXd nextMisses = problem.residuals(image, next, shared, true);
    if (!(nextMisses.squaredNorm() < misses.squaredNorm())) {
      damping *= 10.0;
      continue;
    }
    const bool settled = misses.squaredNorm() - nextMisses.squaredNorm() < kSettled * misses.squaredNorm();
    pose = next;
    misses = nextMisses;
    damping *= 0.1;
    if (settled) break;
  }
  return {AddressProblem::poseOf(pose), misses.squaredNorm()};
}

AddressFit::AddressFit(AddressProblem problem, const std::vector<CuePose>& starts) : problem_(std::move(problem)) {
  for (const CuePose& start : starts)
    poses_.push_back(AddressProblem::vectorOf(start));
  shared_ = problem_.sharedStart();
  for (int round = 0; round < kNoiseRounds; ++round) {
    converged_ = refine();
    std::vector<double> misses;
    for (std::size_t i = 0; i < poses_.size(); ++i) {
      for (const double miss : problem_.cornerMisses_px(i, poses_[i], shared_))
        misses.push_back(std::abs(miss));
    }
    if (misses.empty()) break;
    const auto all = static_cast<double>(misses.size());
    const double free = std::max(0.2 * all, all - kOwnUnknowns * static_cast<double>(poses_.size()));
    noise_px_ = std::clamp(kDeviationFromMedian * median(std::move(misses)) * std::sqrt(all / free), kLeastNoise_px,
                           kMostNoise_px);
    problem_.setCornerNoise(noise_px_);
  }
  converged_ = refine() && converged_;
}

bool AddressFit::refine() {
  double damping = kFirstDamping;
  bool settled = false;
  Arrow arrow = linearised(problem_, poses_, shared_);
  for (int step = 0; step < kMostSteps && damping < kMostDamping && !settled; ++step) {
    // Source: Schur's complement; Triggs, McLauchlan, Hartley and Fitzgibbon 2000, section 6.1.
    Eigen::MatrixXd reduced = arrow.shared;
    reduced.diagonal() *= 1.0 + damping;
    Eigen::VectorXd pull = arrow.sharedPull;
    std::vector<PoseMatrix> inverses;
    for (std::size_t i = 0; i < poses_.size(); ++i) {
      PoseMatrix own = arrow.own[i];
      own.diagonal() *= 1.0 + damping;
      inverses.emplace_back(own.inverse());
      reduced -= arrow.joint[i].transpose() * inverses[i] * arrow.joint[i];
      pull -= arrow.joint[i].transpose() * inverses[i] * arrow.pull[i];
    }
    const Eigen::VectorXd sharedStep = reduced.ldlt().solve(pull);
    std::vector<PoseVector> poses = poses_;
    for (std::size_t i = 0; i < poses.size(); ++i)
      poses[i] += inverses[i] * (arrow.pull[i] - arrow.joint[i] * sharedStep);
    const Eigen::VectorXd shared = shared_ + sharedStep;
    const double squares = squaresOf(problem_, poses, shared);
    if (!(squares < arrow.squares)) {
      // At the bottom rounding decides.
      settled = squares - arrow.squares < kSettled * arrow.squares;
      damping *= 10.0;
      continue;
    }
    settled = arrow.squares - squares < kSettled * arrow.squares;
    poses_ = std::move(poses);
    shared_ = shared;
    damping *= 0.1;
    arrow = linearised(problem_, poses_, shared_);
  }
  Eigen::MatrixXd reduced = arrow.shared;
  own_.clear();
  for (std::size_t i = 0; i < poses_.size(); ++i) {
    own_.emplace_back(arrow.own[i].inverse());
    reduced -= arrow.joint[i].transpose() * own_[i] * arrow.joint[i];
  }
  joint_ = std::move(arrow.joint);
  sharedCovariance_ = reduced.inverse();
  return settled && sharedCovariance_.allFinite();
}

namespace {

PoseVector gradientOf(const PoseVector& pose, const std::function<double(const CuePose&)>& quantity) {
  PoseVector gradient;
  for (int i = 0; i < kPose; ++i) {
    const double step = kPoseSteps[static_cast<std::size_t>(i)];
    PoseVector more = pose;
    PoseVector less = pose;
    more[i] += step;
    less[i] -= step;
    gradient[i] = (quantity(AddressProblem::poseOf(more)) - quantity(AddressProblem::poseOf(less))) / (2.0 * step);
  }
  return gradient;
}

}  // namespace

Measured AddressFit::sum(std::span<const double> weights, const std::function<double(const CuePose&)>& quantity) const {
  double value = 0.0;
  double variance = 0.0;
  Eigen::VectorXd shared = Eigen::VectorXd::Zero(shared_.size());
  for (std::size_t i = 0; i < poses_.size(); ++i) {
    if (weights[i] == 0.0) continue;
    value += weights[i] * quantity(pose(i));
    const PoseVector gradient = weights[i] * gradientOf(poses_[i], quantity);
    variance += gradient.dot(own_[i] * gradient);
    shared -= joint_[i].transpose() * (own_[i] * gradient);
  }
  variance += shared.dot(sharedCovariance_ * shared);
  return {value, std::sqrt(std::max(0.0, variance))};
}

Measured AddressFit::at(std::size_t image, const std::function<double(const CuePose&)>& quantity) const {
  std::vector<double> weights(poses_.size(), 0.0);
  weights[image] = 1.0;
  return sum(weights, quantity);
}

double AddressFit::ownNoise(std::size_t image, const std::function<double(const CuePose&)>& quantity) const {
  const PoseVector gradient = gradientOf(poses_[image], quantity);
  return std::sqrt(std::max(0.0, gradient.dot(own_[image] * gradient)));
}

Measured AddressFit::sensorBias_rad() const {
  const int index = problem_.biasIndex();
  return {shared_[index], std::sqrt(sharedCovariance_(index, index))};
}

}  // namespace ferrule
