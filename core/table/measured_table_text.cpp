// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/geometry/units.h"
#include "core/table/measured_table.h"

namespace ferrule {

namespace {

using nlohmann::ordered_json;

/// Millimetres without the digits that the conversion from metres adds: 2235, never 2234.9999999999995.
double writtenMillimetres(double length_m) { return std::round(millimetresFromMetres(length_m) * 1e9) / 1e9; }

ordered_json written(const std::vector<double>& lengths_m) {
  ordered_json all = ordered_json::array();
  for (const double length_m : lengths_m) all.push_back(writtenMillimetres(length_m));
  return all;
}

}  // namespace

std::string measuredTableText(const MeasuredTable& measured) {
  ordered_json object{{"units", "mm"},
                      {"table_length_nose_to_nose", writtenMillimetres(measured.table.length_m)},
                      {"table_width_nose_to_nose", writtenMillimetres(measured.table.width_m)},
                      {"ball_diameter", writtenMillimetres(measured.balls.diameter_m)},
                      {"corner_pocket_mouth", writtenMillimetres(measured.table.corner.mouth_m)},
                      {"side_pocket_mouth", writtenMillimetres(measured.table.side.mouth_m)},
                      {"tag_dictionary", measured.tagDictionary}};
  if (!measured.tags.empty()) {
    const auto& first = measured.tags.front().corners;
    object["tag_black_side"] = writtenMillimetres(std::hypot(first[0].x - first[1].x, first[0].y - first[1].y));
    object["tag_height_above_cloth"] = writtenMillimetres(first[0].z);
    ordered_json tags = ordered_json::array();
    for (const RailTag& tag : measured.tags) {
      ordered_json corners = ordered_json::array();
      for (const TablePoint3& corner : tag.corners) corners.push_back(written({corner.x, corner.y}));
      tags.push_back({{"id", tag.id},
                      {"height_above_cloth", writtenMillimetres(tag.corners[0].z)},
                      {"corners", std::move(corners)}});
    }
    object["tags"] = std::move(tags);
  }
  if (measured.cueTags) {
    object["cue_tags"] = {{"dictionary", measured.cueTags->dictionary},
                          {"ids", measured.cueTags->ids},
                          {"black_side", writtenMillimetres(measured.cueTags->blackSide_m)},
                          {"centre_distance_from_tip", written(measured.cueTags->centreFromTip_m)},
                          {"cue_radius_at_tags", written(measured.cueTags->cueRadius_m)}};
  }
  if (measured.bridgeHeight_m) object["bridge_height_to_cue_axis"] = writtenMillimetres(*measured.bridgeHeight_m);
  return object.dump(1);
}

}  // namespace ferrule
