// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/cue_fields_json.h"

#include <string>
#include <vector>

namespace ferrule::tablefile {

namespace {

Result<std::vector<double>> readLengths(const nlohmann::json& object, const char* field, std::size_t count,
                                        Limits limits, const FieldReader& reader) {
  const std::string name = std::string("cue_tags.") + field;
  if (!object.contains(field)) return failure(ErrorCode::FieldMissing, reader.file(), name);
  const nlohmann::json& values = object.at(field);
  if (!values.is_array() || values.size() != count) return failure(ErrorCode::FieldInvalid, reader.file(), name);
  std::vector<double> lengths_m;
  for (const nlohmann::json& value : values) {
    const auto length = reader.metresOf(value, name, limits);
    if (!length) return tl::make_unexpected(length.error());
    lengths_m.push_back(*length);
  }
  return lengths_m;
}

}  // namespace

Result<CueTags> readCueTags(const nlohmann::json& object, const FieldReader& reader) {
  if (!object.is_object()) return failure(ErrorCode::FieldInvalid, reader.file(), "cue_tags");
  for (const char* field : {"dictionary", "ids", "black_side"}) {
    if (!object.contains(field)) {
      return failure(ErrorCode::FieldMissing, reader.file(), std::string("cue_tags.") + field);
    }
  }
  CueTags tags;
  if (!object.at("dictionary").is_string()) {
    return failure(ErrorCode::FieldInvalid, reader.file(), "cue_tags.dictionary");
  }
  tags.dictionary = object.at("dictionary").get<std::string>();
  const nlohmann::json& ids = object.at("ids");
  if (!ids.is_array() || ids.empty()) return failure(ErrorCode::FieldInvalid, reader.file(), "cue_tags.ids");
  for (const nlohmann::json& value : ids) {
    const auto id = reader.wholeOf(value, "cue_tags.ids", kTagId);
    if (!id) return tl::make_unexpected(id.error());
    tags.ids.push_back(*id);
  }
  const auto side = reader.metresOf(object.at("black_side"), "cue_tags.black_side", kCueTagSide_mm);
  if (!side) return tl::make_unexpected(side.error());
  tags.blackSide_m = *side;
  const auto centres = readLengths(object, "centre_distance_from_tip", tags.ids.size(), kCueLength_mm, reader);
  if (!centres) return tl::make_unexpected(centres.error());
  tags.centreFromTip_m = *centres;
  const auto radii = readLengths(object, "cue_radius_at_tags", tags.ids.size(), kCueRadius_mm, reader);
  if (!radii) return tl::make_unexpected(radii.error());
  tags.cueRadius_m = *radii;
  return tags;
}

Result<std::optional<double>> readBridgeHeight(const FieldReader& reader) {
  constexpr const char* kField = "bridge_height_to_cue_axis";
  if (!reader.has(kField)) return std::optional<double>();
  return reader.metres(kField, kBridgeHeight_mm).map([](double height_m) { return std::optional<double>(height_m); });
}

}  // namespace ferrule::tablefile
