// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/physics/fingerprints.h"

#include <cmath>
#include <cstdio>
#include <map>
#include <string>

#include "tests/support/filmed_shot.h"

namespace ferrule::bench {

namespace {

struct Tally {
  int all = 0;
  int held = 0;
  int determined = 0;
  int determinedHeld = 0;
  double width = 0.0;  ///< of the uncertainty over the literature's
};

void printTally(const std::string& name, const Tally& t) {
  std::printf(
      "  %-24s %3d of %3d held (%5.1f %%), uncertainty %4.2f of the literature's, determined in %3d (%3d held)\n",
      name.c_str(), t.held, t.all, 100.0 * t.held / t.all, t.width / t.all, t.determined, t.determinedHeld);
}

}  // namespace

void printFingerprints(int sets) {
  std::printf("\nFingerprints of %d simulated sets each: 95 %% intervals against what was planted\n", sets);
  for (const int shots : {2, 3, 5, 8}) {
    std::map<std::string, Tally> tallies;
    Tally whole;
    Random random(static_cast<std::uint64_t>(1000 + shots));
    for (int set = 0; set < sets; ++set) {
      const Planted table = planted(random);
      const auto f = fitFingerprint(Table{}, PhysicsParameters{}, filmedSet(table.parameters, shots, random));
      if (!f) continue;
      for (std::size_t i = 0; i < table.values.size(); ++i) {
        const FittedCoefficient& c = f->coefficients[i];
        for (const auto& [name, value] : table.values) {
          if (c.name != name) continue;
          const bool held = std::abs(c.value - value) < 1.959964 * c.standardUncertainty;
          for (Tally* t : {&tallies[c.name], &whole}) {
            ++t->all;
            t->held += held ? 1 : 0;
            t->determined += c.determined ? 1 : 0;
            t->determinedHeld += held && c.determined ? 1 : 0;
            t->width += c.standardUncertainty / c.literatureUncertainty;
          }
        }
      }
    }
    std::printf("%d shots\n", shots);
    for (const auto& [name, tally] : tallies)
      printTally(name, tally);
    if (whole.all > 0) printTally("all", whole);
  }
}

}  // namespace ferrule::bench
