// SPDX-License-Identifier: GPL-3.0-or-later
// Frames between the planner and a greedy chooser at equal scatter, and how often the planner clears from the break.
#include <tbb/parallel_for.h>

#include <CLI/CLI.hpp>
#include <cstdio>

#include "core/geometry/units.h"
#include "core/progress/interval.h"
#include "tests/bench/selfplay/played_frame.h"

using namespace ferrule;
using namespace ferrule::bench;

namespace {

std::vector<PlayedFrame> playFrames(const Planner& planner, const std::array<Chooser, 2>& choosers,
                                    const Scatter& scatter, int frames, std::uint64_t seed) {
  std::vector<PlayedFrame> played(static_cast<std::size_t>(frames));
  tbb::parallel_for(std::size_t{0}, played.size(), [&](std::size_t i) {
    const Seat breaker = i % 2 == 0 ? Seat::First : Seat::Second;
    played[i] = playFrame(planner, worldRules(Game::EightBall), choosers, scatter, breaker, seed + i);
  });
  return played;
}

void printShare(const char* what, int made, int tried) {
  const Interval interval = wilsonInterval(made, tried);
  std::printf("  %-44s %5.1f %%  [%4.1f, %4.1f]  %d of %d\n", what, 100.0 * made / std::max(tried, 1),
              100.0 * interval.least, 100.0 * interval.most, made, tried);
}

void printSide(const char* name, const std::vector<PlayedFrame>& frames, std::size_t seat) {
  int shots = 0;
  int tried = 0;
  int pots = 0;
  int fouls = 0;
  for (const PlayedFrame& frame : frames) {
    shots += frame.shots.at(seat);
    tried += frame.potsTried.at(seat);
    pots += frame.pots.at(seat);
    fouls += frame.fouls.at(seat);
  }
  std::printf("  %s: %d shots, of which pots tried %d, made %.1f %%, fouls %.1f %% of shots\n", name, shots, tried,
              100.0 * pots / std::max(tried, 1), 100.0 * fouls / std::max(shots, 1));
}

void duel(const Planner& planner, const char* name, const Scatter& scatter, int frames, long simulations,
          std::uint64_t seed) {
  const std::array choosers{Chooser{ChooserKind::Search, simulations}, Chooser{ChooserKind::Greedy}};
  const auto played = playFrames(planner, choosers, scatter, frames, seed);
  int won = 0;
  int decided = 0;
  int differ = 0;
  for (const PlayedFrame& frame : played) {
    decided += frame.winner.has_value();
    won += frame.winner == Seat::First;
    differ += frame.disagreements;
  }
  std::printf("%s, aim %.3f deg, speed %.1f %%, tip %.3f R\n", name, degreesFromRadians(scatter.aim_rad),
              100.0 * scatter.speed, scatter.side);
  printShare("eight-ball frames won against greedy", won, decided);
  printSide("search", played, 0);
  printSide("greedy", played, 1);
  std::printf("  frames without end %d, shots ruled otherwise by the referee %d\n",
              static_cast<int>(played.size()) - decided, differ);
  std::fflush(stdout);
}

void clearing(const Planner& planner, const char* name, const Scatter& scatter, int frames, long simulations,
              std::uint64_t seed) {
  const std::array choosers{Chooser{ChooserKind::Search, simulations}, Chooser{ChooserKind::Search, simulations}};
  const auto played = playFrames(planner, choosers, scatter, frames, seed);
  int kept = 0;
  int cleared = 0;
  for (const PlayedFrame& frame : played) {
    kept += frame.brokeAndKept;
    cleared += frame.clearedFromBreak;
  }
  std::printf("%s, aim %.3f deg\n", name, degreesFromRadians(scatter.aim_rad));
  printShare("the break keeps the table", kept, static_cast<int>(played.size()));
  printShare("cleared from the break", cleared, static_cast<int>(played.size()));
  printShare("cleared when the break kept the table", cleared, kept);
  printSide("both", played, 0);
  std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv) {
  CLI::App app{"Self-play of the planner"};
  int frames = 400;
  int clearings = 200;
  long simulations = 2500;
  std::uint64_t seed = 1;
  std::string level;
  app.add_option("--frames", frames, "Frames against the greedy chooser at each level");
  app.add_option("--clearings", clearings, "Frames of the planner against itself at expert scatter");
  app.add_option("--simulations", simulations, "Whole shots a decision may cost");
  app.add_option("--seed", seed, "Of the first frame");
  app.add_option("--level", level, "Only this one: beginner, club, expert");
  CLI11_PARSE(app, argc, argv);
  const auto planner = Planner::create(Table{}, PhysicsParameters{});
  if (!planner) return 1;
  for (const PlayerLevel each : kPlayerLevels) {
    if (!level.empty() && toText(each) != level) continue;
    if (frames > 0) duel(*planner, std::string(toText(each)).c_str(), scatterOf(each), frames, simulations, seed);
  }
  if (clearings <= 0) return 0;
  clearing(*planner, "expert", scatterOf(PlayerLevel::Expert), clearings, simulations, seed + 100000);
  // The scatter of the computational-pool papers; see core/planner/scatter.h. A tip error of 0.5 mm is 0.0175 R.
  const Scatter papers{radiansFromDegrees(0.125), 0.03, 0.0175, 0.0175, radiansFromDegrees(0.1)};
  clearing(*planner, "scatter of the computational-pool papers (from memory)", papers, clearings, simulations,
           seed + 200000);
  std::printf(
      "Published for comparison: winning programs of the computational-pool tournaments of 2005 to 2008 cleared\n"
      "from the break in roughly half to three quarters of their racks at that scatter (Archibald, Altman,\n"
      "Greenspan and Shoham, AI Magazine 31(4), 2010; Smith, Artificial Intelligence 171, 2007; both from memory and "
      "not confirmed,\n"
      "with another simulator, other pockets and the cue ball placed after their break).\n");
  return 0;
}
