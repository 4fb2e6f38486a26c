// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/drill_file.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/base/contract.h"
#include "core/base/text_file.h"
#include "core/base/text_line.h"
#include "core/base/word_list.h"
#include "core/drills/built_in_text.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

using nlohmann::json;
using nlohmann::ordered_json;

constexpr const char* kFormat = "ferrule-drills/1";
/// A drill takes a kilobyte; a larger file is no file of drills.
constexpr std::size_t kLargestFile_bytes = std::size_t{4} << 20;

constexpr WordList<2> kCautionWords{"jump", "break"};
constexpr WordList<2> kOrderWords{"blocks", "in-turn"};
constexpr WordList<3> kRackWords{"eight-ball", "nine-ball", "ten-ball"};

struct Limits {
  double least = 0.0;
  double most = 0.0;
};
constexpr Limits kPlace_widths{-1.0, 3.0};
constexpr Limits kReach_widths{0.0, 2.0};
constexpr Limits kTrials{1.0, kMostTrials};
constexpr Limits kLoose{1.0, 15.0};
constexpr Limits kAngle_deg{0.0, 90.0};
constexpr Limits kSpeed_mps{0.0, 20.0};
constexpr Limits kTip{-1.0, 1.0};
constexpr std::size_t kMostCorners = 12;

/// Carries a refusal out of the reading of one file.
struct Refusal {
  Error error;
};

/// Reads one object; where names it in errors ("drills[2].stations[0].").
class Reader {
 public:
  Reader(const json& object, std::string where, const std::string& file)
      : object_(object), where_(std::move(where)), file_(file) {
    if (!object_.is_object()) refuse(ErrorCode::FieldInvalid, where_.substr(0, where_.size() - 1));
  }

  [[nodiscard]] bool has(const char* field) const { return object_.contains(field) && !object_.at(field).is_null(); }
  [[nodiscard]] const json& at(const char* field) const {
    if (!has(field)) refuse(ErrorCode::FieldMissing, where_ + field);
    return object_.at(field);
  }
  [[noreturn]] void invalid(const char* field) const { refuse(ErrorCode::FieldInvalid, where_ + field); }

  [[nodiscard]] double number(const char* field, Limits limits) const { return numberIn(at(field), field, limits); }
  [[nodiscard]] std::optional<double> numberIfThere(const char* field, Limits limits) const {
    return has(field) ? std::optional(number(field, limits)) : std::nullopt;
  }
  [[nodiscard]] int whole(const char* field, Limits limits) const {
    const double value = number(field, limits);
    if (value != std::floor(value)) invalid(field);
    return static_cast<int>(value);
  }
  [[nodiscard]] std::string text(const char* field) const {
    if (!at(field).is_string()) invalid(field);
    return at(field).get<std::string>();
  }
  [[nodiscard]] std::string textOr(const char* field, const char* otherwise) const {
    return has(field) ? text(field) : otherwise;
  }
  [[nodiscard]] bool truthOr(const char* field, bool otherwise) const {
    if (!has(field)) return otherwise;
    if (!at(field).is_boolean()) invalid(field);
    return at(field).get<bool>();
  }
  template <class Parse>
  [[nodiscard]] auto word(const char* field, const Parse& parse) const {
    const auto value = parse(text(field));
    if (!value) invalid(field);
    return *value;
  }
  /// Along and across.
  [[nodiscard]] SurfacePlace place(const char* field) const { return placeIn(at(field), field); }
  [[nodiscard]] SurfacePlace placeIn(const json& value, const char* field) const {
    if (!value.is_array() || value.size() != 2) invalid(field);
    return {numberIn(value[0], field, kPlace_widths), numberIn(value[1], field, kPlace_widths)};
  }
  [[nodiscard]] Reader object(const char* field) const { return {at(field), where_ + field + ".", file_}; }
  [[nodiscard]] const json& list(const char* field) const {
    if (!at(field).is_array()) invalid(field);
    return at(field);
  }
  [[nodiscard]] Reader entry(const char* field, std::size_t index) const {
    return {list(field)[index], where_ + field + "[" + std::to_string(index) + "].", file_};
  }
  template <class Value, class Read>
  [[nodiscard]] std::vector<Value> entries(const char* field, const Read& read) const {
    std::vector<Value> all;
    for (std::size_t i = 0; has(field) && i < list(field).size(); ++i)
      all.push_back(read(entry(field, i)));
    return all;
  }
  template <class Parse>
  [[nodiscard]] auto words(const char* field, const Parse& parse) const {
    std::vector<typename decltype(parse(std::string()))::value_type> all;
    if (!has(field)) return all;
    for (const json& value : list(field)) {
      const auto parsed = value.is_string() ? parse(value.get<std::string>()) : std::nullopt;
      if (!parsed) invalid(field);
      all.push_back(*parsed);
    }
    return all;
  }

 private:
  [[noreturn]] void refuse(ErrorCode code, const std::string& field, std::vector<double> numbers = {}) const {
    throw Refusal{{code, file_, field, std::move(numbers)}};
  }
  [[nodiscard]] double numberIn(const json& value, const char* field, Limits limits) const {
    if (!value.is_number()) invalid(field);
    const double number = value.get<double>();
    if (!(number >= limits.least && number <= limits.most)) {
      refuse(ErrorCode::FieldInvalid, where_ + field, {number, limits.least, limits.most});
    }
    return number;
  }

  const json& object_;
  std::string where_;
  const std::string& file_;
};

template <class Enum, std::size_t N>
auto wordParser(const WordList<N>& words) {
  return [&words](const std::string& text) { return valueOf<Enum>(words, text); };
}
std::optional<std::string> anyText(const std::string& text) {
  return text;
}

Zone zoneIn(const Reader& reader) {
  Zone zone;
  for (const json& corner : reader.list("corners"))
    zone.corners.push_back(reader.placeIn(corner, "corners"));
  if (zone.corners.empty() || zone.corners.size() > kMostCorners) reader.invalid("corners");
  zone.reach_widths = reader.numberIfThere("reach", kReach_widths).value_or(0.0);
  return zone;
}

DrillBall ballIn(const Reader& reader, BallName name) {
  DrillBall ball{name, reader.place("place")};
  if (reader.has("frozen")) ball.frozen = reader.word("frozen", cushionFromText);
  return ball;
}

DrillGoal goalIn(const Reader& reader) {
  DrillGoal goal;
  goal.kind = reader.word("kind", goalKindFromText);
  if (reader.has("ball")) goal.ball = reader.word("ball", ballFromText);
  if (reader.has("pocket")) goal.pocket = reader.word("pocket", pocketFromText);
  goal.cushions = reader.words("cushions", cushionFromText);
  if (reader.has("zone")) goal.zone = zoneIn(reader.object("zone"));
  goal.least_rad = radiansFromDegrees(reader.numberIfThere("least_deg", kAngle_deg).value_or(0.0));
  goal.most_rad = radiansFromDegrees(reader.numberIfThere("most_deg", kAngle_deg).value_or(0.0));
  goal.within_widths = reader.numberIfThere("within", kReach_widths).value_or(0.0);
  return goal;
}

DrillStation stationIn(const Reader& reader) {
  DrillStation station;
  station.balls = reader.entries<DrillBall>("balls", [](const Reader& entry) {
    const BallName name = entry.word("ball", ballFromText);
    if (name.isCueBall()) entry.invalid("ball");
    return ballIn(entry, name);
  });
  if (reader.has("loose")) {
    const Reader loose = reader.object("loose");
    station.loose = LooseBalls{loose.whole("count", kLoose), loose.number("apart", kReach_widths)};
  }
  if (reader.has("rack")) station.rack = reader.word("rack", wordParser<DrillRack>(kRackWords));
  if (reader.has("cue_ball")) station.cueBall = ballIn(reader.object("cue_ball"), kCueBall);
  if (reader.has("cue_ball_zone")) station.cueBallZone = zoneIn(reader.object("cue_ball_zone"));
  static_cast<void>(reader.list("goals"));
  station.goals = reader.entries<DrillGoal>("goals", goalIn);
  if (reader.has("trials")) station.trials = reader.whole("trials", kTrials);
  station.isRun = reader.truthOr("run", false);
  if (reader.has("asked")) {
    const Reader asked = reader.object("asked");
    station.asked.speed_mps = asked.numberIfThere("speed_m_s", kSpeed_mps);
    station.asked.side = asked.numberIfThere("side", kTip);
    station.asked.height = asked.numberIfThere("height", kTip);
  }
  return station;
}

Drill drillIn(const Reader& reader) {
  Drill drill;
  drill.key = reader.text("key");
  if (drill.key.empty()) reader.invalid("key");
  drill.title = reader.textOr("title", "");
  drill.text = reader.textOr("text", "");
  drill.tags = reader.words("tags", anyText);
  drill.cautions = reader.words("cautions", wordParser<DrillCaution>(kCautionWords));
  if (reader.has("order")) drill.order = reader.word("order", wordParser<StationOrder>(kOrderWords));
  drill.turnsRound = reader.truthOr("turns_round", true);
  static_cast<void>(reader.list("stations"));
  drill.stations = reader.entries<DrillStation>("stations", stationIn);
  return drill;
}

ordered_json placeJson(SurfacePlace place) {
  return ordered_json::array({place.along, place.across});
}

ordered_json zoneJson(const Zone& zone) {
  ordered_json corners = ordered_json::array();
  for (const SurfacePlace corner : zone.corners)
    corners.push_back(placeJson(corner));
  ordered_json object{{"corners", std::move(corners)}};
  if (zone.reach_widths != 0.0) object["reach"] = zone.reach_widths;
  return object;
}

ordered_json ballJson(const DrillBall& ball) {
  ordered_json object = ordered_json::object();
  if (!ball.ball.isCueBall()) object["ball"] = toText(ball.ball);
  object["place"] = placeJson(ball.place);
  if (ball.frozen) object["frozen"] = toText(*ball.frozen);
  return object;
}

ordered_json goalJson(const DrillGoal& goal) {
  ordered_json object{{"kind", toText(goal.kind)}};
  if (goal.ball) object["ball"] = toText(*goal.ball);
  if (goal.pocket) object["pocket"] = toText(*goal.pocket);
  for (const CushionName cushion : goal.cushions)
    object["cushions"].push_back(toText(cushion));
  if (goal.zone) object["zone"] = zoneJson(*goal.zone);
  if (goal.least_rad != 0.0) object["least_deg"] = degreesFromRadians(goal.least_rad);
  if (goal.most_rad != 0.0) object["most_deg"] = degreesFromRadians(goal.most_rad);
  if (goal.within_widths != 0.0) object["within"] = goal.within_widths;
  return object;
}

ordered_json stationJson(const DrillStation& station) {
  ordered_json object = ordered_json::object();
  for (const DrillBall& ball : station.balls)
    object["balls"].push_back(ballJson(ball));
  if (station.loose) object["loose"] = {{"count", station.loose->count}, {"apart", station.loose->apart_widths}};
  if (station.rack) object["rack"] = wordOf(kRackWords, *station.rack);
  if (station.cueBall) object["cue_ball"] = ballJson(*station.cueBall);
  if (station.cueBallZone) object["cue_ball_zone"] = zoneJson(*station.cueBallZone);
  object["goals"] = ordered_json::array();
  for (const DrillGoal& goal : station.goals)
    object["goals"].push_back(goalJson(goal));
  object["trials"] = station.trials;
  if (station.isRun) object["run"] = true;
  if (station.asked.speed_mps) object["asked"]["speed_m_s"] = *station.asked.speed_mps;
  if (station.asked.side) object["asked"]["side"] = *station.asked.side;
  if (station.asked.height) object["asked"]["height"] = *station.asked.height;
  return object;
}

ordered_json drillJson(const Drill& drill) {
  ordered_json object{{"key", drill.key}};
  if (!drill.title.empty()) object["title"] = drill.title;
  if (!drill.text.empty()) object["text"] = drill.text;
  if (!drill.tags.empty()) object["tags"] = drill.tags;
  for (const DrillCaution caution : drill.cautions)
    object["cautions"].push_back(wordOf(kCautionWords, caution));
  if (drill.order != StationOrder::Blocks) object["order"] = wordOf(kOrderWords, drill.order);
  if (!drill.turnsRound) object["turns_round"] = false;
  object["stations"] = ordered_json::array();
  for (const DrillStation& station : drill.stations)
    object["stations"].push_back(stationJson(station));
  return object;
}

}  // namespace

Result<std::vector<Drill>> parseDrills(const std::string& text, const std::string& name) {
  try {
    const json whole = json::parse(text);
    if (!whole.is_object()) return failure(ErrorCode::FileMalformed, name, "not a JSON object");
    const Reader file(whole, "", name);
    if (file.text("format") != kFormat) file.invalid("format");
    static_cast<void>(file.list("drills"));
    return file.entries<Drill>("drills", drillIn);
  } catch (const json::parse_error& error) {
    return failure(ErrorCode::FileMalformed, name, lineAt(text, error.byte));
  } catch (const json::exception&) {
    // A number too large for any double, or text that is not UTF-8.
    return failure(ErrorCode::FileMalformed, name, "a value that cannot be read");
  } catch (const Refusal& refusal) {
    return tl::make_unexpected(refusal.error);
  }
}

Result<std::vector<Drill>> readDrills(const std::string& path) {
  const auto text = readTextFile(path, kLargestFile_bytes);
  if (!text) return tl::make_unexpected(text.error());
  return parseDrills(*text, path);
}

std::string drillsText(std::span<const Drill> drills) {
  ordered_json whole{{"format", kFormat}, {"drills", ordered_json::array()}};
  for (const Drill& drill : drills)
    whole["drills"].push_back(drillJson(drill));
  return whole.dump(1, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

Result<void> writeDrills(const std::string& path, std::span<const Drill> drills) {
  return writeTextFile(path, drillsText(drills));
}

const std::vector<Drill>& builtInDrills() {
  static const std::vector<Drill> kDrills = [] {
    auto drills = parseDrills(builtInText(), "built-in drills");
    FERRULE_REQUIRE(drills.has_value());
    return std::move(*drills);
  }();
  return kDrills;
}

const Drill* builtInDrill(std::string_view key) {
  const auto found = std::ranges::find(builtInDrills(), key, &Drill::key);
  return found == builtInDrills().end() ? nullptr : &*found;
}

}  // namespace ferrule
