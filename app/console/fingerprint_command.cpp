// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/fingerprint_command.h"

#include <CLI/CLI.hpp>
#include <QDateTime>
#include <memory>
#include <string>

#include "app/console/console_output.h"
#include "app/console/interrupt.h"
#include "core/base/text_file.h"
#include "core/measure/table_fingerprint.h"

namespace ferrule {

namespace {

struct Call {
  std::string record;
  std::string session;
  std::string output;
};

QString row(const FittedCoefficient& coefficient) {
  const auto number = [](double value) { return QString::number(value, 'g', 4); };
  QString line = QString::fromStdString(coefficient.name).leftJustified(24) +
                 QStringLiteral("%1 ±%2").arg(number(coefficient.value), number(2.0 * coefficient.standardUncertainty));
  line = line.leftJustified(46) +
         QStringLiteral("usual %1 ±%2")
             .arg(number(coefficient.literature), number(2.0 * coefficient.literatureUncertainty));
  return coefficient.determined ? line : line.leftJustified(72) + QStringLiteral("not determined by these shots");
}

Result<void> fit(const Call& call) {
  auto record = Record::open(call.record);
  if (!record) return tl::make_unexpected(record.error());
  const auto session = sessionNamed(*record, call.session);
  if (!session) return tl::make_unexpected(session.error());
  const auto before = record->fingerprintOf(session->id);
  if (!before) return tl::make_unexpected(before.error());
  const Interrupt interrupt;
  JobControl job = consoleJob();
  job.stop = interrupt.token();
  const auto found = fitSessionsFingerprint(*record, *session, QDateTime::currentMSecsSinceEpoch(), job);
  if (!found) return tl::make_unexpected(found.error());
  for (const FittedCoefficient& coefficient : found->coefficients)
    printResult(row(coefficient));
  printNote(counted(found->shots, "shot") + QStringLiteral(", ") + counted(found->samples, "sample") +
            QStringLiteral(", rms %1 mm").arg(1000.0 * found->rms_m, 0, 'f', 2));
  if (!found->converged) printNote(QStringLiteral("The fit had not settled: more shots would tell more."));
  if (*before) printNote(QStringLiteral("This replaces the fingerprint that was fitted to this session before."));
  return call.output.empty() ? Result<void>() : writeTextFile(call.output, fingerprintText(*found));
}

}  // namespace

void addFingerprintCommand(CLI::App& app, int& status) {
  CLI::App* command =
      app.add_subcommand("fingerprint", "Fit what cloth, cushions and balls were like to a session's shots");
  const auto call = std::make_shared<Call>();
  command->add_option("--record", call->record, "The record")->required();
  command->add_option("--session", call->session, "The session's name; the newest of that name")->required();
  command->add_option("-o,--output", call->output, "Write the fingerprint here as well");
  command->callback([call, &status] {
    const auto done = fit(*call);
    status = done ? 0 : reportError(done.error());
  });
}

}  // namespace ferrule
