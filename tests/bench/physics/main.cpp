// SPDX-License-Identifier: GPL-3.0-or-later
// bench_physics [FOLDER]: what the simulator costs and how far it can be believed. It checks nothing but the laws: the
// figures are for people.
#include <benchmark/benchmark.h>

#include <CLI/CLI.hpp>
#include <cstdio>
#include <set>
#include <string>
#include <vector>

#include "tests/bench/physics/cushion_difference.h"
#ifdef FERRULE_BENCH_ENGINE
#include "tests/bench/physics/engine_comparison.h"
#endif
#include "tests/bench/physics/films.h"
#include "tests/bench/physics/fingerprints.h"
#include "tests/bench/physics/laws.h"

using namespace ferrule::bench;

int main(int argc, char** argv) {
  CLI::App app("Measures the simulator.", "bench_physics");
  std::set<std::string> parts{"timing", "engine", "cushions", "laws", "films", "fingerprints"};
  std::vector<std::string> chosen;
  std::string folder = FERRULE_SOURCE_DIR "/../shared/clips";
  long shots = 100000;
  int sets = 40;
  app.add_option("FOLDER", folder, "Folder with a sub-folder for every film, and calibration/CAMERA stills")
      ->capture_default_str();
  app.add_option("--part", chosen, "Only this part; may be repeated")->check(CLI::IsMember(parts));
  app.add_option("--shots", shots, "Random shots for the laws")->capture_default_str()->check(CLI::PositiveNumber);
  app.add_option("--sets", sets, "Sets of shots for the fingerprints")
      ->capture_default_str()
      ->check(CLI::PositiveNumber);
  CLI11_PARSE(app, argc, argv);
  if (!chosen.empty()) parts = {chosen.begin(), chosen.end()};

  if (parts.contains("timing")) {
    int count = 1;
    benchmark::Initialize(&count, argv);
    benchmark::RunSpecifiedBenchmarks();
  }
  if (parts.contains("engine")) {
#ifdef FERRULE_BENCH_ENGINE
    printEngineComparison();
#else
    std::printf("\nThe rigid-body engine was not found when this was built; install libode-dev to compare with it.\n");
#endif
  }
  if (parts.contains("cushions")) printCushionDifference();
  if (parts.contains("fingerprints")) printFingerprints(sets);
  if (parts.contains("films")) printFilms(folder);
  const long broken = parts.contains("laws") ? printLaws(shots) : 0;
  return broken > 0 ? 1 : 0;
}
