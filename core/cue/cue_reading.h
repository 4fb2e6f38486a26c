// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/table/shot.h"

namespace ferrule {

/// What the cue's line was read from.
enum class CueSource {
  Tags,   ///< printed tags on the cue
  Shaft,  ///< the shaft's own edges over the cloth: its line alone
};

/// What came of a pitch sensor's log.
enum class LogUse {
  None,     ///< there was none
  Used,     ///< as it is
  Shifted,  ///< used after its clock was set by the cue's own movements
  Gap,      ///< no lines before this strike
  NoMatch,  ///< another clock than the film's, and nothing told which
};

/// The cue's axis at one time before the strike.
struct CueAt {
  double time_s = 0.0;  ///< of the film
  Measured aim_rad;
  std::optional<Measured> elevation_rad;

  bool operator==(const CueAt&) const = default;
};

/// How well the camera sees the cue's tags.
struct TagsSeen {
  double module_px = 0.0;              ///< one square of the print, the middle one of all sightings
  double readShare = 0.0;              ///< of the tags in the images of the address
  std::optional<double> sideNeeded_m;  ///< black side with which this camera would read them; nothing: large enough

  bool operator==(const TagsSeen&) const = default;
};

/// The cue before and at one strike. What was not seen is absent.
struct CueReading {
  CueSource source = CueSource::Tags;
  int images = 0;                         ///< that the values come from
  std::optional<Measured> aim_rad;        ///< where the cue pointed just before the strike
  std::optional<Measured> elevation_rad;  ///< butt up
  /// Where the cue's axis, drawn on, passes the ball's centre: at right angles to the axis, + right as the player sees
  /// it and + above; in ball radii it is the tip point of `Delivery`.
  std::optional<Measured> tipSide_m;
  std::optional<Measured> tipHeight_m;
  double ballRadius_m = 0.0;
  std::optional<Measured> steadiness_rad;  ///< standard deviation of the aim over the last second before the strike
  std::optional<Measured> tipSpeed_mps;    ///< when it reached the ball
  /// Less the cue ball's way after the strike: what squirt and the stroke made of the aim. + the ball went to the right
  /// of it.
  std::optional<Measured> aimBeforeMinusAfter_rad;
  LogUse log = LogUse::None;
  double logMinusFilm_s = 0.0;             ///< with LogUse::Shifted
  std::optional<Measured> sensorBias_rad;  ///< what the sensor said too much
  std::optional<TagsSeen> tags;
  std::vector<CueAt> course;  ///< in time order, until the strike

  bool operator==(const CueReading&) const = default;
};

/// "tags", "shaft".
[[nodiscard]] std::string_view toText(CueSource source);
[[nodiscard]] std::optional<CueSource> cueSourceFromText(std::string_view text);
/// "none", "used", "shifted", "gap", "no-match".
[[nodiscard]] std::string_view toText(LogUse use);
[[nodiscard]] std::optional<LogUse> logUseFromText(std::string_view text);

}  // namespace ferrule
