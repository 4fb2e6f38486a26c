// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/lens_file.h"

#include <cmath>

#include "core/base/text_file.h"
#include "core/camera/lens_json.h"

namespace ferrule {

namespace {

using nlohmann::json;
using nlohmann::ordered_json;

constexpr const char* kFormat = "ferrule-lens/1";
constexpr int kLargestSide_px = 20000;

std::string under(const std::string& field, const char* name) {
  return field.empty() ? std::string(name) : field + "." + name;
}

Result<ImagePoint> pairOf(const json& object, const char* name, const std::string& file, const std::string& field) {
  if (!object.contains(name)) return failure(ErrorCode::FieldMissing, file, under(field, name));
  const json& value = object.at(name);
  if (!value.is_array() || value.size() != 2 || !value[0].is_number() || !value[1].is_number()) {
    return failure(ErrorCode::FieldInvalid, file, under(field, name));
  }
  return ImagePoint{value[0].get<double>(), value[1].get<double>()};
}

std::string textOf(const json& object, const char* name) {
  const auto found = object.find(name);
  return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

}  // namespace

ordered_json jsonFromLens(const Lens& lens) {
  ordered_json coefficients = ordered_json::object();
  const auto names = coefficientNames(lens.model);
  for (std::size_t i = 0; i < names.size(); ++i)
    coefficients[std::string(names[i])] = lens.coefficients[i];
  return {{"camera", lens.camera},
          {"image_size", {lens.size.width, lens.size.height}},
          {"model", std::string(toText(lens.model))},
          {"focal_px", {lens.focalX_px, lens.focalY_px}},
          {"centre_px", {lens.centre.x, lens.centre.y}},
          {"coefficients", std::move(coefficients)},
          {"date", lens.date},
          {"board", lens.board},
          {"rms_px", lens.rms_px}};
}

Result<Lens> lensFromJson(const json& object, const std::string& file, const std::string& field) {
  if (!object.is_object()) return failure(ErrorCode::FieldInvalid, file, field.empty() ? "lens" : field);
  Lens lens;
  lens.camera = textOf(object, "camera");
  lens.date = textOf(object, "date");
  lens.board = textOf(object, "board");
  if (object.contains("rms_px") && object.at("rms_px").is_number()) lens.rms_px = object.at("rms_px").get<double>();

  const auto size = pairOf(object, "image_size", file, field);
  if (!size) return tl::make_unexpected(size.error());
  if (!(size->x >= 1 && size->x <= kLargestSide_px && size->y >= 1 && size->y <= kLargestSide_px)) {
    return failure(ErrorCode::FieldInvalid, file, under(field, "image_size"));
  }
  lens.size = {static_cast<int>(size->x), static_cast<int>(size->y)};

  if (!object.contains("model")) return failure(ErrorCode::FieldMissing, file, under(field, "model"));
  const auto model = lensModelFromText(textOf(object, "model"));
  if (!model) return failure(ErrorCode::FieldInvalid, file, under(field, "model"));
  lens.model = *model;

  const auto focal = pairOf(object, "focal_px", file, field);
  if (!focal) return tl::make_unexpected(focal.error());
  const double widest = std::max(size->x, size->y);
  // From a full half circle of view to a telescope: outside it is a slip of the pen.
  for (const double value : {focal->x, focal->y}) {
    if (!(value >= 0.1 * widest && value <= 100.0 * widest)) {
      return failure(ErrorCode::FieldInvalid, file, under(field, "focal_px"), {value, 0.1 * widest, 100.0 * widest});
    }
  }
  lens.focalX_px = focal->x;
  lens.focalY_px = focal->y;
  const auto centre = pairOf(object, "centre_px", file, field);
  if (!centre) return tl::make_unexpected(centre.error());
  if (!(centre->x >= 0.0 && centre->x <= size->x && centre->y >= 0.0 && centre->y <= size->y)) {
    return failure(ErrorCode::FieldInvalid, file, under(field, "centre_px"));
  }
  lens.centre = *centre;

  const auto names = coefficientNames(lens.model);
  if (!names.empty()) {
    const auto values = object.find("coefficients");
    if (values == object.end()) return failure(ErrorCode::FieldMissing, file, under(field, "coefficients"));
    for (std::size_t i = 0; i < names.size(); ++i) {
      const std::string name(names[i]);
      const std::string place = under(field, "coefficients") + "." + name;
      if (!values->is_object() || !values->contains(name)) return failure(ErrorCode::FieldMissing, file, place);
      const json& value = values->at(name);
      if (!value.is_number() || !std::isfinite(value.get<double>())) {
        return failure(ErrorCode::FieldInvalid, file, place);
      }
      lens.coefficients[i] = value.get<double>();
    }
  }
  return lens;
}

Result<Lens> parseLens(const std::string& text, const std::string& name) {
  const json object = json::parse(text, nullptr, false);
  if (object.is_discarded()) return failure(ErrorCode::FileMalformed, name, "not JSON");
  if (!object.is_object()) return failure(ErrorCode::FileMalformed, name, "not a JSON object");
  if (textOf(object, "format") != kFormat) return failure(ErrorCode::FileMalformed, name, "not a lens file");
  return lensFromJson(object, name, "");
}

Result<Lens> readLensFile(const std::string& path) {
  const auto text = readTextFile(path);
  if (!text) return tl::make_unexpected(text.error());
  return parseLens(*text, path);
}

std::string lensText(const Lens& lens) {
  ordered_json object{{"format", kFormat}};
  object.update(jsonFromLens(lens));
  return object.dump(1) + "\n";
}

}  // namespace ferrule
