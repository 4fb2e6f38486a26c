// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/film_desk.h"

#include <QFileInfo>

#include "app/session/record_folder.h"
#include "app/session/session_shots.h"
#include "core/camera/rig_file.h"

namespace ferrule {

namespace {

std::optional<FilmInRecord> knownIn(const MeasureOptions& options) {
  auto record = Record::open(options.record);
  if (!record) return std::nullopt;
  auto known = filmInRecord(*record, options.film);
  return known ? *known : std::nullopt;
}

/// Nothing where it cannot be made: measuring says by itself what is wrong with a file, and a film that shows neither
/// tags nor cushions may still be measured.
std::optional<FilmCheck> checkOf(const MeasureOptions& options, const JobControl& job) {
  const auto rig = readRigFile(options.rig);
  const auto measured = measuredTableFrom(options.table);
  if (!rig || !measured) return std::nullopt;
  auto check = checkFilm(options.film, *rig, *measured, options.table, job);
  // A film of another size is refused by the measuring itself.
  if (!check || check->evidence.filmSize != rig->lens.size) return std::nullopt;
  return std::move(*check);
}

}  // namespace

FilmDesk::FilmDesk(Clock clock, QObject* parent)
    : QObject(parent), shots_(std::move(clock), [this](const SaidOfRecorded& said) {
        if (state_ == FilmState::Measuring) {
          inbox_->put(said);
        } else {
          answers_.say(QString::fromStdString(options_.record), said);
        }
      }) {
  connect(&feed_, &MeasuringFeed::opened, this, [this](SessionId session, const QString& name) {
    session_ = session;
    sessionName_ = name;
    emit changed();
  });
  connect(&feed_, &MeasuringFeed::imageSeen, this, [this](std::shared_ptr<const SeenImage> image) {
    image_ = std::move(image);
    emit imageSeen();
  });
  connect(&feed_, &MeasuringFeed::shotMeasured, this,
          [this](std::shared_ptr<const MeasuredShot> shot) { shots_.add(std::move(shot)); });
  connect(&shots_, &MeasuredShots::changed, this, &FilmDesk::changed);
  connect(&feed_, &MeasuringFeed::ruledAgain, &shots_, &MeasuredShots::ruleAgain);
  connect(&answers_, &AnswerService::ruledAgain, &shots_, &MeasuredShots::ruleAgain);
  connect(&answers_, &AnswerService::failed, this, &FilmDesk::failed);
  connect(&judge_, &JudgeService::judged, this, &FilmDesk::judged);
  connect(&judge_, &JudgeService::failed, this, &FilmDesk::failed);
  connect(&job_, &BackgroundJob::progressed, this, [this](double share, const QString& step) {
    share_ = share;
    if (step != step_) sinceStep_.start();
    step_ = step;
    emit progressed();
  });
}

void FilmDesk::start(const MeasureOptions& options, bool despiteCheck) {
  if (state_ == FilmState::Measuring) return;
  // One sentence at once for what is quickly seen; the rest is looked at on the work's thread.
  auto table = measuredTableFrom(options.table);
  if (!table) {
    emit refused(table.error(), std::nullopt);
    return;
  }
  close();
  options_ = options;
  table_ = std::move(*table);
  sessionName_ = options.session.empty() ? QFileInfo(QString::fromStdString(options.film)).completeBaseName()
                                         : QString::fromStdString(options.session);
  state_ = FilmState::Measuring;
  sinceStep_.start();
  inbox_ = std::make_shared<LiveInbox>();
  job_.start<Outcome>(
      [this, options, despiteCheck, observer = feed_.observer(inbox_)](const JobControl& job) {
        makeFolderOf(options.record);
        const bool stands = !options.again && knownIn(options).has_value();
        if (!stands && !despiteCheck) {
          if (const auto check = checkOf(options, job)) {
            QMetaObject::invokeMethod(
                this, [this, check] { check_ = check; }, Qt::QueuedConnection);
            if (check->check.verdict != RigFault::None)
              return Outcome{failure(ErrorCode::Cancelled), std::nullopt, true};
          }
        }
        Outcome outcome{measureFilm(options, job, observer), std::nullopt};
        if (!outcome.report && outcome.report.error().code == ErrorCode::AlreadyRecorded) {
          outcome.known = knownIn(options);
        }
        return outcome;
      },
      [this](const Outcome& outcome) { finish(outcome); });
  emit changed();
}

void FilmDesk::stop() {
  job_.cancel();
}

void FilmDesk::close() {
  if (state_ == FilmState::Measuring) return;
  state_ = FilmState::None;
  session_.reset();
  shots_.clear();
  image_.reset();
  share_ = -1.0;
  step_.clear();
  report_.reset();
  check_.reset();
  emit changed();
}

void FilmDesk::finish(const Outcome& outcome) {
  // What was said too late for the measuring thread.
  for (const SaidOfRecorded& said : inbox_->takeSaid())
    answers_.say(QString::fromStdString(options_.record), said);
  if (outcome.report) {
    report_ = *outcome.report;
    state_ = FilmState::Done;
    emit changed();
    if (session_) emit sessionEnded(*session_);
    return;
  }
  // A session that was begun stays in view with what stands in the record; one that was not leaves nothing behind.
  state_ = session_ ? FilmState::Stopped : FilmState::None;
  emit changed();
  if (outcome.doubted) {
    emit doubted();
    return;
  }
  const Error& error = outcome.report.error();
  if (error.code == ErrorCode::Cancelled) return;
  if (session_) {
    emit failed(error);
    return;
  }
  // What a stop left without suggestions gets them now; nothing happens where all have theirs.
  if (outcome.known && outcome.known->complete) {
    judge_.judge(QString::fromStdString(options_.record), outcome.known->session.id);
  }
  emit refused(error, outcome.known);
}

void FilmDesk::list(const QString& record, SessionId session) {
  lister_.start<Result<ShotList>>([record, session](const JobControl&) { return shotsOfSession(record, session); },
                                  [this](const Result<ShotList>& shots) {
                                    if (shots) {
                                      emit listed(*shots);
                                    } else {
                                      emit failed(shots.error());
                                    }
                                  });
}

CheckNames FilmDesk::checkNames() const {
  const auto name = [](const std::string& path) {
    return QFileInfo(QString::fromStdString(path)).fileName().toStdString();
  };
  return {name(options_.film), name(options_.rig), name(options_.table)};
}

double FilmDesk::elapsed_s() const {
  return static_cast<double>(sinceStep_.elapsed()) / 1000.0;
}

}  // namespace ferrule
