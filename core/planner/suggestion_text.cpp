// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/suggestion_text.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/base/contract.h"
#include "core/geometry/units.h"
#include "core/planner/plan_json.h"

namespace ferrule {

namespace {

using Json = nlohmann::ordered_json;

constexpr const char* kFormat = "ferrule-suggested/1";

/// To this many parts of the unit: a quotient is the double nearest to its short decimal, a product is not.
double rounded(double value, double parts) {
  return std::round(value * parts) / parts;
}

Json scatterJson(const Scatter& scatter) {
  return {{"aim_deg", rounded(degreesFromRadians(scatter.aim_rad), 1e4)},
          {"speed", rounded(scatter.speed, 1e4)},
          {"side", rounded(scatter.side, 1e4)},
          {"height", rounded(scatter.height, 1e4)},
          {"elevation_deg", rounded(degreesFromRadians(scatter.elevation_rad), 1e3)}};
}

Scatter scatterFrom(const Json& j) {
  return {radiansFromDegrees(j.at("aim_deg").get<double>()), j.at("speed").get<double>(), j.at("side").get<double>(),
          j.at("height").get<double>(), radiansFromDegrees(j.at("elevation_deg").get<double>())};
}

Json reviewJson(const ShotReview& review) {
  return {{"suggested", jsonFromPlan(review.suggested, {})},
          {"taken", jsonFromPlan(review.taken, {})},
          {"came_out_value", rounded(review.cameOutValue, 1e4)},
          {"choice_loss", rounded(review.choiceLoss, 1e4)},
          {"choice_loss_u", rounded(review.choiceLossError, 1e4)},
          {"delivery_loss", rounded(review.deliveryLoss, 1e4)},
          {"tie", review.tie}};
}

ShotReview reviewFrom(const Json& j) {
  return {planFromJson(j.at("suggested")).value(),
          planFromJson(j.at("taken")).value(),
          j.at("came_out_value").get<double>(),
          j.at("choice_loss").get<double>(),
          j.at("choice_loss_u").get<double>(),
          j.at("delivery_loss").get<double>(),
          j.at("tie").get<bool>()};
}

}  // namespace

std::string suggestionText(const Suggestion& suggestion, const Scatter& scatter, const std::vector<std::string>& why,
                           const std::optional<ShotReview>& review, const std::string& situation) {
  FERRULE_REQUIRE(why.empty() || why.size() == suggestion.plans.size());
  Json j;
  j["format"] = kFormat;
  j["planner"] = kPlannerVersion;
  j["simulations"] = suggestion.simulations;
  j["settled"] = suggestion.end == SearchEnd::Settled;
  j["direct_chance"] = rounded(suggestion.directChance, 1e4);
  j["scatter"] = scatterJson(scatter);
  j["plans"] = Json::array();
  for (std::size_t i = 0; i < suggestion.plans.size(); ++i)
    j["plans"].push_back(jsonFromPlan(suggestion.plans[i], why.empty() ? std::string() : why[i]));
  if (review) j["review"] = reviewJson(*review);
  if (!situation.empty()) j["situation"] = situation;
  return j.dump(1) + "\n";
}

std::optional<KeptSuggestion> suggestionFromText(std::string_view text) try {
  const Json j = Json::parse(text);
  if (j.at("format") != kFormat) return std::nullopt;
  KeptSuggestion kept;
  kept.plannerVersion = j.at("planner").get<int>();
  kept.suggestion.simulations = j.at("simulations").get<long>();
  kept.suggestion.end = j.at("settled").get<bool>() ? SearchEnd::Settled : SearchEnd::Budget;
  // Older ones do not know.
  kept.suggestion.directChance = j.value("direct_chance", 0.0);
  kept.scatter = scatterFrom(j.at("scatter"));
  for (const Json& object : j.at("plans"))
    kept.suggestion.plans.push_back(planFromJson(object).value());
  if (j.contains("review")) kept.review = reviewFrom(j["review"]);
  kept.situation = j.value("situation", std::string());
  return kept;
} catch (const std::exception&) {
  // Not ours, or cut off: there is nothing to show.
  return std::nullopt;
}

}  // namespace ferrule
