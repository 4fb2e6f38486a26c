// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/suggestion_entry_text.h"

#include <nlohmann/json.hpp>

namespace ferrule {

namespace {

using Json = nlohmann::ordered_json;

Json realJson(const std::optional<double>& value) {
  return value ? Json(*value) : Json(nullptr);
}

std::optional<double> realFrom(const Json& json) {
  return json.is_null() ? std::nullopt : std::optional(json.get<double>());
}

}  // namespace

std::string keptSuggestionText(const SuggestionEntry& suggestion) {
  return Json{{"planner", suggestion.planner},
              {"shown", suggestion.shown},
              {"choice_loss", realJson(suggestion.choiceLoss)},
              {"delivery_loss", realJson(suggestion.deliveryLoss)},
              {"content", suggestion.content}}
      .dump();
}

std::optional<SuggestionEntry> keptSuggestionFromText(std::string_view text) try {
  const Json json = Json::parse(text);
  return SuggestionEntry{json.at("planner").get<std::string>(), json.at("shown").get<bool>(),
                         realFrom(json.at("choice_loss")), realFrom(json.at("delivery_loss")),
                         json.at("content").get<std::string>()};
} catch (const nlohmann::json::exception&) {
  return std::nullopt;
}

}  // namespace ferrule
