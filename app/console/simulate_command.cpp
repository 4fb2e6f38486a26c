// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/simulate_command.h"

#include <CLI/CLI.hpp>
#include <cstdio>
#include <memory>
#include <string>

#include "app/console/console_output.h"
#include "app/console/path_picture.h"
#include "core/base/text_file.h"
#include "core/physics/position_file.h"
#include "core/physics/simulation_text.h"
#include "core/physics/simulator.h"

namespace ferrule {

namespace {

struct Call {
  std::string position;
  std::string output;
  std::string picture;
};

/// The simulator speaks of "position" and "strike"; the user knows the file.
tl::unexpected<Error> about(const std::string& file, Error error) {
  if (error.code == ErrorCode::NotFound) return failure(ErrorCode::FieldMissing, file, "balls: cue");
  if (error.code == ErrorCode::FieldInvalid) error.detail = error.subject + "." + error.detail;
  error.subject = file;
  return tl::make_unexpected(std::move(error));
}

Result<void> simulate(const Call& call) {
  const auto file = readPositionFile(call.position);
  if (!file) return tl::make_unexpected(file.error());
  if (!file->strike) return failure(ErrorCode::FieldMissing, call.position, "strike");
  const auto simulator = Simulator::create(file->measured.table, file->parameters);
  if (!simulator) return about(call.position, simulator.error());
  const auto played = simulator->shoot(file->balls, *file->strike);
  if (!played) return about(call.position, played.error());
  // Only balls without friction worth the name roll for ten minutes.
  if (played->end != SimulationEnd::AtRest) return failure(ErrorCode::FieldInvalid, call.position, "coefficients");
  const std::string text = simulationText(*played);
  if (call.output.empty()) {
    std::fwrite(text.data(), 1, text.size(), stdout);
  } else if (auto written = writeTextFile(call.output, text); !written) {
    return written;
  }
  if (call.picture.empty()) return {};
  return writeTextFile(call.picture, pathPicture(file->measured, *played));
}

}  // namespace

void addSimulateCommand(CLI::App& app, int& status) {
  CLI::App* command = app.add_subcommand("simulate", "Play a strike from a position and say what happens");
  const auto call = std::make_shared<Call>();
  command->add_option("POSITION", call->position, "The position file: table, balls, strike, coefficients")->required();
  command->add_option("-o,--output", call->output, "Write the outcome here instead of on standard output");
  command->add_option("--picture", call->picture, "Draw the ways of the balls as an SVG file");
  command->callback([call, &status] {
    const auto done = simulate(*call);
    status = done ? 0 : reportError(done.error());
  });
}

}  // namespace ferrule
