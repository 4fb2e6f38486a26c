// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/rig_file.h"

#include <Eigen/Dense>
#include <cmath>

#include "core/base/text_file.h"
#include "core/camera/lens_json.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

using nlohmann::json;
using nlohmann::ordered_json;

constexpr const char* kFormat = "ferrule-rig/1";
/// A rotation matrix in a file may be off by its digits, not by more.
constexpr double kRotationSlack = 1e-6;

/// Focal lengths and centre; and these with every coefficient of the longest model.
constexpr Eigen::Index kLeastLensParameters = 4;
constexpr Eigen::Index kMostLensParameters = 12;

template <class Matrix>
ordered_json rows(const Matrix& matrix) {
  ordered_json all = ordered_json::array();
  for (Eigen::Index r = 0; r < matrix.rows(); ++r) {
    ordered_json row = ordered_json::array();
    for (Eigen::Index c = 0; c < matrix.cols(); ++c)
      row.push_back(matrix(r, c));
    all.push_back(std::move(row));
  }
  return all;
}

template <class Matrix>
bool readRows(const json& all, Matrix& matrix) {
  if (!all.is_array() || static_cast<Eigen::Index>(all.size()) != matrix.rows()) return false;
  for (Eigen::Index r = 0; r < matrix.rows(); ++r) {
    const json& row = all.at(static_cast<std::size_t>(r));
    if (!row.is_array() || static_cast<Eigen::Index>(row.size()) != matrix.cols()) return false;
    for (Eigen::Index c = 0; c < matrix.cols(); ++c) {
      const json& value = row.at(static_cast<std::size_t>(c));
      if (!value.is_number() || !std::isfinite(value.get<double>())) return false;
      matrix(r, c) = value.get<double>();
    }
  }
  return true;
}

double numberOf(const json& object, const char* name) {
  const auto found = object.find(name);
  return found != object.end() && found->is_number() ? found->get<double>() : 0.0;
}

std::string textOf(const json& object, const char* name) {
  const auto found = object.find(name);
  return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

ordered_json jsonFromChain(const CorrectionChain& chain) {
  ordered_json all = ordered_json::array();
  for (const Correction& correction : chain.corrections()) {
    all.push_back({{"kind", std::string(toText(correction.kind))},
                   {"source", correction.source},
                   {"purpose", correction.purpose},
                   {"date", correction.date}});
  }
  return all;
}

Result<CorrectionChain> chainFromJson(const json& all, const std::string& file) {
  if (!all.is_array()) return failure(ErrorCode::FieldInvalid, file, "chain");
  CorrectionChain chain;
  std::optional<CorrectionKind> before;
  for (const json& entry : all) {
    const auto kind = entry.is_object() ? correctionKindFromText(textOf(entry, "kind")) : std::nullopt;
    if (!kind) return failure(ErrorCode::FieldInvalid, file, "chain.kind");
    const auto added = chain.add({*kind, textOf(entry, "source"), textOf(entry, "purpose"), textOf(entry, "date")});
    if (!added) return failure(ErrorCode::CorrectionTwice, file, added.error().detail);
    if (before && *kind < *before) return failure(ErrorCode::FieldInvalid, file, "chain: out of order");
    before = kind;
  }
  return chain;
}

Result<CameraFromTable> poseFromJson(const json& object, const std::string& file) {
  CameraFromTable pose;
  if (!object.is_object() || !object.contains("rotation")) {
    return failure(ErrorCode::FieldMissing, file, "pose.rotation");
  }
  if (!readRows(object.at("rotation"), pose.rotation) ||
      (pose.rotation * pose.rotation.transpose() - Eigen::Matrix3d::Identity()).norm() > kRotationSlack ||
      pose.rotation.determinant() < 0.0) {
    return failure(ErrorCode::FieldInvalid, file, "pose.rotation");
  }
  if (!object.contains("translation_mm")) return failure(ErrorCode::FieldMissing, file, "pose.translation_mm");
  Eigen::Matrix<double, 1, 3> shift_mm;
  if (!readRows(json::array({object.at("translation_mm")}), shift_mm)) {
    return failure(ErrorCode::FieldInvalid, file, "pose.translation_mm");
  }
  for (int i = 0; i < 3; ++i)
    pose.translation_m[i] = metresFromMillimetres(shift_mm[i]);
  return pose;
}

}  // namespace

std::string rigText(const Rig& rig) {
  ordered_json tags = ordered_json::array();
  for (const TagResidual& tag : rig.tags) {
    tags.push_back({{"id", tag.id},
                    {"rms_px", tag.rms_px},
                    {"rms_mm", millimetresFromMetres(tag.rms_m)},
                    {"leave_one_out_mm", millimetresFromMetres(tag.leaveOneOut_m)}});
  }
  ordered_json noses = ordered_json::array();
  for (const NoseStraightness& nose : rig.noses) {
    noses.push_back({{"cushion", std::string(toText(nose.cushion))},
                     {"rms_mm", millimetresFromMetres(nose.rms_m)},
                     {"max_mm", millimetresFromMetres(nose.max_m)},
                     {"places", nose.places}});
  }
  const Eigen::Vector3d& t = rig.pose.translation_m;
  const ordered_json object{
      {"format", kFormat},
      {"verdict", rig.verdict},
      {"chain", jsonFromChain(rig.chain)},
      {"lens", jsonFromLens(rig.lens)},
      {"pose",
       {{"rotation", rows(rig.pose.rotation)},
        {"translation_mm",
         {millimetresFromMetres(t.x()), millimetresFromMetres(t.y()), millimetresFromMetres(t.z())}}}},
      {"pose_covariance_rad_m", rows(rig.poseCovariance)},
      {"lens_covariance", rows(rig.lensUncertainty.matrix())},
      {"pose_rms_px", rig.poseRms_px},
      {"tag_rms_mm", millimetresFromMetres(rig.tagRms_m)},
      {"tags", std::move(tags)},
      {"noses", std::move(noses)}};
  return object.dump(1) + "\n";
}

Result<Rig> parseRig(const std::string& text, const std::string& name) {
  const json object = json::parse(text, nullptr, false);
  if (object.is_discarded()) return failure(ErrorCode::FileMalformed, name, "not JSON");
  if (!object.is_object() || textOf(object, "format") != kFormat) {
    return failure(ErrorCode::FileMalformed, name, "not a rig file");
  }
  for (const char* field : {"lens", "pose", "chain"}) {
    if (!object.contains(field)) return failure(ErrorCode::FieldMissing, name, field);
  }
  Rig rig;
  auto lens = lensFromJson(object.at("lens"), name, "lens");
  if (!lens) return tl::make_unexpected(lens.error());
  rig.lens = std::move(*lens);
  const auto pose = poseFromJson(object.at("pose"), name);
  if (!pose) return tl::make_unexpected(pose.error());
  rig.pose = *pose;
  auto chain = chainFromJson(object.at("chain"), name);
  if (!chain) return tl::make_unexpected(chain.error());
  rig.chain = std::move(*chain);
  if (object.contains("pose_covariance_rad_m") && !readRows(object.at("pose_covariance_rad_m"), rig.poseCovariance)) {
    return failure(ErrorCode::FieldInvalid, name, "pose_covariance_rad_m");
  }
  if (object.contains("lens_covariance")) {
    const auto size = static_cast<Eigen::Index>(object.at("lens_covariance").size());
    Eigen::MatrixXd covariance(size, size);
    const bool possible = size == 0 || (size >= kLeastLensParameters && size <= kMostLensParameters);
    if (!possible || !readRows(object.at("lens_covariance"), covariance)) {
      return failure(ErrorCode::FieldInvalid, name, "lens_covariance");
    }
    rig.lensUncertainty = LensUncertainty::of(covariance);
  }
  rig.poseRms_px = numberOf(object, "pose_rms_px");
  rig.tagRms_m = metresFromMillimetres(numberOf(object, "tag_rms_mm"));
  rig.verdict = textOf(object, "verdict");
  if (object.contains("tags") && object.at("tags").is_array()) {
    for (const json& tag : object.at("tags")) {
      if (!tag.is_object()) return failure(ErrorCode::FieldInvalid, name, "tags");
      rig.tags.push_back({static_cast<int>(numberOf(tag, "id")), numberOf(tag, "rms_px"),
                          metresFromMillimetres(numberOf(tag, "rms_mm")),
                          metresFromMillimetres(numberOf(tag, "leave_one_out_mm"))});
    }
  }
  if (object.contains("noses") && object.at("noses").is_array()) {
    for (const json& nose : object.at("noses")) {
      const auto cushion = nose.is_object() ? cushionFromText(textOf(nose, "cushion")) : std::nullopt;
      if (!cushion) return failure(ErrorCode::FieldInvalid, name, "noses");
      rig.noses.push_back({*cushion, metresFromMillimetres(numberOf(nose, "rms_mm")),
                           metresFromMillimetres(numberOf(nose, "max_mm")),
                           static_cast<int>(numberOf(nose, "places"))});
    }
  }
  return rig;
}

Result<Rig> readRigFile(const std::string& path) {
  const auto text = readTextFile(path);
  if (!text) return tl::make_unexpected(text.error());
  return parseRig(*text, path);
}

Result<void> writeRigFile(const std::string& path, const Rig& rig) {
  return writeTextFile(path, rigText(rig));
}

}  // namespace ferrule
