// SPDX-License-Identifier: GPL-3.0-or-later
// The files of a set-up: those that a person brings, those that the program keeps, and those that are saved.
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <algorithm>
#include <utility>

#include "app/setup/setup_desk.h"
#include "app/words/error_sentence.h"
#include "core/base/text_file.h"
#include "core/camera/lens_file.h"
#include "core/camera/rig_file.h"
#include "core/camera/rig_from_lines.h"

namespace ferrule {

QString SetupDesk::own(const char* name) const {
  return QDir(folder_).filePath(QLatin1String(name));
}

bool SetupDesk::keepText(const QString& path, const std::string& text) {
  if (const QDir folder = QFileInfo(path).absoluteDir(); !folder.exists()) folder.mkpath(QStringLiteral("."));
  const auto written = writeTextFile(path.toStdString(), text);
  if (!written) fail(written.error());
  return written.has_value();
}

void SetupDesk::keepFiles() {
  keep();
  if (now_.state.lens == own("lens.json") && !now_.madeLens.empty()) keepText(own("lens.json"), now_.madeLens);
  if (now_.rig && now_.state.rig == own("rig.json")) {
    keepText(own("table.json"), measuredTableText(now_.rigTable));
    keepText(own("rig.json"), rigText(*now_.rig));
  }
  if (!now_.projector) {
    QFile::remove(own("projector.json"));
  } else if (const auto written = writeProjectorFile(own("projector.json").toStdString(), *now_.projector); !written) {
    fail(written.error());
  }
}

void SetupDesk::fail(const Error& error) {
  emit said(errorSentence(error));
}

void SetupDesk::openTable(const QString& path) {
  const auto measured = readMeasuredTable(path.toStdString());
  if (!measured) return fail(measured.error());
  emit said({});
  change(tr("the table file"), [&](SetupState& state) { takeTable(state, *measured); });
}

void SetupDesk::useLensFile(const QString& path) {
  auto lens = readLensFile(path.toStdString());
  if (!lens) return fail(lens.error());
  emit said({});
  note(tr("the lens file"));
  now_.forgetLens();
  now_.lens = std::move(*lens);
  now_.state.lens = path;
  now_.state.withoutBoard = false;
  keep();
  emit changed();
}

void SetupDesk::addLensToChain(const QString& path) {
  const auto lens = readLensFile(path.toStdString());
  if (!lens) return fail(lens.error());
  if (!now_.rig) return useLensFile(path);
  CorrectionChain chain = now_.rig->chain;
  const auto added =
      chain.add({CorrectionKind::Lens, path.toStdString(), "straightens what the lens bends", lens->date});
  if (!added) return fail(added.error());
}

void SetupDesk::takeRig(const MadeRig& made) {
  now_.rig = made.rig;
  now_.rigTable = made.measured;
  now_.map = made.map;
  now_.check.reset();
}

void SetupDesk::open(const RigInUse& used, const MadeRig& made) {
  note(tr("the set-up in use opened"));
  const SetupStep step = now_.state.step;
  now_ = {};
  SetupState& state = now_.state;
  state.step = step;
  takeTable(state, made.measured);
  state.withoutTags = isFromCushions(made.rig);
  const auto& chain = made.rig.chain.corrections();
  const auto lens = std::ranges::find(chain, CorrectionKind::Lens, &Correction::kind);
  const QString lensFile = lens == chain.end() ? QString() : QString::fromStdString(lens->source);
  // A lens from the cushions has the film as its source.
  auto readable = readLensFile(lensFile.toStdString());
  state.withoutBoard = !readable.has_value();
  if (readable) {
    state.lens = lensFile;
    now_.lens = std::move(*readable);
  }
  state.name = used.name;
  state.camera = QString::fromStdString(made.rig.lens.camera);
  state.rig = own("rig.json");
  state.folder = QFileInfo(used.rig).absolutePath();
  takeRig(made);
  if (auto projector = readProjectorFile(QDir(state.folder).filePath(QStringLiteral("projector.json")).toStdString())) {
    now_.projector = std::move(*projector);
  }
  keepFiles();
}

bool SetupDesk::keepGrid(const ProjectorGrid& grid) {
  QDir().mkpath(folder_);
  const auto written = writeProjectorGrid(own("grid.json").toStdString(), grid);
  if (!written) fail(written.error());
  return written.has_value();
}

void SetupDesk::save(const QString& folder) {
  if (lacksRig()) return;
  const QDir target(folder);
  const QString lensPath = target.filePath(QStringLiteral("lens.json"));
  Rig rig = *now_.rig;
  if (!now_.state.lens.isEmpty()) {
    const auto text = readTextFile(now_.state.lens.toStdString());
    if (!text) return fail(text.error());
    if (!keepText(lensPath, *text)) return;
    rig = withSource(rig, now_.state.lens.toStdString(), lensPath.toStdString());
  }
  const QString tablePath = target.filePath(QStringLiteral("table.json"));
  const QString rigPath = target.filePath(QStringLiteral("rig.json"));
  if (!keepText(tablePath, measuredTableText(now_.rigTable)) || !keepText(rigPath, rigText(rig))) return;
  if (now_.projector) {
    const auto written =
        writeProjectorFile(target.filePath(QStringLiteral("projector.json")).toStdString(), *now_.projector);
    if (!written) return fail(written.error());
  }
  setRigInUse({now_.state.name, rigPath, tablePath});
  now_.state.folder = target.absolutePath();
  keep();
  emit said(tr("The set-up is saved in %1 and is the one in use.").arg(target.absolutePath()));
  emit changed();
}

}  // namespace ferrule
