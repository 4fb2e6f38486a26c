// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/lens_uncertainty.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/base/contract.h"
#include "core/base/text_file.h"
#include "core/camera/lens_fitting.h"

namespace ferrule {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;
using nlohmann::json;

/// The lens's numbers in the order of the covariance.
VectorXd valuesOf(const Lens& lens, Index count) {
  VectorXd all(count);
  all.head<4>() << lens.focalX_px, lens.focalY_px, lens.centre.x, lens.centre.y;
  for (Index i = 4; i < count; ++i)
    all[i] = lens.coefficients.at(static_cast<std::size_t>(i - 4));
  return all;
}

/// Both changes of a lens are linear in its numbers; their matrix comes column by column from the change itself.
template <class Change>
LensUncertainty carried(const LensUncertainty& uncertainty, const Lens& lens, const Change& change) {
  const Index n = uncertainty.parameters();
  if (n == 0) return {};
  const VectorXd before = valuesOf(change(lens), n);
  MatrixXd by(n, n);
  for (Index i = 0; i < n; ++i)
    by.col(i) = valuesOf(change(changedLens(lens, VectorXd::Unit(n, i))), n) - before;
  return LensUncertainty::of(by * uncertainty.matrix() * by.transpose());
}

}  // namespace

Index LensUncertainty::parameters() const {
  return static_cast<Index>(std::lround(std::sqrt(static_cast<double>(covariance.size()))));
}

MatrixXd LensUncertainty::matrix() const {
  const Index n = parameters();
  return Eigen::Map<const Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>>(covariance.data(), n,
                                                                                                  n);
}

LensUncertainty LensUncertainty::of(const MatrixXd& covariance) {
  LensUncertainty result;
  for (Index row = 0; row < covariance.rows(); ++row) {
    for (Index column = 0; column < covariance.cols(); ++column)
      result.covariance.push_back(covariance(row, column));
  }
  return result;
}

Lens changedLens(const Lens& lens, const VectorXd& by) {
  FERRULE_REQUIRE(by.size() >= 4 && by.size() <= 4 + static_cast<Index>(lens.coefficients.size()));
  Lens changed = lens;
  changed.focalX_px += by[0];
  changed.focalY_px += by[1];
  changed.centre = {lens.centre.x + by[2], lens.centre.y + by[3]};
  for (Index i = 4; i < by.size(); ++i)
    changed.coefficients[static_cast<std::size_t>(i - 4)] += by[i];
  return changed;
}

LensUncertainty scaledUncertainty(const LensUncertainty& uncertainty, const Lens& lens, ImageSize size) {
  return carried(uncertainty, lens, [&](const Lens& each) { return scaledLens(each, size, "", "").value_or(each); });
}

LensUncertainty turnedUncertainty(const LensUncertainty& uncertainty, const Lens& lens, int clockwise_deg) {
  return carried(uncertainty, lens, [&](const Lens& each) { return turnedLens(each, clockwise_deg); });
}

Result<LensUncertainty> readLensUncertainty(const std::string& path) {
  const auto text = readTextFile(path);
  if (!text) return tl::make_unexpected(text.error());
  const json object = json::parse(*text, nullptr, false);
  if (object.is_discarded() || !object.is_object()) return failure(ErrorCode::FileMalformed, path, "not JSON");
  const json report = object.value("report", json::object());
  const json rows = report.value("covariance", json::array());
  LensUncertainty result;
  for (const json& row : rows) {
    if (!row.is_array() || row.size() != rows.size())
      return failure(ErrorCode::FieldInvalid, path, "report.covariance");
    for (const json& value : row) {
      if (!value.is_number()) return failure(ErrorCode::FieldInvalid, path, "report.covariance");
      result.covariance.push_back(value.get<double>());
    }
  }
  if (!result.covariance.empty()) {
    // Fewer than the focal lengths and the centre, or more than any model has, is not ours.
    if (rows.size() < 4 || rows.size() > 12) return failure(ErrorCode::FieldInvalid, path, "report.covariance");
    return result;
  }
  const json parameters = report.value("parameters", json::array());
  if (parameters.size() < 4 || parameters.size() > 12) return LensUncertainty{};
  VectorXd u(static_cast<Index>(parameters.size()));
  for (Index i = 0; i < u.size(); ++i) {
    const json& each = parameters.at(static_cast<std::size_t>(i));
    if (!each.is_object() || !each.contains("standard_uncertainty") || !each.at("standard_uncertainty").is_number())
      return LensUncertainty{};
    u[i] = each.at("standard_uncertainty").get<double>();
  }
  return LensUncertainty::of(u.cwiseAbs2().asDiagonal());
}

}  // namespace ferrule
