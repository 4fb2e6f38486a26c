// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/setup_desk.h"

#include <QDate>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <algorithm>
#include <opencv2/imgcodecs.hpp>
#include <utility>

#include "app/setup/rig_in_use.h"
#include "app/words/error_sentence.h"
#include "app/words/today.h"
#include "core/base/text_file.h"
#include "core/camera/lens_file.h"
#include "core/camera/projector_fit.h"
#include "core/camera/rig_calibration.h"
#include "core/camera/rig_file.h"
#include "core/vision/film_rig.h"
#include "core/vision/film_source.h"
#include "core/vision/projected_grid.h"

namespace ferrule {

namespace {

Result<FilmLook> lookAt(const QString& film) {
  auto source = FilmSource::open(film.toStdString());
  if (!source) return tl::make_unexpected(source.error());
  FilmImage image;
  if (!source->next(image)) return failure(ErrorCode::FilmTruncated, film.toStdString());
  const FilmInfo& info = source->info();
  const QImage view(image.picture.data, image.picture.cols, image.picture.rows,
                    static_cast<qsizetype>(image.picture.step), QImage::Format_BGR888);
  return FilmLook{film, info.size, info.rotation_deg, info.nominalRate_hz, view.convertToFormat(QImage::Format_RGB32)};
}

/// A rig with all that follows from it.
struct MadeRig {
  Rig rig;
  MeasuredTable measured;
  std::shared_ptr<const ErrorMap> map;
};

MadeRig withMap(Rig rig, MeasuredTable measured) {
  auto map = std::make_shared<const ErrorMap>(rig, measured);
  return {std::move(rig), std::move(measured), std::move(map)};
}

Result<MadeRig> readRig(const std::string& rigPath, const std::string& tablePath) {
  auto rig = readRigFile(rigPath);
  if (!rig) return tl::make_unexpected(rig.error());
  auto measured = readMeasuredTable(tablePath);
  if (!measured) return tl::make_unexpected(measured.error());
  return withMap(std::move(*rig), std::move(*measured));
}

/// The lens is said to come from where it lies in the end.
Rig withLensFrom(const Rig& rig, const std::string& before, const std::string& after) {
  Rig result = rig;
  result.chain = {};
  for (Correction correction : rig.chain.corrections()) {
    if (correction.source == before) correction.source = after;
    // The same kinds once each, as they were.
    if (const auto added = result.chain.add(std::move(correction)); !added) return rig;
  }
  return result;
}

std::string nameOf(const QString& path) {
  return QFileInfo(path).fileName().toStdString();
}

}  // namespace

SetupDesk::SetupDesk(QString folder, QObject* parent) : QObject(parent), folder_(std::move(folder)) {}

QString SetupDesk::own(const char* name) const {
  return QDir(folder_).filePath(QLatin1String(name));
}

bool SetupDesk::keepText(const QString& path, const std::string& text) {
  if (const QDir folder = QFileInfo(path).absoluteDir(); !folder.exists()) folder.mkpath(QStringLiteral("."));
  const auto written = writeTextFile(path.toStdString(), text);
  if (!written) fail(written.error());
  return written.has_value();
}

void SetupDesk::keep() {
  keepText(own("setup.json"), setupText(state_));
}

void SetupDesk::fail(const Error& error) {
  emit said(errorSentence(error));
}

bool SetupDesk::lacksRig() {
  if (!rig_) emit said(tr("There is no rig yet; make one in the step Rig."));
  return !rig_;
}

void SetupDesk::forgetRig() {
  rig_.reset();
  check_.reset();
  map_.reset();
  state_.rig.clear();
  state_.folder.clear();
}

void SetupDesk::forgetLens() {
  lens_.reset();
  calibration_.reset();
  state_.lens.clear();
  forgetRig();
}

void SetupDesk::change(const std::function<void(SetupState&)>& edit) {
  const SetupState before = state_;
  edit(state_);
  if (state_ == before) return;
  const bool tableChanged = state_.measured != before.measured || state_.tags != before.tags ||
                            state_.tagSide_mm != before.tagSide_mm || state_.tagHeight_mm != before.tagHeight_mm;
  const bool waysChanged = state_.withoutTags != before.withoutTags || state_.withoutBoard != before.withoutBoard ||
                           state_.head != before.head || state_.lens != before.lens;
  const bool boardChanged = state_.board != before.board;
  const bool rulerChanged =
      state_.rulerAcross_mm != before.rulerAcross_mm || state_.rulerDown_mm != before.rulerDown_mm;
  if (boardChanged || rulerChanged) calibration_.reset();
  if (tableChanged || waysChanged) forgetRig();
  keep();
  if (boardChanged && !state_.stills.isEmpty()) {
    const QStringList again = state_.stills;
    state_.stills.clear();
    stills_.clear();
    addStills(again);
  }
  emit changed();
}

void SetupDesk::reopen() {
  const auto text = readTextFile(own("setup.json").toStdString());
  if (!text) return;
  const auto kept = setupFromText(*text);
  if (!kept) {
    emit said(tr("What was kept of a set-up in %1 cannot be read; it begins anew.").arg(own("setup.json")));
    return;
  }
  state_ = *kept;
  if (const auto lens = readLensFile(state_.lens.toStdString()); lens) {
    lens_ = *lens;
  } else {
    state_.lens.clear();
  }
  if (const auto made = readRig(state_.rig.toStdString(), own("table.json").toStdString()); made) {
    rig_ = made->rig;
    rigTable_ = made->measured;
    map_ = made->map;
  } else {
    state_.rig.clear();
  }
  if (const auto projector = readProjectorFile(own("projector.json").toStdString()); projector) projector_ = *projector;
  QStringList there;
  for (const QString& still : state_.stills) {
    if (QFileInfo::exists(still)) there << still;
  }
  state_.stills.clear();
  const QString film = state_.film;
  emit changed();
  if (!there.isEmpty()) {
    addStills(there);
  } else if (QFileInfo::exists(film)) {
    look(film);
  }
}

void SetupDesk::startAgain() {
  job_.cancel();
  state_ = {};
  stills_.clear();
  look_.reset();
  projector_.reset();
  QFile::remove(own("projector.json"));
  forgetLens();
  keep();
  emit said({});
  emit changed();
}

void SetupDesk::openTable(const QString& path) {
  const auto measured = readMeasuredTable(path.toStdString());
  if (!measured) return fail(measured.error());
  emit said({});
  change([&](SetupState& state) { takeTable(state, *measured); });
}

void SetupDesk::look(const QString& film) {
  job_.start<Result<FilmLook>>([film](const JobControl&) { return lookAt(film); },
                               [this, film](Result<FilmLook> look) {
                                 if (!look) return fail(look.error());
                                 emit said({});
                                 look_ = std::move(*look);
                                 change([&](SetupState& state) {
                                   state.film = film;
                                   if (state.camera.isEmpty()) state.camera = QFileInfo(film).dir().dirName();
                                 });
                                 emit changed();
                               });
}

void SetupDesk::addStills(const QStringList& paths) {
  const auto board = parseBoard(state_.board.toStdString());
  if (!board) return fail(board.error());
  std::vector<std::string> files;
  for (const QString& path : paths) {
    if (!state_.stills.contains(path) || std::ranges::count(paths, path) > 1) files.push_back(path.toStdString());
  }
  using Answer = Result<std::vector<BoardStill>>;
  job_.start<Answer>([board = *board, files,
                      known = stills_](const JobControl& job) { return surveyStills(board, files, known, job); },
                     [this](Answer stills) {
                       if (!stills) return fail(stills.error());
                       emit said({});
                       for (BoardStill& still : *stills) {
                         state_.stills << QString::fromStdString(still.path);
                         stills_.push_back(std::move(still));
                       }
                       calibration_.reset();
                       keep();
                       if (!look_ && QFileInfo::exists(state_.film)) look(state_.film);
                       emit changed();
                     });
}

void SetupDesk::removeStills(const std::vector<int>& rows) {
  QStringList left;
  for (int i = 0; i < static_cast<int>(stills_.size()); ++i) {
    if (std::ranges::find(rows, i) == rows.end())
      left << QString::fromStdString(stills_[static_cast<std::size_t>(i)].path);
  }
  // What was a repetition may now be the only one.
  state_.stills.clear();
  stills_.clear();
  calibration_.reset();
  keep();
  emit changed();
  if (!left.isEmpty()) addStills(left);
}

void SetupDesk::calibrateLens() {
  auto board = parseBoard(state_.board.toStdString());
  if (board) board = boardAsPrinted(*board, {state_.rulerAcross_mm / 1000.0, state_.rulerDown_mm / 1000.0});
  if (!board) return fail(board.error());
  if (stills_.empty()) {
    emit said(tr("There are no stills yet; add pictures of the board."));
    return;
  }
  const std::string camera = state_.camera.isEmpty() ? std::string("camera") : state_.camera.toStdString();
  using Answer = Result<LensCalibration>;
  job_.start<Answer>(
      [board = *board, stills = stills_, camera](const JobControl& job) -> Answer {
        // Stills that cannot be used are shown as such; they do not stop the others.
        std::vector<BoardStill> readable;
        for (const BoardStill& still : stills) {
          if (!still.error) readable.push_back(still);
        }
        auto views = viewsOfBoard(board, readable.empty() ? stills : readable);
        if (!views) return tl::make_unexpected(views.error());
        auto made = ferrule::calibrateLens(board, std::move(*views), job);
        if (made) {
          made->lens.camera = camera;
          made->lens.date = today();
        }
        return made;
      },
      [this](Answer made) {
        if (!made) return fail(made.error());
        if (!keepText(own("lens.json"), lensText(*made))) return;
        emit said({});
        forgetLens();
        lens_ = made->lens;
        calibration_ = std::move(*made);
        state_.lens = own("lens.json");
        state_.withoutBoard = false;
        keep();
        emit changed();
      });
}

void SetupDesk::useLensFile(const QString& path) {
  auto lens = readLensFile(path.toStdString());
  if (!lens) return fail(lens.error());
  emit said({});
  forgetLens();
  lens_ = std::move(*lens);
  state_.lens = path;
  state_.withoutBoard = false;
  keep();
  emit changed();
}

void SetupDesk::addLensToChain(const QString& path) {
  const auto lens = readLensFile(path.toStdString());
  if (!lens) return fail(lens.error());
  if (!rig_) return useLensFile(path);
  CorrectionChain chain = rig_->chain;
  const auto added =
      chain.add({CorrectionKind::Lens, path.toStdString(), "straightens what the lens bends", lens->date});
  if (!added) return fail(added.error());
}

void SetupDesk::takeRig(const Rig& rig, const MeasuredTable& measured) {
  rig_ = rig;
  rigTable_ = measured;
  check_.reset();
}

void SetupDesk::makeRig() {
  const auto measured = tableOf(state_);
  if (!measured) return fail(measured.error());
  if (state_.film.isEmpty()) {
    emit said(tr("There is no film of the table yet; choose one in the step Camera."));
    return;
  }
  if (state_.lens.isEmpty() && !(state_.withoutBoard && state_.withoutTags)) {
    emit said(tr("There is no lens yet; calibrate it, or set up from the table itself without tags."));
    return;
  }
  const RigWanted wanted{state_.withoutBoard ? std::string() : state_.lens.toStdString(),
                         own("table.json").toStdString(),
                         *measured,
                         state_.film.toStdString(),
                         state_.withoutTags,
                         state_.head,
                         today()};
  using Answer = Result<MadeRig>;
  job_.start<Answer>(
      [wanted](const JobControl& job) -> Answer {
        auto rig = rigFromFilm(wanted, job);
        if (!rig) return tl::make_unexpected(rig.error());
        return withMap(std::move(*rig), wanted.measured);
      },
      [this](Answer made) {
        if (!made) return fail(made.error());
        if (!keepText(own("table.json"), measuredTableText(made->measured)) ||
            !keepText(own("rig.json"), rigText(made->rig))) {
          return;
        }
        emit said({});
        takeRig(made->rig, made->measured);
        map_ = made->map;
        state_.rig = own("rig.json");
        state_.folder.clear();
        keep();
        emit changed();
      });
}

void SetupDesk::check(const QString& film) {
  if (lacksRig()) return;
  checkNames_ = {nameOf(film), nameOf(state_.rig), "table.json"};
  using Answer = Result<FilmCheck>;
  job_.start<Answer>([film = film.toStdString(), rig = *rig_, measured = rigTable_](
                         const JobControl& job) { return checkFilm(film, rig, measured, "table.json", job); },
                     [this](Answer checked) {
                       if (!checked) return fail(checked.error());
                       emit said({});
                       check_ = std::move(*checked);
                       emit changed();
                     });
}

void SetupDesk::checkAgain(const QString& film) {
  const auto used = rigInUse();
  if (!used) {
    emit said(tr("No rig is in use yet; go through the steps once."));
    return;
  }
  auto made = readRig(used->rig.toStdString(), used->table.toStdString());
  if (!made) return fail(made.error());
  takeRig(made->rig, made->measured);
  map_ = made->map;
  state_.rig = used->rig;
  state_.step = SetupStep::Check;
  emit changed();
  check(film);
}

bool SetupDesk::keepGrid(const ProjectorGrid& grid) {
  QDir().mkpath(folder_);
  const auto written = writeProjectorGrid(own("grid.json").toStdString(), grid);
  if (!written) fail(written.error());
  return written.has_value();
}

void SetupDesk::findProjector(const QString& still) {
  if (lacksRig()) return;
  using Answer = Result<Projector>;
  job_.start<Answer>(
      [still = still.toStdString(), gridFile = own("grid.json").toStdString(), rig = *rig_,
       table = rigTable_.table](const JobControl&) -> Answer {
        const auto grid = readProjectorGrid(gridFile);
        if (!grid) return tl::make_unexpected(grid.error());
        const cv::Mat picture = cv::imread(still, cv::IMREAD_COLOR);
        if (picture.empty()) return failure(ErrorCode::NotAnImage, still);
        const auto corners = findProjectedGrid(picture, {}, *grid, rig, table, still, gridFile);
        if (!corners) return tl::make_unexpected(corners.error());
        auto projector = fitProjector(grid->size, *corners, still);
        if (projector) projector->date = today();
        return projector;
      },
      [this](Answer projector) {
        if (!projector) return fail(projector.error());
        if (const auto written = writeProjectorFile(own("projector.json").toStdString(), *projector); !written) {
          return fail(written.error());
        }
        emit said({});
        projector_ = *projector;
        emit changed();
      });
}

void SetupDesk::save(const QString& folder) {
  if (lacksRig()) return;
  const QDir target(folder);
  const QString lensPath = target.filePath(QStringLiteral("lens.json"));
  Rig rig = *rig_;
  if (!state_.lens.isEmpty()) {
    const auto text = readTextFile(state_.lens.toStdString());
    if (!text) return fail(text.error());
    if (!keepText(lensPath, *text)) return;
    rig = withLensFrom(rig, state_.lens.toStdString(), lensPath.toStdString());
  }
  const QString tablePath = target.filePath(QStringLiteral("table.json"));
  const QString rigPath = target.filePath(QStringLiteral("rig.json"));
  if (!keepText(tablePath, measuredTableText(rigTable_)) || !keepText(rigPath, rigText(rig))) return;
  if (projector_) {
    const auto written =
        writeProjectorFile(target.filePath(QStringLiteral("projector.json")).toStdString(), *projector_);
    if (!written) return fail(written.error());
  }
  setRigInUse({state_.name, rigPath, tablePath});
  state_.folder = target.absolutePath();
  keep();
  emit said(tr("The set-up is saved in %1 and is the one in use.").arg(target.absolutePath()));
  emit changed();
}

bool SetupDesk::isDone(SetupStep step) const {
  switch (step) {
    case SetupStep::Table:
    case SetupStep::Balls:
      return static_cast<int>(state_.step) > static_cast<int>(step) && tableOf(state_).has_value();
    case SetupStep::Camera:
      return !state_.film.isEmpty();
    case SetupStep::Lens:
      return lens_.has_value() || state_.withoutBoard;
    case SetupStep::Tags: {
      const auto measured = tableOf(state_);
      return state_.withoutTags || (measured && measured->tags.size() >= 3);
    }
    case SetupStep::Rig:
      return rig_.has_value();
    case SetupStep::Check:
      return check_ && check_->check.verdict == RigFault::None;
    case SetupStep::Map:
      return map_ != nullptr && static_cast<int>(state_.step) > static_cast<int>(step);
    case SetupStep::Projector:
      return projector_.has_value();
    case SetupStep::Done:
      return !state_.folder.isEmpty();
  }
  return false;
}

}  // namespace ferrule
