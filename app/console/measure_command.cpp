// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/measure_command.h"

#include <CLI/CLI.hpp>
#include <QStringList>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "app/console/console_output.h"
#include "app/console/cue_lines.h"
#include "app/console/interrupt.h"
#include "app/console/shot_table.h"
#include "app/words/name_list.h"
#include "core/geometry/units.h"
#include "core/measure/measure.h"

namespace ferrule {

namespace {

std::set<std::string> gameNames() {
  std::set<std::string> names;
  for (const Game game : kGames)
    names.emplace(toText(game));
  return names;
}

QString quoted(const std::string& text) {
  return '"' + QString::fromStdString(text) + '"';
}

/// What was told while measuring.
struct Told {
  std::vector<ShotReading> shots;
  std::vector<RuledShot> rulings;
  QStringList cues;
};

/// The frames won, or the points of straight pool.
void printScore(const RuledShot& last) {
  const bool points = last.game == Game::StraightPool;
  const auto& score = points ? last.points : last.framesWon;
  printNote(QStringLiteral("%1 %2:%3; at the table: %4")
                .arg(points ? QStringLiteral("points") : QStringLiteral("frames"))
                .arg(score[0])
                .arg(score[1])
                .arg(QString::fromUtf8(toText(last.ruling.next.value).data())));
}

void printReport(const MeasureOptions& options, const MeasureReport& report, const Told& told) {
  // The table is the result where it goes to no file, and the receipt where it went into a record.
  if (options.output.empty() || !options.record.empty()) {
    for (const QString& line : shotTable(told.shots, told.rulings))
      printResult(line);
  }
  printNote(QStringLiteral("%1, %2 s: %3, %4")
                .arg(counted(report.images, "image"))
                .arg(report.duration_s, 0, 'f', 2)
                .arg(counted(report.shots, "shot"), counted(report.placements, "placement")));
  for (const QString& line : told.cues)
    printNote(line);
  if (report.table) {
    printNote(QStringLiteral("read with the table's fingerprint of session %1 (%2); what it left open, with the "
                             "literature's values")
                  .arg(quoted(report.table->session), QString::fromStdString(report.table->fingerprint.date)));
  }
  if (!told.rulings.empty()) printScore(told.rulings.back());
  if (report.endedEarly) {
    printNote(QStringLiteral("%1 is shorter than its header says; what is there was measured.")
                  .arg(QString::fromStdString(options.film)));
  }
  for (const CameraMove& move : report.moves) {
    printNote(
        QStringLiteral("The camera moved by %1 mm between %2 and %3 s of %4; later shots are measured with its new "
                       "place, those in between are doubtful: fix the camera and film them again.")
            .arg(millimetresFromMetres(move.moved_m), 0, 'f', 1)
            .arg(move.since_s, 0, 'f', 1)
            .arg(move.settled_s, 0, 'f', 1)
            .arg(QString::fromStdString(options.film)));
  }
  for (const std::string& earlier : report.earlierSessions) {
    printNote(QStringLiteral("%1 was already in the record as session %2; this measurement stands beside it.")
                  .arg(QString::fromStdString(options.film), quoted(earlier)));
  }
  if (report.judged) {
    printNote(QStringLiteral("a suggestion was set beside %1; ferrule export and the window show them")
                  .arg(counted(report.judged->judged, "shot")));
  }
  if (report.session) {
    printNote(QStringLiteral("recorded as session %1 in %2")
                  .arg(quoted(report.sessionName), QString::fromStdString(options.record)));
  }
}

int run(const MeasureOptions& options) {
  const Interrupt interrupt;
  JobControl job = consoleJob();
  job.stop = interrupt.token();
  Told told;
  MeasureObserver observer;
  observer.shot = [&told](const ReadShot& shot) { told.shots.push_back(shot.reading); };
  observer.ruling = [&told](const ReadShot&, const FilmRuling& ruling) { told.rulings.push_back(ruling.ruled); };
  observer.cue = [&told](const ReadShot& shot, const CueReading& cue) {
    told.cues += cueLines(shot.reading.number, cue);
  };
  const auto report = measureFilm(options, job, observer);
  if (!report) return reportError(report.error());
  printReport(options, *report, told);
  return 0;
}

}  // namespace

void addMeasureCommand(CLI::App& app, int& status) {
  CLI::App* command = app.add_subcommand("measure", "Measure a film: every ball, every shot");
  const auto options = std::make_shared<MeasureOptions>();
  command->add_option("FILM", options->film, "The film")->required();
  command->add_option("--rig", options->rig, "Rig file, from calibrate rig")->required();
  command->add_option("--table", options->table, "table.json, or a preset such as 9ft")->required();
  command->add_option("--game", options->game, "The game that is played")->check(CLI::IsMember(gameNames()));
  auto* record = command->add_option("--record", options->record, "The record that keeps the session");
  command->add_option("--session", options->session, "The session's name; the film's name if not given")->needs(record);
  const auto players = std::make_shared<std::string>();
  command->add_option("--players", *players, "Who plays, in playing order: A,B")->needs(record);
  command->add_flag("--again", options->again, "Measure a film that is in the record once more")->needs(record);
  command->add_flag("!--no-suggestions", options->judge, "Set no suggestion beside the recorded shots")->needs(record);
  command->add_option("--cue", options->cue, "cue.json: where the tags sit on the cue; table.json's own if not given");
  command->add_option("--pitch-log", options->pitchLog, "Log of a pitch sensor on the cue: CSV of time_s, pitch_deg");
  command->add_option("-o,--output", options->output, "The measured.json to write");
  command->callback([options, players, &status] {
    options->players = namesIn(QString::fromStdString(*players));
    status = run(*options);
  });
}

}  // namespace ferrule
