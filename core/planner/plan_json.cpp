// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/plan_json.h"

#include <cmath>

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

/// Nothing and null are the same; a text that is no word of this kind is an error of the file.
template <typename Word>
std::optional<Word> wordIn(const Json& value, std::optional<Word> (*fromText)(std::string_view)) {
  if (value.is_null()) return std::nullopt;
  const auto word = fromText(value.get_ref<const std::string&>());
  if (!word) throw std::invalid_argument("word");
  return word;
}

double numberIn(const Json& object, const char* field) {
  return object.at(field).is_null() ? 0.0 : object.at(field).get<double>();
}

Chances chancesFrom(const Json& j) {
  Chances c;
  c.pot = numberIn(j, "pot_chance");
  c.potError = numberIn(j, "pot_chance_u");
  c.foul = numberIn(j, "foul_chance");
  c.scratch = numberIn(j, "scratch_chance");
  c.keeps = j.value("keeps_chance", 0.0);
  c.value = numberIn(j, "value");
  c.valueError = numberIn(j, "value_u");
  c.leave.mean = {metresFromMillimetres(numberIn(j, "leave_x_mm")), metresFromMillimetres(numberIn(j, "leave_y_mm"))};
  c.leave.along_m = metresFromMillimetres(numberIn(j, "leave_along_mm"));
  c.leave.across_m = metresFromMillimetres(numberIn(j, "leave_across_mm"));
  c.leave.direction_rad = radiansFromDegrees(numberIn(j, "leave_deg"));
  if (j.contains("next_ball")) c.nextBall = wordIn<BallName>(j["next_ball"], ballFromText);
  c.nextOpen = j.value("next_open", 0.0);
  c.opponentOpen = j.value("opponent_open", 0.0);
  return c;
}

}  // namespace

Json jsonFromPlan(const RankedPlan& ranked, const std::string& why) {
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
  j["keeps_chance"] = share(c.keeps);
  j["value"] = share(c.value);
  j["value_u"] = share(c.valueError);
  j["leave_x_mm"] = millimetres(c.leave.mean.x);
  j["leave_y_mm"] = millimetres(c.leave.mean.y);
  j["leave_along_mm"] = millimetres(c.leave.along_m);
  j["leave_across_mm"] = millimetres(c.leave.across_m);
  j["leave_deg"] = rounded(degreesFromRadians(c.leave.direction_rad), 10.0);
  j["next_ball"] = c.nextBall ? Json(toText(*c.nextBall)) : Json(nullptr);
  j["next_open"] = share(c.nextOpen);
  j["opponent_open"] = share(c.opponentOpen);
  j["why"] = why;
  return j;
}

std::optional<RankedPlan> planFromJson(const Json& j) try {
  RankedPlan ranked;
  ranked.rank = j.at("rank").get<int>();
  Plan& plan = ranked.plan;
  plan.ball = wordIn<BallName>(j.at("ball"), ballFromText).value();
  plan.pocket = wordIn<PocketName>(j.at("pocket"), pocketFromText);
  plan.kind = wordIn<PlanKind>(j.at("kind"), planKindFromText).value();
  plan.first = wordIn<BallName>(j.at("first"), ballFromText).value();
  plan.cushions = j.at("cushions").get<int>();
  plan.strike.aim_rad = radiansFromDegrees(j.at("aim_deg").get<double>());
  plan.strike.speed_mps = j.at("speed_m_s").get<double>();
  plan.strike.side = j.at("side").get<double>();
  plan.strike.height = j.at("height").get<double>();
  plan.strike.elevation_rad = radiansFromDegrees(j.at("elevation_deg").get<double>());
  if (!j.at("cue_x_mm").is_null()) {
    plan.cueBall = TablePoint{metresFromMillimetres(j["cue_x_mm"].get<double>()),
                              metresFromMillimetres(j.at("cue_y_mm").get<double>())};
  }
  ranked.chances = chancesFrom(j);
  return ranked;
} catch (const std::exception&) {
  return std::nullopt;
}

}  // namespace ferrule
