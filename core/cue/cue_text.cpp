// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/cue_text.h"

#include <nlohmann/json.hpp>

#include "core/geometry/units.h"
#include "core/table/shot_text.h"

namespace ferrule {

namespace {

using nlohmann::ordered_json;

constexpr double kDegree = 1e-5;
constexpr double kSpeed_mps = 1e-5;
constexpr double kMicrometre_mm = 1e-3;
constexpr double kMicrosecond_s = 1e-6;
constexpr double kShare = 1e-4;

/// A value of a file and what it is inside.
struct Unit {
  double perInside = 1.0;
  double step = 1.0;
};

Unit degrees() {
  return {degreesFromRadians(1.0), kDegree};
}
constexpr Unit kMillimetres{1000.0, kMicrometre_mm};
constexpr Unit kMetresPerSecond{1.0, kSpeed_mps};

/// One measured value: its name without and with "u" before the unit.
struct Field {
  const char* name;
  const char* uncertainty;
  std::optional<Measured> CueReading::*value;
  Unit unit;
};

std::vector<Field> fields() {
  return {
      {"aim_deg", "aim_u_deg", &CueReading::aim_rad, degrees()},
      {"elevation_deg", "elevation_u_deg", &CueReading::elevation_rad, degrees()},
      {"tip_side_mm", "tip_side_u_mm", &CueReading::tipSide_m, kMillimetres},
      {"tip_height_mm", "tip_height_u_mm", &CueReading::tipHeight_m, kMillimetres},
      {"steadiness_deg", "steadiness_u_deg", &CueReading::steadiness_rad, degrees()},
      {"tip_speed_m_s", "tip_speed_u_m_s", &CueReading::tipSpeed_mps, kMetresPerSecond},
      {"aim_before_minus_after_deg", "aim_before_minus_after_u_deg", &CueReading::aimBeforeMinusAfter_rad, degrees()},
      {"pitch_bias_deg", "pitch_bias_u_deg", &CueReading::sensorBias_rad, degrees()},
  };
}

ordered_json number(double value, double step) {
  return ordered_json::parse(numberText(value, step));
}

void put(ordered_json& object, const char* name, const char* uncertainty, const std::optional<Measured>& value,
         Unit unit) {
  object[name] = value ? number(value->value * unit.perInside, unit.step) : ordered_json(nullptr);
  object[uncertainty] = value ? number(value->standardUncertainty * unit.perInside, unit.step) : ordered_json(nullptr);
}

std::optional<Measured> measuredIn(const ordered_json& value, const ordered_json& uncertainty, Unit unit) {
  if (value.is_null()) return std::nullopt;
  return Measured{value.get<double>() / unit.perInside, uncertainty.get<double>() / unit.perInside};
}

ordered_json toJson(const CueReading& reading) {
  ordered_json object;
  object["source"] = toText(reading.source);
  object["images"] = reading.images;
  for (const Field& field : fields())
    put(object, field.name, field.uncertainty, reading.*field.value, field.unit);
  const auto inRadii = [&](const std::optional<Measured>& value) -> std::optional<Measured> {
    if (!value || !(reading.ballRadius_m > 0.0)) return std::nullopt;
    return Measured{value->value / reading.ballRadius_m, value->standardUncertainty / reading.ballRadius_m};
  };
  put(object, "tip_side", "tip_side_u", inRadii(reading.tipSide_m), {1.0, kDegree});
  put(object, "tip_height", "tip_height_u", inRadii(reading.tipHeight_m), {1.0, kDegree});
  object["ball_radius_mm"] = number(millimetresFromMetres(reading.ballRadius_m), kMicrometre_mm);
  object["pitch_log"] = toText(reading.log);
  if (reading.log == LogUse::Shifted) object["pitch_log_minus_film_s"] = number(reading.logMinusFilm_s, kMicrosecond_s);
  if (reading.tags) {
    object["tag_module_px"] = number(reading.tags->module_px, kMicrometre_mm);
    object["tags_read"] = number(reading.tags->readShare, kShare);
    object["tag_side_needed_mm"] = reading.tags->sideNeeded_m
                                       ? number(millimetresFromMetres(*reading.tags->sideNeeded_m), kMicrometre_mm)
                                       : ordered_json(nullptr);
  }
  ordered_json course = {{"t_s", ordered_json::array()},
                         {"aim_deg", ordered_json::array()},
                         {"aim_u_deg", ordered_json::array()},
                         {"elevation_deg", ordered_json::array()},
                         {"elevation_u_deg", ordered_json::array()}};
  for (const CueAt& at : reading.course) {
    ordered_json one;
    put(one, "aim_deg", "aim_u_deg", at.aim_rad, degrees());
    put(one, "elevation_deg", "elevation_u_deg", at.elevation_rad, degrees());
    course["t_s"].push_back(number(at.time_s, kMicrosecond_s));
    for (const auto& [name, value] : one.items())
      course[name].push_back(value);
  }
  object["course"] = std::move(course);
  return object;
}

/// Throws the library's exceptions on anything that is not ours.
CueReading fromJson(const ordered_json& object) {
  CueReading reading;
  reading.source = cueSourceFromText(object.at("source").get<std::string>()).value_or(CueSource::Tags);
  reading.images = object.at("images").get<int>();
  for (const Field& field : fields())
    reading.*field.value = measuredIn(object.at(field.name), object.at(field.uncertainty), field.unit);
  reading.ballRadius_m = metresFromMillimetres(object.at("ball_radius_mm").get<double>());
  reading.log = logUseFromText(object.at("pitch_log").get<std::string>()).value_or(LogUse::None);
  reading.logMinusFilm_s = object.value("pitch_log_minus_film_s", 0.0);
  if (object.contains("tag_module_px")) {
    TagsSeen tags;
    tags.module_px = object.at("tag_module_px").get<double>();
    tags.readShare = object.at("tags_read").get<double>();
    const ordered_json& needed = object.at("tag_side_needed_mm");
    if (!needed.is_null()) tags.sideNeeded_m = metresFromMillimetres(needed.get<double>());
    reading.tags = tags;
  }
  const ordered_json& course = object.at("course");
  for (std::size_t i = 0; i < course.at("t_s").size(); ++i) {
    CueAt at;
    at.time_s = course.at("t_s").at(i).get<double>();
    at.aim_rad = measuredIn(course.at("aim_deg").at(i), course.at("aim_u_deg").at(i), degrees()).value_or(Measured{});
    at.elevation_rad = measuredIn(course.at("elevation_deg").at(i), course.at("elevation_u_deg").at(i), degrees());
    reading.course.push_back(at);
  }
  return reading;
}

std::optional<CueReading> readJson(const ordered_json& object) {
  // A text that somebody changed may hold any type anywhere; only exceptions of the library tell.
  try {
    return fromJson(object);
  } catch (const nlohmann::json::exception&) {
    return std::nullopt;
  }
}

}  // namespace

std::string cueText(const CueReading& reading) {
  return toJson(reading).dump();
}

std::optional<CueReading> cueFromText(const std::string& text) {
  return readJson(ordered_json::parse(text, nullptr, false));
}

std::string explanationWithCue(const std::string& explanation, const CueReading& reading) {
  ordered_json object = ordered_json::parse(explanation, nullptr, false);
  if (!object.is_object()) object = ordered_json::object();
  object["cue"] = toJson(reading);
  return object.dump();
}

std::optional<CueReading> cueInExplanation(const std::string& explanation) {
  const ordered_json object = ordered_json::parse(explanation, nullptr, false);
  if (!object.is_object() || !object.contains("cue")) return std::nullopt;
  return readJson(object["cue"]);
}

}  // namespace ferrule
