// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/table/shot.h"

namespace ferrule {

/// What a shot should have been: a drill's figure, a called shot, or the command to a device that strikes. What was not
/// asked is absent.
struct AskedStrike {
  std::optional<double> aim_rad;    ///< the cue ball's direction, as Delivery::aim_rad
  std::optional<double> speed_mps;  ///< just after the strike
  std::optional<double> side;       ///< tip point, ball radii
  std::optional<double> height;     ///< tip point, ball radii
  std::optional<double> elevation_rad;

  bool operator==(const AskedStrike&) const = default;
};

/// One shot with what was asked of it.
struct AskedShot {
  AskedStrike asked;
  Delivery delivered;
};

/// How one quantity came out against what was asked: delivered = offset + scale asked, as far as the limit.
struct AskedFit {
  int shots = 0;                  ///< that had both
  Measured offset;                ///< in the quantity's unit, at what was asked on average
  double offsetAt = 0.0;          ///< the average that was asked
  std::optional<Measured> scale;  ///< absent when what was asked hardly varied
  /// Beyond this size more was asked and not delivered; absent unless the shots show it.
  std::optional<Measured> limit;
  Measured scatter;  ///< standard deviation of single shots around this, without the film's own uncertainty
};

/// All quantities that at least kFewestAsked shots had.
struct AskedDelivered {
  std::optional<AskedFit> aim_rad;
  std::optional<AskedFit> speed_mps;
  std::optional<AskedFit> side;
  std::optional<AskedFit> height;
  std::optional<AskedFit> elevation_rad;
};

inline constexpr int kFewestAsked = 4;
/// Chi-square by which a limit must fit better: 1 in 500 for one more number. Source: chi-square distribution.
inline constexpr double kLimitGain = 9.5;

/// Offset, scale, limit and scatter of each quantity over a list of shots, with standard uncertainties.
///
/// Weighted least squares of a straight line, each shot weighted by its own uncertainty and the scatter together (found
/// by iteration). A limit is told when a line that is cut off at it fits better by kLimitGain in chi-square, with at
/// least two shots beyond it: that is what a device's stop, or a player's fear of a miscue, looks like.
[[nodiscard]] AskedDelivered askedDelivered(std::span<const AskedShot> shots);

/// A line of a list of commands.
struct AskedLine {
  int shot = 0;  ///< the shot's number in its film, from 1
  AskedStrike asked;

  bool operator==(const AskedLine&) const = default;
};

/// One line a shot with a header: shot,aim_deg,speed_m_s,side,height,elevation_deg. Columns may be missing or empty,
/// and stand in any order; others are skipped. Lines without a shot number count on from the one before. As
/// core/base/csv.h reads it, so with semicolons and decimal commas too. name: the file, for errors. Errors:
/// FileMalformed (detail: the line), FieldMissing (no column that is known).
[[nodiscard]] Result<std::vector<AskedLine>> parseAskedCsv(const std::string& text, const std::string& name);

}  // namespace ferrule
