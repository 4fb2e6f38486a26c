// SPDX-License-Identifier: GPL-3.0-or-later
// The long work of a set-up: each piece copies what it needs and runs beside the window.
#include <QDir>
#include <QFileInfo>
#include <algorithm>
#include <opencv2/imgcodecs.hpp>
#include <utility>

#include "app/picture/image_of.h"
#include "app/setup/setup_desk.h"
#include "app/words/today.h"
#include "core/camera/lens_file.h"
#include "core/camera/projector_fit.h"
#include "core/camera/rig_from_lines.h"
#include "core/vision/film_rig.h"
#include "core/vision/film_source.h"
#include "core/vision/projected_grid.h"

namespace ferrule {

namespace {

std::string nameOf(const QString& path) {
  return QFileInfo(path).fileName().toStdString();
}

Result<FilmLook> lookAt(const QString& film) {
  auto source = FilmSource::open(film.toStdString());
  if (!source) return tl::make_unexpected(source.error());
  FilmImage image;
  if (!source->next(image)) return failure(ErrorCode::FilmTruncated, film.toStdString());
  const FilmInfo& info = source->info();
  return FilmLook{film, info.size, info.rotation_deg, info.nominalRate_hz, imageOf(image.picture)};
}

/// Stills that cannot be used are shown as such; they do not stop the others.
std::vector<BoardStill> readableOf(const std::vector<BoardStill>& stills) {
  std::vector<BoardStill> readable;
  for (const BoardStill& still : stills) {
    if (!still.error) readable.push_back(still);
  }
  return readable.empty() ? stills : readable;
}

}  // namespace

void SetupDesk::look(const QString& film) {
  job_.start<Result<FilmLook>>([film](const JobControl&) { return lookAt(film); },
                               [this, film](Result<FilmLook> look) {
                                 if (!look) return fail(look.error());
                                 emit said({});
                                 change(tr("the film"), [&](SetupState& state) {
                                   // Lines were placed in the picture of the film before.
                                   if (state.film != film) {
                                     state.handLines.clear();
                                     state.handMarks.clear();
                                   }
                                   state.film = film;
                                   if (state.camera.isEmpty()) state.camera = QFileInfo(film).dir().dirName();
                                 });
                                 now_.look = std::move(*look);
                                 emit changed();
                               });
}

void SetupDesk::addStills(const QStringList& paths) {
  survey(paths, tr("stills added"));
}

void SetupDesk::survey(const QStringList& paths, const QString& name) {
  const auto board = parseBoard(now_.state.board.toStdString());
  if (!board) return fail(board.error());
  std::vector<std::string> files;
  for (const QString& path : paths) {
    if (!now_.state.stills.contains(path) || std::ranges::count(paths, path) > 1) files.push_back(path.toStdString());
  }
  using Answer = Result<std::vector<BoardStill>>;
  job_.start<Answer>([board = *board, files,
                      known = now_.stills](const JobControl& job) { return surveyStills(board, files, known, job); },
                     [this, name, text = now_.state.board](Answer stills) {
                       if (!stills) return fail(stills.error());
                       if (text != now_.state.board) return;  // looked for another board
                       emit said({});
                       if (!name.isEmpty() && !stills->empty()) note(name);
                       for (BoardStill& still : *stills) {
                         now_.state.stills << QString::fromStdString(still.path);
                         now_.stills.push_back(std::move(still));
                       }
                       now_.calibration.reset();
                       keep();
                       if (!now_.look && QFileInfo::exists(now_.state.film)) look(now_.state.film);
                       emit changed();
                     });
}

void SetupDesk::takeStill(const cv::Mat& picture, BoardStill still) {
  const QDir folder(own("stills"));
  folder.mkpath(QStringLiteral("."));
  // Never a name that was used: undo may bring its still back.
  int number = 1;
  QString path;
  do {
    path = folder.filePath(QStringLiteral("still-%1.png").arg(number++, 3, 10, QLatin1Char('0')));
  } while (QFileInfo::exists(path));
  bool written = false;
  try {
    written = cv::imwrite(path.toStdString(), picture);
  } catch (const cv::Exception&) {
  }
  if (!written) return fail(Error{ErrorCode::FileNotWritable, path.toStdString(), {}, {}});
  emit said({});
  note(tr("a still taken"));
  still.path = path.toStdString();
  now_.state.stills << path;
  now_.stills.push_back(std::move(still));
  now_.calibration.reset();
  keep();
  emit changed();
}

void SetupDesk::removeStills(const std::vector<int>& rows) {
  if (rows.empty()) return;
  note(tr("stills removed"));
  QStringList left;
  for (int i = 0; i < static_cast<int>(now_.stills.size()); ++i) {
    if (std::ranges::find(rows, i) == rows.end())
      left << QString::fromStdString(now_.stills[static_cast<std::size_t>(i)].path);
  }
  // What was a repetition may now be the only one.
  now_.state.stills.clear();
  now_.stills.clear();
  now_.calibration.reset();
  keep();
  emit changed();
  if (!left.isEmpty()) survey(left, {});
}

void SetupDesk::calibrateLens() {
  const SetupState& state = now_.state;
  auto board = parseBoard(state.board.toStdString());
  if (board) board = boardAsPrinted(*board, {state.rulerAcross_mm / 1000.0, state.rulerDown_mm / 1000.0});
  if (!board) return fail(board.error());
  if (now_.stills.empty()) {
    emit said(tr("There are no stills yet; add pictures of the board."));
    return;
  }
  const std::string camera = state.camera.isEmpty() ? std::string("camera") : state.camera.toStdString();
  using Answer = Result<LensCalibration>;
  job_.start<Answer>(
      [board = *board, stills = readableOf(now_.stills), camera](const JobControl& job) -> Answer {
        auto views = viewsOfBoard(board, stills);
        if (!views) return tl::make_unexpected(views.error());
        auto made = ferrule::calibrateLens(board, std::move(*views), job);
        if (made) {
          made->lens.camera = camera;
          made->lens.date = today();
        }
        return made;
      },
      [this, inputs = inputs_](Answer made) {
        if (!made) return fail(made.error());
        if (!stillHolds(inputs)) return;
        const std::string text = lensText(*made);
        if (!keepText(own("lens.json"), text)) return;
        emit said({});
        note(tr("the lens"));
        now_.forgetLens();
        now_.madeLens = text;
        now_.lens = made->lens;
        now_.calibration = std::move(*made);
        now_.state.lens = own("lens.json");
        now_.state.withoutBoard = false;
        keep();
        emit changed();
      });
}

Result<RigWanted> SetupDesk::rigWanted() const {
  const SetupState& state = now_.state;
  const auto measured = tableOf(state);
  if (!measured) return tl::make_unexpected(measured.error());
  RigWanted wanted;
  if (!state.withoutBoard) wanted.lensFile = state.lens.toStdString();
  wanted.table = own("table.json").toStdString();
  wanted.measured = *measured;
  wanted.film = state.film.toStdString();
  wanted.withoutTags = state.withoutTags;
  wanted.head = state.head;
  if (state.withoutTags) {
    wanted.handLines = state.handLines;
    wanted.handMarks = state.handMarks;
  }
  wanted.date = today();
  return wanted;
}

void SetupDesk::findLines() {
  if (now_.state.film.isEmpty()) {
    emit said(tr("There is no film of the table yet; choose one in the step Camera."));
    return;
  }
  const auto wanted = rigWanted();
  if (!wanted) return fail(wanted.error());
  using Answer = Result<SeenLines>;
  job_.start<Answer>([wanted = *wanted](const JobControl& job) { return linesOfFilm(wanted, job); },
                     [this](const Answer& seen) {
                       if (!seen) return fail(seen.error());
                       emit said({});
                       emit linesFound(imageOf(seen->picture), seen->lines, seen->marks);
                     });
}

void SetupDesk::makeRig() {
  const SetupState& state = now_.state;
  const auto wanted = rigWanted();
  if (!wanted) return fail(wanted.error());
  if (state.film.isEmpty()) {
    emit said(tr("There is no film of the table yet; choose one in the step Camera."));
    return;
  }
  if (state.lens.isEmpty() && !(state.withoutBoard && state.withoutTags)) {
    emit said(tr("There is no lens yet; calibrate it, or set up from the table itself without tags."));
    return;
  }
  using Answer = Result<MadeRig>;
  job_.start<Answer>(
      [wanted = *wanted](const JobControl& job) -> Answer {
        auto rig = rigFromFilm(wanted, job);
        if (!rig) return tl::make_unexpected(rig.error());
        return withMap(std::move(*rig), wanted.measured);
      },
      [this, inputs = inputs_](const Answer& made) {
        if (!made) return fail(made.error());
        if (!stillHolds(inputs)) return;
        takeRig(*made);
        now_.state.rig = own("rig.json");
        now_.state.folder.clear();
        keepFiles();
        emit said({});
        emit changed();
      });
}

void SetupDesk::check(const QString& film) {
  if (lacksRig()) return;
  const CheckNames names{nameOf(film), nameOf(now_.state.rig), "table.json"};
  using Answer = Result<FilmCheck>;
  job_.start<Answer>([film = film.toStdString(), rig = *now_.rig, measured = now_.rigTable](
                         const JobControl& job) { return checkFilm(film, rig, measured, "table.json", job); },
                     [this, names, inputs = inputs_](Answer checked) {
                       if (!checked) return fail(checked.error());
                       if (!stillHolds(inputs)) return;
                       emit said({});
                       now_.checkNames = names;
                       now_.check = std::move(*checked);
                       emit changed();
                     });
}

void SetupDesk::checkAgain(const QString& film) {
  const auto used = rigInUse();
  if (!used) {
    emit said(tr("No rig is in use yet; go through the steps once."));
    return;
  }
  struct Checked {
    MadeRig made;
    Result<FilmCheck> check;
  };
  using Answer = Result<Checked>;
  job_.start<Answer>(
      [film = film.toStdString(), rig = used->rig.toStdString(),
       table = used->table.toStdString()](const JobControl& job) -> Answer {
        auto made = readMadeRig(rig, table);
        if (!made) return tl::make_unexpected(made.error());
        auto check = checkFilm(film, made->rig, made->measured, nameOf(QString::fromStdString(table)), job);
        return Checked{std::move(*made), std::move(check)};
      },
      [this, used = *used, film](Answer checked) {
        if (!checked) return fail(checked.error());
        if (!now_.rig || now_.state.folder != QFileInfo(used.rig).absolutePath()) open(used, checked->made);
        now_.state.step = SetupStep::Check;
        now_.check.reset();
        keep();
        if (!checked->check) {
          fail(checked->check.error());
        } else {
          emit said({});
          now_.checkNames = {nameOf(film), nameOf(used.rig), nameOf(used.table)};
          now_.check = std::move(*checked->check);
        }
        emit changed();
      });
}

void SetupDesk::findProjector(const QString& still) {
  if (lacksRig()) return;
  using Answer = Result<Projector>;
  job_.start<Answer>(
      [still = still.toStdString(), gridFile = own("grid.json").toStdString(), rig = *now_.rig,
       table = now_.rigTable.table](const JobControl&) -> Answer {
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
      [this, inputs = inputs_](const Answer& projector) {
        if (!projector) return fail(projector.error());
        if (!stillHolds(inputs)) return;
        note(tr("the projector"));
        now_.projector = *projector;
        keepFiles();
        emit said({});
        emit changed();
      });
}

}  // namespace ferrule
