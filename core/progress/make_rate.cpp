// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/make_rate.h"

#include <algorithm>
#include <cmath>

#include "core/progress/bands.h"
#include "core/progress/shot_errors.h"

namespace ferrule {

namespace {

constexpr double kLeastStrength = 2.0;
constexpr double kMostStrength = 200.0;

void count(MissCell& cell, MissSide side) {
  ++(side == MissSide::Under ? cell.thick : cell.thin);
}

void finish(MissCell& cell) {
  if (cell.total() > 0) cell.thickShare = wilsonInterval(cell.thick, cell.total());
}

}  // namespace

std::size_t cutBand(double cut_rad) {
  return closedBandOf(kCutBands_rad, cut_rad);
}

std::size_t distanceBand(double distance_m, double tableWidth_m) {
  return bandOf(kDistanceBands_widths, distance_m / tableWidth_m);
}

double priorStrength(const std::vector<MakeCell*>& cells) {
  double made = 0.0;
  double tried = 0.0;
  double squares = 0.0;
  int used = 0;
  for (const MakeCell* cell : cells) {
    if (cell->tried == 0) continue;
    ++used;
    made += cell->made;
    tried += cell->tried;
    squares += static_cast<double>(cell->tried) * cell->tried;
  }
  if (used < 2) return kMostStrength;
  const double mean = made / tried;
  if (mean <= 0.0 || mean >= 1.0) return kMostStrength;
  double apart = 0.0;
  for (const MakeCell* cell : cells) {
    if (cell->tried > 0) apart += cell->tried * std::pow(cell->share() - mean, 2.0);
  }
  const double room = tried - squares / tried - (used - 1.0);
  if (room <= 0.0) return kMostStrength;
  const double rho = (apart / (mean * (1.0 - mean)) - (used - 1.0)) / room;
  if (rho <= 0.0) return kMostStrength;
  return std::clamp(1.0 / rho - 1.0, kLeastStrength, kMostStrength);
}

void finishCells(std::vector<MakeCell*> cells) {
  double made = 0.0;
  double tried = 0.0;
  for (const MakeCell* cell : cells) {
    made += cell->made;
    tried += cell->tried;
  }
  if (tried == 0.0) return;
  const double strength = priorStrength(cells);
  // Where all or none went in, the prior must still have two sides.
  const double mean = (made + 0.5) / (tried + 1.0);
  for (MakeCell* cell : cells) {
    if (cell->tried > 0) cell->wilson = wilsonInterval(cell->made, cell->tried);
    const double a = cell->made + strength * mean;
    const double b = cell->tried - cell->made + strength * (1.0 - mean);
    cell->shrunken = a / (a + b);
    cell->shrunkenInterval = betaInterval(a, b);
  }
}

MakeGrid makeGrid(const PlayerHistory& history, Intent intent, GridDistance distance) {
  MakeGrid grid;
  for (const PlayedShot& shot : history.shots) {
    if (!isPotAttempt(shot) || shot.intent != intent) continue;
    const double away_m = distance == GridDistance::CueBall ? *shot.cueToGhost_m : *shot.objectToPocket_m;
    const std::size_t row = distanceBand(away_m, history.tableOf(shot).table.width_m);
    grid.cells[row][cutBand(*shot.cut_rad)].add(shot);
    ++grid.tried;
  }
  std::vector<MakeCell*> all;
  for (auto& row : grid.cells) {
    for (MakeCell& cell : row)
      all.push_back(&cell);
  }
  finishCells(std::move(all));
  return grid;
}

std::array<MakeCell, 6> makesByPocket(const PlayerHistory& history, Intent intent) {
  std::array<MakeCell, 6> cells;
  for (const PlayedShot& shot : history.shots) {
    if (isPotAttempt(shot) && shot.intent == intent) cells[static_cast<std::size_t>(*shot.pocket)].add(shot);
  }
  std::vector<MakeCell*> all;
  for (MakeCell& cell : cells)
    all.push_back(&cell);
  finishCells(std::move(all));
  return cells;
}

Answer<Estimate> makeShare(const PlayerHistory& history, Intent intent) {
  const auto made = observed(history, [intent](const PlayedShot& shot, const PlayedTable&) -> std::optional<double> {
    if (!isPotAttempt(shot) || shot.intent != intent) return std::nullopt;
    return shot.made ? 1.0 : 0.0;
  });
  return shareOf(bySession(made));
}

MissSides missSides(const PlayerHistory& history) {
  MissSides sides;
  for (const PlayedShot& shot : history.shots) {
    if (!isPotAttempt(shot) || shot.made || !shot.missSide) continue;
    if (shot.cutSide) count(*shot.cutSide == CutSide::Left ? sides.leftCuts : sides.rightCuts, *shot.missSide);
    if (!shot.cutSide) continue;  // a straight shot has no thick and thin
    count(sides.pockets[static_cast<std::size_t>(*shot.pocket)], *shot.missSide);
    if (shot.speed_mps) count(sides.speeds[bandOf(kSpeedBands_mps, *shot.speed_mps)], *shot.missSide);
  }
  finish(sides.leftCuts);
  finish(sides.rightCuts);
  std::ranges::for_each(sides.pockets, finish);
  std::ranges::for_each(sides.speeds, finish);
  return sides;
}

}  // namespace ferrule
