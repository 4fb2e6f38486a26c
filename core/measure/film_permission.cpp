// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/film_permission.h"

#include <array>
#include <filesystem>
#include <optional>

#include "core/record/record.h"

namespace ferrule {

Result<FilmPermission> filmPermission(const std::string& path, const std::vector<std::string>& names,
                                      UtcMilliseconds at) {
  FilmPermission permission;
  permission.named = !names.empty();
  std::optional<Record> record;
  if (std::filesystem::exists(path)) {
    auto opened = Record::open(path);
    if (!opened) return tl::make_unexpected(opened.error());
    record.emplace(std::move(*opened));
  }
  for (const std::string& name : names) {
    const auto player = record ? record->playerNamed(name) : Result<std::optional<Player>>(std::nullopt);
    if (!player) return tl::make_unexpected(player.error());
    if (!*player) {
      FilmObstacle stranger;
      stranger.player.name = name;
      permission.obstacles.push_back(stranger);
      continue;
    }
    const std::array<PlayerId, 1> id{(*player)->id};
    const auto obstacles = filmObstacles(*record, id, at);
    if (!obstacles) return tl::make_unexpected(obstacles.error());
    permission.obstacles.insert(permission.obstacles.end(), obstacles->begin(), obstacles->end());
  }
  return permission;
}

}  // namespace ferrule
