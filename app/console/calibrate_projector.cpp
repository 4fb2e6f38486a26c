// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <memory>
#include <opencv2/imgcodecs.hpp>
#include <string>

#include "app/console/calibrate_command.h"
#include "app/console/console_output.h"
#include "app/words/today.h"
#include "core/camera/projector_file.h"
#include "core/camera/rig_file.h"
#include "core/geometry/units.h"
#include "core/table/measured_table.h"
#include "core/vision/projected_grid.h"

namespace ferrule {

namespace {

struct Call {
  std::string rig;
  std::string table;
  std::string grid;
  std::string picture;
  std::string dark;
  std::string output;
};

Result<cv::Mat> pictureIn(const std::string& path) {
  cv::Mat picture = cv::imread(path, cv::IMREAD_COLOR);
  if (picture.empty()) return failure(ErrorCode::NotAnImage, path);
  return picture;
}

Result<Projector> calibrate(const Call& call) {
  const auto rig = readRigFile(call.rig);
  if (!rig) return tl::make_unexpected(rig.error());
  const auto measured = measuredTableFrom(call.table);
  if (!measured) return tl::make_unexpected(measured.error());
  const auto grid = readProjectorGrid(call.grid);
  if (!grid) return tl::make_unexpected(grid.error());
  const auto picture = pictureIn(call.picture);
  if (!picture) return tl::make_unexpected(picture.error());
  cv::Mat dark;
  if (!call.dark.empty()) {
    const auto read = pictureIn(call.dark);
    if (!read) return tl::make_unexpected(read.error());
    dark = *read;
  }
  const auto corners = findProjectedGrid(*picture, dark, *grid, *rig, measured->table, call.picture, call.grid);
  if (!corners) return tl::make_unexpected(corners.error());
  auto projector = fitProjector(grid->size, *corners, call.picture);
  if (projector) projector->date = today();
  return projector;
}

int run(const Call& call) {
  const auto projector = calibrate(call);
  if (!projector) return reportError(projector.error());
  if (const auto written = writeProjectorFile(call.output, *projector); !written) return reportError(written.error());
  printResult(QStringLiteral("projector: %1 tags on the cloth, rms %2 mm, left out one by one %3 mm")
                  .arg(projector->tags)
                  .arg(millimetresFromMetres(projector->rms_m), 0, 'f', 2)
                  .arg(millimetresFromMetres(projector->heldOutRms_m), 0, 'f', 2));
  printNote(
      QStringLiteral("Never look into the projector's beam. A projector over a table needs fixings rated for its "
                     "weight, a safety tether and mains work by a licensed electrician; local codes come first."));
  return 0;
}

}  // namespace

void addCalibrateProjectorCommand(CLI::App& calibrate, int& status) {
  CLI::App* command = calibrate.add_subcommand("projector", "Find where a projector's pixels fall on the cloth");
  const auto call = std::make_shared<Call>();
  command->add_option("--rig", call->rig, "Rig file of the camera that saw the grid")->required();
  command->add_option("--table", call->table, "table.json, or a preset such as 9ft")->required();
  command->add_option("--grid", call->grid, "The grid that was sent, from ferrule project --grid")->required();
  command->add_option("--picture", call->picture, "What the camera saw while the grid was sent, table empty")
      ->required();
  command->add_option("--black", call->dark, "What it saw while black was sent: takes the room's light out");
  command->add_option("-o,--output", call->output, "The projector file to write")->required();
  command->callback([call, &status] { status = run(*call); });
}

}  // namespace ferrule
