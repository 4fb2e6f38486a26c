// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/shot_text.h"

#include <array>
#include <charconv>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/base/contract.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

using nlohmann::ordered_json;

/// Adding zero turns -0 into 0. Steps are 1/n, and dividing by the whole number n leaves the shortest decimals.
double rounded(double value, double step) {
  const double perOne = std::round(1.0 / step);
  return std::round(value * perOne) / perOne + 0.0;
}

double seconds(double time_s) {
  return rounded(time_s, 1e-6);
}
double millimetres(double length_m) {
  return rounded(millimetresFromMetres(length_m), 1e-3);
}
double degrees(double angle_rad) {
  return rounded(degreesFromRadians(angle_rad), 1e-5);
}
double plain(double value) {
  return rounded(value, 1e-6);
}

template <class Convert>
ordered_json valueOrNull(const std::optional<double>& value, Convert&& convert) {
  return value ? ordered_json(convert(*value)) : ordered_json(nullptr);
}

template <class Word>
ordered_json wordOrNull(const std::optional<Word>& word) {
  return word ? ordered_json(toText(*word)) : ordered_json(nullptr);
}

ordered_json positionJson(const Position& position) {
  ordered_json all = ordered_json::array();
  for (const BallAt& ball : position) {
    all.push_back(
        {{"ball", toText(ball.ball)}, {"x_mm", millimetres(ball.position.x)}, {"y_mm", millimetres(ball.position.y)}});
  }
  return all;
}

template <class Convert>
void putMeasured(ordered_json& object, const char* name, const char* uncertainty,
                 const std::optional<Measured>& measured, Convert&& convert) {
  object[name] = measured ? ordered_json(convert(measured->value)) : ordered_json(nullptr);
  object[uncertainty] = measured ? ordered_json(convert(measured->standardUncertainty)) : ordered_json(nullptr);
}

/// A field that a reader of the older form does not know stands only where it says something.
template <class Word>
void putWord(ordered_json& object, const char* name, const std::optional<Word>& word) {
  if (word) object[name] = toText(*word);
}

ordered_json deliveryJson(const Delivery& delivery) {
  ordered_json object;
  putMeasured(object, "aim_deg", "aim_u_deg", delivery.aim_rad, degrees);
  putMeasured(object, "speed_m_s", "speed_u_m_s", delivery.speed_mps, plain);
  putMeasured(object, "side", "side_u", delivery.side, plain);
  putMeasured(object, "height", "height_u", delivery.height, plain);
  putMeasured(object, "elevation_deg", "elevation_u_deg", delivery.elevation_rad, degrees);
  putWord(object, "strike_why", delivery.whyNoStrike);
  putWord(object, "side_why", delivery.whyNoSide);
  putWord(object, "height_why", delivery.whyNoHeight);
  putWord(object, "elevation_why", delivery.whyNoElevation);
  return object;
}

ordered_json eventJson(const ShotEvent& event) {
  ordered_json object{{"t_s", seconds(event.time_s)}, {"kind", toText(event.kind)}, {"ball", toText(event.ball)}};
  if (event.other) object["other"] = toText(*event.other);
  if (event.cushion) object["cushion"] = toText(*event.cushion);
  if (event.pocket) object["pocket"] = toText(*event.pocket);
  if (event.timeUncertainty_s > 0.0) object["t_u_s"] = seconds(event.timeUncertainty_s);
  putWord(object, "verdict", event.verdict);
  return object;
}

ordered_json targetJson(const std::optional<Target>& target) {
  if (!target) return nullptr;
  ordered_json object{{"ball", toText(target->ball)},
                      {"pocket", toText(target->pocket)},
                      {"cut_deg", valueOrNull(target->cut_rad, degrees)},
                      {"line_error_deg", valueOrNull(target->lineError_rad, degrees)},
                      {"miss_side", wordOrNull(target->missSide)}};
  if (target->called) object["called"] = true;
  if (target->fullness) object["fullness"] = plain(*target->fullness);
  if (target->lineErrorUncertainty_rad) object["line_error_u_deg"] = degrees(*target->lineErrorUncertainty_rad);
  if (target->missAtMouth_m) object["miss_at_mouth_mm"] = millimetres(*target->missAtMouth_m);
  if (target->contactError_m) object["contact_error_mm"] = millimetres(*target->contactError_m);
  if (target->opening_m) object["opening_mm"] = millimetres(*target->opening_m);
  if (target->rattled) object["rattled"] = true;
  return object;
}

ordered_json missAccountJson(const MissAccount& account) {
  ordered_json object;
  const auto put = [&](const char* name, const char* uncertainty, const Measured& part) {
    object[name] = degrees(part.value);
    object[uncertainty] = degrees(part.standardUncertainty);
  };
  put("total_deg", "total_u_deg", account.total_rad);
  put("aim_deg", "aim_u_deg", account.aim_rad);
  put("squirt_deg", "squirt_u_deg", account.squirt_rad);
  put("swerve_deg", "swerve_u_deg", account.swerve_rad);
  put("collision_throw_deg", "collision_throw_u_deg", account.collisionThrow_rad);
  put("spin_throw_deg", "spin_throw_u_deg", account.spinThrow_rad);
  put("speed_deg", "speed_u_deg", account.speed_rad);
  put("remainder_deg", "remainder_u_deg", account.remainder_rad);
  return object;
}

}  // namespace

std::string shotText(const ShotReading& shot) {
  ordered_json events = ordered_json::array();
  for (const ShotEvent& event : shot.events)
    events.push_back(eventJson(event));
  ordered_json pocketed = ordered_json::array();
  for (const PocketedBall& ball : shot.pocketed) {
    pocketed.push_back({{"ball", toText(ball.ball)}, {"pocket", toText(ball.pocket)}});
  }
  ordered_json text{{"number", shot.number},
                    {"strike_s", seconds(shot.strike_s)},
                    {"rest_s", seconds(shot.rest_s)},
                    {"before", positionJson(shot.before)},
                    {"after", positionJson(shot.after)},
                    {"delivery", deliveryJson(shot.delivery)},
                    {"events", std::move(events)},
                    {"first_contact", wordOrNull(shot.firstContact)},
                    {"pocketed", std::move(pocketed)},
                    {"scratch", shot.scratch},
                    {"target", targetJson(shot.target)},
                    {"outcome", toText(shot.outcome)},
                    {"outcome_verdict", toText(shot.outcomeVerdict)}};
  if (shot.missAccount) text["miss_account"] = missAccountJson(*shot.missAccount);
  if (!shot.flags.empty()) {
    ordered_json flags = ordered_json::array();
    for (const ShotFlag flag : shot.flags)
      flags.push_back(toText(flag));
    text["flags"] = std::move(flags);
  }
  return text.dump();
}

std::string placementText(const Placement& placement) {
  return ordered_json{{"ball", toText(placement.ball)},
                      {"t_s", seconds(placement.time_s)},
                      {"x_mm", millimetres(placement.position.x)},
                      {"y_mm", millimetres(placement.position.y)}}
      .dump();
}

std::string numberText(double value, double step) {
  FERRULE_REQUIRE(std::isfinite(value));
  std::array<char, 32> digits{};
  const auto [end, error] = std::to_chars(digits.data(), digits.data() + digits.size(), rounded(value, step));
  return std::string(digits.data(), end);
}

}  // namespace ferrule
