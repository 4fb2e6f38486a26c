// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/position_file.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/base/text_file.h"
#include "core/base/text_line.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

using nlohmann::json;

/// A position holds some kilobytes, its table some more.
constexpr std::size_t kLargestFile_bytes = std::size_t{4} << 20;

struct Limits {
  double least = 0.0;
  double most = 0.0;
};

/// Far beyond any table; what is on it decides the simulator.
constexpr Limits kPlace_mm{-1e5, 1e5};
constexpr Limits kAimSpread_deg{0.0, 90.0};
constexpr Limits kShareSpread{0.0, 1.0};

/// Reads the fields of one object; group names it in errors ("strike."; empty for the whole file).
class Reader {
 public:
  Reader(const json& object, std::string group, std::string file)
      : object_(object), group_(std::move(group)), file_(std::move(file)) {}

  [[nodiscard]] bool has(const char* field) const { return object_.contains(field); }
  [[nodiscard]] const json& at(const char* field) const { return object_.at(field); }

  [[nodiscard]] tl::unexpected<Error> missing(const char* field) const {
    return failure(ErrorCode::FieldMissing, file_, group_ + field);
  }
  [[nodiscard]] tl::unexpected<Error> invalid(const std::string& field) const {
    return failure(ErrorCode::FieldInvalid, file_, group_ + field);
  }

  [[nodiscard]] Result<double> number(const char* field) const {
    if (!has(field)) return missing(field);
    if (!at(field).is_number()) return invalid(field);
    return at(field).get<double>();
  }

  [[nodiscard]] Result<double> number(const char* field, Limits limits) const {
    const auto value = number(field);
    if (value && !(*value >= limits.least && *value <= limits.most)) {
      return failure(ErrorCode::FieldInvalid, file_, group_ + field, {*value, limits.least, limits.most});
    }
    return value;
  }

  [[nodiscard]] Result<double> numberOr(const char* field, double otherwise) const {
    return has(field) ? number(field) : Result<double>(otherwise);
  }

  [[nodiscard]] Result<Reader> object(const char* field) const {
    if (!has(field)) return missing(field);
    if (!at(field).is_object()) return invalid(field);
    return Reader(at(field), group_ + field + ".", file_);
  }

  [[nodiscard]] const json& whole() const { return object_; }
  [[nodiscard]] const std::string& file() const { return file_; }

 private:
  const json& object_;
  std::string group_;
  std::string file_;
};

Result<MeasuredTable> tableOf(const Reader& all) {
  if (!all.has("table")) return all.missing("table");
  const json& table = all.at("table");
  if (table.is_object()) return parseMeasuredTable(table.dump(), all.file());
  if (!table.is_string() || !tableSizeNamed(table.get<std::string>())) return all.invalid("table");
  return measuredTableFrom(table.get<std::string>());
}

/// 3 and "3" both name the three.
std::string nameIn(const json& value) {
  return value.is_string() ? value.get<std::string>() : value.is_number_unsigned() ? value.dump() : std::string();
}

Result<Position> ballsOf(const Reader& all) {
  if (!all.has("balls")) return all.missing("balls");
  if (!all.at("balls").is_array()) return all.invalid("balls");
  Position balls;
  for (const json& entry : all.at("balls")) {
    if (!entry.is_object()) return all.invalid("balls");
    const std::string place = "balls[" + std::to_string(balls.size()) + "].";
    const Reader reader(entry, place, all.file());
    if (!reader.has("ball")) return reader.missing("ball");
    const auto ball = ballFromText(nameIn(reader.at("ball")));
    if (!ball) return reader.invalid("ball");
    if (ballIn(balls, *ball) != nullptr) {
      return all.invalid("balls: " + toText(*ball) + " twice");
    }
    const auto x = reader.number("x_mm", kPlace_mm);
    if (!x) return tl::make_unexpected(x.error());
    const auto y = reader.number("y_mm", kPlace_mm);
    if (!y) return tl::make_unexpected(y.error());
    balls.push_back({*ball, {metresFromMillimetres(*x), metresFromMillimetres(*y)}});
  }
  std::ranges::sort(balls, {}, &BallAt::ball);
  return balls;
}

Result<std::optional<Strike>> strikeOf(const Reader& all) {
  if (!all.has("strike")) return std::optional<Strike>();
  const auto reader = all.object("strike");
  if (!reader) return tl::make_unexpected(reader.error());
  const auto aim = reader->number("aim_deg");
  const auto speed = reader->number("speed_m_s");
  const auto side = reader->numberOr("side", 0.0);
  const auto height = reader->numberOr("height", 0.0);
  const auto elevation = reader->numberOr("elevation_deg", 0.0);
  for (const auto* value : {&aim, &speed, &side, &height, &elevation}) {
    if (!*value) return tl::make_unexpected(value->error());
  }
  return Strike{radiansFromDegrees(*aim), *speed, *side, *height, radiansFromDegrees(*elevation)};
}

/// A coefficient's name in the file and its place. The speed-dependent law of ball_friction is not a number.
struct Coefficient {
  const char* name;
  double PhysicsParameters::*place;
};

constexpr Coefficient kCoefficients[] = {{"sliding_friction", &PhysicsParameters::slidingFriction},
                                         {"rolling_friction", &PhysicsParameters::rollingFriction},
                                         {"spin_decay_rad_s2", &PhysicsParameters::spinDecay_radps2},
                                         {"ball_restitution", &PhysicsParameters::ballRestitution},
                                         {"cushion_restitution", &PhysicsParameters::cushionRestitution},
                                         {"cushion_friction", &PhysicsParameters::cushionFriction},
                                         {"gravity_m_s2", &PhysicsParameters::gravity_mps2},
                                         {"ball_mass_kg", &PhysicsParameters::ballMass_kg},
                                         {"squirt_mass_ratio", &PhysicsParameters::squirtMassRatio}};

Result<PhysicsParameters> parametersOf(const Reader& all, const BallSet& balls) {
  PhysicsParameters p = parametersFor(balls);
  if (all.has("coefficients")) {
    const auto reader = all.object("coefficients");
    if (!reader) return tl::make_unexpected(reader.error());
    for (const auto& [name, unused] : reader->whole().items()) {
      const bool known = std::ranges::any_of(kCoefficients, [&](const Coefficient& c) { return name == c.name; });
      if (!known && name != "ball_friction") return reader->invalid(name);
    }
    for (const Coefficient& c : kCoefficients) {
      const auto value = reader->numberOr(c.name, p.*c.place);
      if (!value) return tl::make_unexpected(value.error());
      p.*c.place = *value;
    }
    if (reader->has("ball_friction")) {
      const auto value = reader->number("ball_friction");
      if (!value) return tl::make_unexpected(value.error());
      p.ballFriction = constantBallFriction(*value);
    }
  }
  if (const auto sound = check(p); !sound) {
    Error error = sound.error();
    error.subject = all.file();
    return tl::make_unexpected(error);
  }
  return p;
}

Result<SuggestionWish> wishOf(const Reader& all) {
  SuggestionWish wish;
  for (const auto& [field, word] : {std::pair{"game", &wish.game}, {"group", &wish.group}}) {
    if (!all.has(field)) continue;
    if (!all.at(field).is_string()) return all.invalid(field);
    *word = all.at(field).get<std::string>();
  }
  const bool isGroup = wish.group == "solids" || wish.group == "stripes" || wish.group == "open";
  if (!wish.group.empty() && !isGroup) return all.invalid("group");
  if (all.has("ball_in_hand")) {
    if (!all.at("ball_in_hand").is_boolean()) return all.invalid("ball_in_hand");
    wish.ballInHand = all.at("ball_in_hand").get<bool>();
  }
  if (!all.has("player")) return wish;
  const auto player = all.object("player");
  if (!player) return tl::make_unexpected(player.error());
  struct Spread {
    const char* field;
    Limits limits;
    std::optional<double>* place;
  };
  for (const Spread& spread :
       {Spread{"aim_sd_deg", kAimSpread_deg, &wish.aimSpread_rad}, Spread{"speed_sd", kShareSpread, &wish.speedSpread},
        Spread{"tip_sd", kShareSpread, &wish.tipSpread}}) {
    if (!player->has(spread.field)) continue;
    const auto value = player->number(spread.field, spread.limits);
    if (!value) return tl::make_unexpected(value.error());
    *spread.place = *value;
  }
  if (wish.aimSpread_rad) wish.aimSpread_rad = radiansFromDegrees(*wish.aimSpread_rad);
  return wish;
}

Result<PositionFile> fromJson(const json& object, const std::string& name) {
  if (!object.is_object()) return failure(ErrorCode::FileMalformed, name, "not a JSON object");
  const Reader all(object, {}, name);
  auto measured = tableOf(all);
  if (!measured) return tl::make_unexpected(measured.error());
  auto balls = ballsOf(all);
  if (!balls) return tl::make_unexpected(balls.error());
  const auto strike = strikeOf(all);
  if (!strike) return tl::make_unexpected(strike.error());
  const auto parameters = parametersOf(all, measured->balls);
  if (!parameters) return tl::make_unexpected(parameters.error());
  auto wish = wishOf(all);
  if (!wish) return tl::make_unexpected(wish.error());
  return PositionFile{std::move(*measured), std::move(*balls), *strike, *parameters, std::move(*wish)};
}

}  // namespace

Result<PositionFile> parsePositionFile(const std::string& text, const std::string& name) {
  try {
    return fromJson(json::parse(text), name);
  } catch (const json::parse_error& error) {
    return failure(ErrorCode::FileMalformed, name, lineAt(text, error.byte));
  } catch (const json::exception&) {
    // A number too large for any double, or text that is not UTF-8.
    return failure(ErrorCode::FileMalformed, name, "a value that cannot be read");
  }
}

Result<PositionFile> readPositionFile(const std::string& path) {
  const auto text = readTextFile(path, kLargestFile_bytes);
  if (!text) return tl::make_unexpected(text.error());
  return parsePositionFile(*text, path);
}

std::string positionFileText(const MeasuredTable& measured, const Position& balls) {
  const auto rounded_mm = [](double place_m) { return std::round(1e5 * place_m) / 100.0; };
  nlohmann::ordered_json file;
  file["table"] = nlohmann::ordered_json::parse(measuredTableText(measured));
  file["balls"] = nlohmann::ordered_json::array();
  for (const BallAt& ball : balls) {
    file["balls"].push_back(
        {{"ball", toText(ball.ball)}, {"x_mm", rounded_mm(ball.position.x)}, {"y_mm", rounded_mm(ball.position.y)}});
  }
  return file.dump(2) + '\n';
}

}  // namespace ferrule
