// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/measured_cue.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "core/base/text_file.h"
#include "core/table/cue_fields_json.h"

namespace ferrule {

namespace {

using nlohmann::json;
using namespace tablefile;  // NOLINT(google-build-using-namespace): the file's own words and limits

constexpr std::size_t kLargestFile_bytes = std::size_t{4} << 20;
constexpr Limits kTagThickness_mm{0.0, 20.0};

/// Tags that lie upon each other were measured or numbered wrongly.
Result<void> checkApart(const CueTags& tags, const std::string& name) {
  if (std::set(tags.ids.begin(), tags.ids.end()).size() != tags.ids.size()) {
    return failure(ErrorCode::FieldInvalid, name, "cue_tags.ids");
  }
  std::vector<double> places_m = tags.centreFromTip_m;
  std::ranges::sort(places_m);
  for (std::size_t i = 1; i < places_m.size(); ++i) {
    if (places_m[i] - places_m[i - 1] < tags.blackSide_m) {
      return failure(ErrorCode::FieldInvalid, name, "cue_tags.centre_distance_from_tip");
    }
  }
  return {};
}

Result<MeasuredCue> fromJson(const json& object, const std::string& name) {
  if (!object.is_object()) return failure(ErrorCode::FileMalformed, name, "not a JSON object");
  const FieldReader reader(object, name);
  if (object.contains("units") && object.at("units") != "mm") return failure(ErrorCode::FieldInvalid, name, "units");
  if (!reader.has("cue_tags")) return failure(ErrorCode::FieldMissing, name, "cue_tags");
  MeasuredCue cue;
  const json& tags = object.at("cue_tags");
  auto read = readCueTags(tags, reader);
  if (!read) return tl::make_unexpected(read.error());
  cue.tags = std::move(*read);
  if (const auto apart = checkApart(cue.tags, name); !apart) return tl::make_unexpected(apart.error());
  if (tags.contains("tag_thickness")) {
    const auto thickness = reader.metresOf(tags.at("tag_thickness"), "cue_tags.tag_thickness", kTagThickness_mm);
    if (!thickness) return tl::make_unexpected(thickness.error());
    cue.tagThickness_m = *thickness;
  }
  const auto bridge = readBridgeHeight(reader);
  if (!bridge) return tl::make_unexpected(bridge.error());
  cue.bridgeHeight_m = *bridge;
  return cue;
}

}  // namespace

std::optional<MeasuredCue> cueOf(const MeasuredTable& measured) {
  if (!measured.cueTags) return std::nullopt;
  MeasuredCue cue;
  cue.tags = *measured.cueTags;
  cue.bridgeHeight_m = measured.bridgeHeight_m;
  return cue;
}

Result<MeasuredCue> parseMeasuredCue(const std::string& text, const std::string& name) {
  try {
    return fromJson(json::parse(text), name);
  } catch (const json::parse_error& error) {
    return failure(ErrorCode::FileMalformed, name, lineOf(text, error.byte));
  } catch (const json::exception&) {
    return failure(ErrorCode::FileMalformed, name, "a value that cannot be read");
  }
}

Result<MeasuredCue> readMeasuredCue(const std::string& path) {
  const auto text = readTextFile(path, kLargestFile_bytes);
  if (!text) return tl::make_unexpected(text.error());
  return parseMeasuredCue(*text, path);
}

}  // namespace ferrule
