// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/table/shot.h"
#include "tests/bench/accuracy/statistics.h"
#include "tests/bench/accuracy/truth.h"

namespace ferrule::bench {

/// What the shots read from a film are worth. A read shot and a true one belong together when their strikes are the
/// nearest and within 0.5 s.
struct ShotScore {
  Tally found;                           ///< of the true shots
  long invented = 0;                     ///< read shots with no true one
  Tally firstContact;                    ///< of the found shots, as are all below
  Tally pocketed;                        ///< the same balls in the same pockets
  Tally events;                          ///< all events, in their order
  Tally eventsOrOpen;                    ///< the same, or told the other way round only where the times leave it open
  Tally firstEvents;                     ///< the first three events, in their order
  std::vector<std::string> otherEvents;  ///< where they differ: the true ones and the read ones in words
  Tally outcome;                         ///< a pot of any kind is a pot
  Tally outcomeAside;  ///< safety for miss or miss for safety, read as "proposed" or "ask": intent is not on film
  std::vector<double> strikeErrors_s;
  std::vector<double> restErrors_m;  ///< of each ball that stands on the table after the shot in truth and reading
  Tally restBalls;                   ///< balls after the shot that both have, of those that either has
  std::vector<double> aimErrors_rad;
  std::vector<double> speedErrors;   ///< relative
  std::vector<double> sideErrors;    ///< in ball radii
  std::vector<double> heightErrors;  ///< in ball radii
  Tally aimCovered;                  ///< truth within 1.96 standard uncertainties
  Tally speedCovered;
  Tally sideCovered;
  Tally heightCovered;
  std::vector<double> elevationErrors_rad;
  Tally elevationCovered;
  Tally strikeShown;  ///< shots whose aim and speed were measured
  Tally sideShown;
  Tally heightShown;
  Tally elevationShown;

  void add(const ShotScore& other);
};

[[nodiscard]] ShotScore compareShots(const Truth& truth, const std::vector<ShotReading>& shots);

/// One event of a shot in short, "cue-3" or "3 pocket foot-left": what two lists of events are compared by.
[[nodiscard]] std::string eventWords(const ShotEvent& event);

}  // namespace ferrule::bench
