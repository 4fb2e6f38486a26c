// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/shot_explanation.h"

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>
#include <string_view>
#include <utility>

namespace ferrule {

namespace {

using nlohmann::ordered_json;

constexpr std::array<std::pair<const char*, Measured MissAccount::*>, 8> kParts{{
    {"total", &MissAccount::total_rad},
    {"aim", &MissAccount::aim_rad},
    {"squirt", &MissAccount::squirt_rad},
    {"swerve", &MissAccount::swerve_rad},
    {"collision_throw", &MissAccount::collisionThrow_rad},
    {"spin_throw", &MissAccount::spinThrow_rad},
    {"speed", &MissAccount::speed_rad},
    {"remainder", &MissAccount::remainder_rad},
}};

constexpr std::array<std::pair<const char*, std::optional<double> Target::*>, 5> kTargetFields{{
    {"line_error_u_rad", &Target::lineErrorUncertainty_rad},
    {"miss_at_mouth_m", &Target::missAtMouth_m},
    {"contact_error_m", &Target::contactError_m},
    {"fullness", &Target::fullness},
    {"opening_m", &Target::opening_m},
}};

constexpr std::array<std::pair<const char*, std::optional<NotShown> Delivery::*>, 4> kReasons{{
    {"strike_why", &Delivery::whyNoStrike},
    {"side_why", &Delivery::whyNoSide},
    {"height_why", &Delivery::whyNoHeight},
    {"elevation_why", &Delivery::whyNoElevation},
}};

constexpr std::array<std::pair<const char*, bool Target::*>, 2> kTargetTruths{{
    {"rattled", &Target::rattled},
    {"called", &Target::called},
}};

/// What a reading says of itself.
constexpr std::array<std::string_view, 5> kOwnFields{"miss_account", "target", "events", "delivery", "flags"};

/// The word of an enum whose values run from 0 to last.
template <class Word>
std::optional<Word> wordFromText(const std::string& text, Word last) {
  for (int i = 0; i <= static_cast<int>(last); ++i) {
    if (toText(static_cast<Word>(i)) == text) return static_cast<Word>(i);
  }
  return std::nullopt;
}

}  // namespace

std::optional<std::string> explanationText(const ShotReading& shot) {
  ordered_json object = ordered_json::object();
  if (shot.missAccount) {
    ordered_json& account = object["miss_account"];
    for (const auto& [name, part] : kParts) {
      const Measured& value = (*shot.missAccount).*part;
      account[std::string(name) + "_rad"] = value.value;
      account[std::string(name) + "_u_rad"] = value.standardUncertainty;
    }
  }
  if (shot.target) {
    ordered_json target = ordered_json::object();
    for (const auto& [name, field] : kTargetFields) {
      if (const auto& value = (*shot.target).*field) target[name] = *value;
    }
    for (const auto& [name, field] : kTargetTruths) {
      if ((*shot.target).*field) target[name] = true;
    }
    if (!target.empty()) object["target"] = std::move(target);
  }
  // Lists as long as the events, so that each finds its own.
  ordered_json uncertainties = ordered_json::array();
  ordered_json verdicts = ordered_json::array();
  bool judged = false;
  for (const ShotEvent& event : shot.events) {
    uncertainties.push_back(event.timeUncertainty_s);
    verdicts.push_back(event.verdict ? ordered_json(toText(*event.verdict)) : ordered_json(nullptr));
    judged = judged || event.verdict || event.timeUncertainty_s > 0.0;
  }
  if (judged) object["events"] = {{"t_u_s", std::move(uncertainties)}, {"verdict", std::move(verdicts)}};
  ordered_json reasons = ordered_json::object();
  for (const auto& [name, field] : kReasons) {
    if (const auto& reason = shot.delivery.*field) reasons[name] = toText(*reason);
  }
  if (!reasons.empty()) object["delivery"] = std::move(reasons);
  for (const ShotFlag flag : shot.flags)
    object["flags"].push_back(toText(flag));
  if (object.empty()) return std::nullopt;
  return object.dump();
}

std::optional<std::string> explanationAnew(const ShotReading& shot, const std::optional<std::string>& before) {
  const std::optional<std::string> now = explanationText(shot);
  const ordered_json old = before ? ordered_json::parse(*before, nullptr, false) : ordered_json();
  if (!old.is_object()) return now;
  ordered_json object = now ? ordered_json::parse(*now) : ordered_json::object();
  for (const auto& [name, value] : old.items()) {
    if (std::ranges::find(kOwnFields, name) == kOwnFields.end()) object[name] = value;
  }
  if (object.empty()) return std::nullopt;
  return object.dump();
}

bool explain(ShotReading& shot, const std::string& text) {
  ShotReading told = shot;
  // A text that somebody changed may hold any type anywhere; only exceptions of the library tell.
  try {
    const ordered_json object = ordered_json::parse(text);
    if (!object.is_object()) return false;
    if (object.contains("miss_account")) {
      MissAccount account;
      for (const auto& [name, part] : kParts) {
        const ordered_json& json = object["miss_account"];
        account.*part = {json.at(std::string(name) + "_rad").get<double>(),
                         json.at(std::string(name) + "_u_rad").get<double>()};
      }
      told.missAccount = account;
    }
    if (object.contains("target") && told.target) {
      const ordered_json& json = object["target"];
      for (const auto& [name, field] : kTargetFields) {
        if (json.contains(name)) (*told.target).*field = json[name].get<double>();
      }
      for (const auto& [name, field] : kTargetTruths)
        (*told.target).*field = json.value(name, false);
    }
    if (object.contains("events")) {
      const ordered_json& uncertainties = object["events"].at("t_u_s");
      const ordered_json& verdicts = object["events"].at("verdict");
      for (std::size_t i = 0; i < told.events.size() && i < uncertainties.size() && i < verdicts.size(); ++i) {
        told.events[i].timeUncertainty_s = uncertainties[i].get<double>();
        if (verdicts[i].is_null()) continue;
        told.events[i].verdict = verdictFromText(verdicts[i].get<std::string>());
        if (!told.events[i].verdict) return false;
      }
    }
    for (const auto& [name, field] : kReasons) {
      if (!object.contains("delivery") || !object["delivery"].contains(name)) continue;
      told.delivery.*field = wordFromText(object["delivery"][name].get<std::string>(), NotShown::NoHopNoCurve);
      if (!(told.delivery.*field)) return false;
    }
    if (object.contains("flags")) {
      told.flags.clear();
      for (const ordered_json& word : object["flags"]) {
        const auto flag = wordFromText(word.get<std::string>(), ShotFlag::UnsurePocket);
        if (!flag) return false;
        told.flags.push_back(*flag);
      }
    }
  } catch (const nlohmann::json::exception&) {
    return false;
  }
  shot = std::move(told);
  return true;
}

std::optional<std::string> explanationWithoutTarget(const std::string& text) {
  ordered_json object = ordered_json::parse(text, nullptr, false);
  if (!object.is_object()) return std::nullopt;
  object.erase("miss_account");
  object.erase("target");
  if (object.empty()) return std::nullopt;
  return object.dump();
}

}  // namespace ferrule
