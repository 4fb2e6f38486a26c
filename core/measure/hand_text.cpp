// SPDX-License-Identifier: GPL-3.0-or-later
#include <nlohmann/json.hpp>

#include "core/measure/hand_session.h"

namespace ferrule {

namespace {

using nlohmann::ordered_json;

template <class Value>
ordered_json wordOrNull(const std::optional<Value>& value) {
  return value ? ordered_json(std::string(toText(*value))) : ordered_json(nullptr);
}

/// A word that may be null. Throws when it is unknown, as the reader does for every other break of the form.
template <class FromText>
auto optionalWord(const ordered_json& value, FromText&& fromText) -> decltype(fromText(std::string_view{})) {
  if (value.is_null()) return std::nullopt;
  const auto known = fromText(value.get<std::string>());
  if (!known) throw std::invalid_argument("word");
  return known;
}
template <class FromText>
auto word(const ordered_json& value, FromText&& fromText) {
  return fromText(value.get<std::string>()).value();
}

ordered_json positionJson(const Position& position) {
  ordered_json balls = ordered_json::array();
  for (const BallAt& at : position)
    balls.push_back({{"ball", toText(at.ball)}, {"x_m", at.position.x}, {"y_m", at.position.y}});
  return balls;
}
Position positionFrom(const ordered_json& balls) {
  Position position;
  for (const ordered_json& at : balls) {
    position.push_back({word(at.at("ball"), ballFromText), {at.at("x_m").get<double>(), at.at("y_m").get<double>()}});
  }
  return position;
}

ordered_json shotJson(const LoggedShot& shot) {
  ordered_json others = ordered_json::array();
  for (const PocketedBall& ball : shot.said.others)
    others.push_back({{"ball", toText(ball.ball)}, {"pocket", std::string(toText(ball.pocket))}});
  return {{"outcome", std::string(toText(shot.said.outcome))},
          {"ball", wordOrNull(shot.said.ball)},
          {"pocket", wordOrNull(shot.said.pocket)},
          {"miss_side", wordOrNull(shot.said.missSide)},
          {"others", std::move(others)},
          {"foul", wordOrNull(shot.said.foul)},
          {"chosen", wordOrNull(shot.said.chosen)},
          {"time_s", shot.time_s},
          {"before", positionJson(shot.before)},
          {"after", positionJson(shot.after)},
          {"suggestion", shot.suggestion}};
}
LoggedShot shotFrom(const ordered_json& json) {
  LoggedShot shot;
  shot.said.outcome = word(json.at("outcome"), outcomeFromText);
  shot.said.ball = optionalWord(json.at("ball"), ballFromText);
  shot.said.pocket = optionalWord(json.at("pocket"), pocketFromText);
  shot.said.missSide = optionalWord(json.at("miss_side"), missSideFromText);
  for (const ordered_json& ball : json.at("others"))
    shot.said.others.push_back({word(ball.at("ball"), ballFromText), word(ball.at("pocket"), pocketFromText)});
  shot.said.foul = optionalWord(json.at("foul"), foulKindFromText);
  if (json.contains("chosen")) shot.said.chosen = optionalWord(json.at("chosen"), optionKindFromText);
  shot.time_s = json.at("time_s").get<double>();
  shot.before = positionFrom(json.at("before"));
  shot.after = positionFrom(json.at("after"));
  shot.suggestion = json.at("suggestion").get<std::string>();
  return shot;
}

}  // namespace

std::string handText(const HandSession& session) {
  const HandTerms& terms = session.terms();
  ordered_json shots = ordered_json::array();
  for (const LoggedShot& shot : session.state().shots)
    shots.push_back(shotJson(shot));
  return ordered_json{{"name", terms.name},
                      {"table_name", terms.tableName},
                      {"table", ordered_json::parse(measuredTableText(terms.table))},
                      {"game", wordOrNull(terms.game)},
                      {"players", terms.players},
                      {"frame", terms.frame},
                      {"breaker", std::string(toText(terms.breaker))},
                      {"balls", positionJson(session.state().balls)},
                      {"shots", std::move(shots)}}
      .dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

std::optional<HandSession> handFromText(const std::string& text) {
  try {
    const ordered_json json = ordered_json::parse(text);
    HandTerms terms;
    terms.name = json.at("name").get<std::string>();
    terms.tableName = json.at("table_name").get<std::string>();
    const auto table = parseMeasuredTable(json.at("table").dump(), terms.tableName);
    if (!table) return std::nullopt;
    terms.table = *table;
    terms.game = optionalWord(json.at("game"), gameFromText);
    terms.players = json.at("players").get<std::vector<std::string>>();
    terms.frame = json.at("frame").get<int>();
    terms.breaker = word(json.at("breaker"), seatFromText);
    HandState state;
    state.balls = positionFrom(json.at("balls"));
    for (const ordered_json& shot : json.at("shots"))
      state.shots.push_back(shotFrom(shot));
    return HandSession(std::move(terms), std::move(state));
  } catch (const std::exception&) {
    return std::nullopt;
  }
}

}  // namespace ferrule
