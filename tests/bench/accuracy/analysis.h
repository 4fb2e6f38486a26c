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

/// What a piece of work took.
struct Cost {
  double wall_s = 0.0;
  double work_s = 0.0;  ///< processor time of all threads
};

/// What the product made of one film, and what it took from opening the film to the last shot.
struct Analysis {
  std::vector<ImageReading> readings;
  std::vector<ShotReading> shots;
  Cost cost;
  double peakMemory_MB = 0.0;  ///< resident, while analysing
};

/// The whole of a film. Errors: as FilmSource::open.
[[nodiscard]] Result<Analysis> analyse(const std::string& film, const Rig& rig, const MeasuredTable& measured);

/// What reading a film to its end takes, doing nothing with it. Errors: as FilmSource::open.
[[nodiscard]] Result<Cost> decodingCost(const std::string& film);

}  // namespace ferrule::bench
