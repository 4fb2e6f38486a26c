// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/measured_table.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/base/text_file.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

using nlohmann::json;

/// What a value may be before it is taken for a slip of the pen, mm.
struct Limits {
  double least = 0.0;
  double most = 0.0;
};
constexpr Limits kLength{1000.0, 4000.0};
constexpr Limits kWidth{500.0, 2000.0};
constexpr Limits kDiameter{40.0, 70.0};
constexpr Limits kTagHeight{0.0, 150.0};
constexpr Limits kTagSide{10.0, 300.0};
constexpr Limits kCornerMouth{95.0, 150.0};
constexpr Limits kSideMouth{100.0, 160.0};
constexpr Limits kCoordinate{-3000.0, 3000.0};
/// Source: world equipment specification, cushions: 63.5 +- 1 % of the ball's diameter.
constexpr double kNoseHeightShare = 0.635;

class Reader {
 public:
  Reader(const json& object, std::string file) : object_(object), file_(std::move(file)) {}

  [[nodiscard]] bool has(const char* field) const { return object_.contains(field); }

  Result<double> metres(const char* field, Limits limits) const {
    if (!object_.contains(field)) return failure(ErrorCode::FieldMissing, file_, field);
    return metresOf(object_.at(field), field, limits);
  }

  Result<double> metresOf(const json& value, const std::string& field, Limits limits) const {
    if (!value.is_number()) return failure(ErrorCode::FieldInvalid, file_, field, {});
    const double mm = value.get<double>();
    if (!(mm >= limits.least && mm <= limits.most)) {
      return failure(ErrorCode::FieldInvalid, file_, field, {mm, limits.least, limits.most});
    }
    return metresFromMillimetres(mm);
  }

  [[nodiscard]] const std::string& file() const { return file_; }

 private:
  const json& object_;
  std::string file_;
};

Result<RailTag> readTag(const json& value, double height_m, double side_m, const Reader& reader) {
  RailTag tag;
  if (!value.is_object() || !value.contains("id") || !value.at("id").is_number_integer()) {
    return failure(ErrorCode::FieldMissing, reader.file(), "tags.id");
  }
  tag.id = value.at("id").get<int>();
  const std::string field = "tags[id " + std::to_string(tag.id) + "].corners";
  if (!value.contains("corners") || !value.at("corners").is_array() || value.at("corners").size() != 4) {
    return failure(ErrorCode::FieldMissing, reader.file(), field);
  }
  if (value.contains("height_above_cloth")) {
    const auto own = reader.metresOf(value.at("height_above_cloth"), "tags.height_above_cloth", kTagHeight);
    if (!own) return tl::make_unexpected(own.error());
    height_m = *own;
  }
  for (std::size_t i = 0; i < 4; ++i) {
    const json& corner = value.at("corners").at(i);
    if (!corner.is_array() || corner.size() != 2) return failure(ErrorCode::FieldInvalid, reader.file(), field);
    const auto x = reader.metresOf(corner.at(0), field, kCoordinate);
    if (!x) return tl::make_unexpected(x.error());
    const auto y = reader.metresOf(corner.at(1), field, kCoordinate);
    if (!y) return tl::make_unexpected(y.error());
    tag.corners[i] = {*x, *y, height_m};
  }
  // A rule is read to half a millimetre; a side that is off by more than a tenth is a slip.
  for (std::size_t i = 0; i < 4; ++i) {
    const auto& a = tag.corners[i];
    const auto& b = tag.corners[(i + 1) % 4];
    const double measured_m = std::hypot(a.x - b.x, a.y - b.y);
    if (std::abs(measured_m - side_m) > 0.1 * side_m) {
      return failure(ErrorCode::FieldInvalid, reader.file(), field,
                     {millimetresFromMetres(measured_m), 900.0 * side_m, 1100.0 * side_m});
    }
  }
  return tag;
}

Result<CueTags> readCueTags(const json& value, const Reader& reader) {
  CueTags tags;
  try {
    tags.dictionary = value.at("dictionary").get<std::string>();
    tags.ids = value.at("ids").get<std::vector<int>>();
    tags.blackSide_m = metresFromMillimetres(value.at("black_side").get<double>());
    for (const double mm : value.at("centre_distance_from_tip").get<std::vector<double>>()) {
      tags.centreFromTip_m.push_back(metresFromMillimetres(mm));
    }
    for (const double mm : value.at("cue_radius_at_tags").get<std::vector<double>>()) {
      tags.cueRadius_m.push_back(metresFromMillimetres(mm));
    }
  } catch (const json::exception&) {
    return failure(ErrorCode::FieldInvalid, reader.file(), "cue_tags");
  }
  return tags;
}

Result<MeasuredTable> fromJson(const json& object, const std::string& name) {
  if (!object.is_object()) return failure(ErrorCode::FileMalformed, name, "not a JSON object");
  const Reader reader(object, name);
  if (object.contains("units") && object.at("units") != "mm") {
    return failure(ErrorCode::FieldInvalid, name, "units");
  }
  MeasuredTable measured;

  struct Field {
    const char* name;
    Limits limits;
    double* target;
    bool required;
  };
  const Field fields[] = {
      {"table_length_nose_to_nose", kLength, &measured.table.length_m, true},
      {"table_width_nose_to_nose", kWidth, &measured.table.width_m, true},
      {"ball_diameter", kDiameter, &measured.balls.diameter_m, true},
      {"corner_pocket_mouth", kCornerMouth, &measured.table.corner.mouth_m, false},
      {"side_pocket_mouth", kSideMouth, &measured.table.side.mouth_m, false},
  };
  for (const Field& field : fields) {
    if (!field.required && !reader.has(field.name)) continue;
    const auto value = reader.metres(field.name, field.limits);
    if (!value) return tl::make_unexpected(value.error());
    *field.target = *value;
  }
  if (measured.table.width_m >= measured.table.length_m) {
    return failure(ErrorCode::FieldInvalid, name, "table_width_nose_to_nose",
                   {millimetresFromMetres(measured.table.width_m), kWidth.least,
                    millimetresFromMetres(measured.table.length_m)});
  }
  measured.table.noseHeight_m = kNoseHeightShare * measured.balls.diameter_m;

  if (object.contains("tag_dictionary")) {
    if (!object.at("tag_dictionary").is_string()) return failure(ErrorCode::FieldInvalid, name, "tag_dictionary");
    measured.tagDictionary = object.at("tag_dictionary").get<std::string>();
  }
  if (object.contains("tags")) {
    if (!object.at("tags").is_array()) return failure(ErrorCode::FieldInvalid, name, "tags");
    const auto height = reader.metres("tag_height_above_cloth", kTagHeight);
    if (!height) return tl::make_unexpected(height.error());
    const auto side = reader.metres("tag_black_side", kTagSide);
    if (!side) return tl::make_unexpected(side.error());
    for (const json& value : object.at("tags")) {
      auto tag = readTag(value, *height, *side, reader);
      if (!tag) return tl::make_unexpected(tag.error());
      for (const RailTag& earlier : measured.tags) {
        if (earlier.id == tag->id) return failure(ErrorCode::FieldInvalid, name, "tags: the same id twice");
      }
      measured.tags.push_back(*tag);
    }
  }
  if (object.contains("cue_tags")) {
    auto tags = readCueTags(object.at("cue_tags"), reader);
    if (!tags) return tl::make_unexpected(tags.error());
    measured.cueTags = *tags;
  }
  if (object.contains("bridge_height_to_cue_axis")) {
    const auto height = reader.metres("bridge_height_to_cue_axis", {0.0, 500.0});
    if (!height) return tl::make_unexpected(height.error());
    measured.bridgeHeight_m = *height;
  }
  return measured;
}

}  // namespace

Result<MeasuredTable> parseMeasuredTable(const std::string& text, const std::string& name) {
  const json object = json::parse(text, nullptr, false);
  if (object.is_discarded()) return failure(ErrorCode::FileMalformed, name, "not JSON");
  return fromJson(object, name);
}

Result<MeasuredTable> readMeasuredTable(const std::string& path) {
  const auto text = readTextFile(path);
  if (!text) return tl::make_unexpected(text.error());
  return parseMeasuredTable(*text, path);
}

Result<MeasuredTable> measuredTableFrom(const std::string& presetOrPath) {
  if (const auto size = tableSizeNamed(presetOrPath)) {
    MeasuredTable measured;
    measured.table = tableOfSize(*size);
    measured.table.noseHeight_m = kNoseHeightShare * measured.balls.diameter_m;
    return measured;
  }
  return readMeasuredTable(presetOrPath);
}

}  // namespace ferrule
