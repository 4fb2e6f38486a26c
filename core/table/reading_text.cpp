// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/reading_text.h"

#include <array>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <utility>

#include "core/table/shot_explanation.h"

namespace ferrule {

namespace {

using nlohmann::ordered_json;

constexpr std::array<std::pair<const char*, std::optional<Measured> Delivery::*>, 5> kDelivery{{
    {"aim_rad", &Delivery::aim_rad},
    {"speed_mps", &Delivery::speed_mps},
    {"side", &Delivery::side},
    {"height", &Delivery::height},
    {"elevation_rad", &Delivery::elevation_rad},
}};

template <class Word>
ordered_json word(const std::optional<Word>& value) {
  return value ? ordered_json(toText(*value)) : ordered_json(nullptr);
}

/// A word that must be one of ours.
template <class FromText>
auto known(const ordered_json& json, FromText&& fromText) {
  const auto value = fromText(json.get<std::string>());
  if (!value) throw std::invalid_argument("word");
  return *value;
}

template <class FromText>
auto optionalKnown(const ordered_json& json, FromText&& fromText) -> decltype(fromText(std::string())) {
  if (json.is_null()) return std::nullopt;
  return known(json, fromText);
}

std::optional<double> optionalReal(const ordered_json& json) {
  if (json.is_null()) return std::nullopt;
  return json.get<double>();
}

ordered_json realOrNull(const std::optional<double>& value) {
  return value ? ordered_json(*value) : ordered_json(nullptr);
}

ordered_json positionJson(const Position& position) {
  ordered_json all = ordered_json::array();
  for (const BallAt& at : position)
    all.push_back({toText(at.ball), at.position.x, at.position.y});
  return all;
}

Position positionFrom(const ordered_json& json) {
  Position position;
  for (const ordered_json& at : json)
    position.push_back({known(at.at(0), ballFromText), {at.at(1).get<double>(), at.at(2).get<double>()}});
  return position;
}

ordered_json eventJson(const ShotEvent& event) {
  return {{"time_s", event.time_s},     {"kind", toText(event.kind)},     {"ball", toText(event.ball)},
          {"other", word(event.other)}, {"cushion", word(event.cushion)}, {"pocket", word(event.pocket)},
          {"x_m", event.position.x},    {"y_m", event.position.y}};
}

ShotEvent eventFrom(const ordered_json& json) {
  ShotEvent event;
  event.time_s = json.at("time_s").get<double>();
  event.kind = known(json.at("kind"), eventKindFromText);
  event.ball = known(json.at("ball"), ballFromText);
  event.other = optionalKnown(json.at("other"), ballFromText);
  event.cushion = optionalKnown(json.at("cushion"), cushionFromText);
  event.pocket = optionalKnown(json.at("pocket"), pocketFromText);
  event.position = {json.at("x_m").get<double>(), json.at("y_m").get<double>()};
  return event;
}

ordered_json targetJson(const Target& target) {
  return {{"ball", toText(target.ball)},
          {"pocket", toText(target.pocket)},
          {"cut_rad", realOrNull(target.cut_rad)},
          {"line_error_rad", realOrNull(target.lineError_rad)},
          {"miss_side", word(target.missSide)}};
}

Target targetFrom(const ordered_json& json) {
  Target target;
  target.ball = known(json.at("ball"), ballFromText);
  target.pocket = known(json.at("pocket"), pocketFromText);
  target.cut_rad = optionalReal(json.at("cut_rad"));
  target.lineError_rad = optionalReal(json.at("line_error_rad"));
  target.missSide = optionalKnown(json.at("miss_side"), missSideFromText);
  return target;
}

}  // namespace

std::string readingText(const ShotReading& reading) {
  ordered_json events = ordered_json::array();
  for (const ShotEvent& event : reading.events)
    events.push_back(eventJson(event));
  ordered_json pocketed = ordered_json::array();
  for (const PocketedBall& ball : reading.pocketed)
    pocketed.push_back({toText(ball.ball), toText(ball.pocket)});
  ordered_json delivery = ordered_json::object();
  for (const auto& [name, field] : kDelivery) {
    if (const auto& value = reading.delivery.*field) delivery[name] = {value->value, value->standardUncertainty};
  }
  ordered_json all{{"strike_s", reading.strike_s},
                   {"rest_s", reading.rest_s},
                   {"outcome", toText(reading.outcome)},
                   {"verdict", toText(reading.outcomeVerdict)},
                   {"first_contact", word(reading.firstContact)},
                   {"scratch", reading.scratch},
                   {"target", reading.target ? targetJson(*reading.target) : ordered_json(nullptr)},
                   {"before", positionJson(reading.before)},
                   {"after", positionJson(reading.after)},
                   {"delivery", std::move(delivery)},
                   {"events", std::move(events)},
                   {"pocketed", std::move(pocketed)}};
  if (const auto explanation = explanationText(reading)) all["explanation"] = ordered_json::parse(*explanation);
  return all.dump();
}

std::optional<ShotReading> readingFromText(std::string_view text, int number) {
  // A text that somebody changed may hold any type anywhere; only exceptions of the library tell.
  try {
    const ordered_json all = ordered_json::parse(text);
    ShotReading reading;
    reading.number = number;
    reading.strike_s = all.at("strike_s").get<double>();
    reading.rest_s = all.at("rest_s").get<double>();
    reading.outcome = known(all.at("outcome"), outcomeFromText);
    reading.outcomeVerdict = known(all.at("verdict"), verdictFromText);
    reading.firstContact = optionalKnown(all.at("first_contact"), ballFromText);
    reading.scratch = all.at("scratch").get<bool>();
    if (const ordered_json& target = all.at("target"); !target.is_null()) reading.target = targetFrom(target);
    reading.before = positionFrom(all.at("before"));
    reading.after = positionFrom(all.at("after"));
    for (const auto& [name, field] : kDelivery) {
      const ordered_json& delivery = all.at("delivery");
      if (!delivery.contains(name)) continue;
      reading.delivery.*field = Measured{delivery[name].at(0).get<double>(), delivery[name].at(1).get<double>()};
    }
    for (const ordered_json& event : all.at("events"))
      reading.events.push_back(eventFrom(event));
    for (const ordered_json& ball : all.at("pocketed"))
      reading.pocketed.push_back({known(ball.at(0), ballFromText), known(ball.at(1), pocketFromText)});
    if (all.contains("explanation") && !explain(reading, all["explanation"].dump())) return std::nullopt;
    return reading;
  } catch (const nlohmann::json::exception&) {
    return std::nullopt;
  } catch (const std::invalid_argument&) {
    return std::nullopt;
  }
}

}  // namespace ferrule
