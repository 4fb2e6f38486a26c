// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/draft_players.h"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ferrule {

namespace {

bool knows(const nlohmann::json& json, PlayerId player, const std::string& name) {
  const auto isPlayer = [&](const nlohmann::json& entry) {
    return (entry.is_number_integer() && entry.get<std::int64_t>() == player.value) ||
           (entry.is_string() && entry.get_ref<const std::string&>() == name);
  };
  for (const auto& [key, value] : json.items()) {
    if (key == "players" && value.is_array() && std::ranges::any_of(value, isPlayer)) return true;
    if (value.is_structured() && knows(value, player, name)) return true;
  }
  return false;
}

}  // namespace

bool draftKnows(const std::string& content, PlayerId player, const std::string& name) {
  const auto json = nlohmann::json::parse(content, nullptr, false);
  if (json.is_discarded()) return content.find(name) != std::string::npos;
  return json.is_structured() && knows(json, player, name);
}

}  // namespace ferrule
