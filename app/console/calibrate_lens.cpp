// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <QDir>
#include <QFileInfo>
#include <QStringList>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/console/calibrate_command.h"
#include "app/console/console_output.h"
#include "app/words/today.h"
#include "core/base/text_file.h"
#include "core/camera/lens_calibration.h"
#include "core/geometry/units.h"
#include "core/vision/board_stills.h"
#include "core/vision/coverage_picture.h"

namespace ferrule {

namespace {

struct Call {
  std::string board;
  std::vector<std::string> stills;
  std::string camera;
  std::string coverage;
  std::string ruler;
  std::string output;
};

/// A table fills most of a picture, its pockets stand near the corners.
constexpr double kGoodReach = 0.8;

void printSummary(const LensCalibration& calibration) {
  const Lens& lens = calibration.lens;
  std::size_t used = 0;
  for (const ViewReport& view : calibration.views)
    used += view.used ? 1 : 0;
  printResult(QStringLiteral("lens of %1 at %2x%3: %4, rms %5 px over %6 of %7 stills")
                  .arg(QString::fromStdString(lens.camera))
                  .arg(lens.size.width)
                  .arg(lens.size.height)
                  .arg(QString::fromUtf8(toText(lens.model).data()))
                  .arg(lens.rms_px, 0, 'f', 3)
                  .arg(used)
                  .arg(calibration.views.size()));
  for (const LensParameter& p : calibration.parameters) {
    printResult(QStringLiteral("  %1 = %2 +- %3")
                    .arg(QString::fromStdString(p.name))
                    .arg(p.value, 0, 'g', 7)
                    .arg(p.u, 0, 'g', 2));
  }
  for (const ShapeScore& shape : calibration.shapes) {
    const QString name = QString::fromStdString(shape.name);
    if (shape.refused.empty()) {
      printResult(QStringLiteral("  tried %1: held-out rms %2 px, training rms %3 px")
                      .arg(name)
                      .arg(shape.heldOut_px, 0, 'f', 4)
                      .arg(shape.training_px, 0, 'f', 4));
    } else {
      printResult(QStringLiteral("  tried %1: refused (%2)").arg(name, QString::fromStdString(shape.refused)));
    }
  }
  for (const ViewReport& view : calibration.views) {
    printResult(QStringLiteral("  %1: %2 px, %3 corners, %4 dropped%5")
                    .arg(QString::fromStdString(view.still))
                    .arg(view.rms_px, 0, 'f', 3)
                    .arg(view.corners)
                    .arg(view.dropped)
                    .arg(view.used ? QString() : QStringLiteral(", not used")));
  }
  printResult(QStringLiteral("coverage: %1 % of the picture, out to %2 % of the way to its corners")
                  .arg(100.0 * calibration.coverage.share(), 0, 'f', 0)
                  .arg(100.0 * calibration.coverage.reach, 0, 'f', 0));
  if (calibration.coverage.reach < kGoodReach) {
    printNote(
        QStringLiteral("Beyond that the lens is a guess; add stills with the board in the corners of the picture."));
  }
}

/// The name of the folder that holds the stills, where the owner gave none.
std::string cameraName(const Call& call) {
  if (!call.camera.empty()) return call.camera;
  return QFileInfo(QString::fromStdString(call.stills.front())).absoluteDir().dirName().toStdString();
}

/// "97.5", or across and down "97.5,97.0"; in mm. Nothing for anything else.
std::optional<RulerReading> rulerFrom(const std::string& text) {
  const QStringList parts = QString::fromStdString(text).split(QLatin1Char(','));
  bool across = false;
  bool down = false;
  const RulerReading reading{metresFromMillimetres(parts.front().toDouble(&across)),
                             metresFromMillimetres(parts.back().toDouble(&down))};
  if (parts.size() > 2 || !across || !down) return std::nullopt;
  return reading;
}

/// Stills that do not count, and why.
void noteStills(const std::vector<BoardStill>& stills) {
  for (const BoardStill& still : stills) {
    const QString path = QString::fromStdString(still.path);
    switch (still.fate) {
      case StillFate::Repeated:
        printNote(QStringLiteral("%1 shows the board just where %2 does; it counts once.")
                      .arg(path, QString::fromStdString(still.sameAs)));
        break;
      case StillFate::Blurred:
        printNote(
            QStringLiteral("%1 is blurred (edges of %2 px); it is not used.").arg(path).arg(still.edge_px, 0, 'f', 1));
        break;
      case StillFate::Mirrored:
        printNote(QStringLiteral("%1 is mirrored; it is not used.").arg(path));
        break;
      case StillFate::LayoutOld:
        printNote(QStringLiteral("%1 shows a board of the old layout; it is not used.").arg(path));
        break;
      case StillFate::NoBoard:
        printNote(QStringLiteral("%1 does not show the board; it is not used.").arg(path));
        break;
      default:
        break;
    }
  }
}

Result<LensCalibration> calibrationOf(const Call& call, const JobControl& job) {
  auto board = parseBoard(call.board);
  if (board) board = boardAsPrinted(*board, rulerFrom(call.ruler).value_or(RulerReading{}));
  if (!board) return tl::make_unexpected(board.error());
  const auto stills = surveyStills(*board, call.stills, {}, job);
  if (!stills) return tl::make_unexpected(stills.error());
  auto views = viewsOfBoard(*board, *stills);
  if (!views) return tl::make_unexpected(views.error());
  auto calibration = calibrateLens(*board, std::move(*views), job);
  // A refusal says all there is to say.
  if (calibration) noteStills(*stills);
  return calibration;
}

int run(const Call& call) {
  auto calibration = calibrationOf(call, consoleJob());
  if (!calibration) return reportError(calibration.error());
  calibration->lens.camera = cameraName(call);
  calibration->lens.date = today();
  if (const auto written = writeTextFile(call.output, lensText(*calibration)); !written) {
    return reportError(written.error());
  }
  if (!call.coverage.empty()) {
    const auto drawn = writeCoveragePicture(call.coverage, *calibration);
    if (!drawn) return reportError(drawn.error());
  }
  printSummary(*calibration);
  return 0;
}

}  // namespace

void addCalibrateLensCommand(CLI::App& calibrate, int& status) {
  CLI::App* command = calibrate.add_subcommand("lens", "Measure a lens from stills of a printed board");
  const auto call = std::make_shared<Call>();
  command
      ->add_option("--board", call->board,
                   "chessboard:COLUMNSxROWS:SQUARE (inner corners) or charuco:COLUMNSxROWS:SQUARE:MARKER:DICTIONARY "
                   "(squares), lengths in mm")
      ->required();
  command->add_option("stills", call->stills, "Pictures of the board, all of one camera at one size")->required();
  command->add_option("--camera", call->camera, "The camera's name (default: the stills' folder)");
  command->add_option("--coverage", call->coverage, "Also draw where the board was seen (PNG)");
  command
      ->add_option(
          "--ruler", call->ruler,
          "What a steel rule reads on the print's 100 mm lines, in mm: 97.5, or ACROSS,DOWN; the board is taken "
          "to be as much smaller")
      ->check([](const std::string& text) {
        return rulerFrom(text) ? std::string() : std::string("Expected a length in mm, or two such as 97.5,97.5");
      });
  command->add_option("-o,--output", call->output, "The lens file to write")->required();
  command->callback([call, &status] { status = run(*call); });
}

}  // namespace ferrule
