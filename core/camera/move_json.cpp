// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/move_json.h"

#include <nlohmann/json.hpp>

#include "core/camera/rig_file.h"
#include "core/geometry/units.h"

namespace ferrule {

nlohmann::ordered_json jsonOf(const CameraMove& move) {
  return {{"image", move.image},
          {"time_s", move.time_s},
          {"since_s", move.since_s},
          {"settled_s", move.settled_s},
          {"moved_mm", millimetresFromMetres(move.moved_m)},
          {"rig", nlohmann::ordered_json::parse(rigText(move.rig))}};
}

Result<std::vector<CameraMove>> movesFrom(const nlohmann::json& list, const std::string& name) {
  std::vector<CameraMove> moves;
  try {
    for (const nlohmann::json& each : list) {
      CameraMove move;
      move.image = each.at("image").get<long>();
      move.time_s = each.at("time_s").get<double>();
      move.since_s = each.at("since_s").get<double>();
      move.settled_s = each.at("settled_s").get<double>();
      move.moved_m = metresFromMillimetres(each.at("moved_mm").get<double>());
      auto rig = parseRig(each.at("rig").dump(), name);
      if (!rig) return tl::make_unexpected(rig.error());
      move.rig = std::move(*rig);
      moves.push_back(std::move(move));
    }
  } catch (const nlohmann::json::exception&) {
    return failure(ErrorCode::FieldInvalid, name, "moves");
  }
  return moves;
}

}  // namespace ferrule
