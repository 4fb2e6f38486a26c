// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/camera/rig.h"
#include "core/table/measured_table.h"
#include "core/table/shot.h"
#include "core/table/track.h"

namespace ferrule::bench {

/// What the product made of one film, and what it took.
struct Analysis {
  std::vector<ImageReading> readings;
  std::vector<ShotReading> shots;
  double analysis_s = 0.0;  ///< wall time from opening the film to the last shot
  double decode_s = 0.0;    ///< wall time of reading the same film to its end and doing nothing with it
  double analysisWork_s = 0.0;  ///< processor time of all threads for the same
  double decodeWork_s = 0.0;    ///< processor time of all threads for the same
  long images = 0;
  double peakMemory_MB = 0.0;  ///< resident, while analysing
};

/// Reads the film to its end, then analyses it. Errors: as FilmSource::open.
[[nodiscard]] Result<Analysis> analyse(const std::string& film, const Rig& rig, const MeasuredTable& measured);

}  // namespace ferrule::bench
