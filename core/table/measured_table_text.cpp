// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <cstdio>
#include <nlohmann/json.hpp>

#include "core/geometry/units.h"
#include "core/table/measured_table.h"
#include "core/table/measured_table_fields.h"

namespace ferrule {

namespace {

using Json = nlohmann::ordered_json;

/// Without the digits that the conversion from SI adds: 2235, never 2234.9999999999995.
double rounded(double value) {
  return std::round(value * 1e9) / 1e9;
}

double roundedMillimetres(double length_m) {
  return rounded(millimetresFromMetres(length_m));
}

Json millimetresOf(const std::vector<double>& lengths_m) {
  Json values = Json::array();
  for (const double length_m : lengths_m)
    values.push_back(roundedMillimetres(length_m));
  return values;
}

std::string textOf(const BallColour& colour) {
  char text[8];
  std::snprintf(text, sizeof text, "#%02x%02x%02x", colour.red & 255, colour.green & 255, colour.blue & 255);
  return text;
}

Json colours(const BallSet& balls) {
  const BallSet usual = poolBalls();
  Json object = Json::object();
  for (int number = 0; number < BallName::kCount; ++number) {
    const auto i = static_cast<std::size_t>(number);
    if (balls.colours[i] != usual.colours[i]) object[toText(BallName(number))] = textOf(balls.colours[i]);
  }
  return object;
}

/// The mean over all sides of all tags, to half a millimetre.
double blackSide_mm(const std::vector<RailTag>& tags) {
  double sum_m = 0.0;
  for (const RailTag& tag : tags) {
    for (std::size_t i = 0; i < 4; ++i) {
      const TablePoint3& a = tag.corners[i];
      const TablePoint3& b = tag.corners[(i + 1) % 4];
      sum_m += std::hypot(a.x - b.x, a.y - b.y);
    }
  }
  return std::round(2.0 * millimetresFromMetres(sum_m) / (4.0 * static_cast<double>(tags.size()))) / 2.0;
}

/// All tags of a file share one black side; each keeps its own height.
void addTags(Json& object, const MeasuredTable& measured) {
  object["tag_dictionary"] = measured.tagDictionary;
  if (measured.tags.empty()) return;
  object["tag_black_side"] = blackSide_mm(measured.tags);
  object["tag_height_above_cloth"] = roundedMillimetres(measured.tags.front().corners[0].z);
  Json tags = Json::array();
  for (const RailTag& tag : measured.tags) {
    Json corners = Json::array();
    for (const TablePoint3& corner : tag.corners) {
      corners.push_back(Json::array({roundedMillimetres(corner.x), roundedMillimetres(corner.y)}));
    }
    tags.push_back({{"id", tag.id},
                    {"height_above_cloth", roundedMillimetres(tag.corners[0].z)},
                    {"corners", std::move(corners)}});
  }
  object["tags"] = std::move(tags);
}

}  // namespace

std::string measuredTableText(const MeasuredTable& measured) {
  MeasuredTable copy = measured;
  Json object;
  object["units"] = "mm";
  MeasuredTable usual;
  usual.table.noseHeight_m = tablefile::kNoseHeightOverDiameter * measured.balls.diameter_m;
  for (const tablefile::Size& size : tablefile::kSizes) {
    if (size.required || size.of(copy) != size.of(usual)) object[size.field] = rounded(size.of(copy) * size.perUnit);
  }
  if (Json own = colours(measured.balls); !own.empty()) object["ball_colours"] = std::move(own);
  addTags(object, measured);
  if (const auto& cue = measured.cueTags) {
    object["cue_tags"] = {{"dictionary", cue->dictionary},
                          {"ids", cue->ids},
                          {"black_side", roundedMillimetres(cue->blackSide_m)},
                          {"centre_distance_from_tip", millimetresOf(cue->centreFromTip_m)},
                          {"cue_radius_at_tags", millimetresOf(cue->cueRadius_m)}};
  }
  if (measured.bridgeHeight_m) object["bridge_height_to_cue_axis"] = roundedMillimetres(*measured.bridgeHeight_m);
  return object.dump(1);
}

}  // namespace ferrule
