// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/check_command.h"

#include <CLI/CLI.hpp>
#include <QStringList>
#include <algorithm>
#include <array>
#include <memory>
#include <optional>

#include "app/console/console_output.h"
#include "app/console/interrupt.h"
#include "app/words/check_sentence.h"
#include "core/base/text_file.h"
#include "core/camera/check_file.h"
#include "core/camera/error_map.h"
#include "core/camera/rig_file.h"
#include "core/camera/shot_worth.h"
#include "core/geometry/units.h"
#include "core/vision/error_map_picture.h"
#include "core/vision/film_check.h"

namespace ferrule {

namespace {

/// Less is written as 0.0 mm and says nothing.
constexpr double kShown_m = 0.0001;

struct Call {
  CheckNames names;
  std::string output;
  std::string map;
  std::string shot;
};

/// "X,Y,X,Y,POCKET" in mm: cue ball, object ball, pocket.
struct CalledShot {
  TablePoint cueBall;
  TablePoint objectBall;
  PocketName pocket = PocketName::HeadLeft;
};

std::optional<CalledShot> shotFrom(const std::string& text) {
  const QStringList parts = QString::fromStdString(text).split(',');
  if (parts.size() != 5) return std::nullopt;
  std::array<double, 4> mm{};
  for (int i = 0; i < 4; ++i) {
    bool isNumber = false;
    mm.at(static_cast<std::size_t>(i)) = parts[i].toDouble(&isNumber);
    if (!isNumber) return std::nullopt;
  }
  const auto pocket = pocketFromText(parts[4].trimmed().toStdString());
  if (!pocket) return std::nullopt;
  const auto at = [&](std::size_t i) {
    return TablePoint{metresFromMillimetres(mm.at(i)), metresFromMillimetres(mm.at(i + 1))};
  };
  return CalledShot{at(0), at(2), *pocket};
}

QString mm(double length_m, int decimals = 1) {
  return QString::number(millimetresFromMetres(length_m), 'f', decimals);
}

void printErrorAt(const ErrorMap& map, TablePoint place) {
  const auto at = map.at(place);
  if (!at) return;
  QStringList parts;
  for (const BudgetLine& line : at->budget)
    parts << QStringLiteral("%1 %2").arg(QString::fromUtf8(toText(line.component)), mm(line.u_m(), 2));
  printResult(QStringLiteral("ball at x %1 y %2: within %3 mm (95 %); rms %4 mm = %5")
                  .arg(mm(place.x, 0), mm(place.y, 0), mm(at->reach95_m(), 2), mm(at->u_m(), 2), parts.join(", ")));
}

void printWorth(const ErrorMap& map, const CalledShot& called, const Table& table) {
  const auto all = pockets(table);
  const auto pocket = std::ranges::find(all, called.pocket, &Pocket::name);
  const auto worth = shotWorth(map, called.cueBall, called.objectBall, *pocket);
  if (!worth) {
    printNote(QStringLiteral("That ball cannot be cut to that pocket from there; choose another shot."));
    return;
  }
  printResult(
      QStringLiteral("shot: cut %1 deg +- %2; the picture alone puts the ball %3 mm rms off the pocket's middle, "
                     "where there are %4 mm to either side: a perfect player pots %5 %")
          .arg(degreesFromRadians(worth->cut_rad), 0, 'f', 1)
          .arg(degreesFromRadians(worth->cutU_rad), 0, 'f', 2)
          .arg(mm(worth->atPocketU_m), mm(worth->room_m))
          .arg(100.0 * worth->chance, 0, 'f', 1));
  QStringList parts;
  for (const auto& [component, share] : worth->shares)
    parts << QStringLiteral("%1 %2 %").arg(QString::fromUtf8(toText(component))).arg(100.0 * share, 0, 'f', 0);
  if (!parts.isEmpty()) printResult(QStringLiteral("improve first: %1").arg(parts.join(", ")));
}

void printCheck(const Call& call, const FilmCheck& film) {
  const SelfCheck& check = film.check;
  for (const CheckFinding& finding : check.findings)
    printResult(findingLine(finding));
  printResult(QStringLiteral("verdict: %1 (confidence %2 %)")
                  .arg(QString::fromUtf8(toText(check.verdict)))
                  .arg(100.0 * check.confidence, 0, 'f', 0));
  if (check.verdict != RigFault::None && check.costMax_m >= kShown_m) {
    printResult(QStringLiteral("cost: a ball's place is off by %1 mm rms, %2 mm at most, at x %3 y %4 mm")
                    .arg(mm(check.costRms_m), mm(check.costMax_m), mm(check.costliest.x), mm(check.costliest.y)));
  }
  printResult(checkSentence(check, call.names));
}

int run(const Call& call) {
  const auto rig = readRigFile(call.names.rig);
  if (!rig) return reportError(rig.error());
  const auto measured = measuredTableFrom(call.names.table);
  if (!measured) return reportError(measured.error());
  const Interrupt interrupt;
  JobControl job = consoleJob();
  job.stop = interrupt.token();
  const auto film = checkFilm(call.names.film, *rig, *measured, call.names.table, job);
  if (!film) return reportError(film.error());
  printCheck(call, *film);
  if (!call.output.empty()) {
    const auto written = writeTextFile(call.output, checkText(film->check, call.names));
    if (!written) return reportError(written.error());
  }
  const ErrorMap map(*rig, *measured);
  const Table& table = measured->table;
  if (!call.map.empty() || !call.shot.empty()) {
    if (film->check.verdict != RigFault::None) {
      printNote(QStringLiteral("The map is that of a rig that fits; cure the fault before trusting it."));
    }
    if (rig->lensUncertainty.parameters() == 0) {
      printNote(
          QStringLiteral("%1 does not hold how well its lens is known, so that the map leaves the lens out; calibrate "
                         "the lens again and make the rig with it.")
              .arg(QString::fromStdString(call.names.rig)));
    }
    printErrorAt(map, {0.0, 0.0});
    printErrorAt(map, {0.45 * table.length_m, 0.45 * table.width_m});
  }
  if (!call.map.empty()) {
    if (const auto written = writeErrorMapPicture(call.map, map, table); !written) return reportError(written.error());
  }
  if (const auto called = shotFrom(call.shot)) printWorth(map, *called, table);
  return film->check.verdict == RigFault::None ? 0 : 1;
}

}  // namespace

void addCheckCommand(CLI::App& app, int& status) {
  CLI::App* command =
      app.add_subcommand("check", "Say whether a rig and a table file belong to a film, and what is wrong");
  const auto call = std::make_shared<Call>();
  command->add_option("--rig", call->names.rig, "Rig file, from calibrate rig")->required();
  command->add_option("--table", call->names.table, "table.json, or a preset such as 9ft")->required();
  command->add_option("--film", call->names.film, "The film")->required();
  command->add_option("-o,--output", call->output, "Also write the check as JSON");
  command->add_option("--map", call->map, "Also draw how far balls may be off over the table (PNG)");
  command
      ->add_option("--shot", call->shot,
                   "Also say what the picture's errors are worth in a shot: cue ball's X,Y, object ball's X,Y in mm, "
                   "POCKET, such as 0,-300,600,200,foot-left")
      ->check([](const std::string& text) {
        return shotFrom(text) ? std::string() : std::string("Expected X,Y,X,Y,POCKET in mm");
      });
  command->footer("Exit status: 0 everything fits; 1 a fault is named, or the film cannot be checked; 2 wrong call.");
  command->callback([call, &status] { status = run(*call); });
}

}  // namespace ferrule
