// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/check_file.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

using nlohmann::ordered_json;

/// The amounts by name, in the unit that the name carries.
ordered_json amountsOf(RigFault fault, const std::vector<double>& amounts) {
  ordered_json named = ordered_json::object();
  if (amounts.empty()) return named;
  switch (fault) {
    case RigFault::CameraMoved:
      named["camera_shift_mm"] = millimetresFromMetres(amounts.at(0));
      named["camera_turn_deg"] = degreesFromRadians(amounts.at(1));
      break;
    case RigFault::WrongImageSize:
      named["size_ratio"] = amounts.at(0);
      break;
    case RigFault::TagHeight:
      named["tags_higher_mm"] = millimetresFromMetres(amounts.at(0));
      break;
    case RigFault::TagMisplaced:
      named["tag_off_mm"] = millimetresFromMetres(amounts.at(0));
      break;
    case RigFault::TagTurned:
      named["tag_turned_deg"] = degreesFromRadians(amounts.at(0));
      break;
    case RigFault::TableSize:
      named["longer_mm"] = millimetresFromMetres(amounts.at(0));
      named["wider_mm"] = millimetresFromMetres(amounts.at(1));
      break;
    default:
      break;
  }
  return named;
}

}  // namespace

std::string checkText(const SelfCheck& check, const CheckNames& names) {
  ordered_json findings = ordered_json::array();
  for (const CheckFinding& finding : check.findings) {
    ordered_json line{{"kind", std::string(toText(finding.kind))}, {"what", finding.what}};
    line["found_mm"] = finding.found_m ? ordered_json(millimetresFromMetres(*finding.found_m)) : ordered_json(nullptr);
    line["sound_within_mm"] = millimetresFromMetres(finding.expected_m);
    findings.push_back(std::move(line));
  }
  ordered_json explanations = ordered_json::array();
  for (const Explanation& each : check.explanations) {
    explanations.push_back({{"fault", std::string(toText(each.fault))},
                            {"tags", each.tags},
                            {"amounts", amountsOf(each.fault, each.amounts)},
                            {"misfit", each.misfit},
                            {"unknowns", each.parameters},
                            {"probability", each.probability}});
  }
  const ordered_json object{
      {"format", "ferrule-check/1"},
      {"film", names.film},
      {"rig", names.rig},
      {"table", names.table},
      {"verdict", std::string(toText(check.verdict))},
      {"tags", check.tags},
      {"amounts", amountsOf(check.verdict, check.amounts)},
      {"confidence", check.confidence},
      {"cost",
       {{"rms_mm", millimetresFromMetres(check.costRms_m)},
        {"max_mm", millimetresFromMetres(check.costMax_m)},
        {"max_at_mm", {millimetresFromMetres(check.costliest.x), millimetresFromMetres(check.costliest.y)}}}},
      {"findings", std::move(findings)},
      {"explanations", std::move(explanations)}};
  return object.dump(1) + "\n";
}

}  // namespace ferrule
