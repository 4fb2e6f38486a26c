// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/suggestion_text.h"

#include <nlohmann/json.hpp>

#include "core/base/contract.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

using Json = nlohmann::ordered_json;

/// To this many parts of the unit: a quotient is the double nearest to its short decimal, a product is not.
double rounded(double value, double parts) {
  return std::round(value * parts) / parts;
}

double millimetres(double length_m) {
  return rounded(millimetresFromMetres(length_m), 10.0);
}

double share(double value) {
  return rounded(value, 1e4);
}

Json planJson(const RankedPlan& ranked, const std::string& why) {
  const Plan& plan = ranked.plan;
  const Chances& c = ranked.chances;
  Json j;
  j["rank"] = ranked.rank;
  j["ball"] = toText(plan.ball);
  j["pocket"] = plan.pocket ? Json(toText(*plan.pocket)) : Json(nullptr);
  j["kind"] = toText(plan.kind);
  j["first"] = toText(plan.first);
  j["cushions"] = plan.cushions;
  // Not rounded: a thousandth of a degree can decide a thin cut.
  j["aim_deg"] = degreesFromRadians(wrapAngle(plan.strike.aim_rad));
  j["speed_m_s"] = plan.strike.speed_mps;
  j["side"] = plan.strike.side;
  j["height"] = plan.strike.height;
  j["elevation_deg"] = degreesFromRadians(plan.strike.elevation_rad);
  j["cue_x_mm"] = plan.cueBall ? Json(millimetresFromMetres(plan.cueBall->x)) : Json(nullptr);
  j["cue_y_mm"] = plan.cueBall ? Json(millimetresFromMetres(plan.cueBall->y)) : Json(nullptr);
  j["pot_chance"] = plan.pocket ? Json(share(c.pot)) : Json(nullptr);
  j["pot_chance_u"] = plan.pocket ? Json(share(c.potError)) : Json(nullptr);
  j["foul_chance"] = share(c.foul);
  j["scratch_chance"] = share(c.scratch);
  j["value"] = share(c.value);
  j["value_u"] = share(c.valueError);
  j["leave_x_mm"] = millimetres(c.leave.mean.x);
  j["leave_y_mm"] = millimetres(c.leave.mean.y);
  j["leave_along_mm"] = millimetres(c.leave.along_m);
  j["leave_across_mm"] = millimetres(c.leave.across_m);
  j["leave_deg"] = rounded(degreesFromRadians(c.leave.direction_rad), 10.0);
  j["why"] = why;
  return j;
}

}  // namespace

std::string suggestionText(const Suggestion& suggestion, const Scatter& scatter, const std::vector<std::string>& why) {
  FERRULE_REQUIRE(why.size() == suggestion.plans.size());
  Json j;
  j["format"] = "ferrule-suggested/1";
  j["planner"] = kPlannerVersion;
  j["simulations"] = suggestion.simulations;
  j["settled"] = suggestion.end == SearchEnd::Settled;
  j["scatter"] = {{"aim_deg", rounded(degreesFromRadians(scatter.aim_rad), 1e4)},
                  {"speed", share(scatter.speed)},
                  {"side", share(scatter.side)},
                  {"height", share(scatter.height)},
                  {"elevation_deg", rounded(degreesFromRadians(scatter.elevation_rad), 1e3)}};
  j["plans"] = Json::array();
  for (std::size_t i = 0; i < suggestion.plans.size(); ++i)
    j["plans"].push_back(planJson(suggestion.plans[i], why[i]));
  return j.dump(1) + "\n";
}

}  // namespace ferrule
