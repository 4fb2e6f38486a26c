// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "tests/bench/accuracy/analysis.h"
#include "tests/bench/accuracy/image_comparison.h"
#include "tests/bench/accuracy/shot_comparison.h"

namespace ferrule::bench {

/// Everything that one film (or all of them together) scored.
struct ClipScore {
  std::string name;
  ImageScore images;
  ShotScore shots;
  Cost analysis;
  Cost decoding;
  long imageCount = 0;
  double peakMemory_MB = 0.0;

  void add(const ClipScore& other);
};

/// Errors of the shots for which it is known what their film leaves at best, with that.
struct FlooredErrors {
  std::vector<double> errors;
  std::vector<double> floors;
};

/// What a group of simulated shots scored.
struct SimulatedScore {
  std::string name;
  ShotScore shots;
  std::vector<double> fit_s;  ///< processor time of reading each shot
  FlooredErrors aim_rad;
  FlooredErrors speed;   ///< relative
  FlooredErrors side;    ///< in ball radii, where shown
  FlooredErrors height;  ///< in ball radii, where shown
};

/// The delivery and the events of simulated shots; a line a group.
void printSimulatedTables(const std::vector<SimulatedScore>& groups);

/// Three tables on standard output: balls, shots, cost; a line a film and a total.
void printTables(const std::vector<ClipScore>& clips);

}  // namespace ferrule::bench
