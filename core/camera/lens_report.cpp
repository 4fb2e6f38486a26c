// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/lens_calibration.h"
#include "core/camera/lens_json.h"

namespace ferrule {

std::string lensText(const LensCalibration& calibration) {
  using nlohmann::ordered_json;
  ordered_json parameters = ordered_json::array();
  for (const LensParameter& p : calibration.parameters) {
    parameters.push_back({{"name", p.name}, {"value", p.value}, {"standard_uncertainty", p.u}});
  }
  ordered_json covariance = ordered_json::array();
  const Eigen::MatrixXd matrix = calibration.uncertainty.matrix();
  for (Eigen::Index row = 0; row < matrix.rows(); ++row) {
    ordered_json line = ordered_json::array();
    for (Eigen::Index column = 0; column < matrix.cols(); ++column)
      line.push_back(matrix(row, column));
    covariance.push_back(std::move(line));
  }
  ordered_json views = ordered_json::array();
  for (const ViewReport& v : calibration.views) {
    views.push_back(
        {{"still", v.still}, {"rms_px", v.rms_px}, {"corners", v.corners}, {"dropped", v.dropped}, {"used", v.used}});
  }
  ordered_json shapes = ordered_json::array();
  for (const ShapeScore& s : calibration.shapes) {
    shapes.push_back(
        {{"shape", s.name}, {"held_out_px", s.heldOut_px}, {"training_px", s.training_px}, {"refused", s.refused}});
  }
  ordered_json cells = ordered_json::array();
  for (int row = 0; row < Coverage::kRows; ++row) {
    ordered_json line = ordered_json::array();
    for (int column = 0; column < Coverage::kColumns; ++column) {
      line.push_back(calibration.coverage.corners[static_cast<std::size_t>(row * Coverage::kColumns + column)]);
    }
    cells.push_back(std::move(line));
  }
  ordered_json object{{"format", "ferrule-lens/1"}};
  object.update(jsonFromLens(calibration.lens));
  object["report"] = {{"parameters", std::move(parameters)},
                      {"covariance", std::move(covariance)},
                      {"views", std::move(views)},
                      {"shapes", std::move(shapes)},
                      {"coverage",
                       {{"share", calibration.coverage.share()},
                        {"reach", calibration.coverage.reach},
                        {"corners_per_cell", std::move(cells)}}}};
  return object.dump(1) + "\n";
}

}  // namespace ferrule
