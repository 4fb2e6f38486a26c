// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/report_command.h"

#include <CLI/CLI.hpp>
#include <QCoreApplication>
#include <QDateTime>
#include <cctype>
#include <filesystem>
#include <memory>
#include <string>

#include "app/console/console_output.h"
#include "app/report/report_builder.h"
#include "app/report/report_csv.h"
#include "app/report/report_html.h"
#include "app/report/report_pdf.h"
#include "app/window/languages.h"
#include "core/base/text_file.h"
#include "core/measure/player_history.h"
#include "core/measure/steadier_play.h"
#include "core/progress/goals.h"
#include "core/progress/history_filter.h"

namespace ferrule {

namespace {

struct Call {
  std::string record;
  std::string player;
  std::string from;
  std::string to;
  std::string paper = "a4";
  std::string language;
  std::string speedUnit = "m/s";
  std::string note;
  std::string output;
};

constexpr int kWrongCall = 2;

int wrongCall(const QString& sentence) {
  printNote(sentence);
  return kWrongCall;
}

std::string endingOf(const std::string& path) {
  std::string ending = std::filesystem::path(path).extension().string();
  for (char& letter : ending)
    letter = static_cast<char>(std::tolower(static_cast<unsigned char>(letter)));
  return ending;
}

/// A day as it is written in calls; nothing inside for none, nothing at all for another form.
std::optional<std::optional<QDate>> dayFrom(const std::string& text) {
  if (text.empty()) return std::optional<QDate>();
  const QDate day = QDate::fromString(QString::fromStdString(text), Qt::ISODate);
  if (!day.isValid()) return std::nullopt;
  return std::optional(day);
}

int report(const Call& call) {
  const std::string ending = endingOf(call.output);
  const bool html = ending == ".html" || ending == ".htm";
  if (!html && ending != ".pdf") {
    return wrongCall(QStringLiteral("%1 ends in neither .pdf nor .html; name the report's file so that it does.")
                         .arg(QString::fromStdString(call.output)));
  }
  const auto from = dayFrom(call.from);
  const auto to = dayFrom(call.to);
  if (!from || !to) {
    return wrongCall(QStringLiteral("%1 is no day; write it as year-month-day, such as 2026-03-31.")
                         .arg(QString::fromStdString(from ? call.to : call.from)));
  }
  if (*from && *to && **from > **to) {
    return wrongCall(QStringLiteral("The period ends on %1, before it begins on %2; exchange the two.")
                         .arg(QString::fromStdString(call.to), QString::fromStdString(call.from)));
  }
  if (!call.language.empty()) QLocale::setDefault(QLocale(QString::fromStdString(call.language)));
  const SpokenLanguage spoken(languageFor(QLocale()));

  SessionPeriod period;  // from the record's beginning, since targets were set before
  ReportSettings settings;
  settings.locale = QLocale();
  settings.speedUnit = speedUnitFromSetting(QString::fromStdString(call.speedUnit));
  settings.coachNote = QString::fromStdString(call.note);
  settings.now_ms = QDateTime::currentMSecsSinceEpoch();
  if (*from) settings.from_ms = (*from)->startOfDay().toMSecsSinceEpoch();
  if (*to) settings.until_ms = period.until = (*to)->addDays(1).startOfDay().toMSecsSinceEpoch();
  RecordOptions reading;
  reading.mode = RecordMode::ReadOnly;
  auto record = Record::open(call.record, reading);
  if (!record) return reportError(record.error());
  auto history = playerHistory(*record, call.player, period);
  if (!history) return reportError(history.error());
  auto consent = reportConsent(*record, call.player);
  if (!consent) return reportError(consent.error());
  settings.consent = std::move(*consent);
  if (const auto played = addSteadierGains(*record, *history); !played) return reportError(played.error());
  HistoryFilter asked;
  asked.from_ms = settings.from_ms;
  PlayerProgress progress = playerProgress(filtered(*history, asked), {settings.now_ms, {}});
  if (settings.from_ms) {
    HistoryFilter before;
    before.until_ms = settings.from_ms;
    progress.goals = checkGoals(filtered(*history, before), progress, {settings.now_ms, {}});
  }
  const Report built = buildReport(progress, settings);

  const QString missing = lettersWithoutFont(built.title + settings.coachNote);
  if (!missing.isEmpty()) {
    printNote(
        QStringLiteral("No installed font has these letters, so they print as boxes: %1. Install a font that has them.")
            .arg(missing));
  }
  auto written = html ? writeReportHtml(built, call.output)
                      : writeReportPdf(built, call.paper == "letter" ? QPageSize::Letter : QPageSize::A4, call.output);
  if (!written) return reportError(written.error());
  const std::string csv = std::filesystem::path(call.output).replace_extension(".csv").string();
  written = writeTextFile(csv, reportCsv(progress));
  if (!written) return reportError(written.error());
  printResult(QString::fromStdString(call.output));
  printResult(QString::fromStdString(csv));
  if (progress.quality.shots == 0) printNote(QStringLiteral("There is no shot of this player in this period."));
  printNote(counted(progress.quality.sessions, "session") + QStringLiteral(", ") +
            counted(progress.quality.shots, "shot"));
  return 0;
}

}  // namespace

void addReportCommand(CLI::App& app, int& status) {
  CLI::App* command =
      app.add_subcommand("report", "Write one player's progress as PDF or HTML, with its numbers as CSV");
  const auto call = std::make_shared<Call>();
  command->add_option("--record", call->record, "The record")->required();
  command->add_option("--player", call->player, "Whose progress")->required();
  command->add_option("--from", call->from, "The first day, such as 2026-01-31; sessions count by their start");
  command->add_option("--to", call->to, "The last day");
  command->add_option("--paper", call->paper, "The sheet")->check(CLI::IsMember({"a4", "letter"}));
  std::vector<std::string> spoken;
  for (const Language& language : languages())
    spoken.emplace_back(language.code);
  command->add_option("--language", call->language, "The language, else the user's")->check(CLI::IsMember(spoken));
  command->add_option("--speed-unit", call->speedUnit, "The unit of speeds")
      ->check(CLI::IsMember({"m/s", "km/h", "mph"}));
  command->add_option("--note", call->note, "The coach's note; without it there are lines to write on");
  command->add_option("-o,--output", call->output, "The report: its ending .pdf or .html decides")->required();
  command->callback([call, &status] { status = report(*call); });
}

}  // namespace ferrule
