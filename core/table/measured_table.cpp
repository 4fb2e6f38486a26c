// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/measured_table.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <nlohmann/json.hpp>
#include <numbers>
#include <set>

#include "core/base/text_file.h"
#include "core/base/text_line.h"
#include "core/geometry/units.h"
#include "core/table/cue_fields_json.h"
#include "core/table/field_reader_json.h"
#include "core/table/measured_table_fields.h"

namespace ferrule {

namespace {

using nlohmann::json;
using namespace tablefile;  // NOLINT(google-build-using-namespace): the file's own words and limits

/// A table.json holds some kilobytes.
constexpr std::size_t kLargestFile_bytes = std::size_t{4} << 20;
/// A rule is read to half a millimetre; a side that is off by more than a tenth is a slip.
constexpr double kTagSlip = 0.1;

/// Sides and diagonals as long as the print's, and the corners clockwise as seen from above, as on paper.
Result<void> checkSquare(const RailTag& tag, double side_m, const std::string& field, const FieldReader& reader) {
  for (std::size_t i = 0; i < 4; ++i) {
    for (const auto& [step, expected_m] : {std::pair{1U, side_m}, std::pair{2U, side_m * std::numbers::sqrt2}}) {
      const TablePoint3& a = tag.corners[i];
      const TablePoint3& b = tag.corners[(i + step) % 4];
      const double measured_m = std::hypot(a.x - b.x, a.y - b.y);
      if (std::abs(measured_m - expected_m) > kTagSlip * expected_m) {
        return failure(ErrorCode::FieldInvalid, reader.file(), field,
                       {millimetresFromMetres(measured_m), millimetresFromMetres(expected_m * (1.0 - kTagSlip)),
                        millimetresFromMetres(expected_m * (1.0 + kTagSlip))});
      }
    }
  }
  const TableVector top{tag.corners[1].x - tag.corners[0].x, tag.corners[1].y - tag.corners[0].y};
  const TableVector right{tag.corners[2].x - tag.corners[1].x, tag.corners[2].y - tag.corners[1].y};
  if (cross(top, right) > 0.0) {
    return failure(ErrorCode::FieldInvalid, reader.file(), field + ": counter-clockwise as seen from above");
  }
  return {};
}

Result<RailTag> readTag(const json& value, double height_m, double side_m, const FieldReader& reader) {
  if (!value.is_object() || !value.contains("id")) return failure(ErrorCode::FieldMissing, reader.file(), "tags.id");
  const auto id = reader.wholeOf(value.at("id"), "tags.id", kTagId);
  if (!id) return tl::make_unexpected(id.error());
  RailTag tag;
  tag.id = *id;
  const std::string field = "tags[id " + std::to_string(tag.id) + "].corners";
  if (!value.contains("corners")) return failure(ErrorCode::FieldMissing, reader.file(), field);
  const json& corners = value.at("corners");
  if (!corners.is_array() || corners.size() != 4) return failure(ErrorCode::FieldInvalid, reader.file(), field);
  if (value.contains("height_above_cloth")) {
    const auto own = reader.metresOf(value.at("height_above_cloth"), "tags.height_above_cloth", kTagHeight_mm);
    if (!own) return tl::make_unexpected(own.error());
    height_m = *own;
  }
  for (std::size_t i = 0; i < 4; ++i) {
    const json& corner = corners.at(i);
    if (!corner.is_array() || corner.size() != 2) return failure(ErrorCode::FieldInvalid, reader.file(), field);
    const auto x = reader.metresOf(corner.at(0), field, kCoordinate_mm);
    if (!x) return tl::make_unexpected(x.error());
    const auto y = reader.metresOf(corner.at(1), field, kCoordinate_mm);
    if (!y) return tl::make_unexpected(y.error());
    tag.corners[i] = {*x, *y, height_m};
  }
  if (const auto square = checkSquare(tag, side_m, field, reader); !square) return tl::make_unexpected(square.error());
  return tag;
}

/// "#rrggbb".
std::optional<BallColour> colourFromText(const std::string& text) {
  unsigned value = 0;
  if (text.size() != 7 || text[0] != '#') return std::nullopt;
  const auto [end, error] = std::from_chars(text.data() + 1, text.data() + 7, value, 16);
  if (error != std::errc() || end != text.data() + 7) return std::nullopt;
  return BallColour{static_cast<int>(value >> 16U), static_cast<int>((value >> 8U) & 255U),
                    static_cast<int>(value & 255U)};
}

Result<void> readColours(const json& object, BallSet& balls, const FieldReader& reader) {
  if (!object.is_object()) return failure(ErrorCode::FieldInvalid, reader.file(), "ball_colours");
  for (const auto& [name, value] : object.items()) {
    const auto ball = ballFromText(name);
    const auto colour = value.is_string() ? colourFromText(value.get<std::string>()) : std::nullopt;
    if (!ball || !colour) return failure(ErrorCode::FieldInvalid, reader.file(), "ball_colours." + name);
    balls.colours[static_cast<std::size_t>(ball->number())] = *colour;
  }
  return {};
}

Result<void> readSizes(const FieldReader& reader, MeasuredTable& measured) {
  for (const Size& size : kSizes) {
    if (!size.required && !reader.has(size.field)) continue;
    const auto value = reader.number(size.field, size.limits);
    if (!value) return tl::make_unexpected(value.error());
    size.of(measured) = *value / size.perUnit;
  }
  Table& table = measured.table;
  const double ratio = table.width_m / table.length_m;
  if (ratio < kWidthOverLength.least || ratio > kWidthOverLength.most) {
    const double length_mm = millimetresFromMetres(table.length_m);
    return failure(
        ErrorCode::FieldInvalid, reader.file(), kSizes[1].field,
        {millimetresFromMetres(table.width_m), kWidthOverLength.least * length_mm, kWidthOverLength.most * length_mm});
  }
  if (!reader.has(kNoseHeightField)) table.noseHeight_m = kNoseHeightOverDiameter * measured.balls.diameter_m;
  return {};
}

Result<void> readTags(const json& object, const FieldReader& reader, MeasuredTable& measured) {
  if (object.contains("tag_dictionary")) {
    if (!object.at("tag_dictionary").is_string()) {
      return failure(ErrorCode::FieldInvalid, reader.file(), "tag_dictionary");
    }
    measured.tagDictionary = object.at("tag_dictionary").get<std::string>();
  }
  if (!object.contains("tags")) return {};
  if (!object.at("tags").is_array()) return failure(ErrorCode::FieldInvalid, reader.file(), "tags");
  if (object.at("tags").empty()) return {};
  const auto height = reader.metres("tag_height_above_cloth", kTagHeight_mm);
  if (!height) return tl::make_unexpected(height.error());
  const auto side = reader.metres("tag_black_side", kTagSide_mm);
  if (!side) return tl::make_unexpected(side.error());
  std::set<int> ids;
  for (const json& value : object.at("tags")) {
    auto tag = readTag(value, *height, *side, reader);
    if (!tag) return tl::make_unexpected(tag.error());
    if (!ids.insert(tag->id).second) {
      return failure(ErrorCode::FieldInvalid, reader.file(), "tags: id " + std::to_string(tag->id) + " twice");
    }
    measured.tags.push_back(*tag);
  }
  return {};
}

Result<MeasuredTable> fromJson(const json& object, const std::string& name) {
  if (!object.is_object()) return failure(ErrorCode::FileMalformed, name, "not a JSON object");
  const FieldReader reader(object, name);
  if (object.contains("units") && object.at("units") != "mm") return failure(ErrorCode::FieldInvalid, name, "units");
  MeasuredTable measured;
  if (const auto sizes = readSizes(reader, measured); !sizes) return tl::make_unexpected(sizes.error());
  if (object.contains("ball_colours")) {
    const auto colours = readColours(object.at("ball_colours"), measured.balls, reader);
    if (!colours) return tl::make_unexpected(colours.error());
  }
  if (const auto tags = readTags(object, reader, measured); !tags) return tl::make_unexpected(tags.error());
  if (object.contains("cue_tags")) {
    auto tags = readCueTags(object.at("cue_tags"), reader);
    if (!tags) return tl::make_unexpected(tags.error());
    measured.cueTags = std::move(*tags);
  }
  const auto bridge = readBridgeHeight(reader);
  if (!bridge) return tl::make_unexpected(bridge.error());
  measured.bridgeHeight_m = *bridge;
  return measured;
}

}  // namespace

Result<MeasuredTable> parseMeasuredTable(const std::string& text, const std::string& name) {
  try {
    return fromJson(json::parse(text), name);
  } catch (const json::parse_error& error) {
    return failure(ErrorCode::FileMalformed, name, lineAt(text, error.byte));
  } catch (const json::exception&) {
    // A number too large for any double, or text that is not UTF-8.
    return failure(ErrorCode::FileMalformed, name, "a value that cannot be read");
  }
}

Result<MeasuredTable> readMeasuredTable(const std::string& path) {
  const auto text = readTextFile(path, kLargestFile_bytes);
  if (!text) return tl::make_unexpected(text.error());
  return parseMeasuredTable(*text, path);
}

Result<MeasuredTable> measuredTableFrom(const std::string& presetOrPath) {
  if (const auto size = tableSizeNamed(presetOrPath)) {
    MeasuredTable measured;
    measured.table = tableOfSize(*size);
    measured.table.noseHeight_m = kNoseHeightOverDiameter * measured.balls.diameter_m;
    return measured;
  }
  return readMeasuredTable(presetOrPath);
}

}  // namespace ferrule
