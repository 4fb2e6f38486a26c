// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>

#include "tests/bench/planner/reliability.h"
#include "tests/bench/planner/timing.h"

using namespace ferrule;

int main(int argc, char** argv) {
  CLI::App app{"How fast and how honest the planner is"};
  int shots = 80000;
  app.add_option("--shots", shots, "Shots of each of the three levels");
  bool reliability = false;
  app.add_flag("--reliability", reliability, "Only predicted against observed pot rates");
  CLI11_PARSE(app, argc, argv);
  const auto planner = Planner::create(Table{}, PhysicsParameters{});
  if (!planner) return 1;
  if (!reliability) bench::printTiming(*planner);
  bench::printReliability(*planner, shots);
  return 0;
}
