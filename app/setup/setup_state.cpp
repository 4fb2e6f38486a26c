// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/setup_state.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

using nlohmann::json;

constexpr const char* kFormat = "ferrule-setup/1";
/// A rule on a rail is read to half a millimetre at either end, and prints swell. Common practice, no source.
constexpr double kSideOff_mm = 3.0;

json jsonOf(const std::optional<double>& value) {
  return value ? json(*value) : json(nullptr);
}

std::optional<double> optionalOf(const json& value) {
  return value.is_number() ? std::optional(value.get<double>()) : std::nullopt;
}

json jsonOf(const TagEntry& tag) {
  json corners = json::array();
  for (const auto& value : tag.corners_mm)
    corners.push_back(jsonOf(value));
  return {{"id", tag.id}, {"height_mm", jsonOf(tag.height_mm)}, {"corners_mm", std::move(corners)}};
}

TagEntry tagOf(const json& object) {
  TagEntry tag;
  tag.id = object.at("id").get<int>();
  tag.height_mm = optionalOf(object.at("height_mm"));
  for (std::size_t i = 0; i < tag.corners_mm.size(); ++i)
    tag.corners_mm[i] = optionalOf(object.at("corners_mm").at(i));
  return tag;
}

json jsonOf(const LineTrace& line) {
  json places = json::array();
  for (const ImagePoint& place : line.places)
    places.push_back({place.x, place.y});
  return {{"back", line.kind == LineTrace::Kind::Back},
          {"cushion", std::string(toText(line.cushion))},
          {"u_px", line.u_px},
          {"places_px", std::move(places)}};
}

/// Nothing for a cushion that nobody knows.
std::optional<LineTrace> lineOf(const json& object) {
  const auto cushion = cushionFromText(object.at("cushion").get<std::string>());
  if (!cushion) return std::nullopt;
  LineTrace line;
  line.kind = object.at("back").get<bool>() ? LineTrace::Kind::Back : LineTrace::Kind::Nose;
  line.cushion = *cushion;
  line.u_px = object.at("u_px").get<double>();
  for (const json& place : object.at("places_px"))
    line.places.push_back({place.at(0).get<double>(), place.at(1).get<double>()});
  return line;
}

json jsonOf(const HandMark& said) {
  return {{"kind", said.mark.kind == MarkKind::Sight ? "sight" : "pocket"},
          {"number", said.mark.number},
          {"there", said.isThere},
          {"place_px", {said.place.x, said.place.y}}};
}

/// Nothing for a mark that no table has.
std::optional<HandMark> markOf(const json& object) {
  HandMark said;
  said.mark = {object.at("kind") == "sight" ? MarkKind::Sight : MarkKind::Pocket, object.at("number").get<int>()};
  said.isThere = object.at("there").get<bool>();
  said.place = {object.at("place_px").at(0).get<double>(), object.at("place_px").at(1).get<double>()};
  const auto all = tableMarks();
  return std::ranges::find(all, said.mark) == all.end() ? std::nullopt : std::optional(said);
}

double tableFileDigits(double length_m) {
  return std::round(100.0 * millimetresFromMetres(length_m)) / 100.0;
}

}  // namespace

std::optional<RailTag> tagFrom(const TagEntry& entry, double side_mm, double height_mm) {
  const auto& c = entry.corners_mm;
  if (!c[0] || !c[1] || !c[2] || !c[3]) return std::nullopt;
  std::array<double, 8> mm{*c[0], *c[1], *c[2], *c[3]};
  const double along = std::hypot(mm[2] - mm[0], mm[3] - mm[1]);
  if (!(along > 0.0)) return std::nullopt;
  // Down the print is a quarter turn clockwise from along its top, since the table's y is to the left.
  const double downX = side_mm * (mm[3] - mm[1]) / along;
  const double downY = -side_mm * (mm[2] - mm[0]) / along;
  mm[4] = c[4].value_or(mm[2] + downX);
  mm[5] = c[5].value_or(mm[3] + downY);
  mm[6] = c[6].value_or(mm[0] + downX);
  mm[7] = c[7].value_or(mm[1] + downY);
  RailTag tag;
  tag.id = entry.id;
  const double z_m = metresFromMillimetres(entry.height_mm.value_or(height_mm));
  for (std::size_t i = 0; i < 4; ++i)
    tag.corners[i] = {metresFromMillimetres(mm[2 * i]), metresFromMillimetres(mm[2 * i + 1]), z_m};
  return tag;
}

TagEntry entryFrom(const RailTag& tag, double heightOfAll_mm) {
  TagEntry entry;
  entry.id = tag.id;
  for (std::size_t i = 0; i < 4; ++i) {
    entry.corners_mm[2 * i] = tableFileDigits(tag.corners[i].x);
    entry.corners_mm[2 * i + 1] = tableFileDigits(tag.corners[i].y);
  }
  const double height_mm = tableFileDigits(tag.corners[0].z);
  if (std::abs(height_mm - heightOfAll_mm) > 1e-9) entry.height_mm = height_mm;
  return entry;
}

Result<MeasuredTable> tableOf(const SetupState& state) {
  MeasuredTable measured = state.measured;
  measured.tags.clear();
  for (const TagEntry& entry : state.tags) {
    if (state.withoutTags) break;
    const auto tag = tagFrom(entry, state.tagSide_mm, state.tagHeight_mm);
    if (!tag) continue;
    for (std::size_t i = 0; i < 4; ++i) {
      const TablePoint3& a = tag->corners[i];
      const TablePoint3& b = tag->corners[(i + 1) % 4];
      const double side_mm = millimetresFromMetres(std::hypot(a.x - b.x, a.y - b.y));
      if (std::abs(side_mm - state.tagSide_mm) <= kSideOff_mm) continue;
      return failure(ErrorCode::FieldInvalid, "table", "tag " + std::to_string(tag->id),
                     {side_mm, state.tagSide_mm - kSideOff_mm, state.tagSide_mm + kSideOff_mm});
    }
    measured.tags.push_back(*tag);
  }
  return parseMeasuredTable(measuredTableText(measured), "table");
}

void takeTable(SetupState& state, const MeasuredTable& measured) {
  state.preset.clear();
  state.measured = measured;
  if (measured.tags.empty()) return;
  state.tags.clear();
  const RailTag& first = measured.tags.front();
  state.tagHeight_mm = tableFileDigits(first.corners[0].z);
  state.tagSide_mm = std::round(millimetresFromMetres(
      std::hypot(first.corners[1].x - first.corners[0].x, first.corners[1].y - first.corners[0].y)));
  for (const RailTag& tag : measured.tags)
    state.tags.push_back(entryFrom(tag, state.tagHeight_mm));
  state.withoutTags = false;
}

std::string setupText(const SetupState& state) {
  json stills = json::array();
  for (const QString& still : state.stills)
    stills.push_back(still.toStdString());
  json tags = json::array();
  for (const TagEntry& tag : state.tags)
    tags.push_back(jsonOf(tag));
  json lines = json::array();
  for (const LineTrace& line : state.handLines)
    lines.push_back(jsonOf(line));
  json marks = json::array();
  for (const HandMark& said : state.handMarks)
    marks.push_back(jsonOf(said));
  MeasuredTable bare = state.measured;
  bare.tags.clear();
  const json object{{"format", kFormat},
                    {"step", static_cast<int>(state.step)},
                    {"name", state.name.toStdString()},
                    {"table", json::parse(measuredTableText(bare))},
                    {"preset", state.preset.toStdString()},
                    {"diagonals_mm", {state.diagonalA_mm, state.diagonalB_mm}},
                    {"camera", state.camera.toStdString()},
                    {"film", state.film.toStdString()},
                    {"board", state.board.toStdString()},
                    {"ruler_mm", {state.rulerAcross_mm, state.rulerDown_mm}},
                    {"stills", std::move(stills)},
                    {"lens", state.lens.toStdString()},
                    {"without_board", state.withoutBoard},
                    {"without_tags", state.withoutTags},
                    {"head", static_cast<int>(state.head)},
                    {"tag_side_mm", state.tagSide_mm},
                    {"tag_height_mm", state.tagHeight_mm},
                    {"tags", std::move(tags)},
                    {"lines", std::move(lines)},
                    {"marks", std::move(marks)},
                    {"rig", state.rig.toStdString()},
                    {"folder", state.folder.toStdString()}};
  return object.dump(2) + "\n";
}

std::optional<SetupState> setupFromText(const std::string& text) {
  const json object = json::parse(text, nullptr, false);
  try {
    if (object.is_discarded() || object.at("format") != kFormat) return std::nullopt;
    const auto words = [&](const char* field) { return QString::fromStdString(object.at(field).get<std::string>()); };
    SetupState state;
    state.step = static_cast<SetupStep>(std::clamp(object.at("step").get<int>(), 0, kSetupSteps - 1));
    state.name = words("name");
    const auto measured = parseMeasuredTable(object.at("table").dump(), "table");
    if (!measured) return std::nullopt;
    state.measured = *measured;
    state.preset = words("preset");
    state.diagonalA_mm = object.at("diagonals_mm").at(0).get<double>();
    state.diagonalB_mm = object.at("diagonals_mm").at(1).get<double>();
    state.camera = words("camera");
    state.film = words("film");
    state.board = words("board");
    state.rulerAcross_mm = object.at("ruler_mm").at(0).get<double>();
    state.rulerDown_mm = object.at("ruler_mm").at(1).get<double>();
    for (const json& still : object.at("stills"))
      state.stills << QString::fromStdString(still.get<std::string>());
    state.lens = words("lens");
    state.withoutBoard = object.at("without_board").get<bool>();
    state.withoutTags = object.at("without_tags").get<bool>();
    state.head = static_cast<PictureSide>(std::clamp(object.at("head").get<int>(), 0, 3));
    state.tagSide_mm = object.at("tag_side_mm").get<double>();
    state.tagHeight_mm = object.at("tag_height_mm").get<double>();
    state.tags.clear();
    for (const json& tag : object.at("tags"))
      state.tags.push_back(tagOf(tag));
    // Set-ups that were kept before lines could be placed by hand have none.
    for (const json& line : object.value("lines", json::array())) {
      if (auto read = lineOf(line)) state.handLines.push_back(std::move(*read));
    }
    for (const json& said : object.value("marks", json::array())) {
      if (auto read = markOf(said)) state.handMarks.push_back(*read);
    }
    state.rig = words("rig");
    state.folder = words("folder");
    return state;
  } catch (const json::exception&) {
    return std::nullopt;
  }
}

}  // namespace ferrule
