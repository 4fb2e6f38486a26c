// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/entry_angle.h"

#include <algorithm>
#include <numbers>

#include "core/progress/bands.h"
#include "core/progress/shot_errors.h"
#include "core/table/pocket_entry.h"

namespace ferrule {

std::optional<double> entryAngle_rad(const PlayedShot& shot, const PlayedTable& table) {
  if (!shot.objectBall || !shot.pocket) return std::nullopt;
  const Pocket pocket = pockets(table.table)[static_cast<std::size_t>(*shot.pocket)];
  if (*shot.objectBall == pocket.mouth) return std::nullopt;
  return std::min(pocketEntry_rad(pocket, *shot.objectBall), std::numbers::pi / 2.0);
}

std::size_t entryBand(double entry_rad) {
  return closedBandOf(kEntryBands_rad, entry_rad);
}

MakesByEntry makesByEntry(const PlayerHistory& history, Intent intent) {
  MakesByEntry makes;
  for (const PlayedShot& shot : history.shots) {
    if (!isPotAttempt(shot) || shot.intent != intent) continue;
    const auto entry_rad = entryAngle_rad(shot, history.tableOf(shot));
    if (!entry_rad) continue;
    makes[isSidePocket(*shot.pocket) ? 1 : 0][entryBand(*entry_rad)].add(shot);
  }
  std::vector<MakeCell*> all;
  for (auto& kind : makes) {
    for (MakeCell& cell : kind)
      all.push_back(&cell);
  }
  finishCells(std::move(all));
  return makes;
}

}  // namespace ferrule
