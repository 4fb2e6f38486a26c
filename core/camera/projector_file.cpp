// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/projector_file.h"

#include <Eigen/LU>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/base/text_file.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

using Json = nlohmann::ordered_json;

constexpr const char* kFormat = "ferrule-projector/1";
constexpr int kLargestSide_px = 20000;

Result<Json> objectIn(const std::string& path) {
  const auto text = readTextFile(path);
  if (!text) return tl::make_unexpected(text.error());
  Json object = Json::parse(*text, nullptr, false);
  if (object.is_discarded()) return failure(ErrorCode::FileMalformed, path, "not JSON");
  if (!object.is_object()) return failure(ErrorCode::FileMalformed, path, "not a JSON object");
  return object;
}

/// A list of so many finite numbers under a name.
Result<std::vector<double>> numbersIn(const Json& object, const char* name, std::size_t count,
                                      const std::string& path) {
  if (!object.contains(name)) return failure(ErrorCode::FieldMissing, path, name);
  const Json& list = object.at(name);
  if (!list.is_array() || list.size() != count) return failure(ErrorCode::FieldInvalid, path, name);
  std::vector<double> numbers;
  for (const Json& item : list) {
    if (!item.is_number() || !std::isfinite(item.get<double>())) return failure(ErrorCode::FieldInvalid, path, name);
    numbers.push_back(item.get<double>());
  }
  return numbers;
}

Result<ImageSize> sizeIn(const Json& object, const char* name, const std::string& path) {
  const auto size = numbersIn(object, name, 2, path);
  if (!size) return tl::make_unexpected(size.error());
  for (const double side : *size) {
    if (side < 1.0 || side > kLargestSide_px || side != std::floor(side))
      return failure(ErrorCode::FieldInvalid, path, name);
  }
  return ImageSize{static_cast<int>((*size)[0]), static_cast<int>((*size)[1])};
}

std::optional<TagObservation> tagFrom(const Json& item) {
  if (!item.is_object() || !item.contains("id") || !item["id"].is_number_integer()) return std::nullopt;
  const Json corners = item.value("corners", Json());
  if (!corners.is_array() || corners.size() != 4) return std::nullopt;
  TagObservation tag;
  tag.id = item["id"].get<int>();
  for (std::size_t i = 0; i < 4; ++i) {
    const Json& corner = corners[i];
    if (!corner.is_array() || corner.size() != 2 || !corner[0].is_number() || !corner[1].is_number())
      return std::nullopt;
    tag.corners[i] = {corner[0].get<double>(), corner[1].get<double>()};
  }
  return tag;
}

double numberOr(const Json& object, const char* name, double otherwise) {
  const auto found = object.find(name);
  return found != object.end() && found->is_number() ? found->get<double>() : otherwise;
}

}  // namespace

Result<ProjectorGrid> readProjectorGrid(const std::string& path) {
  const auto object = objectIn(path);
  if (!object) return tl::make_unexpected(object.error());
  const auto size = sizeIn(*object, "projector_size", path);
  if (!size) return tl::make_unexpected(size.error());
  ProjectorGrid grid;
  grid.size = *size;
  if (!object->contains("dictionary") || !(*object)["dictionary"].is_string())
    return failure(ErrorCode::FieldMissing, path, "dictionary");
  grid.dictionary = (*object)["dictionary"].get<std::string>();
  if (!object->contains("tags") || !(*object)["tags"].is_array()) return failure(ErrorCode::FieldMissing, path, "tags");
  for (const Json& item : (*object)["tags"]) {
    const auto tag = tagFrom(item);
    if (!tag) return failure(ErrorCode::FieldInvalid, path, "tags");
    grid.tags.push_back(*tag);
  }
  return grid;
}

Result<void> writeProjectorGrid(const std::string& path, const ProjectorGrid& grid) {
  Json tags = Json::array();
  for (const TagObservation& tag : grid.tags) {
    Json corners = Json::array();
    for (const ImagePoint& corner : tag.corners)
      corners.push_back({corner.x, corner.y});
    tags.push_back({{"id", tag.id}, {"corners", std::move(corners)}});
  }
  const Json object{{"projector_size", {grid.size.width, grid.size.height}},
                    {"dictionary", grid.dictionary},
                    {"tags", std::move(tags)}};
  return writeTextFile(path, object.dump(1) + "\n");
}

Result<Projector> readProjectorFile(const std::string& path) {
  const auto object = objectIn(path);
  if (!object) return tl::make_unexpected(object.error());
  if (object->value("format", std::string()) != kFormat)
    return failure(ErrorCode::FileMalformed, path, "not a projector file");
  const auto size = sizeIn(*object, "projector_size", path);
  if (!size) return tl::make_unexpected(size.error());
  const auto straight = numbersIn(*object, "straight_from_table", 9, path);
  if (!straight) return tl::make_unexpected(straight.error());
  const auto bending = numbersIn(*object, "bending", 4, path);
  if (!bending) return tl::make_unexpected(bending.error());
  Projector projector;
  projector.size = *size;
  for (int i = 0; i < 9; ++i)
    projector.straightFromTable(i / 3, i % 3) = (*straight)[static_cast<std::size_t>(i)];
  if (!(std::abs(projector.straightFromTable.determinant()) > 1e-12))
    return failure(ErrorCode::FieldInvalid, path, "straight_from_table");
  std::copy(bending->begin(), bending->end(), projector.bending.begin());
  projector.rms_m = metresFromMillimetres(numberOr(*object, "rms_mm", 0.0));
  projector.heldOutRms_m = metresFromMillimetres(numberOr(*object, "held_out_rms_mm", 0.0));
  projector.tags = static_cast<int>(numberOr(*object, "tags", 0.0));
  if (object->contains("date") && (*object)["date"].is_string()) projector.date = (*object)["date"].get<std::string>();
  return projector;
}

Result<void> writeProjectorFile(const std::string& path, const Projector& projector) {
  Json straight = Json::array();
  for (int i = 0; i < 9; ++i)
    straight.push_back(projector.straightFromTable(i / 3, i % 3));
  const Json object{{"format", kFormat},
                    {"projector_size", {projector.size.width, projector.size.height}},
                    {"straight_from_table", std::move(straight)},
                    {"bending", projector.bending},
                    {"rms_mm", millimetresFromMetres(projector.rms_m)},
                    {"held_out_rms_mm", millimetresFromMetres(projector.heldOutRms_m)},
                    {"tags", projector.tags},
                    {"date", projector.date}};
  return writeTextFile(path, object.dump(1) + "\n");
}

}  // namespace ferrule
