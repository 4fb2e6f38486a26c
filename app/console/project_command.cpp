// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/project_command.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <opencv2/imgcodecs.hpp>
#include <string>

#include "app/console/console_output.h"
#include "app/console/position_call.h"
#include "core/physics/simulator.h"
#include "core/vision/projection_picture.h"

namespace ferrule {

namespace {

struct Call {
  std::string position;
  std::string projector;
  std::string grid;
  std::string gridFile;
  std::string output;
};

constexpr double kStep_s = 0.02;
/// Numbers stand this far beside their balls, in ball radii.
constexpr double kBeside = 1.3;

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

/// Every ball's ring with its number, and the ways when the file asks for a strike.
Result<LightDrawing> drawingOf(const PositionFile& file, const std::string& name) {
  LightDrawing drawing;
  const double radius_m = file.measured.balls.radius_m();
  for (const BallAt& ball : file.balls) {
    drawing.lines.push_back(ringAround(ball.position, radius_m));
    if (!ball.ball.isCueBall()) {
      drawing.labels.push_back(
          {ball.position + TableVector{kBeside * radius_m, kBeside * radius_m}, std::string(toText(ball.ball))});
    }
  }
  if (!file.strike) return drawing;
  const auto simulator = Simulator::create(file.measured.table, file.parameters);
  if (!simulator) return aboutPosition(name, simulator.error());
  const auto played = simulator->shoot(file.balls, *file.strike);
  if (!played) return aboutPosition(name, played.error());
  for (const BallPath& path : played->paths) {
    LightLine way;
    way.dashed = true;
    for (double time_s = 0.0; time_s <= played->duration_s; time_s += kStep_s) {
      if (path.motionAt(time_s).kind == MotionKind::Gone) break;
      const TablePoint place = planOf(path.stateAt(time_s).position);
      if (way.places.empty() || distance(way.places.back(), place) > radius_m / 4.0) way.places.push_back(place);
    }
    if (way.places.size() > 1) drawing.lines.push_back(std::move(way));
  }
  return drawing;
}

Result<void> project(const Call& call) {
  if (!call.grid.empty()) return makeGrid(call);
  const auto projector = readProjectorFile(call.projector);
  if (!projector) return tl::make_unexpected(projector.error());
  const auto file = readPositionFile(call.position);
  if (!file) return tl::make_unexpected(file.error());
  const auto drawing = drawingOf(*file, call.position);
  if (!drawing) return tl::make_unexpected(drawing.error());
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
