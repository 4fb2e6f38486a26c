// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <functional>
#include <optional>
#include <vector>

#include "core/camera/check_evidence.h"
#include "core/camera/rig.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// What a film could show: a camera, where it sits, and the table below it.
struct Setting {
  Lens lens;
  CameraFromTable pose;
  MeasuredTable measured;
  /// How far further inward than the file says all noses are seen: the light's doing, one value for the table.
  double noseBias_m = 0.0;
  /// How much higher than the noses the sights lie, and the rims of the pockets that are seen.
  double sightsHigher_m = 0.0;
  double pocketsHigher_m = 0.0;

  /// Where marks of a kind are seen, above the cloth.
  [[nodiscard]] double markHeight_m(MarkKind kind) const {
    return measured.table.noseHeight_m + (kind == MarkKind::Sight ? sightsHigher_m : pocketsHigher_m);
  }

  [[nodiscard]] Rig rig() const;
};

/// How a film's evidence agrees with settings, each part weighed by what it can be trusted to. Everything is judged in
/// units of standard deviations, so that the sum of squares compares settings by their likelihood.
///
/// A line's places scatter by themselves, and together they may stand off or turn a little: cushions are glued by hand
/// and table files are read from a rule (JCGM 100:2008, 4.3.7). A ball's outline may be read too large or too small by
/// one share for all balls. Sights stand off along their rail together and each by itself, and across it all together
/// besides; of a pocket only the place square to its axis tells much.
class EvidenceFit {
 public:
  /// measured: for the table's rough scale only.
  EvidenceFit(const CheckEvidence& evidence, const MeasuredTable& measured);

  /// Whitened residuals; the same length for every setting. What the setting's lens cannot reach counts as a gross
  /// error.
  [[nodiscard]] Eigen::VectorXd residuals(const Setting& setting) const;
  [[nodiscard]] Eigen::Index size() const { return size_; }

 private:
  struct Line {
    const LineTrace* trace = nullptr;
    Eigen::MatrixXd whitening;
  };
  /// Residuals of the marks: first along the direction that is sure of each, then square to it.
  void weighMarks(const MeasuredTable& measured, double perPixel_m);

  const CheckEvidence* evidence_;
  std::vector<Line> lines_;
  Eigen::MatrixXd markWhitening_;
  Eigen::MatrixXd ballWhitening_;
  Eigen::Index size_ = 0;
};

/// The signed distance (m, + inward) of each place of a trace from where the table has the line, and where along the
/// line it is seen. Nothing for a place that the lens does not reach.
struct PlaceOnLine {
  double along_m = 0.0;
  double inward_m = 0.0;
};
[[nodiscard]] std::vector<std::optional<PlaceOnLine>> placesOnLine(const LineTrace& trace, const Rig& rig,
                                                                   const Table& table);

/// How far from its place a mark at a height is seen, m: (along what is sure of it, square to that by a quarter turn
/// counter-clockwise). Nothing where the lens does not reach.
[[nodiscard]] std::optional<TableVector> missOfMark(const MarkSighting& seen, const Rig& rig, const Table& table,
                                                    double height_m);

/// Nonlinear least squares.
struct LeastSquares {
  Eigen::VectorXd parameters;
  double sumOfSquares = 0.0;
  Eigen::MatrixXd covariance;  ///< of the parameters, for residuals of unit deviation; empty when singular
};
/// residuals: of parameters whose natural steps are about 1e-6 (rad, m, shares). Source: Moré 1978 (MINPACK), in Eigen.
[[nodiscard]] LeastSquares leastSquares(const std::function<Eigen::VectorXd(const Eigen::VectorXd&)>& residuals,
                                        const Eigen::VectorXd& start);

}  // namespace ferrule
