// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <functional>
#include <optional>
#include <vector>

#include "core/camera/evidence_fit.h"
#include "core/camera/self_check.h"

namespace ferrule {

/// One way in which a film, a rig and a table file may not belong together.
struct Hypothesis {
  RigFault fault = RigFault::None;
  std::vector<int> tags;
  bool poseFree = true;
  /// Standard deviations of the further unknowns about 0, before the film was seen.
  std::vector<double> priors;
  /// Puts the further unknowns into a setting.
  std::function<void(Setting&, const Eigen::VectorXd&)> apply;
  std::vector<Setting> starts;
  /// The further unknowns are only what the rig itself says it does not know exactly: they cost nothing.
  bool unknownsAreKnown = false;
};

/// All that are worth trying for this rig and table. tagsGross: also swapped and turned tags.
[[nodiscard]] std::vector<Hypothesis> hypothesesFor(const Rig& rig, const MeasuredTable& measured,
                                                    const CheckEvidence& evidence, bool tagsGross);

/// A hypothesis with its unknowns fitted.
struct FittedHypothesis {
  Setting setting;
  Eigen::VectorXd further;  ///< the further unknowns
  double sumOfSquares = 0.0;
  int parameters = 0;
  /// Of (the noses' bias, the pose's rotation vector in the camera frame and translation_m if free, the further
  /// unknowns); empty when the evidence leaves one of them open.
  Eigen::MatrixXd covariance;
};
[[nodiscard]] FittedHypothesis fitted(const Hypothesis& hypothesis, const EvidenceFit& evidence);

/// Changes a Brown lens by (logarithm of the focal length, centre right and down in picture widths, k1, k2, k3).
void changeLens(Setting& setting, const Eigen::VectorXd& by);

/// The principal axes of a covariance, each as long as its standard deviation; those of no length are left out.
[[nodiscard]] std::vector<Eigen::VectorXd> principalAxes(const Eigen::MatrixXd& covariance);

/// Whether a lens bends lines by more than a tenth of a pixel anywhere in its picture.
[[nodiscard]] bool bends(const Lens& lens);

}  // namespace ferrule
