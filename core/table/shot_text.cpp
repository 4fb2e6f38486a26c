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

ordered_json deliveryJson(const Delivery& delivery) {
  ordered_json object;
  putMeasured(object, "aim_deg", "aim_u_deg", delivery.aim_rad, degrees);
  putMeasured(object, "speed_m_s", "speed_u_m_s", delivery.speed_mps, plain);
  putMeasured(object, "side", "side_u", delivery.side, plain);
  putMeasured(object, "height", "height_u", delivery.height, plain);
  putMeasured(object, "elevation_deg", "elevation_u_deg", delivery.elevation_rad, degrees);
  return object;
}

ordered_json eventJson(const ShotEvent& event) {
  ordered_json object{{"t_s", seconds(event.time_s)}, {"kind", toText(event.kind)}, {"ball", toText(event.ball)}};
  if (event.other) object["other"] = toText(*event.other);
  if (event.cushion) object["cushion"] = toText(*event.cushion);
  if (event.pocket) object["pocket"] = toText(*event.pocket);
  return object;
}

ordered_json targetJson(const std::optional<Target>& target) {
  if (!target) return nullptr;
  return {{"ball", toText(target->ball)},
          {"pocket", toText(target->pocket)},
          {"cut_deg", valueOrNull(target->cut_rad, degrees)},
          {"line_error_deg", valueOrNull(target->lineError_rad, degrees)},
          {"miss_side", wordOrNull(target->missSide)}};
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
  return ordered_json{{"number", shot.number},
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
                      {"outcome", toText(shot.outcome)}}
      .dump();
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
