// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <optional>
#include <string_view>
#include <vector>

#include "core/camera/rig.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// Where the uncertainty of a ball's place comes from.
enum class ErrorComponent {
  Pose,            ///< tags found in the picture and measured with a rule
  Lens,            ///< the lens's own parameters, with what the pose makes of them
  TagHeight,       ///< all tags higher or lower than measured
  Finder,          ///< the ball's outline in the picture
  BallHeight,      ///< the ball's radius, and the bed's evenness
  RollingShutter,  ///< rows are read one after another, while the ball moves
};

/// "pose", "lens", "tag height", "finder", "ball height", "rolling shutter".
[[nodiscard]] std::string_view toText(ErrorComponent component);

/// Standard uncertainties that neither the rig nor the table file holds.
struct ErrorSources {
  double finder_px = 0.15;  ///< of an outline's centre, each axis; larger where a ball has the cloth's colour
  /// A rail read with a rule to half a millimetre, and tags that do not lie quite flat. Common practice, no source.
  double tagHeight_m = 0.0005;
  /// Balls are made to 0.127 mm of diameter, half-width, rectangular (world equipment specification, balls); beds are
  /// flat to 0.51 mm over their length (the same, bed): half of it rectangular.
  double ballHeight_m = 0.00016;
  double speed_mps = 0.0;     ///< of the ball; 0 at rest
  double readout_s = 0.0167;  ///< longest time from the first row to the last that is likely

  bool operator==(const ErrorSources&) const = default;
};

/// One independent cause at one standard deviation, and where it moves a ball.
struct ErrorEffect {
  ErrorComponent component = ErrorComponent::Pose;
  TableVector shift;    ///< m
  bool shared = false;  ///< the same cause moves all balls together; otherwise each ball has its own

  bool operator==(const ErrorEffect&) const = default;
};

/// One line of an uncertainty budget.
struct BudgetLine {
  ErrorComponent component = ErrorComponent::Pose;
  double uX_m = 0.0;
  double uY_m = 0.0;

  [[nodiscard]] double u_m() const;  ///< root of the sum of the squares of both axes
  bool operator==(const BudgetLine&) const = default;
};

/// The uncertainty of a ball's place at one point.
struct ErrorAt {
  TablePoint place;
  Eigen::Matrix2d covariance = Eigen::Matrix2d::Zero();  ///< of (x, y), m
  std::vector<BudgetLine> budget;                        ///< one a component, in their order

  /// Root of the sum of the squares of both axes: expected rms distance from the truth.
  [[nodiscard]] double u_m() const;
  /// The longer half-axis of the ellipse that holds the true place with 95 % probability.
  [[nodiscard]] double reach95_m() const;
  /// Whether the 95 % region about place holds a point.
  [[nodiscard]] bool holds95(TablePoint point) const;
};

/// The standard uncertainty of a ball's place over a whole table: each input quantity is moved by its standard
/// uncertainty, what that does to the rig is carried through (a changed lens makes another pose of the same tags), and
/// the effects add as independent ones. Assumes that effects are linear over one standard deviation.
/// Source: JCGM 100:2008, 5.1 and 5.2 (combination), JCGM 102:2011, 6.5.2 (elliptical region, k = 2.45 for 95 %).
class ErrorMap {
 public:
  ErrorMap(const Rig& rig, const MeasuredTable& measured, const ErrorSources& sources = {});

  /// Every cause's effect on a ball there; the same causes in the same order wherever it lies. Nothing where the rig
  /// sees nothing.
  [[nodiscard]] std::optional<std::vector<ErrorEffect>> effectsAt(TablePoint place) const;
  [[nodiscard]] std::optional<ErrorAt> at(TablePoint place) const;
  [[nodiscard]] double radius_m() const { return radius_m_; }

 private:
  struct Cause {
    ErrorComponent component;
    Rig rig;  ///< as it comes out one standard deviation off
  };
  Rig rig_;
  double radius_m_;
  ErrorSources sources_;
  std::vector<Cause> causes_;
};

}  // namespace ferrule
