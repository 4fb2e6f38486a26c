// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/asked_shots.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "core/base/text_file.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

/// Nothing where the file says null, or holds no such field. Throws where it holds something else.
std::optional<Measured> measuredIn(const nlohmann::json& json, const char* name, const char* uncertainty,
                                   double unitsPerOne = 1.0) {
  if (!json.contains(name) || json[name].is_null()) return std::nullopt;
  return Measured{json[name].get<double>() * unitsPerOne, json.at(uncertainty).get<double>() * unitsPerOne};
}

Delivery deliveryIn(const nlohmann::json& json) {
  const double degree = radiansFromDegrees(1.0);
  Delivery delivery;
  delivery.aim_rad = measuredIn(json, "aim_deg", "aim_u_deg", degree);
  delivery.speed_mps = measuredIn(json, "speed_m_s", "speed_u_m_s");
  delivery.side = measuredIn(json, "side", "side_u");
  delivery.height = measuredIn(json, "height", "height_u");
  delivery.elevation_rad = measuredIn(json, "elevation_deg", "elevation_u_deg", degree);
  return delivery;
}

}  // namespace

Result<std::vector<NumberedDelivery>> deliveriesOf(Record& record, SessionId session) {
  const auto frames = record.frames(session);
  if (!frames) return tl::make_unexpected(frames.error());
  std::vector<NumberedDelivery> all;
  for (const FrameSummary& frame : *frames) {
    const auto shots = record.shots(frame.id);
    if (!shots) return tl::make_unexpected(shots.error());
    for (const ShotSummary& shot : *shots)
      all.push_back({static_cast<int>(all.size()) + 1, shot.delivery});
  }
  return all;
}

Result<std::vector<NumberedDelivery>> readDeliveries(const std::string& path) {
  const auto text = readTextFile(path);
  if (!text) return tl::make_unexpected(text.error());
  std::vector<NumberedDelivery> all;
  // Other people's files may hold any type anywhere.
  try {
    const auto json = nlohmann::json::parse(*text);
    if (!json.is_object() || !json.contains("shots")) return failure(ErrorCode::FieldMissing, path, "shots");
    for (const auto& shot : json["shots"])
      all.push_back({shot.at("number").get<int>(), deliveryIn(shot.at("delivery"))});
  } catch (const nlohmann::json::exception& problem) {
    return failure(ErrorCode::FileMalformed, path, problem.what());
  }
  return all;
}

AskedMatch matchAsked(std::span<const AskedLine> asked, std::span<const NumberedDelivery> delivered) {
  AskedMatch match;
  for (const AskedLine& line : asked) {
    const auto found = std::ranges::find(delivered, line.shot, &NumberedDelivery::shot);
    if (found == delivered.end()) {
      match.missing.push_back(line.shot);
    } else {
      match.shots.push_back({line.asked, found->delivery});
    }
  }
  return match;
}

}  // namespace ferrule
