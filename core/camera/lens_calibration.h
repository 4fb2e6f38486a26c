// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/base/progress.h"
#include "core/camera/board.h"
#include "core/camera/lens.h"
#include "core/camera/lens_uncertainty.h"

namespace ferrule {

/// How one still agrees with the lens.
struct ViewReport {
  std::string still;
  double rms_px = 0.0;
  int corners = 0;   ///< used
  int dropped = 0;   ///< corners that lie too far off
  bool used = true;  ///< false: the whole still was left out

  bool operator==(const ViewReport&) const = default;
};

/// One calibrated number with its standard uncertainty.
struct LensParameter {
  std::string name;  ///< "fx", "fy", "cx", "cy" (px), then the coefficients' names
  double value = 0.0;
  double u = 0.0;

  bool operator==(const LensParameter&) const = default;
};

/// How well a kind of lens foretells stills that it was not fitted to.
struct ShapeScore {
  std::string name;          ///< "brown4" is Brown5 with k3 held at zero
  double heldOut_px = 0.0;   ///< rms over the held-out stills
  double training_px = 0.0;  ///< rms over the stills it was fitted to
  std::string refused;       ///< why it was not considered: "", "no-fit", "folds"

  bool operator==(const ShapeScore&) const = default;
};

/// Where on the picture the board's corners were: counts in equal cells.
struct Coverage {
  static constexpr int kColumns = 8;
  static constexpr int kRows = 6;
  std::array<int, static_cast<std::size_t>(kColumns) * kRows> corners{};  ///< row by row from the top left
  /// Distance from the picture's centre to the furthest corner, as a share of half the picture's diagonal.
  double reach = 0.0;

  [[nodiscard]] double share() const;  ///< of the cells that hold at least one corner
  bool operator==(const Coverage&) const = default;
};

struct LensCalibration {
  Lens lens;
  std::vector<LensParameter> parameters;
  LensUncertainty uncertainty;
  std::vector<ViewReport> views;
  std::vector<ShapeScore> shapes;
  Coverage coverage;
  std::vector<BoardView> usedViews;  ///< with the dropped corners taken out

  bool operator==(const LensCalibration&) const = default;
};

/// A lens from stills of a board. The shape of the lens is the simplest that foretells held-out stills as well as the
/// best one does, and is single-valued out to the picture's corners.
///
/// Errors: ImageSizesMixed; ViewsTooFew; CoverageOneSided (detail: "whole", "left", "right", "top" or "bottom";
/// numbers: covered share, share needed); LensNotUsable (detail: "no-fit", "folds"); Cancelled.
[[nodiscard]] Result<LensCalibration> calibrateLens(const Board& board, std::vector<BoardView> views,
                                                    const JobControl& job = {});

/// Where the corners of views fall on a picture of this size.
[[nodiscard]] Coverage coverageOf(std::span<const BoardView> views, ImageSize size);

/// Whether every pixel out to the picture's edge has one ray.
[[nodiscard]] bool coversItsPicture(const Lens& lens);

/// The content of a lens file with its report.
[[nodiscard]] std::string lensText(const LensCalibration& calibration);

}  // namespace ferrule
