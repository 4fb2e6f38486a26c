// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/table/shot.h"

namespace ferrule {

/// One line of a sensor's log.
struct PitchSample {
  double time_s = 0.0;     ///< by the log's own clock
  double pitch_rad = 0.0;  ///< butt up, with the sensor's constant error

  bool operator==(const PitchSample&) const = default;
};

/// A time without a line in the log.
struct LogGap {
  double from_s = 0.0;
  double until_s = 0.0;

  bool operator==(const LogGap&) const = default;
};

/// What a pitch sensor on a cue wrote down.
struct PitchLog {
  std::vector<PitchSample> samples;  ///< in time order, two at least
  double step_s = 0.0;               ///< from line to line, the middle one
  double noise_rad = 0.0;            ///< standard deviation of one line, from the lines themselves
  std::vector<LogGap> gaps;          ///< longer than kGapSteps steps and kLeastGap_s

  static constexpr double kGapSteps = 5.0;
  static constexpr double kLeastGap_s = 0.1;

  bool operator==(const PitchLog&) const = default;
};

/// Reads a log: CSV with a header that has the columns time_s and pitch_deg; other columns are skipped. Errors:
/// FileMissing, FileEmpty (also a header alone), FileUnreadable, FieldMissing (detail: the column), FileMalformed
/// (detail: the line, and "time_s" where time does not rise there), FieldInvalid (pitch_deg beyond a right angle).
[[nodiscard]] Result<PitchLog> readPitchLog(const std::string& path);
/// The same of a text; name stands for the file in errors.
[[nodiscard]] Result<PitchLog> parsePitchLog(const std::string& text, const std::string& name);

/// The pitch at a time of the log: a straight line through its nearest samples. Nothing outside the log, and in a gap.
[[nodiscard]] std::optional<Measured> pitchAt(const PitchLog& log, double time_s);

}  // namespace ferrule
