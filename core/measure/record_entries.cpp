// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/record_entries.h"

#include "core/planner/planner.h"

namespace ferrule {

RulingEntry entryOf(const RuledShot& ruled) {
  RulingEntry entry;
  entry.sureness = ruled.ruling.sureness;
  for (const Foul& foul : ruled.ruling.fouls)
    entry.fouls.emplace_back(toText(foul.kind));
  entry.content = rulingText(ruled);
  return entry;
}

std::string plannerName() {
  return "planner " + std::to_string(kPlannerVersion);
}

Result<std::vector<PlayerId>> playersNamed(Record& record, const std::vector<std::string>& names) {
  std::vector<PlayerId> players;
  for (const std::string& name : names) {
    const auto known = record.playerNamed(name);
    if (!known) return tl::make_unexpected(known.error());
    if (*known) {
      players.push_back((*known)->id);
      continue;
    }
    Player player;
    player.name = name;
    const auto added = record.addPlayer(player);
    if (!added) return tl::make_unexpected(added.error());
    players.push_back(*added);
  }
  return players;
}

}  // namespace ferrule
