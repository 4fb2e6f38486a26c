// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/project_command.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <opencv2/imgcodecs.hpp>
#include <string>

#include "app/console/console_output.h"
#include "app/console/position_call.h"
#include "core/measure/table_light.h"

namespace ferrule {

namespace {

struct Call {
  std::string position;
  std::string projector;
  std::string grid;
  std::string gridFile;
  std::string output;
};

Result<void> writePicture(const std::string& path, const cv::Mat& picture) {
  bool written = false;
  try {
    written = cv::imwrite(path, picture);
  } catch (const cv::Exception&) {
    written = false;  // no picture's ending
  }
  if (!written) return failure(ErrorCode::FileNotWritable, path, "as a picture");
  return {};
}

/// "1280x800".
std::optional<ImageSize> sizeFrom(const std::string& text) {
  ImageSize size;
  char rest = 0;
  if (std::sscanf(text.c_str(), "%dx%d%c", &size.width, &size.height, &rest) != 2) return std::nullopt;
  if (size.width < 320 || size.height < 200 || size.width > 8192 || size.height > 8192) return std::nullopt;
  return size;
}

Result<void> makeGrid(const Call& call) {
  const auto size = sizeFrom(call.grid);
  if (!size) return failure(ErrorCode::FieldInvalid, "--grid " + call.grid, "width and height, such as 1280x800");
  const ProjectorGrid grid = projectorGridFor(*size);
  if (auto written = writePicture(call.output, gridPicture(grid)); !written) return written;
  return writeProjectorGrid(call.gridFile, grid);
}

Result<void> project(const Call& call) {
  if (!call.grid.empty()) return makeGrid(call);
  const auto projector = readProjectorFile(call.projector);
  if (!projector) return tl::make_unexpected(projector.error());
  const auto file = readPositionFile(call.position);
  if (!file) return tl::make_unexpected(file.error());
  const auto drawing = lightOf(*file);
  if (!drawing) return aboutPosition(call.position, drawing.error());
  return writePicture(call.output, projectionPicture(*projector, *drawing));
}

}  // namespace

void addProjectCommand(CLI::App& app, int& status) {
  CLI::App* command = app.add_subcommand("project", "Draw a position as a projector must show it, or its grid of tags");
  const auto call = std::make_shared<Call>();
  auto* position = command->add_option("POSITION", call->position, "The position file: rings where balls belong");
  auto* projector = command->add_option("--projector", call->projector, "Projector file, from calibrate projector");
  auto* grid = command->add_option("--grid", call->grid, "Draw a grid of tags for a projector of this size: 1280x800");
  auto* gridFile = command->add_option("--grid-file", call->gridFile, "Where to write where the grid's corners are");
  command->add_option("-o,--output", call->output, "The picture to write")->required();
  position->needs(projector)->excludes(grid);
  projector->needs(position);
  grid->needs(gridFile);
  command->callback([call, &status] {
    if (call->grid.empty() && call->position.empty()) {
      throw CLI::RequiredError("POSITION or --grid");
    }
    const auto done = project(*call);
    status = done ? 0 : reportError(done.error());
  });
}

}  // namespace ferrule
