// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/ruling_text.h"

#include <nlohmann/json.hpp>
#include <type_traits>

namespace ferrule {

namespace {

using nlohmann::ordered_json;

template <class Word>
ordered_json word(const std::optional<Word>& value) {
  return value ? ordered_json(toText(*value)) : ordered_json(nullptr);
}

ordered_json ballsJson(const std::vector<BallName>& balls) {
  ordered_json all = ordered_json::array();
  for (const BallName ball : balls)
    all.push_back(toText(ball));
  return all;
}

/// The decision's own fields with what it rests on.
ordered_json ruledJson(ordered_json fields, const Evidence& evidence) {
  fields["edition"] = toText(evidence.rule.edition);
  fields["section"] = evidence.rule.section;
  fields["events"] = evidence.events;
  fields["sureness"] = toText(evidence.sureness);
  return fields;
}

ordered_json optionsJson(const std::vector<Option>& options) {
  ordered_json all = ordered_json::array();
  for (const Option& option : options) {
    all.push_back({{"kind", toText(option.kind)},
                   {"at_table", toText(option.atTable)},
                   {"cue_ball", toText(option.cueBall)},
                   {"rack", option.rack}});
  }
  return all;
}

ordered_json decisionsJson(const Ruling& ruling) {
  ordered_json fouls = ordered_json::array();
  for (const Foul& foul : ruling.fouls)
    fouls.push_back(ruledJson({{"kind", toText(foul.kind)}, {"ball", word(foul.ball)}}, foul.evidence));
  ordered_json spotted = ordered_json::array();
  for (const auto& [spotting, evidence] : ruling.spotted)
    spotted.push_back(ruledJson({{"ball", toText(spotting.ball)}, {"place", toText(spotting.place)}}, evidence));
  ordered_json questions = ordered_json::array();
  for (const auto& [doubt, evidence] : ruling.questions) {
    questions.push_back(
        ruledJson({{"doubt", toText(doubt.kind)}, {"ball", word(doubt.ball)}, {"other", word(doubt.other)}}, evidence));
  }
  ordered_json all{{"fouls", std::move(fouls)}, {"pot", nullptr}, {"group", nullptr}, {"result", nullptr}};
  if (ruling.pot) {
    all["pot"] = ruledJson({{"ball", toText(ruling.pot->value.ball)}, {"pocket", toText(ruling.pot->value.pocket)}},
                           ruling.pot->evidence);
  }
  if (ruling.shooterGroup) {
    all["group"] = ruledJson({{"value", toText(ruling.shooterGroup->value)}}, ruling.shooterGroup->evidence);
  }
  if (ruling.result) {
    const auto& [result, evidence] = *ruling.result;
    all["result"] = ruledJson({{"winner", toText(result.winner)}, {"why", toText(result.why)}}, evidence);
  }
  all["next"] = ruledJson({{"value", toText(ruling.next.value)}}, ruling.next.evidence);
  all["cue_ball"] = ruledJson({{"value", toText(ruling.cueBall.value)}}, ruling.cueBall.evidence);
  all["scored"] = ruledJson({{"value", ruling.points.value}}, ruling.points.evidence);
  all["spotted"] = std::move(spotted);
  all["questions"] = std::move(questions);
  return all;
}

ordered_json foulsJson(const std::vector<FoulKind>& kinds) {
  ordered_json all = ordered_json::array();
  for (const FoulKind kind : kinds)
    all.push_back(toText(kind));
  return all;
}

/// Only what it replaces.
ordered_json overruleJson(const Overrule& overrule) {
  ordered_json all{{"who", overrule.who}, {"reason", overrule.reason}};
  if (overrule.foul) all["foul"] = *overrule.foul ? ordered_json(toText(overrule.foulKind)) : ordered_json(nullptr);
  if (overrule.next) all["next"] = toText(*overrule.next);
  if (overrule.cueBall) all["cue_ball"] = toText(*overrule.cueBall);
  if (overrule.shooterGroup) all["group"] = toText(*overrule.shooterGroup);
  if (overrule.points) all["points"] = *overrule.points;
  if (overrule.onTable) all["on_table"] = ballsJson(*overrule.onTable);
  if (overrule.winner) all["winner"] = word(*overrule.winner);
  return all;
}

/// Only what differs from a testimony of which nothing is said.
ordered_json testimonyJson(const Testimony& said) {
  const Testimony plain;
  ordered_json all{{"kind", toText(said.kind)}};
  const auto add = [&all](const char* name, const auto& value, const auto& usual, auto&& text) {
    if (value != usual) all[name] = text(value);
  };
  const auto asWord = [](const auto& value) { return toText(value); };
  const auto asIs = [](const auto& value) { return value; };
  add("holds", said.holds, plain.holds, asIs);
  add("ball", said.ball, plain.ball, asWord);
  add("pocket", said.pocket, plain.pocket, asWord);
  add("cushion", said.cushion, plain.cushion, asWord);
  add("foul", said.foul, plain.foul, asWord);
  add("number", said.number, plain.number, asIs);
  add("seat", said.seat, plain.seat, asWord);
  add("doubt", said.doubt, plain.doubt, asWord);
  add("group", said.group, plain.group, asWord);
  if (said.call != plain.call) {
    all["call"] = {{"ball", word(said.call.ball)}, {"pocket", word(said.call.pocket)}, {"safety", said.call.safety}};
  }
  return all;
}

ordered_json saidJson(const SaidOfRuling& said) {
  ordered_json all{{"fouls", foulsJson(said.fouls)}, {"no_fouls", foulsJson(said.noFouls)}};
  if (said.overrule) all["overrule"] = overruleJson(*said.overrule);
  for (const Testimony& answer : said.answers)
    all["answers"].push_back(testimonyJson(answer));
  if (said.chosen) all["chosen"] = toText(*said.chosen);
  return all;
}

/// Reads what the writer wrote; the first thing that is not as expected spoils the whole.
class RulingReader {
 public:
  explicit RulingReader(const ordered_json& root) : root_(root) {}

  std::optional<RuledShot> read() {
    RuledShot ruled;
    ruled.game = value<Game>(root_, "game", gameFromText);
    ruled.edition = value<Edition>(root_, "edition", editionFromText);
    ruled.frame = root_.at("frame").get<int>();
    ruled.framesWon = root_.at("frames_won").get<std::array<int, 2>>();
    ruled.points = root_.at("points").get<std::array<int, 2>>();
    readDecisions(ruled.ruling);
    readRest(ruled.ruling);
    if (const auto said = root_.find("said"); said != root_.end()) readSaid(*said, ruled.said);
    return sound_ ? std::optional(std::move(ruled)) : std::nullopt;
  }

 private:
  template <class Word, class FromText>
  Word value(const ordered_json& object, const char* name, FromText&& fromText) {
    const auto known = fromText(object.at(name).get<std::string>());
    if (!known) sound_ = false;
    return known.value_or(Word{});
  }
  std::optional<BallName> ball(const ordered_json& object, const char* name) {
    if (object.at(name).is_null()) return std::nullopt;
    return value<BallName>(object, name, ballFromText);
  }
  template <class FromText>
  auto words(const ordered_json& object, const char* name, FromText&& fromText) {
    std::vector<typename decltype(fromText(std::string()))::value_type> all;
    for (const auto& entry : object.at(name)) {
      const auto known = fromText(entry.get<std::string>());
      if (known) all.push_back(*known);
      sound_ = sound_ && known.has_value();
    }
    return all;
  }
  std::vector<BallName> balls(const char* name) { return words(root_, name, ballFromText); }
  Evidence evidence(const ordered_json& object) {
    Evidence read;
    read.rule.edition = value<Edition>(object, "edition", editionFromText);
    read.rule.section = object.at("section").get<std::string>();
    read.events = object.at("events").get<std::vector<int>>();
    read.sureness = value<Verdict>(object, "sureness", verdictFromText);
    return read;
  }

  void readDecisions(Ruling& ruling) {
    for (const auto& foul : root_.at("fouls"))
      ruling.fouls.push_back({value<FoulKind>(foul, "kind", foulKindFromText), ball(foul, "ball"), evidence(foul)});
    if (const auto& pot = root_.at("pot"); !pot.is_null()) {
      const PocketedBall fell{value<BallName>(pot, "ball", ballFromText),
                              value<PocketName>(pot, "pocket", pocketFromText)};
      ruling.pot = {fell, evidence(pot)};
    }
    if (const auto& group = root_.at("group"); !group.is_null()) {
      ruling.shooterGroup = {value<Group>(group, "value", groupFromText), evidence(group)};
    }
    if (const auto& result = root_.at("result"); !result.is_null()) {
      const FrameResult frame{value<Seat>(result, "winner", seatFromText),
                              value<WinReason>(result, "why", winReasonFromText)};
      ruling.result = {frame, evidence(result)};
    }
    const auto& next = root_.at("next");
    ruling.next = {value<Seat>(next, "value", seatFromText), evidence(next)};
    const auto& cueBall = root_.at("cue_ball");
    ruling.cueBall = {value<CueBallPlace>(cueBall, "value", cueBallPlaceFromText), evidence(cueBall)};
    const auto& scored = root_.at("scored");
    ruling.points = {scored.at("value").get<std::array<int, 2>>(), evidence(scored)};
    for (const auto& spotted : root_.at("spotted")) {
      const Spotting spotting{value<BallName>(spotted, "ball", ballFromText),
                              value<SpotPlace>(spotted, "place", spotPlaceFromText)};
      ruling.spotted.push_back({spotting, evidence(spotted)});
    }
    for (const auto& question : root_.at("questions")) {
      const Doubt doubt{value<DoubtKind>(question, "doubt", doubtKindFromText), ball(question, "ball"),
                        ball(question, "other")};
      ruling.questions.push_back({doubt, evidence(question)});
    }
  }

  void readRest(Ruling& ruling) {
    ruling.sureness = value<Verdict>(root_, "sureness", verdictFromText);
    ruling.shooter = value<Seat>(root_, "shooter", seatFromText);
    ruling.pocketed = balls("pocketed");
    ruling.off = balls("off");
    ruling.restored = balls("restored");
    ruling.illegalBreak = root_.at("illegal_break").get<bool>();
    ruling.pushOut = root_.at("push_out").get<bool>();
    for (const auto& option : root_.at("options")) {
      ruling.options.push_back(
          {value<OptionKind>(option, "kind", optionKindFromText), value<Seat>(option, "at_table", seatFromText),
           value<CueBallPlace>(option, "cue_ball", cueBallPlaceFromText), option.at("rack").get<bool>()});
    }
    ruling.chooser = value<Seat>(root_, "chooser", seatFromText);
    ruling.unseen = words(root_, "unseen", foulKindFromText);
    ruling.phase = value<Phase>(root_, "phase", phaseFromText);
    ruling.racking = value<Racking>(root_, "racking", rackingFromText);
    ruling.onTable = balls("on_table");
    ruling.pushOutAllowed = root_.at("push_out_allowed").get<bool>();
    ruling.foulsInARow = root_.at("fouls_in_a_row").get<std::array<int, 2>>();
    ruling.warned = root_.at("warned").get<std::array<bool, 2>>();
    ruling.overruledBy = root_.at("overruled_by").get<std::string>();
    ruling.reason = root_.at("reason").get<std::string>();
  }

  Testimony testimony(const ordered_json& json) {
    Testimony said;
    said.kind = value<TestimonyKind>(json, "kind", testimonyKindFromText);
    const auto read = [&](const char* name, auto& field, auto&& fromText) {
      if (json.contains(name)) field = value<std::remove_reference_t<decltype(field)>>(json, name, fromText);
    };
    said.holds = json.value("holds", said.holds);
    said.number = json.value("number", said.number);
    read("ball", said.ball, ballFromText);
    read("pocket", said.pocket, pocketFromText);
    read("cushion", said.cushion, cushionFromText);
    read("foul", said.foul, foulKindFromText);
    read("seat", said.seat, seatFromText);
    read("doubt", said.doubt, doubtKindFromText);
    read("group", said.group, groupFromText);
    if (json.contains("call")) {
      const auto& call = json.at("call");
      said.call.ball = ball(call, "ball");
      if (!call.at("pocket").is_null()) said.call.pocket = value<PocketName>(call, "pocket", pocketFromText);
      said.call.safety = call.at("safety").get<bool>();
    }
    return said;
  }

  void readSaid(const ordered_json& json, SaidOfRuling& said) {
    said.fouls = words(json, "fouls", foulKindFromText);
    said.noFouls = words(json, "no_fouls", foulKindFromText);
    if (json.contains("answers")) {
      for (const auto& answer : json.at("answers"))
        said.answers.push_back(testimony(answer));
    }
    if (json.contains("chosen")) said.chosen = value<OptionKind>(json, "chosen", optionKindFromText);
    if (!json.contains("overrule")) return;
    const auto& from = json.at("overrule");
    Overrule overrule;
    overrule.who = from.at("who").get<std::string>();
    overrule.reason = from.at("reason").get<std::string>();
    if (overrule.who.empty()) sound_ = false;
    if (from.contains("foul")) {
      overrule.foul = !from.at("foul").is_null();
      if (*overrule.foul) overrule.foulKind = value<FoulKind>(from, "foul", foulKindFromText);
    }
    if (from.contains("next")) overrule.next = value<Seat>(from, "next", seatFromText);
    if (from.contains("cue_ball")) overrule.cueBall = value<CueBallPlace>(from, "cue_ball", cueBallPlaceFromText);
    if (from.contains("group")) overrule.shooterGroup = value<Group>(from, "group", groupFromText);
    if (from.contains("points")) overrule.points = from.at("points").get<std::array<int, 2>>();
    if (from.contains("on_table")) overrule.onTable = words(from, "on_table", ballFromText);
    if (from.contains("winner")) {
      const bool goesOn = from.at("winner").is_null();
      overrule.winner = goesOn ? std::optional<Seat>() : std::optional(value<Seat>(from, "winner", seatFromText));
    }
    said.overrule = std::move(overrule);
  }

  const ordered_json& root_;
  bool sound_ = true;
};

}  // namespace

std::string rulingText(const RuledShot& ruled) {
  const Ruling& ruling = ruled.ruling;
  ordered_json all{
      {"game", toText(ruled.game)},       {"edition", toText(ruled.edition)}, {"frame", ruled.frame},
      {"frames_won", ruled.framesWon},    {"points", ruled.points},           {"sureness", toText(ruling.sureness)},
      {"shooter", toText(ruling.shooter)}};
  all.update(decisionsJson(ruling));
  all["pocketed"] = ballsJson(ruling.pocketed);
  all["off"] = ballsJson(ruling.off);
  all["restored"] = ballsJson(ruling.restored);
  all["illegal_break"] = ruling.illegalBreak;
  all["push_out"] = ruling.pushOut;
  all["options"] = optionsJson(ruling.options);
  all["chooser"] = toText(ruling.chooser);
  all["unseen"] = foulsJson(ruling.unseen);
  all["phase"] = toText(ruling.phase);
  all["racking"] = toText(ruling.racking);
  all["on_table"] = ballsJson(ruling.onTable);
  all["push_out_allowed"] = ruling.pushOutAllowed;
  all["fouls_in_a_row"] = ruling.foulsInARow;
  all["warned"] = ruling.warned;
  all["overruled_by"] = ruling.overruledBy;
  all["reason"] = ruling.reason;
  if (ruled.said != SaidOfRuling{}) all["said"] = saidJson(ruled.said);
  return all.dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

std::optional<RuledShot> rulingFromText(std::string_view text) {
  const auto root = ordered_json::parse(text, nullptr, false);
  if (!root.is_object()) return std::nullopt;
  try {
    return RulingReader(root).read();
  } catch (const nlohmann::json::exception&) {
    return std::nullopt;
  }
}

}  // namespace ferrule
